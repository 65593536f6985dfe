package reading

// What was hosed where it is not the wallow: pigs to cool them, a pen or a barrel to clean
// it. Nothing is filled by that: "hosed the pigs down", "scrubbed the barrel out".

// hosedOrCleaned takes the meaning from such a deed, and from the barrel or feeder that was
// but cleaned.
func (r *reader) hosedOrCleaned() {
	for k := range r.items {
		it := &r.items[k]
		hosed := it.kind == itWord && (it.is(sHose) && hoseVerbs[firstWord(it.s)] || coolVerbs[it.s])
		if !hosed && !scrubWords[firstWord(it.s)] || it.quest {
			continue
		}
		i, j := r.stretch(k)
		s := span{fWater, i, j}
		if r.has(s, sWallow) || r.has(s, sNot) || r.has(s, sPlan) {
			continue
		}
		particle := r.outOrDown(k, j)
		if hosed && r.hosesPigs(k, j) {
			if particle >= 0 {
				r.blank(particle)
			}
			r.blank(k)
			continue
		}
		clean := !hosed || particle >= 0 || lastWord(it.s) == "out" || lastWord(it.s) == "down"
		if !clean || !r.hasBarrel(s) && !r.has(s, sBarrel) && !r.has(s, sFeeder) && !r.hasFeeder(s) && !(hosed && (r.has(s, sPen) || r.hasPen(s))) {
			continue
		}
		if coolVerbs[it.s] {
			continue
		}
		if particle >= 0 {
			r.blank(particle)
		}
		r.blank(k)
		if all := (span{fWater, r.sentenceStart(k), r.sentenceEnd(k)}); !r.has(all, sFill) && !r.has(all, sFull) && !r.has(all, sWatered) && !r.has(all, sEmpty) && !r.has(all, sPour) && r.amountless(all.i, all.j) {
			for n := i; n < j; n++ {
				r.blank(n)
			}
		}
	}
}

var (
	hoseVerbs  = setOfWords(split("hosed, hosing, soaked, sprinkled, wetted"))
	coolVerbs  = setOfWords(split("sprayed, spraying, wet, wetting, misted, misting, washed, cooled, spritzed, splashed"))
	scrubWords = setOfWords(split("scrubbed, rinsed"))
)

// outOrDown is the "out", "down" or "clean" that belongs to the deed at item k, -1 where
// there is none.
func (r *reader) outOrDown(k, j int) int {
	for n := k + 1; n < j && n <= k+5; n++ {
		switch r.items[n].s {
		case "out", "down", "clean", "off", "cleaned out":
			if n+1 >= len(r.items) || r.items[n+1].pig < 0 {
				return n
			}
		case "pigs down", "pig down", "down pigs":
			return n
		}
	}
	return -1
}

// hosesPigs says that behind the deed at item k, before any thing of the herd, stand pigs.
func (r *reader) hosesPigs(k, j int) bool {
	pigs := false
	for n := k + 1; n < j; n++ {
		it := &r.items[n]
		if it.barrel >= 0 || it.feeder >= 0 || it.isAny(setOf(sBarrel, sFeeder, sFull, sFill)) {
			return false
		}
		pigs = pigs || it.pig >= 0 || it.group >= 0 || it.isAny(setOf(sPigs, sAll, sBarrow, sGilt, sSow, sBoar, sYoung, sOld))
	}
	return pigs
}

func (r *reader) hasPen(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].pen >= 0 {
			return true
		}
	}
	return false
}

// rattlingThings takes what would be an illness of a pig from a feeder or barrel that is
// told to be so: "hopper was rattling".
func (r *reader) rattlingThings() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sSick) || it.kind != itWord {
			continue
		}
		for n := k - 1; n >= r.clauseFrom(k) && n >= k-3; n-- {
			p := &r.items[n]
			if p.pig < 0 && (p.feeder >= 0 || p.barrel >= 0 || p.kind == itWord && p.isAny(setOf(sFeeder, sBarrel))) {
				it.sense.drop(sSick)
				break
			}
			if p.kind != itWord || p.gap != gapNone || !p.isAny(setOf(sIs, sFiller)) {
				break
			}
		}
	}
}
