package reading

// Numbers in a row say by their row what they are: "411 190, 413 196" is a pig and
// its weight twice over, "501 502 503 weigh 251 244 239" first the pigs and then
// what each weighs. A row is settled as a whole, before its numbers are looked at
// one by one.

// numberRow is a run of plain numbers with nothing between them but small joints
// and units.
type numberRow struct {
	at     []int  // the numbers' tokens
	parted []bool // a comma, an "and" or the end of a line stands before it
	end    int    // the token behind it
}

// tagRows settles the numbers of rows that are pigs, and those that are amounts.
func (r *reader) tagRows() {
	r.labelledRange()
	r.weighedRanges()
	for i := 0; i < len(r.toks); {
		row := r.rowAt(i)
		if len(row.at) == 0 {
			i++
			continue
		}
		labelled := r.told(row.at[0]) // "185: 186, 187: 175"
		i = row.end
		if r.pairsOf(row) || labelled || len(row.at) < 2 || !r.allTags(row) {
			continue
		}
		if r.atTheButcher(row.end) {
			for _, k := range row.at {
				r.toks[k].tag = tagPig
			}
			continue
		}
		values := r.valuesBehind(row)
		if len(values.at) < 2 || values.end < len(r.toks) && labelMark(r.toks[values.end].s) {
			continue
		}
		for _, k := range row.at {
			r.toks[k].tag = tagPig
		}
		for _, k := range values.at {
			r.toks[k].amount = true
		}
		i = values.end
	}
}

// labelledRange settles a range of pigs of small numbers with a number behind it for
// each: "1-4: 226 221 238 214".
func (r *reader) labelledRange() {
	for i := 0; i+3 < len(r.toks); i++ {
		from, to := &r.toks[i], &r.toks[i+2]
		if from.kind != tokNum || !rangeWord(r.toks[i+1].s) || to.kind != tokNum || !labelMark(r.toks[i+3].s) || !r.isLiving(from.s) || !r.isLiving(to.s) || to.v <= from.v {
			continue
		}
		values := r.rowAt(i + 4)
		if float64(len(values.at)) != to.v-from.v+1 {
			continue
		}
		from.tag, to.tag = tagPig, tagPig
		for _, k := range values.at {
			r.toks[k].amount = true
		}
	}
}

// weighedRanges settles a range of pigs that begins a line or a clause, with what they
// weigh behind it, which may be a number that a pig is called by too: "206-209 about
// 208".
func (r *reader) weighedRanges() {
	seen := false
	for i := 0; i+3 < len(r.toks); i++ {
		from, to := &r.toks[i], &r.toks[i+2]
		if from.kind != tokNum || to.kind != tokNum || !rangeWord(r.toks[i+1].s) || to.v <= from.v || !r.bigTagAt(i) || !r.bigTagAt(i+2) {
			continue
		}
		if i > 0 && r.toks[i-1].kind != tokBreak && !r.parting(i-1) {
			continue
		}
		k := i + 3
		for k < len(r.toks) && k < i+3+rowReach && r.leadsToWeight(k) {
			k++
		}
		if k >= len(r.toks) || r.toks[k].kind != tokNum || r.toks[k].decimals > 1 || r.toks[k].v < bigTag {
			continue
		}
		if end := k + 1; end < len(r.toks) && r.toks[end].kind != tokBreak && !r.parting(end) && r.unitAt(end).dim() != mass && r.toks[end].s != "each" {
			continue
		}
		if k == i+3 && !seen && r.bigTagAt(k) { // "201-203 206" may be four pigs
			continue
		}
		seen = true
		from.tag, to.tag, r.toks[k].amount = tagPig, tagPig, true
	}
}

// leadsToWeight says that the word at token k may stand between pigs and what they
// weigh.
func (r *reader) leadsToWeight(k int) bool {
	t := &r.toks[k]
	if labelMark(t.s) || t.s == "~" {
		return true
	}
	if t.kind != tokWord {
		return false
	}
	m := r.lex.of[t.s]
	return r.weighWord(k) || m != nil && m.sense.any(setOf(sFiller, sAbout, sIs, sNow, sAll, sEach, sWeigh))
}

// atTheButcher says that a butcher stands right behind the row that ends at token k:
// "dropped 411 413 and 415 at the butcher".
func (r *reader) atTheButcher(k int) bool {
	if k < len(r.toks) && r.toks[k].s == "off" {
		k++
	}
	if k+1 >= len(r.toks) || r.toks[k].s != "at" && r.toks[k].s != "to" {
		return false
	}
	if r.toks[k+1].s == "the" {
		k++
	}
	if k+1 >= len(r.toks) {
		return false
	}
	m := r.lex.of[r.toks[k+1].s]
	return m != nil && m.sense.has(sButcher)
}

// labelMark says that a mark stands between a pig and its number.
func labelMark(s string) bool { return s == ":" || s == "=" || s == "@" }

// told says that the number at token k is what a pig before it weighs: "196 weighs
// 196".
func (r *reader) told(k int) bool {
	if k == 0 || labelMark(r.toks[k-1].s) {
		return k > 0
	}
	s := r.toks[k-1].s
	return k > 1 && r.toks[k-2].kind == tokNum && (s == "is" || s == "at" || r.weighWord(k-1))
}

// weighWord says that the word at token k leads up to what pigs weigh or measure.
func (r *reader) weighWord(k int) bool {
	t := &r.toks[k]
	if t.kind != tokWord {
		return false
	}
	if tellsWeight[t.s] || t.s == "are" || t.s == "were" || t.s == "respectively" {
		return true
	}
	m := r.lex.of[t.s]
	return m != nil && m.sense.any(setOf(sWeigh, sGirth, sTape, sHung, sPackaged)) && !m.sense.has(sGain)
}

// rowAt is the row that begins at token i.
func (r *reader) rowAt(i int) numberRow {
	row := numberRow{}
	parted := false
	for k := i; k < len(r.toks); k++ {
		t := &r.toks[k]
		switch {
		case t.kind == tokNum && !t.ordinal && t.tag == noTag && !t.amount:
			row.at, row.parted = append(row.at, k), append(row.parted, parted)
			row.end, parted = k+1, false
		case len(row.at) == 0:
			return numberRow{}
		case t.kind == tokBreak || t.s == "," || t.s == ";" || t.s == "and" || t.s == "&" || t.s == "n" && t.spaced:
			parted = true
		case t.s == "-" && !t.spaced && k+1 < len(r.toks) && !r.toks[k+1].spaced && len(row.at) > 0: // a range: "201-203"
		case r.toks[k-1].kind == tokNum && t.kind == tokWord && (r.unitAt(k).dim() == mass || r.unitAt(k).dim() == length):
			row.end = k + 1
		case t.s == "#" && !parted:
			row.end = k + 1
		default:
			return row
		}
	}
	return row
}

// pairsOf settles a row of pigs each with an amount behind it: the parts between
// its commas are pairs that begin with a tag, or, where no comma parts it, every
// other number is one.
func (r *reader) pairsOf(row numberRow) bool {
	n := len(row.at)
	if n < 4 || n%2 != 0 {
		return false
	}
	commas := false
	for k := 1; k < n; k++ {
		commas = commas || row.parted[k]
	}
	slip := -1
	for k := 0; k < n; k += 2 {
		if !r.bigTagAt(row.at[k]) && slip < 0 && n > 4 && r.tagSlip(row.at[k]) && r.toks[row.at[k+1]].v >= bigTag {
			slip = k
		}
		if !r.bigTagAt(row.at[k]) && slip != k || row.parted[k+1] || k > 0 && commas && !row.parted[k] {
			return false
		}
		if !commas && r.bigTagAt(row.at[k+1]) { // which of the two is the pig is asked elsewhere
			return false
		}
		for m := 0; m < k; m += 2 {
			if r.toks[row.at[m]].s == r.toks[row.at[k]].s {
				return false
			}
		}
	}
	for k := 0; k < n; k += 2 {
		r.toks[row.at[k]].tag, r.toks[row.at[k+1]].amount = tagPig, true
	}
	if slip >= 0 {
		r.toks[row.at[slip]].tag = tagStray
	}
	return true
}

// tagSlip says that the number at token i is a pig's with a digit too few or too many,
// so that it stands for none: "41" for one of 411 to 419.
func (r *reader) tagSlip(i int) bool {
	s := r.toks[i].s
	if r.toks[i].decimals > 0 || len(s) < 2 {
		return false
	}
	for k := range r.names {
		h := &r.names[k]
		if h.tag && int(h.pig) < r.alive && len(h.words[0]) > 2 && len(h.words[0]) != len(s) && distance(s, h.words[0]) == 1 {
			return true
		}
	}
	return false
}

// bigTagAt says that a living pig is called by the number at token i, which is too
// high to count anything.
func (r *reader) bigTagAt(i int) bool {
	t := &r.toks[i]
	return t.v >= bigTag && t.decimals == 0 && r.isLiving(t.s)
}

// allTags says that each number of a row is another living pig's.
func (r *reader) allTags(row numberRow) bool {
	for n, k := range row.at {
		if !r.bigTagAt(k) {
			return false
		}
		for _, m := range row.at[:n] {
			if r.toks[m].s == r.toks[k].s {
				return false
			}
		}
	}
	return true
}

// rowReach is how many words may stand between pigs and what they weigh.
const rowReach = 5

// valuesBehind is the row of what the pigs of a row weigh or measure, which words of
// weighing or a colon lead up to.
func (r *reader) valuesBehind(row numberRow) numberRow {
	told := false
	for k := row.end; k < len(r.toks) && k < row.end+rowReach; k++ {
		t := &r.toks[k]
		m := r.lex.of[t.s]
		switch {
		case t.kind == tokNum:
			if !told {
				return numberRow{}
			}
			return r.rowAt(k)
		case labelMark(t.s):
			told = true
		case r.weighWord(k):
			told = true
		case t.kind == tokWord && m != nil && m.sense.any(setOf(sFiller, sAbout, sIs, sNow)):
		default:
			return numberRow{}
		}
	}
	return numberRow{}
}
