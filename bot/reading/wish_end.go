package reading

import "strings"

// Where a note or a reminder ends within its sentence: before the next wish.

// noteEnd is the item behind the note that begins at item k: the line's end, or a
// reminder that is asked for as well.
func (r *reader) noteEnd(k int) int {
	end := r.lineEnd(k)
	for n := k + 2; n < end; n++ {
		it := &r.items[n]
		if it.gap >= gapAnd && it.is(sRemind) && (strings.HasPrefix(it.s, "remind me") || strings.HasPrefix(it.s, "remind us")) {
			return n
		}
		if it.gap >= gapStop && r.measuredAlone(n, r.sentenceEnd(n)) {
			return n // "note the valve leaks. 416 weighed 262"
		}
	}
	return end
}

// measuredAlone says that the sentence of the items from i to j is but what a scale, a
// gauge or a fill told of a thing of the herd.
func (r *reader) measuredAlone(i, j int) bool {
	if r.part || j-i > measuredWords || !r.amountIn(i, j) {
		return false
	}
	got := r.readPart(i, j)
	for _, e := range got.Entries {
		f, ok := e.Act.(Fact)
		if !ok {
			return false
		}
		switch f.Intent() {
		case "weigh", "fence", "refill", "water", "feed_level":
		default:
			return false
		}
	}
	return len(got.Left) == 0
}

// measuredWords is how many words such a sentence has at most.
const measuredWords = 8

func (r *reader) amountIn(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft {
			return true
		}
	}
	return false
}

// reminderEnd is the item behind the reminder that begins at item k: the sentence's end, or
// a note or a setting that is told as well.
func (r *reader) reminderEnd(k int) int {
	end := r.sentenceEnd(k)
	for n := k + 2; n < end; n++ {
		if r.items[n].gap < gapAnd {
			continue
		}
		m := n
		for m < end && m < n+3 && r.items[m].kind == itWord && (alsoWords[r.items[m].s] || r.items[m].is(sFiller) && !r.items[m].isAny(setOf(sNote, sChore, sTarget))) {
			m++
		}
		if m >= end {
			continue
		}
		switch it := &r.items[m]; {
		case it.is(sNote) && it.kind == itWord && it.s != "next year" && m+1 < end:
			return n
		case it.isAny(setOf(sChore, sTarget)) && it.kind == itWord && r.setsTo(m, end):
			return n
		}
	}
	return end
}

// setsTo says that behind the word of a setting at item k stands what it is to be: "chore
// day is sunday".
func (r *reader) setsTo(k, end int) bool {
	if k+1 < end && r.items[k+1].isAny(setOf(sIs)) {
		k++
	}
	if k+1 >= end {
		return false
	}
	it := &r.items[k+1]
	return it.kind == itDay || it.kind == itClock || it.number() && !it.soft
}

// putDownWords ask to keep what follows, be it a record or a note.
var putDownWords = setOfWords(split(`put down that, write down, write down that, jot down, jot down that, mark down, make a note, make a note that, take a note, note`))

// notesFacts says that all that is to be put down are records: "put down that the barrel
// has been filled, and that it is 84 degrees".
func (r *reader) notesFacts(k int) bool {
	it := &r.items[k]
	if !putDownWords[it.s] || r.part || k > 0 && !r.fillersBefore(k) && it.gap < gapStop || len(r.text) > longestReread {
		return false
	}
	from := it.to
	if k+1 < len(r.items) && r.items[k+1].s == "that" && r.items[k+1].gap == gapNone {
		from = r.items[k+1].to
	} else if lastWord(it.s) != "that" {
		return false
	}
	end := r.lineEnd(k)
	if from >= r.items[end-1].to {
		return false
	}
	got := r.readAs(r.text[from:r.items[end-1].to], true)
	if len(got.Left) > 0 {
		return false
	}
	for _, e := range got.Entries {
		if f, ok := e.Act.(Fact); !ok || f.Kind() == "note" {
			return false
		}
	}
	return true
}
