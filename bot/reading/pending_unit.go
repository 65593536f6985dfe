package reading

import "strings"

// unitAnswers are the kinds of record whose question may be answered by but a unit.
var unitAnswers = map[string]bool{"weigh": true, "refill": true, "feed_level": true, "water": true, "wallow": true, "stock": true}

// unitAnswer reads an answer that gives the one number of the text asked about its unit:
// "its kg" behind "otis 80", "thats cm, and 128 long" behind "418 girth 117".
func (r *reader) unitAnswer(p *Pending) (Reading, bool) {
	if !unitAnswers[p.Clarify.About] || len(r.items) > 10 {
		return Reading{}, false
	}
	long := r.lengthAt()
	unit, ok := unitID(0), true
	for k := range r.items {
		it := &r.items[k]
		switch s := it.s; {
		case it.quest || it.pig >= 0 || it.kind == itThing:
			return Reading{}, false
		case k == long, long >= 0 && it.is(sLength):
		case it.is(sNot) && unit != 0: // "kg not lb"
			ok = k+2 == len(r.items)
		case it.kind == itWord && it.unit != 0 && len(s) > 1 && s != "in" && !it.is(sFiller) && it.unit.dim() != money:
			if unit == 0 {
				unit = it.unit
			}
		case amendWords[s] || amendSmall[s] || it.is(sNo) || it.soft, it.kind == itWord && it.isAny(setOf(sFiller, sPronoun, sIs, sYes, sAnd)) && !it.is(sNot):
		default:
			return Reading{}, false
		}
	}
	if unit == 0 || !ok {
		return Reading{}, false
	}
	text, ok := r.withUnit(p.Text, unit)
	if !ok { // of several numbers: no wish to change the herd's units either
		return r.just(None{Reason: NoneUnknown}), true
	}
	c := r.c
	c.Now, c.Pending, c.ReplyTo = p.AskedAt.In(r.c.Now.Location()), nil, nil
	again := newReader(c, text)
	again.part = true
	got := again.run()
	again.done()
	if len(got.Entries) != 1 || got.Entries[0].Act.Intent() != p.Clarify.About {
		return Reading{}, false
	}
	e := got.Entries[0]
	if long >= 0 && !r.addLength(&e, long, unit) {
		return Reading{}, false
	}
	e.From, e.To = 0, len(r.text)
	return Reading{Entries: []Entry{e}, Answers: true}, true
}

// withUnit is the text with the unit behind its only number that is no pig's tag, in the
// place of another where it has one.
func (r *reader) withUnit(text string, unit unitID) (string, bool) {
	toks := scan(nil, strings.ToLower(text), r.dayFirst)
	at := -1
	for k := range toks {
		if toks[k].kind != tokNum || r.calledBy(toks[k].s) {
			continue
		}
		if at >= 0 {
			return "", false
		}
		at = k
	}
	if at < 0 {
		return "", false
	}
	from, to := toks[at].to, toks[at].to
	if at+1 < len(toks) && toks[at+1].kind == tokWord && toks[at+1].s != "in" {
		if m := r.lex.of[toks[at+1].s]; m != nil && m.unit != 0 {
			to = toks[at+1].to
		}
	}
	return text[:from] + " " + unit.name() + text[to:], true
}

// calledBy says that a pig is called by the number.
func (r *reader) calledBy(s string) bool {
	for k := range r.names {
		if h := &r.names[k]; h.tag && h.words[0] == s {
			return true
		}
	}
	return false
}
