package reading

import "strings"

// A heading governs the lines below it: "poured" over "tues: 5 bags" and "fri: 4
// bags". unfold writes such a list out as the sentences that the person would have
// said, each with what its heading lends it, or as one where the lines are the parts
// of one fact: "sold" over "3 head" and "$900 total".

// unfold writes the lists of the text out. It leaves a list alone whose heading or
// lines are of no known kind.
func (r *reader) unfold() bool {
	if !strings.ContainsAny(r.text, "\n:=") {
		return false
	}
	f := &folding{r: r}
	lines := r.listLines()
	for n := 0; n < len(lines); {
		if end := r.writeLists(f, lines, n); end > n {
			n = end
			continue
		}
		f.endLine()
		if l := lines[n]; r.joinsLineBefore(l) && len(f.buf) > 0 {
			f.buf = f.buf[:len(f.buf)-1]
			f.lend(", ", r.toks[l.i].from)
			f.line(l)
			f.changed = true
		} else if !r.countLast(f, l) {
			f.whole(l)
		}
		n++
	}
	if !f.changed {
		return false
	}
	r.folded = f.marks
	r.planned = f.plan && len(strings.TrimSpace(string(f.buf))) == 0
	r.text = string(f.buf)
	r.plain = plain(r.text)
	return true
}

// writeLists writes out the list that line n begins and gives the line behind it; n
// where it begins none.
func (r *reader) writeLists(f *folding, lines []listLine, n int) int {
	l := lines[n]
	if l.empty() {
		return n
	}
	if n == 0 {
		if h, body := r.headBelow(lines); h.kind != headNone && r.writeList(f, h, body) {
			return len(lines)
		}
	}
	if r.writeInLine(f, l) {
		return n + 1
	}
	if n+1 >= len(lines) || lines[n+1].empty() || n > 0 && !l.label && !lines[n-1].empty() {
		return n
	}
	h, lead := r.headAtEnd(l)
	if h.kind == headNone || h.kind == headDay {
		return n
	}
	end := n + 1
	bullets := lines[end].bullet
	for end < len(lines) && !lines[end].empty() && lines[end].bullet == bullets {
		if lines[end].label && r.headingOf(lines[end]).kind != headNone {
			break
		}
		end++
	}
	if end == n+1 {
		return n // the next line heads a list of its own
	}
	if r.writeListAfter(f, lead, h, lines[n+1:end]) {
		return end
	}
	return n
}

// headAtEnd is the heading that ends a line, and what stands before it there: "both
// full; sold:".
func (r *reader) headAtEnd(l listLine) (heading, listLine) {
	if h := r.headingOf(l); h.kind != headNone {
		return h, listLine{}
	}
	for k := l.j - 1; k > l.i && k >= l.j-longestHead; k-- {
		if !r.parting(k) {
			continue
		}
		lead := listLine{i: l.i, j: k}
		if r.toks[k].kind == tokMark {
			k++
		}
		for k < l.j && (jointWords[r.toks[k].s] || r.toks[k].kind == tokMark) {
			k++
		}
		h := r.headingOf(listLine{i: k, j: l.j})
		h.line.label = l.label
		return h, lead
	}
	return heading{}, listLine{}
}

// jointWords lead from one thing to the next.
var jointWords = setOfWords([]string{"and", "but", "also", "then", "oh", "so", "plus"})

// parting says that token k ends or begins a piece of a sentence.
func (r *reader) parting(k int) bool {
	t := &r.toks[k]
	return t.kind == tokMark && (t.s == "," || t.s == ";" || t.s == "." || t.s == "!" || t.s == "?") || jointWords[t.s]
}

// writeListAfter writes a list with what stands before its heading and, where its
// last line goes on with something else, that behind it.
func (r *reader) writeListAfter(f *folding, lead listLine, h heading, body []listLine) bool {
	n, marks := len(f.buf), len(f.marks)
	f.endLine()
	if !lead.empty() {
		f.line(lead)
		f.endLine()
	}
	if r.writeList(f, h, body) {
		return true
	}
	last := body[len(body)-1]
	for k := last.i + 1; k < last.j; k++ {
		if !r.parting(k) {
			continue
		}
		cut := append(append([]listLine{}, body[:len(body)-1]...), listLine{i: last.i, j: k, bullet: last.bullet})
		if !r.writeList(f, h, cut) {
			break
		}
		for k < last.j && r.parting(k) {
			k++
		}
		f.line(listLine{i: k, j: last.j})
		f.endLine()
		return true
	}
	f.buf, f.marks = f.buf[:n], f.marks[:marks]
	return false
}

// headBelow is the recipe whose heading stands below its lines: "corn 70 / soybean
// meal 26 / thats a batch from now on".
func (r *reader) headBelow(lines []listLine) (heading, []listLine) {
	last := len(lines) - 1
	for last > 0 && lines[last].empty() {
		last--
	}
	if last < 2 {
		return heading{}, nil
	}
	if h := r.headingOf(lines[last]); h.kind == headRecipe && r.ingredientLines(lines[:last]) {
		h.verb = "batch"
		return h, lines[:last]
	}
	return heading{}, nil
}

// writeInLine writes the list whose heading is a label in its own line: "spent:
// straw 14, wormer 31". What goes on behind it is left as it is.
func (r *reader) writeInLine(f *folding, l listLine) bool {
	for at := l.i + 1; at+1 < l.j; at++ {
		if r.toks[at].s != ":" {
			continue
		}
		h, lead := r.headAtEnd(listLine{i: l.i, j: at})
		rest := listLine{i: at + 1, j: l.j}
		h.line.label = true
		switch h.kind {
		case headQuestion:
			return r.writeListAfter(f, lead, h, []listLine{rest})
		case headBarrels, headFeeders, headPens:
			p := r.listPieces(rest.i, rest.j, ";/")
			return len(p) > 1 && r.writeListAfter(f, lead, h, p)
		case headSpend:
			p := r.listPieces(rest.i, rest.j, ",;/")
			for n := len(p); n > 0; n-- {
				if !r.writeListAfter(f, lead, h, p[:n]) {
					continue
				}
				if n < len(p) {
					f.line(listLine{i: p[n].i, j: rest.j})
					f.endLine()
				}
				return true
			}
		}
		return false
	}
	return false
}

// fieldWords label what belongs to the line before: "product: ivermectin".
var fieldWords = setOfWords([]string{"product", "withdrawal", "paid", "price", "drug", "wait"})

// joinsLineBefore says that a line is but one more part of what the line before
// tells.
func (r *reader) joinsLineBefore(l listLine) bool {
	return l.i+2 < l.j && l.i > 1 && r.toks[l.i-1].kind == tokBreak && r.toks[l.i-2].kind != tokBreak && fieldWords[r.toks[l.i].s] && r.toks[l.i+1].s == ":"
}

// countedWords are counted things that a label may name before their number.
var countedWords = setOfWords([]string{"bags", "sacks", "buckets", "batches", "pails", "scoops", "bales"})

// countLast writes lines out whose pieces tell a number behind what it counts:
// "bags left in shed: 9".
func (r *reader) countLast(f *folding, l listLine) bool {
	wrote := false
	from := l.i
	for k := l.i; k+2 < len(r.toks) && k < l.j; k++ {
		if !countedWords[r.toks[k].s] || k > l.i && r.toks[k-1].kind == tokWord && !jointWords[r.toks[k-1].s] || k > l.i && r.toks[k-1].kind == tokNum {
			continue
		}
		c := k + 1
		for c < l.j && c < k+6 && r.toks[c].kind == tokWord {
			c++
		}
		if c+1 >= l.j || r.toks[c].s != ":" || r.toks[c+1].kind != tokNum || c+2 < l.j && r.toks[c+2].kind != tokMark {
			continue
		}
		if k > from {
			f.line(listLine{i: from, j: k})
			f.lend(" ", r.toks[k].from)
		}
		f.line(listLine{i: c + 1, j: c + 2})
		f.lend(" ", r.toks[k].from)
		f.line(listLine{i: k, j: c})
		from, wrote = c+2, true
	}
	if !wrote {
		return false
	}
	if from < l.j {
		f.line(listLine{i: from, j: l.j})
	}
	f.changed = true
	return true
}

// folding is the text as it is written out, with where its parts come from.
type folding struct {
	r       *reader
	buf     []byte
	marks   []foldMark
	changed bool
	plan    bool
}

// foldMark says where in the text the words from out on come from.
type foldMark struct {
	out, src int
	lent     bool
}

func (f *folding) endLine() {
	if n := len(f.buf); n > 0 && f.buf[n-1] != '\n' {
		f.buf = append(f.buf, '\n')
	}
}

// lend writes words of a heading before what stands at byte at of the text.
func (f *folding) lend(words string, at int) {
	f.marks = append(f.marks, foldMark{len(f.buf), at, true})
	f.buf = append(f.buf, words...)
}

// line writes toks of a line as they stand in the text.
func (f *folding) line(l listLine) {
	if l.empty() {
		return
	}
	from, to := f.r.toks[l.i].from, f.r.toks[l.j-1].to
	f.marks = append(f.marks, foldMark{len(f.buf), from, false})
	f.buf = append(f.buf, f.r.text[from:to]...)
}

// whole writes a line with its bullet and its colon.
func (f *folding) whole(l listLine) {
	for l.i > 0 && f.r.toks[l.i-1].kind != tokBreak {
		l.i--
	}
	for l.j < len(f.r.toks) && f.r.toks[l.j].kind != tokBreak {
		l.j++
	}
	f.line(l)
	f.buf = append(f.buf, '\n')
}

// unfolded puts the places of the entries back into the text as it was sent.
func unfolded(es []Entry, marks []foldMark) {
	back := func(p int) int {
		at := 0
		for n := range marks {
			if marks[n].out > p {
				break
			}
			at = marks[n].src
			if !marks[n].lent {
				at += p - marks[n].out
			}
		}
		return at
	}
	for k := range es {
		from, to := back(es[k].From), back(es[k].To)
		es[k].From, es[k].To = min(from, to), max(from, to)
	}
}
