package reading

// clockAt reads a time of day that begins at token i: 7:40, 7:40 am, 6pm, "six
// pm", noon. It gives minutes after midnight, whether the half of the day was
// said, and how many tokens it took; 0 means none.
func clockAt(lex *lexicon, toks []token, i int) (minute int, said bool, n int) {
	t := toks[i]
	if i > 0 && toks[i-1].s == "all" { // "wormed all five this morning"
		return 0, false, 0
	}
	half := func(j int) (pm, ok bool, n int) {
		if j >= len(toks) || toks[j].kind != tokWord {
			return false, false, 0
		}
		switch s := toks[j].s; s {
		case "am", "pm":
			return s == "pm", true, 1
		case "a", "p": // "7a", "6 p.m."
			if !toks[j].spaced {
				return s == "p", true, 1
			}
		case "in":
			if j+1 < len(toks) {
				switch toks[j+1].s { // "six in morning"
				case "morning":
					return false, true, 2
				case "evening", "afternoon":
					return true, true, 2
				}
			}
			if j+2 < len(toks) && toks[j+1].s == "the" {
				switch toks[j+2].s {
				case "morning":
					return false, true, 3
				case "evening", "afternoon":
					return true, true, 3
				}
			}
		case "this":
			if j+1 < len(toks) {
				switch toks[j+1].s {
				case "morning":
					return false, true, 2
				case "evening", "afternoon":
					return true, true, 2
				}
			}
		case "at":
			if j+1 < len(toks) && toks[j+1].s == "night" {
				return true, true, 2
			}
		}
		return false, false, 0
	}
	to24 := func(h float64, pm bool) (int, bool) {
		if h < 1 || h > 12 {
			return int(h), !pm && h == 0 || pm && h > 12 && h < 24
		}
		hour := int(h) % 12
		if pm {
			hour += 12
		}
		return hour, true
	}
	switch {
	case t.kind == tokClock:
		if pm, ok, n := half(i + 1); ok {
			if h, ok := to24(t.v, pm); ok {
				return h*60 + int(t.v2), true, n + 1
			}
		}
		if t.v < 24 {
			return int(t.v)*60 + int(t.v2), t.v > 12 || t.s[0] == '0', 1
		}
	case t.kind == tokNum && !t.ordinal && t.decimals == 0:
		if pm, ok, n := half(i + 1); ok {
			if t.v <= 12 {
				if h, ok := to24(t.v, pm); ok {
					return h * 60, true, n + 1
				}
			}
			if h, m := int(t.v)/100, int(t.v)%100; t.v >= 100 && h <= 12 && m < 60 { // "730 pm"
				if h, ok := to24(float64(h), pm); ok {
					return h*60 + m, true, n + 1
				}
			}
		}
		if i+1 < len(toks) && toks[i+1].kind == tokWord && t.v <= 24 && (toks[i+1].s == "o'clock" || toks[i+1].s == "oclock" || toks[i+1].s == "uhr") {
			if pm, ok, n := half(i + 2); ok {
				if h, ok := to24(t.v, pm); ok {
					return h * 60, true, n + 2
				}
			}
			return int(t.v) * 60 % 1440, toks[i+1].s == "uhr" || t.v > 12, 2
		}
	case t.kind == tokNum && t.decimals == 2: // "7.40 am"
		if pm, ok, n := half(i + 1); ok && t.v < 13 && int(t.v*100+0.5)%100 < 60 {
			if h, ok := to24(float64(int(t.v)), pm); ok {
				return h*60 + int(t.v*100+0.5)%100, true, n + 1
			}
		}
	case t.kind == tokWord:
		return clockWord(lex, toks, i, half, to24)
	}
	return 0, false, 0
}

func clockWord(lex *lexicon, toks []token, i int, half func(int) (bool, bool, int), to24 func(float64, bool) (int, bool)) (minute int, said bool, n int) {
	word := func(j int) string {
		if j < len(toks) && toks[j].kind == tokWord {
			return toks[j].s
		}
		return ""
	}
	switch word(i) {
	case "noon", "midday", "lunchtime", "mittag":
		return 720, true, 1
	case "midnight":
		return 0, true, 1
	case "half":
		if i+1 < len(toks) {
			if m, said, n := hourAt(lex, toks, i+1, half, to24); n > 0 && (said || i > 0 && toks[i-1].s == "at") { // "at half six"
				return m + 30, said, n + 1
			}
		}
		if word(i+1) == "past" && i+2 < len(toks) {
			if m, said, n := hourAt(lex, toks, i+2, half, to24); n > 0 {
				return m + 30, said, n + 2
			}
		}
	case "a":
		if w := word(i + 2); word(i+1) == "quarter" && (w == "past" || w == "to") { // "a quarter past eight"
			if m, said, n := clockWord(lex, toks, i+1, half, to24); n > 0 {
				return m, said, n + 1
			}
		}
	case "quarter":
		if w := word(i + 1); (w == "past" || w == "to") && i+2 < len(toks) {
			if m, said, n := hourAt(lex, toks, i+2, half, to24); n > 0 {
				if w == "to" {
					return (m + 1440 - 15) % 1440, said, n + 2
				}
				return m + 15, said, n + 2
			}
		}
	}
	if v, k := lex.spoken(toks[i:]); k > 0 && word(i+k) == "past" && v >= 5 && v <= 25 && int(v)%5 == 0 && i+k+1 < len(toks) { // "ten past eight"
		if m, said, n := hourAt(lex, toks, i+k+1, half, to24); n > 0 {
			return m + int(v), said, n + k + 1
		}
	}
	if v, k := lex.spoken(toks[i:]); k > 0 && v >= 1 && v <= 12 { // "six pm", "seven thirty am"
		if pm, ok, n := half(i + k); ok && word(i+k) != "at" {
			if h, ok := to24(v, pm); ok {
				return h * 60, true, n + k
			}
		}
		if w := word(i + k); w == "o'clock" || w == "oclock" {
			if pm, ok, n := half(i + k + 1); ok {
				if h, ok := to24(v, pm); ok {
					return h * 60, true, n + k + 1
				}
			}
			return int(v) * 60 % 720, false, k + 1
		}
	} else if k > 0 && v >= 100 && v <= 1259 && int(v)%100 < 60 {
		if pm, ok, n := half(i + k); ok && word(i+k) != "in" && word(i+k) != "at" {
			if h, ok := to24(float64(int(v)/100), pm); ok {
				return h*60 + int(v)%100, true, n + k
			}
		}
		if i > 0 && v >= earliestSpoken && int(v)%5 == 0 && toks[i-1].s == "at" && !pricedHere(lex, toks, i, k) { // "at five thirty"
			return int(v)/100*60 + int(v)%100, false, k
		}
	}
	return 0, false, 0
}

// earliestSpoken is the first number that is a time behind "at" when it is put
// into words, five o'clock: below it "at two ten" is what a pig weighs.
const earliestSpoken = 500

// pricedHere says that the number at token i, of k tokens, is money or has a unit.
func pricedHere(lex *lexicon, toks []token, i, k int) bool {
	if i+k < len(toks) {
		if m := lex.of[toks[i+k].s]; m != nil && (m.unit != 0 && m.unit.dim() != days || m.sense.any(setOf(sEach))) {
			return true
		}
	}
	for n := i - 1; n >= 0 && n > i-7 && toks[n].kind != tokBreak; n-- {
		if m := lex.of[toks[n].s]; m != nil && m.sense.any(setOf(sSold, sPay, sBuy, sHung, sWeigh)) {
			return true
		}
	}
	return false
}

func hourAt(lex *lexicon, toks []token, i int, half func(int) (bool, bool, int), to24 func(float64, bool) (int, bool)) (minute int, said bool, n int) {
	v, n := toks[i].v, 1
	if toks[i].kind != tokNum {
		if v, n = lex.spoken(toks[i:]); v > 12 { // "quarter past six ten days"
			v, n = lex.spoken(toks[i : i+1])
		}
	}
	if n == 0 || v < 1 || v > 12 {
		return 0, false, 0
	}
	if pm, ok, k := half(i + n); ok {
		if h, ok := to24(v, pm); ok {
			return h * 60, true, n + k
		}
	}
	return int(v) * 60 % 720, false, n
}

// settleClock decides the half of the day of a time said without it. Facts
// take the latest such time that is not after now; wishes ahead take the
// morning from six to eleven and the afternoon otherwise.
func settleClock(minute int, said bool, part int8, today bool, now int, l look) int {
	if said || minute >= 13*60 {
		return minute
	}
	m := minute % 720
	switch {
	case part == partEvening:
		return m + 720
	case part == partMorning:
		return m
	case l == lookForward:
		if m < 6*60 {
			return m + 720
		}
		return m
	case today:
		if m+720 <= now {
			return m + 720
		}
		return m
	}
	if m < 5*60 {
		return m + 720
	}
	return m
}
