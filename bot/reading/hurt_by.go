package reading

// Who did it is not who is hurt: "ulan bit amihan shes bleeding" tells of amihan.

var hurtWords = map[string]bool{
	"bit": true, "bites": true, "bitten": false, "attacked": true, "rammed": true, "kicked": true, "stepped on": true, "chewed": true, "chewed on": true, "hurt": true, "injured": true, "butted": true, "scratched": true, "gashed": true, "ripped": true, "cut": true, "knocked": true, "beat up": true,
}

// hurtBy takes the one who did it, and the deed, from what is told of a pig.
func (r *reader) hurtBy() {
	for k := 1; k+1 < len(r.items); k++ {
		if a, b := &r.items[k-1], &r.items[k+1]; hurtWords[r.items[k].s] && a.pig >= 0 && b.pig >= 0 && r.items[k].gap == gapNone && b.gap == gapNone {
			sign := false
			for n := k + 2; n < r.sentenceEnd(k); n++ {
				sign = sign || r.items[n].is(sSick)
			}
			r.blank(k - 1)
			if sign {
				r.blank(k)
			} else {
				r.items[k].sense = setOf(sSick)
			}
		}
	}
}

// allOfThem takes "all three" behind as many names for the names themselves: "reds are
// 86, all three".
func (r *reader) allOfThem() {
	for k := 1; k+1 < len(r.items); k++ {
		n := &r.items[k+1]
		if r.items[k].s != "all" || n.kind != itNum || n.gap != gapNone {
			continue
		}
		named := 0
		for x := r.sentenceStart(k); x < k; x++ {
			if r.items[x].pig >= 0 {
				named++
			}
		}
		if named >= 2 && n.v == float64(named) {
			r.blank(k)
			r.blank(k + 1)
		}
	}
}

// notInThere takes "not in there" behind a pig for out: "208's not in there".
func (r *reader) notInThere() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sNot) || it.kind != itWord || it.quest || r.items[k+1].gap != gapNone {
			continue
		}
		p := k - 1
		for p > 0 && r.items[p].isAny(setOf(sIs)) && r.items[p+1].gap == gapNone {
			p--
		}
		var end int
		switch {
		case r.items[p].pig < 0:
			continue
		case r.items[k+1].s == "in there" || r.items[k+1].s == "in here":
			end = k + 2
		case k+2 < len(r.items) && r.items[k+1].s == "in" && r.items[k+2].is(sPen) && r.clauseEnd(k) <= k+4, k+3 < len(r.items) && r.items[k+1].s == "in" && r.items[k+3].is(sPen):
			end = r.clauseEnd(k)
		default:
			continue
		}
		it.s, it.sense = "out", setOf(sOut)
		for n := k + 1; n < end; n++ {
			r.blank(n)
		}
	}
}
