package reading

// zoneItem reads a time zone where the words around it are about one: a name
// with a slash, "... time", an abbreviation in capitals, or a place behind
// "in", "near" or "zone".
func (r *reader) zoneItem(it *item, i int) int {
	if zone, n := r.zoneOffsetAt(i); n > 0 {
		it.s, it.canon, it.known = zone, zoneCanon, true
		return n
	}
	zone, n := r.zoneAt(i)
	if z, m := r.zoneOfSide(i); m > n && n < 2 {
		zone, n = z, m
	}
	if n == 0 {
		return 0
	}
	t := &r.toks[i]
	last := &r.toks[i+n-1]
	sure := false
	for k := i; k < i+n; k++ {
		sure = sure || r.toks[k].s == "/"
	}
	next := func(k int) string {
		if k < len(r.toks) && r.toks[k].kind == tokWord {
			return r.toks[k].s
		}
		return ""
	}
	switch {
	case sure, last.s == "time" && n > 1:
		sure = true
	case next(i+n) == "time" && (next(i+n+1) != "to" && next(i+n+1) != "for"):
		sure = true
		n++
		if next(i+n) == "zone" {
			n++
		}
	case next(i+n) == "timezone", next(i+n) == "time zone":
		sure = true
		n++
	case n == 1 && len(t.s) <= 4 && t.upper && (t.s[len(t.s)-1] == 't' || t.s == "utc" || t.s == "mez" || t.s == "uk") && t.s != "sat":
		sure = true
	}
	if !sure {
		sure = r.placeAlone(i, n)
	}
	if !sure {
		sure = r.placeWanted(i) && (t.capital || r.lex.of[t.s] == nil || n > 1)
	}
	if !sure {
		return 0
	}
	it.s, it.canon, it.known = zone, zoneCanon, true
	// "Springfield, Missouri": the state decides.
	if k := i + n; k+1 < len(r.toks) && r.toks[k].s == "," {
		if z, m := r.zoneAt(k + 1); m > 0 {
			it.s = z
			return n + 1 + m
		}
	}
	return n
}

// zoneOffsetAt reads "UTC-5" and "GMT +2", whole hours only. The names of such
// zones in the database have the sign the other way round.
func (r *reader) zoneOffsetAt(i int) (string, int) {
	if s := r.toks[i].s; s != "utc" && s != "gmt" || i+2 >= len(r.toks) {
		return "", 0
	}
	sign, h := r.toks[i+1].s, &r.toks[i+2]
	if h.kind != tokNum || h.spaced || h.v > 14 || h.v != float64(int(h.v)) {
		return "", 0
	}
	switch {
	case h.v == 0:
		return "UTC", 3
	case sign == "+":
		return "Etc/GMT-" + itoa(int(h.v)), 3
	case (sign == "-" || sign == "–" || sign == "−") && h.v <= 12:
		return "Etc/GMT+" + itoa(int(h.v)), 3
	}
	return "", 0
}

// placeAlone says that a place stands in a clause of its own of a sentence about
// the herd and its units, before the zone is known: "Herd Kapellenhof, Vienna,
// metric".
func (r *reader) placeAlone(i, n int) bool {
	edge := func(k int) bool {
		return k < 0 || k >= len(r.toks) || r.toks[k].kind == tokBreak || r.toks[k].s == "," || r.toks[k].s == "." || r.toks[k].s == ";"
	}
	if r.c.Herd.Zone != "" || !edge(i-1) || !edge(i+n) {
		return false
	}
	whole := i == 0 && n == len(r.toks)
	switch r.toks[i].s {
	case "central", "eastern", "mountain", "pacific":
		return true
	}
	if !r.toks[i].capital && !r.toks[i+n-1].capital {
		return whole && (n > 1 || r.lex.of[r.toks[i].s] == nil) // "north carolina"
	}
	if whole || i == 0 && len(r.toks) <= 5 && r.zonesOnly(n) {
		return true // "Boise, Idaho"
	}
	stop := func(k int) bool {
		return k < 0 || k >= len(r.toks) || r.toks[k].kind == tokBreak || r.toks[k].s == "."
	}
	if stop(i-1) && stop(i+n) && r.toldSettings() { // "herd Gorse Hill. Scotland. metric."
		return true
	}
	about := false
	for _, step := range []int{-1, 1} {
		for k := i; k >= 0 && k < len(r.toks); k += step {
			t := &r.toks[k]
			if t.kind == tokBreak || t.s == "." {
				break
			}
			if m := r.lex.of[t.s]; m != nil {
				if m.sense.any(setOf(sPigs, sArrive, sBarrow, sGilt)) {
					return false
				}
				about = about || m.sense.any(setOf(sHerd, sUS, sMetric, sUnits))
			}
		}
	}
	return about
}

// saidHerd says that the sentence of token i names the herd.
func (r *reader) saidHerd(i int) bool {
	for k := i - 1; k >= 0 && r.toks[k].kind != tokBreak && r.toks[k].s != "."; k-- {
		if m := r.lex.of[r.toks[k].s]; m != nil && m.sense.has(sHerd) {
			return true
		}
	}
	return false
}

// toldSettings says that the text speaks of the herd's name or units.
func (r *reader) toldSettings() bool {
	for k := range r.toks {
		if m := r.lex.of[r.toks[k].s]; m != nil && m.sense.any(setOf(sHerd, sMetric, sUnits)) {
			return true
		}
	}
	return false
}

// zonesOnly says that all tokens from i on are places and commas.
func (r *reader) zonesOnly(i int) bool {
	for i < len(r.toks) {
		if t := &r.toks[i]; t.kind == tokBreak || t.s == "," || t.s == "." {
			i++
			continue
		}
		_, n := r.zoneAt(i)
		if n == 0 {
			return false
		}
		i += n
	}
	return true
}

// placeWanted says that the words before token i ask for a place.
func (r *reader) placeWanted(i int) bool {
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		switch s := r.toks[j].s; s {
		case "location", "place", "state", "where", "zone", "timezone", "tz", "near", "outside", "located", "from", "based", "live":
			return true
		case "in":
			for k := j - 1; k >= 0 && k >= j-3; k-- {
				switch r.toks[k].s {
				case "i'm", "im", "we're", "were", "am", "are", "live", "farm", "located", "based", "here", "place", "is", "clock", "zone", "up", "down", "out", "over":
					if k > 0 && (r.toks[k-1].s == "they" || r.toks[k-1].s == "pigs") {
						return false
					}
					return true
				}
			}
			return j == 0 || r.c.Herd.Zone == "" && r.toks[j-1].s == "," && r.saidHerd(j) // "we are the Ashdown herd, in Vermont"
		case ":", "is", "=", "the", "of", "a", "just", "called":
		case "town", "city", "village", "county":
			if n := r.toks[j+1].s; n == ":" || n == "is" || n == "=" {
				return true
			}
		default:
			return false
		}
	}
	return false
}
