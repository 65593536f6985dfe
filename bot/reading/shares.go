package reading

import (
	"slices"
	"strings"
)

// Where what was mixed or bought went: "2 of those went straight to the feeder, third
// is in the bin", "all of it into the red one", "half in red and half in gray".

// sharedOut is what is shared out: so many batches or bags.
type sharedOut struct {
	count float64
	unit  unitID
}

// share is a stretch items[i:j] that tells where a part of a whole went.
type share struct {
	at, i, j int // at is the item that tells the amount
	count    float64
	unit     unitID
	feeder   bool
}

// mostShares is how many sentences behind the making may tell where things went.
const mostShares = 8

// sharesFrom are the shares of a whole told from item i on; none where what is told
// there is not understood as such.
func (r *reader) sharesFrom(i int, of sharedOut) []share {
	var out []share
	left := of.count
	for i < len(r.items) && len(out) < mostShares && left > 0 {
		_, j := r.stretch(i)
		sh, ok := r.shareIn(i, j, of, left)
		if !ok {
			break
		}
		out = append(out, sh)
		left -= sh.count
		i = j
	}
	if i < len(r.items) && r.items[i].gap < gapComma && (r.items[i].feeder >= 0 || r.items[i].is(sFeeder)) {
		return nil // "one in red and gray"
	}
	return out
}

// shareIn reads the stretch items[i:j] as a share of a whole, of which some is left to
// be told of.
func (r *reader) shareIn(i, j int, of sharedOut, left float64) (share, bool) {
	sh := share{at: -1, i: i, j: j, unit: of.unit}
	stored, goes := false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itQty && it.unit == unitIn && it.v <= left && k > i && r.items[k-1].is(sPour): // "put 1 in"
			sh.at, sh.count, sh.feeder, goes = k, it.v, true, true
		case it.quest, it.pig >= 0, it.isAny(setOf(sPigs, sIngredient, sSick, sGirth)) && !it.is(sFiller), it.is(sEach) && it.s != "every", it.kind == itQty && !sameVessel(it.unit, of.unit), it.kind == itDim:
			return sh, false
		case r.storeNotFeeder(k):
			stored = true
		case it.feeder >= 0, it.is(sFeeder), k+1 == j && (it.s == "in" && goes || it.s == "went in"):
			sh.feeder = true
		}
		goes = goes || goesInto[firstWord(it.s)] || it.isAny(setOf(sPour, sTook, sFill)) || strings.HasSuffix(it.s, " in")
		if sh.at < 0 {
			if n, ok := r.shareAt(k, j, of, left); ok {
				sh.at, sh.count = k, n
			}
		}
	}
	sh.feeder = sh.feeder && !stored
	return sh, sh.at >= 0 && sh.count <= left && goes && (sh.feeder || stored)
}

// sameVessel says that two counts are of the same measure, which people call a bag or
// a sack.
func sameVessel(a, b unitID) bool {
	return a == b || a.dim() == vessel && b.dim() == vessel && slices.Contains(sizeNames(a.name()), b.name())
}

// goesInto are words that say that something went or was put somewhere.
var goesInto = setOfWords(split("in, into, to, went, goes, go, is, are, sits, sitting, kept, saved, stored, stayed, left, for"))

// storeNotFeeder says that item k names where feed is kept and not fed from.
func (r *reader) storeNotFeeder(k int) bool {
	it := &r.items[k]
	if it.feeder >= 0 {
		return false
	}
	word := strings.TrimSuffix(it.s, "s")
	if !stores[word] && !it.is(sShed) {
		return false
	}
	for _, f := range r.c.Herd.Feeders {
		if strings.Contains(strings.ToLower(f.Name), word) {
			return false
		}
	}
	return true
}

// stores are what feed is kept in, and words for keeping it.
var stores = setOfWords(split("bin, can, trash can, garbage can, drum, barrel, tote, bag, sack, tub, shed, garage, barn, storage, feed room, feed shed, freezer, chest, truck, trailer, later, spare, kept, saved, stored, bagged"))

// shareAt is how much of a whole the words from item k on tell, of which some is left.
func (r *reader) shareAt(k, j int, of sharedOut, left float64) (float64, bool) {
	it, count := &r.items[k], of.count
	said := r.said(span{0, k, j})
	switch {
	case it.qty(vessel):
		return it.v, true
	case it.kind == itNum && !it.ord && it.v <= count:
		next := &item{}
		if k+1 < j {
			next = &r.items[k+1]
		}
		return it.v, next.kind == itWord && next.unit.dim() != mass && (next.isAny(setOf(sFiller, sPartOf, sPour)) || goesInto[firstWord(next.s)] || next.s == "")
	case it.kind == itWord && it.s == "one": // "one's in the feeder"
		return 1, true
	case saysFirst(said, "straight into", "right into", "straight in", "right in", "into"):
		return left, true
	case saysFirst(said, "both"):
		return 2, count == 2
	case saysFirst(said, "all", "it", "them", "em", "everything", "every bit", "every last bit", "the whole", "whole thing", "whole lot", "the lot", "that"):
		return left, true
	case saysFirst(said, "the other", "other", "the rest", "rest", "the remaining", "the remainder"):
		return left, left < count
	case saysFirst(said, "half", "the half", "half of"):
		return count / 2, true
	case saysFirst(said, "first", "second", "third", "fourth", "the first", "the second", "the third", "the fourth", "the last"):
		return 1, count > 1
	}
	return 0, false
}

// saysFirst says that what was said begins with one of the phrases.
func saysFirst(said string, phrases ...string) bool {
	for _, p := range phrases {
		if rest, ok := strings.CutPrefix(said, " "+p); ok && (rest[0] == ' ' || strings.HasPrefix(rest, "'s ") || strings.HasPrefix(rest, "’s ")) {
			return true
		}
	}
	return false
}

// giveShares lets each share tell its amount in batches, and keeps quiet of what went
// into no feeder.
func (r *reader) giveShares(shares []share) {
	for _, sh := range shares {
		for k := sh.i; k < sh.j; k++ {
			it := &r.items[k]
			gap := it.gap
			switch {
			case !sh.feeder, k > sh.at && r.tellsShare(k):
				r.blank(k)
				it.s = "" // "the other" means no feeder here
			case k == sh.at:
				from, to := it.from, it.to
				r.blank(k)
				*it = item{kind: itQty, s: sh.unit.name(), v: sh.count, unit: sh.unit, from: from, to: to, known: true, pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1}
			}
			r.items[k].gap = gap
		}
		r.items[sh.i].gap = max(r.items[sh.i].gap, gapComma)
		if sh.feeder {
			r.settled = append(r.settled, span{fFeed, sh.i, sh.j})
		}
		r.sharedTo = sh.j
	}
}

// tellsShare says that item k is but a part of the words for a share: "of those",
// "other one", "half of it".
func (r *reader) tellsShare(k int) bool {
	it := &r.items[k]
	return it.feeder < 0 && it.kind != itDay && it.kind != itClock && !it.isAny(setOf(sFeeder, sFill, sPour, sTook, sFull, sPlan, sNot, sIf))
}
