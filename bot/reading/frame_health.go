package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// downTo is where the words end by which the pig of a span, which is unwell, does not get
// up; 0 where it is not said.
func (r *reader) downTo(s span) int {
	k := r.find(span{s.frame, s.i, r.sentenceEnd(s.j - 1)}, sDown)
	if k < 0 || r.items[k].used || !staysDown(r.items[k].s) || r.has(s, sWell) {
		return 0
	}
	for n := s.j; n < k; n++ {
		if r.items[n].pig >= 0 {
			return 0 // another one
		}
	}
	return max(s.j, k+1)
}

// staysDown says that words for a pig that is down say that it does not get up.
func staysDown(s string) bool {
	return strings.HasSuffix(s, "get up") || strings.HasSuffix(s, "stand") || strings.HasSuffix(s, "rise") || strings.HasSuffix(s, "getting up")
}

// fillSick reads a pig seen unwell, or well again.
func (r *reader) fillSick(s span) {
	if k := r.nextAiling(s); k > 0 { // "otis limping and hazel coughing"
		r.fillSick(span{s.frame, s.i, k})
		r.fillSick(span{s.frame, k, s.j})
		return
	}
	if end := r.downTo(s); end > 0 { // "laying there and won't get up"
		r.fillAlarm(span{fAlarm, s.i, end})
		return
	}
	well := false
	first, last := -1, -1
	ill := false
	for k := s.i; k < s.j; k++ {
		ill = ill || r.items[k].is(sSick) && !r.items[k].is(sWell)
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if ill && it.is(sWell) && !it.is(sSick) && (strings.HasPrefix(it.s, "eating ") || strings.HasPrefix(it.s, "ate ")) {
			it.used = true // "coughing a bit, eating fine" is no recovery
			continue
		}
		if ill && first >= 0 && it.is(sWell) && !it.is(sSick) && r.othersWell(k) {
			it.used = true
			continue
		}
		if it.is(sSick) || it.is(sWell) {
			well = well || it.is(sWell) && !it.is(sSick)
			if first < 0 {
				first = k
			}
			last = k
			it.used = true
		}
	}
	if first < 0 {
		r.idleSpan(s) // names alone say nothing of how they are
		return
	}
	if open := r.openAlarm(model.AlarmDown); well && open != nil && r.getsUp(s) {
		r.useAll(s)
		r.emit(Fact{model.Alarm{What: model.AlarmDown, Over: true, Animals: open.Animals}}, s)
		return
	}
	s.i = r.ailsFrom(s, first)
	sel := r.selectPigs(s.i, r.fineFrom(s, last, well))
	if first > s.i && sel.any {
		if own := r.selectPigs(s.i, first); len(own.pigs) > 0 && !own.all && r.find(span{s.frame, first, s.j}, sRest) >= 0 {
			sel = own // "brick's eating again, the rest are fine too"
		}
	}
	if named := r.lastNamed(s.i); !sel.any && named >= 0 && s.i > 0 && r.items[s.i-1].pig == named {
		sel = selection{pigs: []int16{named}, any: true} // the name stands right before
	}
	if !sel.any && r.excluded > 0 && len(r.subject) > 1 && r.ofOnePig(span{s.frame, r.clauseFrom(s.i), s.j}) { // "all but otis to pear, his foot is sore"
		sel = selection{pigs: []int16{r.excluded - 1}, any: true}
	}
	if !sel.any && len(r.subject) > 0 {
		sel = selection{pigs: append([]int16(nil), r.subject...), any: true}
	}
	if !sel.any && r.alive == 1 {
		sel = selection{pigs: []int16{0}, any: true}
	}
	if p := r.onlyAiling(); well && !sel.any && p >= 0 && r.anyNamed() { // "he's better"
		sel = selection{pigs: []int16{p}, any: true}
	}
	if well && !sel.any && strings.HasSuffix(r.items[first].s, " now") {
		r.idleSpan(s) // "ok now, 3 pigs 60 lb"
		return
	}
	if well && strings.HasPrefix(r.items[first].s, "eating ") && r.saidSick(sel) { // "has a limp. still eating fine though"
		r.useAll(s)
		return
	}
	if well && !r.ailing(sel) && !r.endsSymptom(s) && !r.quoteHas(s, "fine again", "ok again", "okay again") {
		r.useAll(s) // nothing was said to ail them
		return
	}
	note := r.sickNote(s, first, last)
	if r.toldGone(s) {
		note = "" // "no sign of lameness" names what it is no more
	}
	act := r.sickOf(s, first, note, well)
	if !well && r.anyNamed() && r.alive > 1 && (sel.all && r.quoteHas(s, "one", "a pig") && !r.quoteHas(s, "every one") && !r.has(s, sAll) || r.oneOfGroup(span{s.frame, r.clauseFrom(s.i), s.j}) && !r.has(span{s.frame, r.clauseFrom(s.i), s.j}, sEach)) {
		r.whichPig("sick", s, r.draft(act(nil), s), act) // "one of the pigs is limping"
		return
	}
	if r.oneOf(s) && r.anyNamed() && len(sel.pigs) > 1 && !sel.all { // "one of the little ones is limping"
		var named []int16
		for k := s.i; k < s.j; k++ {
			if it := &r.items[k]; it.pig >= 0 && !it.near {
				named = append(named, it.pig)
			}
		}
		if len(named) != 1 {
			r.whichPig("sick", s, r.draft(act(nil), s), act)
			return
		}
		sel = selection{pigs: named, any: true}
	}
	if !sel.any || sel.lost {
		if !r.anyNamed() {
			r.emit(act([]string{model.All}), s)
			return
		}
		if !r.strongSick(s) && !r.tellsOfOne(first) {
			r.idleSpan(s)
			return
		}
		r.whichPig("sick", s, r.draft(act(nil), s), act)
		return
	}
	r.remember(sel)
	r.emit(act(sel.names(r)), s)
}

// ailsFrom is where the clause begins that tells whom the sign at item first is of, where
// what stands before it tells something else: "fern and juno fighting, fern's ear is torn".
func (r *reader) ailsFrom(s span, first int) int {
	from := r.clauseFrom(first)
	if from <= s.i || !r.eachNamed(from, first) {
		return s.i
	}
	for k := s.i; k < from; k++ {
		if it := &r.items[k]; it.kind == itWord && it.pig < 0 && !it.used && (it.sense.empty() || fineWords[it.s]) {
			return from
		}
	}
	return s.i
}

// fineWords say that nothing ails who is named before them.
var fineWords = setOfWords(split("fine, good, ok, okay, great, alright, well, happy, all good, all fine"))

// ofOnePig says that a span speaks of one pig by a pronoun.
func (r *reader) ofOnePig(s span) bool {
	for k := s.i; k < s.j; k++ {
		if onePronouns[r.items[k].s] {
			return true
		}
	}
	return false
}

var onePronouns = setOfWords(split("he, she, his, her, him, he's, she's, hes, shes, he is, she is, he was, she was"))

// onlyAiling is the one pig that was told to be unwell lately and not yet to be
// well, -1 if there is none or there are several.
func (r *reader) onlyAiling() int16 {
	found := int16(-1)
	for p := range r.alive {
		for k := len(r.c.Herd.Sicks) - 1; k >= 0; k-- {
			s := &r.c.Herd.Sicks[k]
			if !slices.Contains(s.F.Animals, r.pigs[p].Name) {
				continue
			}
			if !s.F.Well && r.today-s.On <= ailsFor/4 {
				if found >= 0 {
					return -1
				}
				found = int16(p)
			}
			break
		}
	}
	return found
}

// saidSick says that this text tells one of the pigs to be unwell.
func (r *reader) saidSick(sel selection) bool {
	for k := range r.out {
		f, ok := r.out[k].Act.(Fact)
		if !ok {
			continue
		}
		if s, is := f.Fact.(model.Sick); is && !s.Well {
			for _, p := range sel.pigs {
				if slices.Contains(s.Animals, r.pigs[p].Name) {
					return true
				}
			}
		}
	}
	return false
}

// fineFrom is where a span goes on to pigs that are told to be well: "fern is
// limping, brick and juno fine"; the end of the span where it does not.
func (r *reader) fineFrom(s span, last int, well bool) int {
	if well {
		return s.j
	}
	for k := last + 1; k < s.j; k++ {
		if r.items[k].gap < gapAnd {
			continue
		}
		named := false
		for n := k; n < s.j && n < k+7; n++ {
			it := &r.items[n]
			named = named || it.pig >= 0 || it.isAny(whoWords)
			switch it.s {
			case "fine", "ok", "okay", "good", "great", "healthy", "normal", "are fine", "is fine", "look fine", "looks fine", "all right", "alright":
				if named {
					return k
				}
			}
		}
	}
	return s.j
}

// ailing says that one of the pigs was told to be unwell, or was treated, lately
// and has not been told to be well since, or that this text tells so.
func (r *reader) ailing(sel selection) bool {
	of := func(names []string) bool {
		if !sel.any || sel.all || len(sel.pigs) == 0 || len(names) == 0 || names[0] == model.All {
			return true
		}
		for _, p := range sel.pigs {
			if slices.Contains(names, r.pigs[p].Name) {
				return true
			}
		}
		return false
	}
	h := r.c.Herd
	for k := len(h.Sicks) - 1; k >= 0; k-- {
		if s := &h.Sicks[k]; r.today-s.On <= ailsFor && of(s.F.Animals) {
			return !s.F.Well
		}
	}
	for k := len(h.Alarms) - 1; k >= 0; k-- {
		if a := &h.Alarms[k]; a.F.What == model.AlarmDown && r.today-a.On <= ailsFor && of(a.F.Animals) {
			return true
		}
	}
	for k := range r.out {
		if f, ok := r.out[k].Act.(Fact); ok {
			if s, is := f.Fact.(model.Sick); is && of(s.Animals) {
				return true
			}
		}
	}
	return false
}

// endsSymptom says that the span names what ailed the animal and ended, "stopped
// limping", so that it did ail.
func (r *reader) endsSymptom(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sWell) && (strings.Contains(it.s, "limp") || strings.Contains(it.s, "cough")) {
			return true
		}
	}
	return false
}

// ailsFor is for how many days words of a recovery may still speak of an illness.
const ailsFor = 60

// oneOf says that but one of several is spoken of.
func (r *reader) oneOf(s span) bool {
	for k := max(s.i-3, r.sentenceStart(s.i)); k+1 < s.j; k++ {
		if it := &r.items[k]; (it.soft || it.kind == itNum && it.v == 1 || it.s == "one") && r.items[k+1].is(sOf) && r.items[k+1].gap == gapNone || it.s == "one of" || it.s == "one of the" {
			return true
		}
	}
	return false
}

// getsUp says that a pig is told to be on its legs again.
func (r *reader) getsUp(s span) bool {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "up again", "back up", "up and eating", "up and drinking", "up eating", "up and moving", "standing now", "standing and eating", "up and about", "on her feet", "on his feet", "on its feet", "standing again", "up and walking", "back on her feet", "back on his feet", "better", "fine again", "ok again", "okay again", "recovered", "walking again":
			return true
		}
	}
	return false
}

// strongSick says that a word of the span is a sign of illness and little else,
// so that asking which pig is worth it.
func (r *reader) strongSick(s span) bool {
	return r.quoteHas(s, "limping", "lame", "cough", "coughing", "scours", "scouring", "diarrhea", "off feed", "limp", "panting", "fever", "sick", "not eating", "the runs")
}

// sickNote is the person's own words on what was seen, without the names.
func (r *reader) sickNote(s span, first, last int) string {
	if first < 0 {
		return ""
	}
	from, to := first, last+1
	for to < s.j && r.items[to].gap < gapStop && r.items[to].pig < 0 && r.items[to].kind != itDay && r.items[to].kind != itClock {
		to++
	}
	for from > s.i && r.items[from].gap < gapComma {
		p := &r.items[from-1]
		if p.pig >= 0 || p.group >= 0 || p.isAny(whoWords) || p.is(sPronoun) || p.kind == itDay || p.kind == itClock || p.s == "is" || p.s == "has" || p.s == "was" || p.s == "a" || p.s == "are" || p.s == "got" || p.s == "have" {
			break
		}
		from--
	}
	for k := from; k < to; k++ {
		r.items[k].used = true
	}
	note := strings.Trim(r.quote(from, to), " ,;.-")
	for _, lead := range []string{" since", " from", " on", " for", " in", " of", " a"} { // what led up to the day
		note = strings.TrimSuffix(note, lead)
	}
	return note
}

// firstAny finds the first bare number, used or not; -1 if none.
func (r *reader) firstAny(s span) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itNum {
			return k
		}
	}
	return -1
}

// ownIll says that the person tells of being unwell: "i have a cough".
func (r *reader) ownIll(k int) bool {
	from := r.clauseFrom(k)
	for n := from; n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) {
			return false
		}
	}
	for n := k - 1; n >= from && n >= k-4; n-- {
		switch r.items[n].s {
		case "i'm", "im", "i am", "i", "i've", "ive", "i have", "i got", "i feel", "we're", "my", "my own", "i had":
			return true
		}
		if !r.items[n].isAny(setOf(sFiller, sIs, sGave, sArrive)) {
			return false
		}
	}
	return false
}
