package reading

import (
	"slices"
	"strings"
	"sync"

	"troughbell/model"
)

// reader reads one text. Its slices are kept from text to text.
type reader struct {
	c     Context
	text  string
	plain string // the text in lower case, without signs at its ends
	lex   *lexicon
	pigs  []*model.Animal // the living first, then those gone
	alive int             // how many of pigs live
	names []herdName
	// nameStarts are the bytes that the names, and the other words for their sizes, begin with.
	nameStarts byteSet
	heard      []heardWord // the words of the names, nil until a text needs them
	// plainNames says that the pigs' names are of ASCII alone.
	plainNames bool
	today      model.Day
	nowMin     int
	units      string // model.US or model.Metric
	dayFirst   bool
	sexTable   bool // "m" and "f" behind names are sexes

	toks  []token
	items []item
	force []uint8
	bias  [numFrames]float32

	feats         []feature
	idle, foreign float32
	weights       [numFrames]weight
	voted         uint64 // the frames that have a weight
	beam, next    beam
	trail         []hypothesis
	spans         []span

	out  []Entry // kept from text to text, so that a reading gets a copy
	left []string

	parts     []span // of the span in hand, by its days
	saidOf    span   // what saidWords are the words of
	saidWords string

	day            carriedDay
	denied         float64               // a number denied behind the right one, 0 none
	lent           int                   // the item of a later day that holds for the span in hand, or noLentDay
	carry          [numDimensions]unitID // the unit last used, by dimension
	subject        []int16               // the pigs last spoken of
	subjAll        bool
	spoken         map[int16]bool // pigs that have an entry in this text
	judge          judge
	setUp          setUpState
	answered       bool
	priceFirst     bool          // of a list of purchases the first named its price first
	asking         []span        // what asks beyond doubt
	soft           []int         // where questions begin that nothing but a topic speaks for
	longestTag     int           // how many digits the longest of the pigs' numbers has, 0 none
	pairs          []tagPair     // of two pigs' numbers, one of which is a weight
	folded         []foldMark    // where the parts of a list written out come from
	planned        bool          // the text is but a list of what is to be done
	part           bool          // the text is a part of one that is being read
	put            []putWord     // words read in the place of others
	corrections    [4]correction // of the last words looked up
	lastCorrection int
	guesses        int        // how many unknown words were looked at for a slip
	crate          emptyCrate // told in a sentence of its own
	excluded       int16      // the one pig last told to be left out, by its number in pigs and one
	settled        []span     // sentences whose frame is known
	sharedTo       int        // up to here it is told where went what was mixed before, 0 none
	skip           int        // an item that an earlier span has accounted for, 0 none
}

type carriedDay struct {
	day    model.Day
	minute *int
	dated  bool
	ok     bool
	frame  frame // what was told of it
	many   bool  // of a list of days it is the last
	tail   bool  // it stood behind what it is the day of
}

var readers = sync.Pool{New: func() any { return &reader{spoken: map[int16]bool{}} }}

func newReader(c Context, text string) *reader {
	r := readers.Get().(*reader)
	if c.Herd == nil {
		c.Herd = model.Fold(nil)
	}
	r.c, r.text, r.plain, r.lex = c, text, plain(text), words()
	r.today, r.nowMin = model.DayOf(c.Now), model.MinuteOf(c.Now)
	r.pigs = append(r.pigs[:0], c.Herd.Alive(r.today)...)
	r.alive = len(r.pigs)
	for _, a := range c.Herd.Animals {
		if a.Gone != nil && a.Gone.On <= r.today {
			r.pigs = append(r.pigs, a)
		}
	}
	r.names, r.heard = herdNames(c.Herd, r.pigs), nil
	r.plainNames = !slices.ContainsFunc(r.pigs, func(a *model.Animal) bool { return !plainLetters(a.Name) })
	r.longestTag, r.pairs = 0, r.pairs[:0]
	r.nameStarts = byteSet{}
	for k := range r.names {
		h := &r.names[k]
		if h.tag {
			r.longestTag = max(r.longestTag, len(h.words[0]))
		}
		r.nameStarts.add(h.words[0][0])
		if h.sized {
			r.nameStarts.addAll(sizeStarts)
		}
	}
	r.toks, r.items, r.force = r.toks[:0], r.items[:0], r.force[:0]
	r.put = nil
	r.bias = [numFrames]float32{}
	r.out, r.left = r.out[:0], nil
	r.day, r.lent, r.denied = carriedDay{}, noLentDay, 0
	r.carry = [numDimensions]unitID{}
	r.subject, r.subjAll = r.subject[:0], false
	clear(r.spoken)
	r.judge = herdJudge{c.Herd}
	r.setUp = setUpState{}
	r.answered = false
	r.guesses, r.excluded = 0, 0
	r.settled = r.settled[:0]
	r.crate = emptyCrate{}
	r.skip, r.sharedTo, r.part, r.priceFirst, r.sexTable = 0, 0, false, false, false
	r.folded, r.planned = nil, false
	r.soft = r.soft[:0]
	return r
}

// done gives the reader's slices back for the next text.
func (r *reader) done() {
	r.c, r.text, r.plain, r.names, r.heard, r.left, r.judge = Context{}, "", "", nil, nil, nil, nil
	clear(r.out[:cap(r.out)])
	r.saidOf, r.saidWords = span{}, ""
	clear(r.corrections[:])
	clear(r.pigs)
	clear(r.toks)
	clear(r.items)
	r.setUp = setUpState{}
	readers.Put(r)
}

// tokenize scans the text and settles whose units and whose order of dates it
// is in.
func (r *reader) tokenize() {
	h := r.c.Herd
	r.units = h.Units
	metric := h.Units == model.Metric
	r.toks = scan(r.toks, r.text, metric)
	r.putWords()
	us, si := r.unitsSeen()
	switch {
	case h.Units == "" && (si > us || us == 0 && zoneIsMetric(h.Zone)):
		r.units = model.Metric
	case h.Units == "":
		r.units = model.US
	}
	r.dayFirst = r.units == model.Metric && us == 0 || si > 0 && us == 0
	if r.units == model.Metric && !metric || r.dayFirst != metric {
		r.toks = scan(r.toks, r.text, r.dayFirst)
		r.putWords()
	}
	r.shouted()
	for i := range r.toks {
		if s := r.toks[i].s; (s == "m" || s == "f") && i > 0 && r.toks[i-1].kind == tokWord {
			r.sexTable = true
		}
	}
}

// putWords reads other words in the place of those that may not have been meant.
func (r *reader) putWords() {
	for _, p := range r.put {
		for i := range r.toks {
			if r.toks[i].from == p.from {
				r.toks[i].s = p.s
				break
			}
		}
	}
}

// shouted takes the capitals of a text that has no small letters for none, so
// that they tell nothing. Letters that stand alone may still be initials.
func (r *reader) shouted() {
	for i := range r.toks {
		if t := &r.toks[i]; t.kind == tokWord && t.to-t.from > 1 && !t.upper {
			return
		}
	}
	for i := range r.toks {
		if t := &r.toks[i]; t.upper {
			t.capital, t.upper = false, false
		}
	}
}

func zoneIsMetric(zone string) bool {
	return zone != "" && zone != "UTC" && !strings.HasPrefix(zone, "America/") && !strings.HasPrefix(zone, "US/") && zone != "Pacific/Honolulu" && zone != "Local"
}

// unitsSeen counts the words for units of either kind in the text.
func (r *reader) unitsSeen() (us, si int) {
	for i := range r.toks {
		t := &r.toks[i]
		if t.s == "#" && i > 0 && r.toks[i-1].kind == tokNum && !t.spaced {
			us++
		}
		if t.kind != tokWord {
			continue
		}
		m := r.lex.of[t.s]
		if m == nil {
			continue
		}
		if m.sense.has(sMetric) {
			si++
		}
		if m.unit == 0 || i == 0 || r.toks[i-1].kind != tokNum && r.toks[i-1].kind != tokSlash && r.lex.of[r.toks[i-1].s] == nil {
			continue
		}
		switch m.unit.dim() {
		case mass, length, volume, area, temperature:
			switch {
			case m.unit == unitDegree, t.s == "in" && t.spaced, t.s == "m", t.s == "f" && t.spaced, t.s == "c" && t.spaced, m.unit.name() == "tonne", m.unit.name() == "short ton":
			case m.unit.metric():
				si++
			default:
				us++
			}
		}
	}
	return us, si
}

// massUnit is the unit of a bare weight.
func (r *reader) massUnit() unitID {
	if u := r.carry[mass]; u != 0 {
		return u
	}
	if r.units == model.Metric {
		return unitKg
	}
	return unitLb
}

// lengthUnit is the unit of a bare girth or length of a pig.
func (r *reader) lengthUnit() unitID {
	if u := r.carry[length]; u == unitIn || u == unitCm {
		return u
	}
	if r.units == model.Metric {
		return unitCm
	}
	return unitIn
}

func (r *reader) volumeUnit() unitID {
	if u := r.carry[volume]; u != 0 {
		return u
	}
	if r.units == model.Metric {
		return unitL
	}
	return unitGal
}

// noteUnits lets the units of a span hold for the bare numbers after it.
func (r *reader) noteUnits(i, j int) {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itQty || it.kind == itDim && it.unit != 0 {
			r.carry[it.unit.dim()] = it.unit
		}
	}
}

// unitsAhead lets the units that items[i:j] begin with hold for their bare numbers:
// "corn 75 kg, soybean meal 13.5".
func (r *reader) unitsAhead(i, j int) {
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itNum && !it.soft && !it.ord, it.kind == itDim && it.unit == 0:
			return
		case it.kind == itQty && (it.unit.dim() == mass || it.unit.dim() == volume || it.unit.dim() == length):
			r.carry[it.unit.dim()] = it.unit
		}
	}
}

// emit records what a fact frame found.
func (r *reader) emit(act Act, s span) *Entry {
	on, minute, dated := r.when(s, lookBack)
	return r.emitOn(act, s, on, minute, dated)
}

func (r *reader) emitOn(act Act, s span, on model.Day, minute *int, dated bool) *Entry {
	e := Entry{Act: act, On: on, Minute: minute, Dated: dated}
	e.From, e.To = r.bytes(s)
	r.out = append(r.out, e)
	return &r.out[len(r.out)-1]
}

// bytes is the place of a span in the text.
func (r *reader) bytes(s span) (from, to int) {
	if s.i >= s.j || len(r.items) == 0 {
		return 0, len(r.text)
	}
	return r.items[s.i].from, r.items[s.j-1].to
}

// draft makes an entry that is not recorded yet.
func (r *reader) draft(act Act, s span) Entry {
	on, minute, dated := r.when(s, lookBack)
	e := Entry{Act: act, On: on, Minute: minute, Dated: dated}
	e.From, e.To = r.bytes(s)
	return e
}

func (r *reader) clarify(c Clarify, s span) {
	if len(c.Choices) > 4 {
		c.Choices = c.Choices[:4]
	}
	r.emit(c, s)
}

func (r *reader) none(reason string, s span) { r.emit(None{Reason: reason}, s) }

// when is the day and the time of day that a span's facts belong to. Without
// any of its own the day said before in the text still holds.
func (r *reader) when(s span, l look) (model.Day, *int, bool) {
	day, dated, part := r.today, false, partNone
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every || k > s.i && r.items[k-1].s == "since" && (s.frame == fFeed || s.frame == fWater) {
			continue
		}
		if d, ok := it.day.on(r.today, l, r.dayFirst); ok {
			day, dated, part = d, true, it.day.part
			it.used = true
			break
		}
	}
	if !dated && r.lent >= 0 && l == lookBack {
		if d, ok := r.items[r.lent].day.on(r.today, l, r.dayFirst); ok {
			day, dated, part = d, true, r.items[r.lent].day.part
		}
	}
	var minute *int
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itClock && !(k > 0 && (r.items[k-1].s == "before" || r.items[k-1].s == "after") && r.items[k].gap == gapNone) { // "before noon" tells no hour
			minute = model.Int(settleClock(it.clock, it.ampm, part, day == r.today, r.nowMin, l))
			it.used = true
			break
		}
	}
	if !dated && r.day.ok && l == lookBack && !(r.day.many && r.day.frame != s.frame && s.i > 0 && r.items[s.i].gap >= gapComma) && !(r.day.tail && r.day.frame != s.frame && !r.rightAfter(s)) {
		day, dated = r.day.day, r.day.dated
		if minute == nil && r.day.minute != nil {
			minute = r.day.minute
		}
	}
	return day, minute, dated
}

// keepDay lets the day and time of a span hold for what follows: for all of it
// where they stand at its head ("yesterday moved all to oak, 3 bags in north"),
// else for more of the same ("moved all to oak yesterday, 3 bags in north").
func (r *reader) keepDay(s span) {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && !it.day.every || it.kind == itClock {
			was := r.day
			day, minute, dated := r.when(s, lookBack)
			r.day = carriedDay{day, minute, dated, true, s.frame, was.ok && was.frame == s.frame && s.frame != fIdle && was.day != day, !strings.HasPrefix(r.text[it.to:], ":") && r.behindWords(s, k)}
			return
		}
	}
}

// rightAfter says that the sentence of a span tells what was done on the same
// occasion as what was told before.
func (r *reader) rightAfter(s span) bool {
	if s.i < r.sharedTo && r.day.frame == fMixed {
		return true
	}
	for k := max(s.i-3, 0); k < r.clauseEnd(s.j-1); k++ {
		w := r.items[k].s
		if w == "after" && k > 0 && (r.items[k-1].s == "right" || r.items[k-1].s == "straight" || r.items[k-1].s == "just") {
			return true
		}
		switch w {
		case "right after", "straight after", "after that", "afterwards", "afterward", "right then", "then", "and then", "same day", "same time", "the same day", "at the same time", "same evening", "same night", "while i was at it", "while at it", "while i was there", "as well", "right afterwards":
			return true
		}
	}
	return false
}

// behindWords says that something of the span that is told stands before item k.
func (r *reader) behindWords(s span, k int) bool {
	for n := s.i; n < k; n++ {
		if it := &r.items[n]; it.kind != itDay && it.kind != itClock && !it.is(sFiller) && !it.isAny(setOf(sFrom, sOn, sAt, sBy, sPronoun, sNow)) {
			return true
		}
	}
	return false
}

// has reports whether an item of the span has the sense.
func (r *reader) has(s span, x sense) bool { return r.find(s, x) >= 0 }

func (r *reader) find(s span, x sense) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(x) {
			return k
		}
	}
	return -1
}

// firstQty finds the first amount of a dimension, -1 if none.
func (r *reader) firstQty(s span, d dimension) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].qty(d) {
			return k
		}
	}
	return -1
}

// firstNum finds the first bare number, -1 if none.
func (r *reader) firstNum(s span) int {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && !it.soft && !it.used {
			return k
		}
	}
	return -1
}

// words of the span, as they stand in the text.
func (r *reader) quote(i, j int) string {
	if i >= j {
		return ""
	}
	return strings.TrimSpace(r.text[r.items[i].from:r.items[j-1].to])
}
