package reading

import (
	"strings"

	"troughbell/model"
)

// introductions reads how newcomers introduce themselves: a herd's name, "hi, we are
// Larkfield, near Leeds", and a person's, who is no pig: "this is Anna from Brook Hill".
func (r *reader) introductions() {
	if len(r.c.Herd.Animals) > 0 {
		return
	}
	r.personIntroduced()
	if r.c.Herd.Name == "" {
		r.herdIntroduced()
	}
}

func (r *reader) personIntroduced() {
	for k := 0; k+1 < len(r.items); k++ {
		n := k + 1
		switch s := r.items[k].s; {
		case k > 0 && r.items[k].gap < gapComma && !r.fillersBefore(k):
			continue
		case s == "this" && r.items[n].s == "is" && r.items[n].gap == gapNone:
			n++
		case s == "it's", s == "its", s == "i'm", s == "im", s == "i am", s == "my name is", s == "this is":
		default:
			continue
		}
		end := r.capitals(n)
		if end == n {
			continue
		}
		if end+1 < len(r.items) && r.items[end].gap == gapNone && (r.items[end].s == "from" || r.items[end].s == "at") {
			if of := r.capitals(end + 1); of > end+1 {
				end = of
			}
		}
		for end < len(r.items) && r.items[end].gap == gapNone && r.items[end].s == "here" {
			end++
		}
		if end < len(r.items) && r.items[end].gap < gapComma {
			continue
		}
		for ; k < end; k++ {
			r.blank(k)
		}
		if end < len(r.items) {
			r.items[end].gap = max(r.items[end].gap, gapSemi)
		}
		return
	}
}

// capitals is the item behind up to three words with capitals from item k on that no
// trade knows.
func (r *reader) capitals(k int) int {
	n := k
	for n < len(r.items) && n < k+3 && r.items[n].capital && r.items[n].kind == itWord && r.items[n].canon == "" && (n == k || r.items[n].gap == gapNone) {
		n++
	}
	return n
}

func (r *reader) herdIntroduced() {
	for k := range r.items {
		from := r.introduced(k)
		if from < 0 {
			continue
		}
		to := r.capitals(from)
		if to == from || to < len(r.items) && (r.items[to].gap == gapAnd || r.items[to].gap == gapNone && !placeAhead[r.items[to].s] && r.items[to].s != "near") {
			continue // "we are Mike and Ann", "we are Larkfield's helpers"
		}
		for n := from; n < to; n++ {
			if r.items[n].isAny(setOf(sUS, sMetric, sPigs)) {
				return
			}
		}
		name := strings.Trim(r.quote(from, to), ".,")
		s := span{fHerd, k, to}
		r.set(s, model.Setting{Key: model.SetHerd, Text: name})
		for n := k; n < to; n++ {
			r.blank(n)
		}
		if to < len(r.items) {
			r.items[to].gap = max(r.items[to].gap, gapSemi)
		}
		return
	}
}

// introduced is the item behind "we are" at item k, -1 if that does not stand there.
func (r *reader) introduced(k int) int {
	if k > 0 && r.items[k].gap < gapComma && !r.fillersBefore(k) {
		return -1
	}
	switch it := &r.items[k]; {
	case it.s == "we're", it.s == "we are":
		return k + 1
	case it.s == "we" && k+1 < len(r.items) && r.items[k+1].s == "are" && r.items[k+1].gap == gapNone:
		return k + 2
	}
	return -1
}
