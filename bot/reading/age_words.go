package reading

// ageWords gives the words for the size of pigs, which may be parts of a hopper's
// name too, their meaning of an age group where the number of that group's pigs
// stands behind or before them: "the big four averaged 181", "three little".
func (r *reader) ageWords() {
	if r.ageGroup(true) == nil {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		young, size := sizeOfPigs[it.s]
		if !size || it.pig >= 0 || it.isAny(setOf(sYoung, sOld)) {
			continue
		}
		count := 0
		g := r.ageGroup(young)
		for p := range r.alive {
			if r.pigs[p].Group == g {
				count++
			}
		}
		behind := k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.countIs(k+1, count) && !r.thingBehind(k+2)
		if !behind && !(k > 0 && it.gap == gapNone && r.countIs(k-1, count) && !r.thingBehind(k+1) && (k == 1 || !r.items[k-2].isAny(setOf(sFill, sPour)))) {
			continue
		}
		it.kind, it.feeder, it.barrel, it.pen, it.either = itWord, -1, -1, -1, false
		it.sense = setOf(sOld)
		if young {
			it.sense = setOf(sYoung)
		}
		if behind {
			r.items[k+1].soft, r.items[k+1].used = true, true
		} else {
			r.items[k-1].soft, r.items[k-1].used = true, true
		}
	}
}

// sizeOfPigs are words for the size of pigs; true are the young ones.
var sizeOfPigs = map[string]bool{
	"big": false, "bigger": false, "large": false, "larger": false, "older": false, "biggest": false, "old": false,
	"little": true, "small": true, "smaller": true, "younger": true, "young": true, "lil": true, "littlest": true, "smallest": true,
}

// countIs says that item k is a bare count of n pigs.
func (r *reader) countIs(k, n int) bool {
	it := &r.items[k]
	return it.kind == itNum && !it.ord && n > 1 && it.v == float64(n)
}

// thingBehind says that item k is a feeder, a barrel or a measure, so that the words
// before it are of it.
func (r *reader) thingBehind(k int) bool {
	if k >= len(r.items) || r.items[k].gap >= gapComma {
		return false
	}
	it := &r.items[k]
	return it.isAny(setOf(sFeeder, sBarrel, sFeed, sFull, sWater)) || it.feeder >= 0 || it.barrel >= 0 || it.unit != 0 && it.kind == itWord || it.qty(vessel) || it.s == "bags" || it.s == "of"
}
