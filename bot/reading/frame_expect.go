package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// What is said of pigs that are to come.
var (
	// expectWords have it kept: "expect 4 pigs may 2".
	expectWords = phrasesOf("expect, expecting, we expect, i expect, we're expecting, we are expecting, i'm expecting")
	// expectNone takes it back.
	expectNone = phrasesOf("expect no pigs, no pigs coming, no pigs are coming, no pigs this year, no more pigs coming, not expecting pigs, expecting no pigs")
	// comeWords tell of it, as news or a plan.
	comeWords = phrasesOf("come, comes, coming, will come, arrive, arrives, arriving, will arrive, due, due to arrive, due to come, ordered, have ordered, reserved, pick up, picking up, will pick up, get, getting, we get, will get, collect, collecting, fetch, fetching, bring home, bringing home, delivered, be delivered, delivery")
	// comers are the pigs.
	comers = phrasesOf("pigs, pig, piglets, piglet, weaners, weaner, feeder pigs, feeder pig, shoats, shoat, little pigs, baby pigs, new pigs, young pigs, babies")
	// expectBeside are the other words that may stand in such a sentence.
	expectBeside = split("we, i, we're, we'll, i'll, i'm, are, is, were, be, to, will, the, a, an, of, our, my, new, some, little, more, next, this, on, for, from, by, in, them, they, gonna, going, have, has, it, is, home, another, again, about, around, and, so, please, now, supposed, should, breeder, farmer, guy, fair, auction")
)

// expectStart says that a word can tell of pigs to come.
func (r *reader) expectStart(k int) bool {
	return r.items[k].kind == itWord && itemSays(&r.items[k], comers)
}

// expectSpan is the clause around item k that tells of pigs to come and of nothing
// else.
func (r *reader) expectSpan(k int) (span, bool) {
	s := r.pieces(k)[0]
	said := r.said(s)
	if saysAny(said, expectNone) && s.j-s.i <= 6 {
		return s, true
	}
	if !saysAny(said, comers) || !saysAny(said, expectWords) && !saysAny(said, comeWords) {
		return span{}, false
	}
	if _, ok := r.dayToCome(s); !ok {
		return span{}, false
	}
	counts := 0
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		switch {
		case it.quest || it.pig >= 0 && !it.near || it.group >= 0 && !it.is(sPigs):
			return span{}, false
		case it.kind == itDay || it.kind == itClock:
		case it.kind == itNum && !it.ord && it.v >= 1 && it.v <= mostPigs && it.v == float64(int(it.v)):
			counts++
		case itemSays(it, comers), itemSays(it, comeWords), itemSays(it, expectWords):
		case it.kind == itWord && onlyOf(it.s, expectBeside):
		default:
			return span{}, false
		}
	}
	return s, counts <= 1
}

// dayToCome is the day of a span if it names one, and that lies ahead.
func (r *reader) dayToCome(s span) (model.Day, bool) {
	found := -1
	for n := s.i; n < s.j; n++ {
		if r.items[n].kind == itDay {
			if found >= 0 {
				return 0, false
			}
			found = n
		}
	}
	if found < 0 || r.items[found].day.coarse {
		return 0, false
	}
	d, ok := r.items[found].day.on(r.today, lookForward, r.dayFirst)
	return d, ok && d > r.today
}

// fillExpect keeps what was asked to be expected; of what was only told nothing is
// recorded, and the expectation offered.
func (r *reader) fillExpect(s span) {
	said := r.said(s)
	r.useAll(s)
	if saysAny(said, expectNone) {
		r.emitOn(Fact{model.Expected{Cancelled: true}}, s, r.today, nil, false)
		return
	}
	e := model.Expected{}
	e.Day, _ = r.dayToCome(s)
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.kind == itNum && !it.ord {
			e.Count = int(it.v)
		}
	}
	if saysAny(said, expectWords) {
		r.emitOn(Fact{e}, s, r.today, nil, false)
		return
	}
	r.emit(None{Reason: NoneFuture, Coming: &e}, s)
}

func itemSays(it *item, p phrases) bool { return saysAny(" "+it.s+" ", p) }

// onlyOf says that all the words of an item are among those given.
func onlyOf(said string, words []string) bool {
	for _, w := range strings.Fields(said) {
		if !slices.Contains(words, w) {
			return false
		}
	}
	return true
}
