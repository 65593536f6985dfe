package reading

// A pig that cannot be got up, told with its name between the words: "can't get fern up",
// "couldn't get her on her feet".

// cannotRaise gives such words the sense of a pig that is down.
func (r *reader) cannotRaise() {
	if r.alive == 0 {
		return
	}
	for k := 0; k+1 < len(r.items); k++ {
		if r.items[k].quest || r.items[k].pig >= 0 {
			continue
		}
		if it := &r.items[k]; it.is(sDown) && lastWord(it.s) == "stand" && r.items[k+1].gap == gapNone && (r.items[k+1].s == "still" || saysAny(r.said(span{0, k + 1, r.clauseEnd(k)}), onScale)) {
			r.blank(k) // "won't stand still for the tape"
			continue
		}
		if k+2 < len(r.items) && r.items[k].s == "not" && r.items[k+1].s == "even" && r.items[k+2].s == "for" {
			r.blank(k) // "won't get up, not even for peaches" denies nothing
			continue
		}
		end := r.raisingEnd(k)
		if end == 0 {
			continue
		}
		for n := k; n < end; n++ {
			if r.items[n].pig < 0 {
				r.blank(n)
			}
		}
		r.items[k].sense = setOf(sDown)
	}
}

// raisingEnd is where the words end that tell from item k on that a pig cannot be raised; 0
// where they do not.
func (r *reader) raisingEnd(k int) int {
	n := k
	if !cannotDo[r.items[n].s] {
		if !r.items[n].is(sNot) || n+1 >= len(r.items) {
			return 0
		}
	}
	if firstWord(lastWord(r.items[n].s)) != "get" {
		n++
		if n >= len(r.items) || r.items[n].s != "get" && r.items[n].s != "raise" || r.items[n].gap != gapNone {
			return 0
		}
	}
	n++
	if n+1 >= len(r.items) || r.items[n].gap != gapNone || r.items[n].pig < 0 && !raised[r.items[n].s] {
		return 0
	}
	from, to := n+1, r.clauseEnd(n)
	said := r.said(span{0, from, min(from+5, to)})
	if onFeet.begin(said) && !saysAny(said, ontoThing) {
		return min(from+5, to)
	}
	return 0
}

var (
	cannotDo = setOfWords(split("can't, cant, cannot, can not, couldn't, couldnt, could not, can't get, cant get, cannot get, couldn't get, could not get, couldnt get, can not get, unable to get, not able to get"))
	raised   = setOfWords(split("him, her, it, them, 'em, em"))
	onFeet   = phrasesOf("up, to stand, to get up, to rise, standing, on her feet, on his feet, on its feet, to her feet, to his feet, back up, back on her feet, back on his feet")
	onScale  = phrasesOf("on the scale, on the scales, on the platform, for the tape, in the crate, quiet, there while")
	// ontoThing says that a pig is only to stand on or go up something.
	ontoThing = phrasesOf("up to, up on, up the, up into, on the, still, in the, there")
)
