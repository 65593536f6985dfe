package reading

// callIt takes capital words behind "call it" or "call us" for the name of a herd that has
// none, whatever else they mean: "call it Hog Heaven".
func (r *reader) callIt() {
	if r.c.Herd.Name != "" {
		return
	}
	for k := range r.items {
		it, head := &r.items[k], k
		if it.pig >= 0 || !callItWords[it.s] {
			n := k + 1
			if firstWord(it.s) != "call" && firstWord(it.s) != "name" || !it.is(sNamed) || n >= len(r.items) || r.items[n].s != "it" && r.items[n].s != "us" || r.items[n].gap != gapNone {
				continue
			}
			k = n
		}
		if head > 0 && k+1 < len(r.items) && r.items[k+1].capital {
			r.items[head].gap = gapStop // "don't have a name yet, call it Hogwash"
		}
		for n := k + 1; n < len(r.items) && r.items[n].gap == gapNone && r.items[n].kind == itWord && r.items[n].capital && r.items[n].pig < 0 && len(r.items[n].s) > 1; n++ {
			r.items[n].sense, r.items[n].unit = senses{}, 0
		}
	}
}

var callItWords = listed("call it, name it, call us, call ourselves, call the place, call the farm, call our place")
