package reading

// penCalled keeps what a pen is called with the pen that was told before: "they're in a pen
// 60 by 40, we call it the Oak pen".
func (r *reader) penCalled() {
	for k := 2; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sNamed) || it.kind != itWord || it.gap >= gapStop || it.quest || lastWord(it.s) != "it" && lastWord(it.s) != "called" {
			continue
		}
		pen, size := false, false
		for n := r.sentenceStart(k); n < k; n++ {
			pen = pen || r.items[n].is(sPen)
			size = size || r.items[n].kind == itDim || r.items[n].qty(area)
		}
		n := k + 1
		if n+1 < len(r.items) && r.items[n].s == "the" {
			n++
		}
		if !pen || !size || r.items[n].gap != gapNone || r.items[n].number() {
			continue
		}
		it.gap = gapNone
		it.s = "called"
		if n > k+1 {
			r.blank(k + 1)
		}
		for p := r.sentenceStart(k); p < k; p++ { // where they are is told of this very pen
			if r.items[p].is(sInUse) {
				r.blank(p)
				r.setUp.inIt = true
			}
		}
		if n+1 < len(r.items) && r.items[n+1].gap == gapNone && r.items[n+1].is(sPen) && r.closes(n+1) {
			r.blank(n + 1)
		}
	}
}

// bagTold settles a bag's size told without a unit: "bag is 50".
func (r *reader) bagTold() {
	for k := 0; k+1 < len(r.items); k++ {
		if r.saysBagSize(k) && r.force[k] == 0 {
			r.forceRange(k, k+2, fSize)
		}
	}
}

// saysBagSize says that item k and the number behind it tell what a bag holds.
func (r *reader) saysBagSize(k int) bool {
	if k+1 >= len(r.items) {
		return false
	}
	it, n := &r.items[k], &r.items[k+1]
	return (it.s == "bag is" || it.s == "bag weighs") && n.gap == gapNone && n.kind == itNum && !n.soft && n.v >= fewestInBag && r.closes(k+1)
}
