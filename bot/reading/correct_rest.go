package reading

import "troughbell/model"

// correctedAndTold reads a text whose first sentence may put an earlier record right.
// What is told behind that sentence, where the correction needs none of it, is told all
// the same: "it was 505. mixed 2 batches".
func (r *reader) correctedAndTold() (Reading, bool) {
	n := r.sentenceEnd(0)
	if k := r.otherPigTold(); k > 0 {
		n = k
	}
	var first, rest string
	behind := 0
	if n < len(r.items) && !r.part {
		behind = r.items[n].from
		first, rest = r.text[:behind], r.text[behind:]
	}
	turns := n <= longestTurn && turnWords[firstWord(r.items[0].s)]
	got, ok := r.correction()
	if rest == "" || !ok && !turns {
		return got, ok
	}
	head := r.readAs(first, false)
	switch {
	case ok && !sameEntries(got.Entries, head.Entries) && !(r.otherPigTold() == n && len(head.Entries) == 1 && head.Entries[0].Replace != ""):
		return got, true // it needs what stands behind
	case !ok && (len(head.Entries) != 1 || head.Entries[0].Replace == ""):
		return got, false
	}
	got = head
	if r.daysOfCorrected(&got.Entries[0], n) {
		return got, true
	}
	told := r.readAs(rest, true)
	for _, e := range told.Entries {
		if _, fact := e.Act.(Fact); !fact {
			return got, true // talk about the correction, a question of its own
		}
	}
	for _, e := range told.Entries {
		e.From, e.To = e.From+behind, e.To+behind
		got.Entries = append(got.Entries, e)
	}
	return got, true
}

// daysOfCorrected gives a drug put right the days of withdrawal that the items from n on tell
// and nothing else: "not ivermectin, levamisole. 7 days before can butcher".
func (r *reader) daysOfCorrected(e *Entry, n int) bool {
	if _, ok := drugOf(*e); !ok {
		return false
	}
	at := -1
	for k := n; k < len(r.items); k++ {
		it := &r.items[k]
		switch {
		case it.qty(days) && at < 0 && r.aboutWaiting(k):
			at = k
		case it.number() && !it.soft, it.pig >= 0, it.is(sProduct):
			return false
		}
	}
	if at < 0 {
		return false
	}
	*e = waitingFor(*e, int(r.items[at].si()+0.5))
	return true
}

// waitingFor is a drug's entry with its days of withdrawal.
func waitingFor(e Entry, d int) Entry {
	switch t := e.Act.(Fact).Fact.(type) {
	case model.Worm:
		t.WithdrawalDays = &d
		e.Act = Fact{t}
	case model.Treat:
		t.WithdrawalDays = &d
		e.Act = Fact{t}
	}
	return e
}

// otherPigTold is the item of a pig with a weight of its own behind the first clause, which
// names but another one: "no thats noodle, waffles is 85". 0 if there is none.
func (r *reader) otherPigTold() int {
	pig := false
	for k := 0; k+1 < len(r.items) && k <= longestTurn; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && pig && it.gap >= gapComma:
			for x := k + 1; x < len(r.items) && x < k+4; x++ {
				if r.items[x].number() && !r.items[x].soft {
					return k
				}
			}
			return 0
		case it.pig >= 0 && pig, it.number() && !it.soft, it.s == "not":
			return 0
		case it.pig >= 0:
			pig = true
		}
	}
	return 0
}

// longestTurn is how many items a sentence has at most that puts a record right before
// others tell something new.
const longestTurn = 6

// turnWords open such a sentence.
var turnWords = setOfWords(split("no, not, it, its, it's, that, that's, thats, sorry, oops, correction, wrong, actually, i, scratch, wait, oh"))

// readAs reads a part of the text by itself: as one of its own, or as what goes on from
// the messages before.
func (r *reader) readAs(text string, own bool) Reading {
	c := r.c
	if own {
		c.Pending, c.ReplyTo, c.Before = nil, nil, nil
	}
	p := newReader(c, text)
	defer p.done()
	p.part = true
	return p.run()
}
