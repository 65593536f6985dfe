package reading

import "troughbell/model"

// The signs that a span was only said in passing: words that no frame knows, a
// question, other business of the trade beside it.

// strangeWords counts the words of a span that mean nothing to any frame.
func (r *reader) strangeWords(s span) int {
	n := 0
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itWord && it.sense.empty() && it.unit == 0 {
			n++
		}
	}
	return n
}

// asked says that the sentence of a span is a question.
func (r *reader) asked(s span) bool {
	for k := r.sentenceStart(s.i); k < s.j; k++ {
		if it := &r.items[k]; it.quest || it.is(sAskSure) || k == r.sentenceStart(s.i) && it.isAny(setOf(sAsk, sDo, sHelp)) {
			return true
		}
	}
	return false
}

// namesOurs says that the sentence of a span names a pig, so that it is about
// that pig and no answer to a nudge: "tomorrow comes the vet for emil".
func (r *reader) namesOurs(s span) bool {
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		if r.items[k].pig >= 0 {
			return true
		}
	}
	return false
}

// saysWho says that a span speaks of pigs, by name or as a group.
func (r *reader) saysWho(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) && !it.is(sPigs) {
			return true
		}
	}
	return false
}

// nobodyOut says that the alarm is denied: "no pigs out", "nobody is out".
func (r *reader) nobodyOut(s span) bool {
	out := r.find(s, sOut)
	if out < 0 {
		return false
	}
	for k := out; k >= 0 && k >= out-3; k-- {
		switch r.items[k].s {
		case "no", "none", "nobody", "no one", "zero", "nobody's", "neither", "noone", "not", "aren't", "arent", "isn't", "isnt", "never", "didn't", "didnt", "haven't", "havent", "none of them", "not yet":
			return k < out || r.items[k].s == "no"
		}
		if k < out && r.items[k+1].gap >= gapComma {
			return false
		}
	}
	return false
}

// tradeBeside says that a word of the trade stands in the text outside of a span.
func (r *reader) tradeBeside(s span) bool {
	for k := range r.items {
		if it := &r.items[k]; (k < s.i || k >= s.j) && (it.isAny(tradeSenses) || it.kind == itThing) && !it.is(sFiller) {
			return true
		}
	}
	return false
}

// saysChange says that the sentence of a span sets something anew.
func (r *reader) saysChange(s span) bool {
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		switch r.items[k].s {
		case "chore day", "chore days", "change", "switch", "move", "set", "from now on", "instead", "make", "make it", "every", "chores are", "new chore day", "i do chores", "weekly round", "change to":
			return true
		}
		if it := &r.items[k]; it.kind == itDay && it.day.every {
			return true
		}
	}
	return false
}

// noneOfIt says that a span which no question mark ends begins with a "no", so
// that it tells what there is none of.
func (r *reader) noneOfIt(s span) bool {
	k := r.sentenceStart(s.i)
	for k < s.j && r.items[k].isAny(setOf(sFiller)) && r.items[k].s != "no" {
		k++
	}
	return k < s.j && r.items[k].s == "no" && !r.items[k].quest && k+1 < s.j && r.items[k+1].gap == gapNone && r.items[k+1].kind == itWord && !r.items[k+1].isAny(setOf(sAskSure, sAsk, sNo))
}

func isSetting(e Entry) bool {
	f, ok := e.Act.(Fact)
	if !ok {
		return false
	}
	_, is := f.Fact.(model.Setting)
	return is
}
