package reading

// handwriting blanks figures that are told to look like others: "wait hank was 198, my 3 looks
// like an 8".
func (r *reader) handwriting() {
	for k := 1; k+1 < len(r.items); k++ {
		if it := &r.items[k]; it.pig >= 0 || !figureLooks[it.s] {
			continue
		}
		from, to := k-1, k+1
		for to < len(r.items) && to < k+3 && (r.items[to].s == "a" || r.items[to].s == "an" || r.items[to].s == "my" || r.items[to].s == "like") {
			to++
		}
		if to >= len(r.items) || !figure(&r.items[from]) || !figure(&r.items[to]) || from == 0 || r.items[from].gap != gapNone || !(r.items[from-1].s == "my" || r.items[from-1].s == "the" || r.items[from-1].s == "a" || r.items[from-1].s == "his" || r.items[from-1].s == "her") {
			continue
		}
		for n := from - 1; n <= to; n++ {
			r.blank(n)
			r.items[n].s = "so"
		}
	}
}

// figure says that an item is a single figure.
func figure(it *item) bool {
	return it.kind == itNum && it.pig < 0 && it.v >= 0 && it.v < 10 && it.v == float64(int(it.v))
}

var figureLooks = listed("looks like, look like, looks like a, looks like an, looked like, looked like a, looked like an, reads like, reads like a, reads like an, looks, looked, look, could be")
