package reading

import (
	"slices"

	"troughbell/model"
)

// wasted says that what the sentence of a span tells of feed went out of a feeder
// or to waste, so that no amount in it was poured.
func (r *reader) wasted(s span) bool {
	k := r.find(span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}, sWaste)
	if k < 0 || k > 0 && r.spoiltWho(k) {
		return false
	}
	for n := s.i; n < s.j; n++ { // "cleaned the moldy feed out and put 150 in"
		if it := &r.items[n]; it.is(sFill) || it.is(sPour) && n > k {
			return false
		}
	}
	return true
}

// spoiltWho says that the word of waste at item k is told of somebody and not of feed:
// "they're spoilt", "that's me soaked through".
func (r *reader) spoiltWho(k int) bool {
	it, who := &r.items[k], &r.items[k-1]
	switch it.s {
	case "spoilt", "spoiled":
		return it.gap == gapNone && (who.is(sPronoun) || who.is(sIs))
	case "soaked through":
		return persons[firstWord(who.s)]
	}
	return false
}

// noteSpan keeps the sentence of a span as a note, in the person's words, unless another
// span of it has done so.
func (r *reader) noteSpan(s span) {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	r.useAll(span{s.frame, from, to})
	note := Fact{model.Note{What: r.quote(from, to)}}
	if !slices.ContainsFunc(r.out, func(e Entry) bool { return e.Act == Act(note) }) {
		r.emit(note, s)
	}
}

// leftForDays says that the clause of item k tells for how many days the feed
// left will do: "feed left 3 days".
func (r *reader) leftForDays(k int) bool {
	s := span{fFeed, r.clauseFrom(k), r.clauseEnd(k)}
	if r.firstQty(s, days) < 0 || !r.has(s, sFeed) && !r.has(s, sFeeder) && r.items[k].s != "feed left" {
		return false
	}
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.quest || it.isAny(setOf(sAskSure, sAsk, sWhatIf, sWater, sBarrel, sIf, sPlan)) && !it.is(sFiller) && !it.is(sFeed) || it.kind == itNum && !it.soft {
			return false
		}
	}
	return true
}
