package reading

import (
	"cmp"
	"reflect"
	"slices"

	"troughbell/model"
)

// A text that is not understood whole may have a word in it that was not meant: "the
// tank is fool", "hence is 4.8", "moved the pics back to Greek". It is read again with
// one suspicious word, or two, put in the place of which the slip would have come, and
// what is then understood is weighed against how unlikely the slip is.

const (
	mostReadings  = 9   // of one text, after the first
	longestReread = 360 // bytes of a text that is read again
	mostSuspects  = 5
	mostMeant     = 3 // words tried for one suspect
)

// putWord is a word read in the place of the one that begins at a byte of the text.
type putWord struct {
	from int
	s    string
}

// attempt is a reading of the text with some of its words replaced.
type attempt struct {
	put  []putWord
	got  Reading
	loss float64
	slip float64 // what the slips take
	// residue is what stays without a meaning around the replaced words.
	residue int
}

// gain is what an attempt brings over another, the slips paid for.
func (a attempt) gain(over attempt) float64 {
	return over.loss + slipWeight*over.slip - a.loss - slipWeight*a.slip
}

// slipWeight is how much of a loss the cost of a slip counts as.
const slipWeight = 0.6

// closeCall is by how much one attempt must lead the next that reads otherwise.
const closeCall = 0.3

// readAgain gives the reading of the text that its words may have been meant for,
// where the first one, got, leaves something that a slip explains.
func (r *reader) readAgain(got Reading) Reading {
	if !r.mayReread(got) {
		return got
	}
	suspects := r.suspects(got)
	if len(suspects) == 0 {
		return got
	}
	first := attempt{got: got, loss: r.loss(got)}
	best, left := first, mostReadings
	var tie *attempt
	for _, s := range suspects {
		if s.kind != unheardOf && len(best.put) > 0 && best.residue == 0 {
			continue
		}
		chosen, second := r.bestFor(s, best, &left)
		if chosen == nil {
			continue
		}
		best, tie = *chosen, cmp.Or(second, tie)
	}
	if len(best.put) == 0 {
		best = r.pairOf(suspects, first, &left)
	}
	if len(best.put) == 0 {
		return got
	}
	return r.settledSlip(first, best, tie)
}

// bestFor is the attempt that reads best with one of the words that a suspect may
// have been meant for, nil where none is worth it, and the one that runs it close.
func (r *reader) bestFor(s suspect, base attempt, left *int) (best, second *attempt) {
	var tried []attempt
	for _, w := range s.meant {
		if *left == 0 {
			break
		}
		*left--
		a, ok := r.attempt(append(slices.Clone(base.put), putWord{s.from, w.s}), base.slip+w.cost)
		if ok && a.gain(base) > s.kind.least() && a.residue <= s.kind.mostResidue(w.cost, r.tellsAt(s, base)) && r.keeps(base, a, s) {
			tried = append(tried, a)
		}
	}
	if len(tried) == 0 {
		return nil, nil
	}
	slices.SortStableFunc(tried, func(a, b attempt) int { return cmp.Compare(b.gain(base), a.gain(base)) })
	for k := 1; k < len(tried); k++ {
		if tried[0].gain(base)-tried[k].gain(base) < closeCall && !sameEntries(tried[0].got.Entries, tried[k].got.Entries) {
			second = &tried[k]
			break
		}
	}
	return &tried[0], second
}

// pairOf tries the likeliest words of two suspects together, where neither alone made
// sense of the text.
func (r *reader) pairOf(suspects []suspect, first attempt, left *int) attempt {
	for i := range suspects {
		for k := i + 1; k < len(suspects) && *left > 0; k++ {
			a, b := suspects[i], suspects[k]
			*left--
			both, ok := r.attempt([]putWord{{a.from, a.meant[0].s}, {b.from, b.meant[0].s}}, a.meant[0].cost+b.meant[0].cost)
			if ok && both.gain(first) > max(a.kind.least(), b.kind.least()) && both.residue <= a.kind.mostResidue(both.slip, r.tellsAt(a, first)) && r.keeps(first, both, a) {
				return both
			}
		}
	}
	return first
}

// attempt reads the text with words replaced. A reading that is refused for the way
// something is told, as a plan or hearsay, is none.
func (r *reader) attempt(put []putWord, slip float64) (attempt, bool) {
	again := newReader(r.c, r.text)
	defer again.done()
	again.put = put
	got := again.run()
	if got.Answers {
		return attempt{}, false
	}
	for _, e := range got.Entries {
		switch a := e.Act.(type) {
		case None:
			return attempt{}, false
		case Do:
			return attempt{}, false
		case Snooze:
			if a.Stop {
				return attempt{}, false
			}
		}
	}
	return attempt{put, got, again.loss(got), slip, again.residue(got)}, true
}

// tellsAt says that something was made of the sentence of a suspect.
func (r *reader) tellsAt(s suspect, a attempt) bool {
	for k := range r.items {
		if r.items[k].to > s.from {
			i, j := r.sentenceStart(k), r.sentenceEnd(k)
			return tells(a.got, r.items[i].from, r.items[j-1].to)
		}
	}
	return false
}

// keeps says that what the first reading tells stands in the new one as well, and that
// what is new there is earned. A setting may be lost that was read from the suspect.
func (r *reader) keeps(first, next attempt, s suspect) bool {
	kept := make([]bool, len(next.got.Entries))
	told := r.tellsAt(s, first)
	for _, e := range first.got.Entries {
		switch e.Act.(type) {
		case None, Clarify:
			continue
		}
		if (dear(e.Act.Intent()) || e.Act.Intent() == "alarm") && !among(next.got.Entries, e) {
			return false
		}
		if e.Act.Intent() == "settings" && e.From <= s.from && s.from < e.To {
			told = false
			continue
		}
		at := -1
		for k, n := range next.got.Entries {
			if !kept[k] && extends(e, n, len(next.got.Entries) > len(first.got.Entries)) {
				at = k
				break
			}
		}
		if at < 0 {
			return false
		}
		kept[at] = true
	}
	for k, n := range next.got.Entries {
		if kept[k] {
			continue
		}
		if hasTwice(next.got.Entries, n) {
			return false
		}
		if told && !r.newGround(n, first) && !(s.kind == unheardOf && (next.slip-first.slip < surelySlip || next.residue == 0 && next.gain(first) > 1)) {
			return false
		}
		switch n.Act.Intent() {
		case "settings", "away", "note", "undo", "snooze", "remind", "done", "booked", "weather":
			if (s.kind != unheardOf || s.english) && !hasIntent(first.got.Entries, n.Act.Intent()) {
				return false
			}
		}
	}
	return true
}

// surelySlip is what a slip takes that leaves no doubt about the word.
const surelySlip = 0.75

// newGround says that an entry was read from a number, a name or a thing that the first
// reading told nothing of.
func (r *reader) newGround(e Entry, first attempt) bool {
	for k := range r.items {
		it := &r.items[k]
		if it.from < e.From || it.to > e.To || !it.hard() {
			continue
		}
		covered := false
		for _, f := range first.got.Entries {
			switch f.Act.(type) {
			case None, Clarify:
			default:
				covered = covered || f.From <= it.from && it.to <= f.To
			}
		}
		if !covered || r.lostHard(it) {
			return true
		}
	}
	return false
}

// extends says that entry b tells what a does, or that and more. less says that b may
// tell less of it, where other entries tell more.
func extends(a, b Entry, less bool) bool {
	f, ok := a.Act.(Fact)
	g, also := b.Act.(Fact)
	if !ok || !also {
		p, asks := a.Act.(Ask)
		q, too := b.Act.(Ask)
		return a.Act.Intent() == b.Act.Intent() && (!asks || !too || p.Topic == q.Topic)
	}
	if reflect.TypeOf(f.Fact) != reflect.TypeOf(g.Fact) || a.On != b.On || a.Minute != nil && (b.Minute == nil || *a.Minute != *b.Minute) {
		return false
	}
	x, y := reflect.Indirect(reflect.ValueOf(f.Fact)), reflect.Indirect(reflect.ValueOf(g.Fact))
	for i := range x.NumField() {
		p, q := x.Field(i), y.Field(i)
		switch {
		case p.IsZero(), less && q.IsZero():
		case p.Kind() == reflect.Slice && p.Len() <= q.Len():
		case p.Kind() == reflect.Map && p.Len() == q.Len(): // a recipe of as many things
		case p.Kind() == reflect.String: // words quoted
		case !reflect.DeepEqual(p.Interface(), q.Interface()):
			return false
		}
	}
	return true
}

// hasTwice says that an entry stands twice among others.
func hasTwice(es []Entry, e Entry) bool {
	n := 0
	for _, o := range es {
		if sameEntries([]Entry{o}, []Entry{e}) {
			n++
		}
	}
	return n > 1
}

func hasIntent(es []Entry, intent string) bool {
	return slices.ContainsFunc(es, func(e Entry) bool { return e.Act.Intent() == intent })
}

// settledSlip is the reading that an attempt comes to. Where another reads as well,
// and where it is of a drug, a death or a sale, it asks, the likeliest first.
func (r *reader) settledSlip(first, best attempt, tie *attempt) Reading {
	got := best.got
	for k, e := range got.Entries {
		if f, ok := e.Act.(Fact); ok && dear(f.Intent()) && !among(first.got.Entries, e) {
			got.Entries[k].Act = doubtful([]Entry{e})
		} else if ok && r.restsOnSlip(f, e, best.put) && !among(first.got.Entries, e) {
			got.Entries[k].Act = doubtful([]Entry{e})
		}
	}
	if tie == nil || len(tie.got.Entries) != len(got.Entries) {
		return got
	}
	for k, e := range got.Entries {
		other := tie.got.Entries[k]
		if sameEntries([]Entry{e}, []Entry{other}) {
			continue
		}
		f, ok := e.Act.(Fact)
		o, also := other.Act.(Fact)
		if ok && also && f.Intent() == o.Intent() {
			c := doubtful([]Entry{e})
			c.Choices = slices.Insert(c.Choices, 1, Choice{Entries: []Entry{other}})
			got.Entries[k].Act = c
		}
	}
	return got
}

// restsOnSlip says that nothing but a word put in the place of another, and bare
// numbers, tell goods or money: "sry 187" names no soy.
func (r *reader) restsOnSlip(f Fact, e Entry, put []putWord) bool {
	switch f.Fact.(type) {
	case model.Stock, model.Spend, model.Refill, model.Gone:
	default:
		return false
	}
	rests := false
	for _, p := range put {
		rests = rests || e.From <= p.from && p.from < e.To
	}
	if !rests {
		return false
	}
	for k := range r.items {
		it := &r.items[k]
		if it.to <= e.From || it.from >= e.To || slices.ContainsFunc(put, func(p putWord) bool { return it.from <= p.from && p.from < it.to }) {
			continue
		}
		if it.kind == itQty || it.kind == itName || it.kind == itThing || it.kind == itFrac || it.unit != 0 || it.isAny(tradeSenses) || it.isAny(setOf(sBuy, sPay, sSold, sDied, sPour, sTook, sGave)) && !it.isAny(setOf(sFiller)) {
			return false
		}
	}
	return true
}

// among says that an entry stands among others, wherever it was read from.
func among(es []Entry, e Entry) bool {
	return slices.ContainsFunc(es, func(o Entry) bool { return sameEntries([]Entry{o}, []Entry{e}) })
}

// sameEntries says that two readings record the same, wherever it was read from.
func sameEntries(a, b []Entry) bool {
	if len(a) != len(b) {
		return false
	}
	for k := range a {
		x, y := a[k], b[k]
		x.From, x.To, y.From, y.To = 0, 0, 0, 0
		if !reflect.DeepEqual(x, y) {
			return false
		}
	}
	return true
}
