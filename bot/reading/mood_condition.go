package reading

import "strings"

// What is only said to be so when something holds, or each time, happened on no day:
// "when the price goes down I take more wheat", "from 30 C up I'd top the wallow",
// "the vet charges 65 per visit".

// conditions takes such sentences for plans.
func (r *reader) conditions() {
	for k := 0; k < len(r.items); k = r.sentenceEnd(k) {
		end := r.sentenceEnd(k)
		if r.items[k].quest || end <= len(r.items) && r.items[end-1].to < len(r.text) && strings.HasPrefix(strings.TrimSpace(r.text[r.items[end-1].to:]), "?") {
			continue
		}
		if w := r.whenThen(k, end); w >= 0 {
			it := &r.items[w]
			it.s, it.sense = "if", setOf(sIf)
			continue
		}
		if r.fromUp(k, end) {
			for n := k; n < end; n++ {
				if it := &r.items[n]; it.qty(temperature) || it.kind == itNum {
					r.blank(n)
				}
			}
		}
	}
}

// whenThen is the "when" that opens the sentence of items k to end where it tells a
// condition and no question: its subject stands before its verb, nothing in it is
// past, and another clause says what is done then. -1 if it does not.
func (r *reader) whenThen(k, end int) int {
	w := -1
	for n := k; n < end && n < k+3; n++ {
		if s := r.items[n].s; s == "when" || s == "whenever" || s == "every time" {
			w = n
			break
		}
		if !r.items[n].is(sFiller) {
			return -1
		}
	}
	if w < 0 || w+2 >= end || r.items[w].gap == gapAnd {
		return -1
	}
	subject, verb := false, false
	for n := w + 1; n < end; n++ {
		it := &r.items[n]
		if n == w+1 && it.isAny(setOf(sAsk, sAskSure)) && !it.is(sPronoun) {
			return -1 // "when is ..."
		}
		switch it.s {
		case "was", "were", "had", "got", "came", "went", "did", "been", "saw", "found", "ran", "fed", "put", "gave", "took", "could":
			return -1
		}
		if it.kind == itWord && len(it.s) > 3 && strings.HasSuffix(it.s, "ed") && it.s != "need" && it.s != "feed" {
			return -1
		}
		switch firstWord(it.s) {
		case "i", "we", "i'll", "we'll", "i'd", "we'd":
			if verb || subject {
				return w
			}
			subject = true
		case "goes", "go", "gets", "comes", "drops", "is", "rises", "falls", "rains", "reaches", "hits", "hit", "get", "come", "reach", "turns", "climbs":
			verb = true
		}
	}
	return -1
}

// fromUp says that the sentence of items k to end tells from which heat on something
// would be done.
func (r *reader) fromUp(k, end int) bool {
	heat, would := -1, false
	for n := k; n < end; n++ {
		it := &r.items[n]
		if heat < 0 && (it.qty(temperature) || it.kind == itNum && !it.soft && it.v >= 20) && n > k {
			switch r.items[n-1].s {
			case "from", "over", "above", "past", "at", "starting at", "beyond":
				heat = n
			}
		}
		switch it.s {
		case "i'd", "id", "we'd", "would", "i would", "we would":
			would = would || heat >= 0
		}
	}
	return heat >= 0 && would
}

// nothingIn takes "nothing" beside a thing of the herd for empty: "inside the tank is
// nothing anymore".
func (r *reader) nothingIn() {
	for k := range r.items {
		if r.items[k].s != "nothing" {
			continue
		}
		thing, in := false, false
		from, end := r.clauseFrom(k), r.clauseEnd(k)
		for n := from; n < end; n++ {
			it := &r.items[n]
			if it.isAny(setOf(sFill, sPour, sGave, sPlan, sWatered, sMixed)) || it.number() && !it.soft || n != k && it.is(sNot) || it.s == "i" || it.s == "we" {
				thing = false
				break
			}
			thing = thing || it.kind == itThing && it.pen < 0 || it.isAny(setOf(sFeeder, sBarrel))
			in = in || it.s == "in" || it.s == "inside" || it.s == "left" || it.s == "is nothing"
		}
		if thing && in {
			r.items[k].sense = setOf(sEmpty)
		}
	}
}
