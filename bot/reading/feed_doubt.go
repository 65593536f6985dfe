package reading

import "strings"

// noFeedAtAll says that what a feed span was made of is no pour and no level: a
// figure of the feed's make-up, or a count of things that are no feed.
func (r *reader) noFeedAtAll(s span) bool { return r.makeUp(s) || r.countedFood(s) }

// makeUp says that a share is that of a nutrient: "feed is 16% protein".
func (r *reader) makeUp(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.unit != unitPct && it.kind != itFrac {
			continue
		}
		for n := max(r.clauseFrom(k), k-3); n < len(r.items) && n <= k+2 && (n <= k || r.items[n].gap < gapComma); n++ {
			switch r.items[n].s {
			case "protein", "crude protein", "cp", "fat", "fiber", "fibre", "lysine", "calcium", "phosphorus", "salt", "moisture", "ash":
				return true
			}
		}
	}
	return false
}

// countedFood says that the only amount is a number of things that are no feed
// by weight: "gave them 12 eggs".
func (r *reader) countedFood(s span) bool {
	if r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 {
		return false
	}
	counted := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft {
			continue
		}
		if k+1 >= len(r.items) {
			return false
		}
		n := &r.items[k+1]
		if n.s == "dozen" && k+2 < len(r.items) {
			n = &r.items[k+2]
		}
		if n.gap != gapNone || n.kind != itWord || n.unit != 0 || n.used || !n.sense.empty() || len(n.s) < 4 || !strings.HasSuffix(n.s, "s") {
			return false
		}
		counted = true
	}
	return counted
}
