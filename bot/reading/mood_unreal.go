package reading

// nearlyForgotten takes "nearly forgot to" away where the same sentence says that
// it was done after all: "nearly forgot to fill the shed barrel, did it just now".
func (r *reader) nearlyForgotten() {
	for k := range r.items {
		switch r.items[k].s {
		case "nearly forgot to", "almost forgot to", "i nearly forgot to", "i almost forgot to":
		default:
			continue
		}
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			if it := &r.items[n]; it.s == "did it" || it.s == "just did it" || it.number() && !it.soft {
				r.blank(k)
				if !it.number() {
					r.blank(n)
				}
				break
			}
		}
	}
}

// unreal says that item k makes what is said around it a plan, a denial or a
// thing to come.
func (r *reader) unreal(k int) bool {
	it := &r.items[k]
	if it.pig >= 0 {
		return false
	}
	if it.kind == itDay {
		return it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0
	}
	if it.isAny(setOf(sSick, sDown, sNoWater, sNoFeed, sBut, sWell, sTook, sFull, sDied)) {
		return false
	}
	return it.isAny(setOf(sNot, sPlan)) && it.kind == itWord
}

// pastTense says that a verb tells what was done, not what is to be.
func pastTense(s string) bool {
	w := firstWord(s)
	switch w {
	case "did", "put", "fed", "got", "gave", "full", "poured":
		return true
	}
	return len(w) > 3 && w[len(w)-2:] == "ed"
}
