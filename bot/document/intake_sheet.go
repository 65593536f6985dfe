package document

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	encoding "golang.org/x/text/encoding/unicode"
)

// sheet is a table as it stands in a file: its columns and its lines, nothing made
// of them yet.
type sheet struct {
	name  string
	comma rune
	cols  []string // as the head calls them, in lower case
	heads []string // as they stand
	lines []sheetLine
	nums  numberStyle
	dates dateStyle
}

type sheetLine struct {
	number int
	cells  []string
}

// headPeek is how much of a file is looked at for its head, in bytes.
const headPeek = 64 << 10

// sheet reads one table.
func (in *intake) sheet(name string, r io.Reader) error {
	if kind, known := kindOf(name); known && ours(kind) {
		return nil
	}
	s, err := in.lines(name, r)
	if err != nil {
		return err
	}
	if len(s.lines) == 0 {
		return nil
	}
	kind, known := kindOf(s.name)
	switch {
	case known && (s.has(recordColumn) || s.has(dayColumn)):
		in.table(s, kind)
		return nil
	case s.has(recordColumn):
		in.table(s, "")
		return nil
	}
	return in.weights(s)
}

// lines takes a file apart into cells.
func (in *intake) lines(name string, from io.Reader) (*sheet, error) {
	r := decoded(bufio.NewReaderSize(from, headPeek))
	s := &sheet{name: name, comma: ','}
	seen, err := r.Peek(headPeek)
	switch {
	case err != nil && !errors.Is(err, io.EOF):
		return nil, in.broken(name, err)
	case bytes.IndexByte(seen, 0) >= 0: // a picture, or the like
		return nil, unreadable("no_text", name)
	}
	comma, skipped := separator(r, seen)
	s.comma = comma
	c := csv.NewReader(r)
	c.Comma, c.FieldsPerRecord = comma, -1
	first := true
	for {
		cells, err := c.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, in.broken(name, err)
		}
		line, _ := c.FieldPos(0)
		line += skipped
		switch {
		case len(cells) > maxColumns:
			return nil, unreadable("columns", name)
		case !first && len(s.lines) >= maxRows-in.rows:
			return nil, unreadable("rows")
		}
		for _, cell := range cells {
			switch {
			case len(cell) > maxCell:
				return nil, unreadable("cell", name, strconv.Itoa(line))
			case strings.ContainsRune(cell, 0):
				return nil, unreadable("no_text", name)
			case !utf8.ValidString(cell):
				return nil, unreadable("encoding", name)
			}
		}
		if blank(cells) {
			continue
		}
		if first {
			if err := s.head(cells); err != nil {
				return nil, err
			}
			first = false
			continue
		}
		if in.cells += len(cells); in.cells > maxCells {
			return nil, unreadable("cells", name)
		}
		s.lines = append(s.lines, sheetLine{number: line, cells: cells})
	}
	if first {
		return nil, unreadable("no_rows")
	}
	in.rows += len(s.lines)
	return s, nil
}

func (in *intake) broken(name string, err error) error {
	var p *csv.ParseError
	if errors.As(err, &p) {
		return unreadable("quote", name, strconv.Itoa(p.StartLine))
	}
	if in.out.Whole {
		return unreadable("zip_broken")
	}
	return unreadable("encoding", name)
}

// head takes the names of the columns.
func (s *sheet) head(cells []string) error {
	for len(cells) > 0 && strings.TrimSpace(cells[len(cells)-1]) == "" {
		cells = cells[:len(cells)-1]
	}
	for _, c := range cells {
		c = strings.TrimSpace(c)
		low := strings.ToLower(c)
		if low != "" && slices.Contains(s.cols, low) {
			return unreadable("column_twice", s.name, shown(c))
		}
		s.heads, s.cols = append(s.heads, c), append(s.cols, low)
	}
	return nil
}

func (s *sheet) has(col string) bool { return slices.Contains(s.cols, col) }

// cell is what a line has in a column; empty where it has nothing.
func (s *sheet) cell(l sheetLine, col string) string {
	i := slices.Index(s.cols, col)
	if i < 0 || i >= len(l.cells) {
		return ""
	}
	return l.cells[i]
}

// wide reports whether a line has more cells than the head has names: then it is
// not certain which belongs where.
func (s *sheet) wide(l sheetLine) bool {
	return len(l.cells) > len(s.cols) && !blank(l.cells[len(s.cols):])
}

func blank(cells []string) bool {
	return !slices.ContainsFunc(cells, func(c string) bool { return strings.TrimSpace(c) != "" })
}

// decoded takes the mark off the beginning of a text, and brings UTF-16, which a
// spreadsheet calls Unicode text, to UTF-8.
func decoded(r *bufio.Reader) *bufio.Reader {
	mark, _ := r.Peek(3) // a file shorter than that has no mark
	switch {
	case bytes.Equal(mark, []byte("\xef\xbb\xbf")):
		_, _ = r.Discard(3) // they were there to be looked at
	case bytes.HasPrefix(mark, []byte("\xff\xfe")), bytes.HasPrefix(mark, []byte("\xfe\xff")):
		d := encoding.UTF16(encoding.BigEndian, encoding.UseBOM).NewDecoder()
		return bufio.NewReaderSize(d.Reader(r), headPeek)
	}
	return r
}

// separator finds what stands between the cells: what a first line "sep=;" says, which
// is then skipped, else the sign that the head has most of.
func separator(r *bufio.Reader, seen []byte) (comma rune, skipped int) {
	if said, _, ok := bytes.Cut(seen, []byte("\n")); ok {
		said = bytes.TrimRight(said, "\r")
		if len(said) == 5 && bytes.EqualFold(said[:4], []byte("sep=")) && strings.IndexByte(",;\t", said[4]) >= 0 {
			_, _ = r.Discard(bytes.IndexByte(seen, '\n') + 1) // they were there to be looked at
			return rune(said[4]), 1
		}
	}
	count := map[rune]int{}
	quoted := false
	for _, b := range bytes.TrimLeft(seen, "\r\n") {
		if b == '"' {
			quoted = !quoted
		}
		if b == '\n' && !quoted {
			break
		}
		if !quoted {
			count[rune(b)]++
		}
	}
	best := ','
	for _, c := range ";\t" {
		if count[c] > count[best] {
			best = c
		}
	}
	return best, 0
}

// shown is a cell as it may be quoted.
func shown(s string) string {
	const most = 30
	s = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return ' '
		}
		return r
	}, strings.TrimSpace(s))
	if r := []rune(s); len(r) > most {
		s = string(r[:most]) + "…"
	}
	return s
}
