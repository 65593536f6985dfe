package model

// Unit says what a Quantity counts, so that words can be found for it in the
// units of the person who asks.
type Unit uint8

// The units that reasons speak in.
const (
	Count Unit = iota
	Kilograms
	KilogramsPerDay
	Litres
	LitresPerDay
	Celsius
	Days
	Percent
	SquareMetres
	Centimetres
	Metres
	Money
	Kilovolts
	MegajoulesPerKg
	Ratio
	Minutes
)

// Quantity is a number with its unit.
type Quantity struct {
	Value float64
	Unit  Unit
}

// Reason is one line of the answer to "why?": a code, and what fills it.
// A code is a plain lower-case phrase joined by underscores, such as
// "last_weighed"; the catalogue of sentences has one entry for each code.
type Reason struct {
	Code  string
	Names []string   // pigs, feeders, barrels, pens, products
	On    Day        // zero where the reason speaks of no day
	Q     []Quantity // in the order the sentence takes them
}
