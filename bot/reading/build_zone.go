package reading

// zoneItem reads a time zone where the words around it are about one: a name
// with a slash, "... time", an abbreviation in capitals, or a place behind
// "in", "near" or "zone".
func (r *reader) zoneItem(it *item, i int) int {
	zone, n := r.zoneAt(i)
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

// placeWanted says that the words before token i ask for a place.
func (r *reader) placeWanted(i int) bool {
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		switch s := r.toks[j].s; s {
		case "zone", "timezone", "tz", "near", "outside", "located", "from", "based", "live":
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
			return j == 0
		case ":", "is", "=", "the", "of", "a", "just", "town", "called":
		default:
			return false
		}
	}
	return false
}
