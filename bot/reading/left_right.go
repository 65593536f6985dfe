package reading

import "strings"

// leftAndRight takes "left" and "right" for the barrels or feeders that are named so where
// a level of each is told: "left is full right half".
func (r *reader) leftAndRight() {
	h := r.c.Herd
	var left, right int8 = -1, -1
	feeders := false
	for n, b := range h.Barrels {
		switch strings.ToLower(b.Name) {
		case "left":
			left = int8(n)
		case "right":
			right = int8(n)
		}
	}
	if left < 0 || right < 0 {
		left, right, feeders = -1, -1, true
		for n, f := range h.Feeders {
			switch strings.ToLower(f.Name) {
			case "left":
				left = int8(n)
			case "right":
				right = int8(n)
			}
		}
	}
	if left < 0 || right < 0 || !r.levelBehind("left") || !r.levelBehind("right") {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.s != "left" && it.s != "right" || !r.toldLevel(k) {
			continue
		}
		n := left
		if it.s == "right" {
			n = right
		}
		it.kind, it.sense, it.known = itThing, senses{}, true
		if feeders {
			it.feeder, it.sense = n, setOf(sFeeder)
		} else {
			it.barrel = n
		}
	}
}

// levelBehind says that a level is told behind a word.
func (r *reader) levelBehind(w string) bool {
	for k := range r.items {
		if r.items[k].kind == itWord && r.items[k].s == w && r.toldLevel(k) {
			return true
		}
	}
	return false
}

// toldLevel says that behind item k, or behind an "is", stands how full it is.
func (r *reader) toldLevel(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		switch it := &r.items[n]; {
		case it.kind == itFrac, it.qty(percent), it.kind == itWord && it.isAny(setOf(sFull, sEmpty)):
			return true
		case !it.isAny(setOf(sIs, sAbout, sNow)) && it.s != "is" && it.s != "one" && it.s != "barrel" && it.s != "feeder":
			return false
		}
	}
	return false
}
