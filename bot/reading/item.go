package reading

// itemKind is what an item stands for.
type itemKind uint8

const (
	itWord  itemKind = iota
	itNum            // a bare number
	itQty            // a number with its unit
	itDim            // 38x42, 50x80 ft, 6x8x0.5
	itDay            // a day, see dayExpr
	itClock          // a time of day
	itSlash          // 8/5 where it is no day: 94/71
	itFrac           // half, 3/4
	itName           // a pig of this herd, and nothing else
	itThing          // a feeder, barrel or pen of this herd
)

// Strengths of the boundary before an item.
const (
	gapNone = iota
	gapAnd
	gapComma
	gapSemi
	gapStop
)

// item is the smallest piece of the text that means something.
type item struct {
	kind   itemKind
	s      string // lower case
	from   int
	to     int
	gap    uint8
	lead   uint8 // the boundary before the small words that lead up to it
	sense  senses
	v      float64
	v2, v3 float64 // the other sides of a dimension, or the second of a pair
	unit   unitID
	clock  int // minutes after midnight
	ampm   bool
	day    dayExpr
	pig    int16 // index into reader.pigs, -1 none
	feeder int8  // index into the herd's, -1 none
	barrel int8
	pen    int8
	group  int8   // index into the herd's groups, -1 none
	canon  string // canonical name of an ingredient or a product
	either bool   // a feeder or a water barrel: the word alone does not say
	tag    bool   // a number that the text gives to a pig as its name
	stray  bool   // a number in the place of a pig's tag that no pig has
	near   bool   // a near-miss spelling of a herd's name
	alike  bool   // letters that only look like those of a pig's name; near as well
	init   bool   // an initial
	bent   bool   // a plain word taken for a pig's name
	approx bool
	soft   bool // "one", "a": a number only where nothing else is
	plus   bool // +3
	minus  bool
	ord    bool // 5th
	label  bool // a colon follows
	rng    bool // a range, v to v2
	capital,
	upper bool
	known bool // in a lexicon
	used  bool // a frame took meaning from it
	quest bool // stands in a question
}

func (it *item) is(s sense) bool { return it.sense.has(s) }

func (it *item) isAny(s senses) bool { return it.sense.any(s) }

// number reports whether the item is a plain number or one with a unit.
func (it *item) number() bool { return it.kind == itNum || it.kind == itQty }

func (it *item) dim() dimension {
	if it.kind == itQty || it.kind == itDim || it.kind == itFrac {
		return it.unit.dim()
	}
	return noDimension
}

// qty reports whether the item is an amount of the dimension.
func (it *item) qty(d dimension) bool { return it.kind == itQty && it.unit.dim() == d }

// si is the item's value in its unit's SI unit.
func (it *item) si() float64 { return it.unit.si(it.v) }
