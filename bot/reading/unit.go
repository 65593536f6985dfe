package reading

// dimension is what a unit measures.
type dimension uint8

const (
	noDimension dimension = iota
	mass                  // kilograms
	length                // metres
	volume                // litres
	area                  // square metres
	temperature           // degrees Celsius
	days
	hours
	voltage // kilovolts
	percent
	vessel // bags, buckets, batches: their size is the herd's own
	money
	nippleCount
	head   // a count of pigs
	stones // taken nowhere
	numDimensions
)

// unit is one way to say a quantity. A value v of it is v*factor+offset in the
// SI unit of its dimension.
type unit struct {
	name   string
	dim    dimension
	factor float64
	offset float64
	metric bool
}

// Exact by definition: the international pound and inch, the US gallon.
const (
	kgPerLb  = 0.45359237
	mPerIn   = 0.0254
	lPerGal  = 3.785411784
	m2PerFt2 = 0.3048 * 0.3048
)

var units = []unit{
	{},
	{"lb", mass, kgPerLb, 0, false},
	{"kg", mass, 1, 0, true},
	{"g", mass, 0.001, 0, true},
	{"oz", mass, kgPerLb / 16, 0, false},
	{"short ton", mass, 2000 * kgPerLb, 0, false},
	{"tonne", mass, 1000, 0, true},
	{"hundredweight", mass, 100 * kgPerLb, 0, false},
	{"in", length, mPerIn, 0, false},
	{"ft", length, 12 * mPerIn, 0, false},
	{"yd", length, 36 * mPerIn, 0, false},
	{"cm", length, 0.01, 0, true},
	{"m", length, 1, 0, true},
	{"mm", length, 0.001, 0, true},
	{"gal", volume, lPerGal, 0, false},
	{"qt", volume, lPerGal / 4, 0, false},
	{"pt", volume, lPerGal / 8, 0, false},
	{"l", volume, 1, 0, true},
	{"ml", volume, 0.001, 0, true},
	{"m3", volume, 1000, 0, true},
	{"sq ft", area, m2PerFt2, 0, false},
	{"m2", area, 1, 0, true},
	{"acre", area, 43560 * m2PerFt2, 0, false},
	{"ha", area, 10000, 0, true},
	{"F", temperature, 5.0 / 9, -32 * 5.0 / 9, false},
	{"C", temperature, 1, 0, true},
	{"degree", temperature, 1, 0, true}, // of the herd's scale
	{"day", days, 1, 0, true},
	{"week", days, 7, 0, true},
	{"month", days, 30, 0, true},
	{"hour", hours, 1, 0, true},
	{"minute", hours, 1.0 / 60, 0, true},
	{"kV", voltage, 1, 0, true},
	{"V", voltage, 0.001, 0, true},
	{"%", percent, 1, 0, true},
	{"bag", vessel, 1, 0, true},
	{"sack", vessel, 1, 0, true},
	{"bucket", vessel, 1, 0, true},
	{"scoop", vessel, 1, 0, true},
	{"batch", vessel, 1, 0, true},
	{"pail", vessel, 1, 0, true},
	{"can", vessel, 1, 0, true},
	{"bale", vessel, 1, 0, true},
	{"USD", money, 1, 0, false},
	{"EUR", money, 1, 0, true},
	{"GBP", money, 1, 0, true},
	{"CHF", money, 1, 0, true},
	{"CAD", money, 1, 0, true},
	{"AUD", money, 1, 0, true},
	{"NZD", money, 1, 0, true},
	{"SEK", money, 1, 0, true},
	{"DKK", money, 1, 0, true},
	{"NOK", money, 1, 0, true},
	{"PLN", money, 1, 0, true},
	{"PHP", money, 1, 0, true},
	{"MXN", money, 1, 0, true},
	{"INR", money, 1, 0, true},
	{"ZAR", money, 1, 0, true},
	{"CZK", money, 1, 0, true},
	{"HUF", money, 1, 0, true},
	{"nipple", nippleCount, 1, 0, true},
	{"stone", stones, 1, 0, false},
}

// unitID is the place of a unit in units; 0 is none.
type unitID uint8

// The units that the code itself speaks of.
var (
	unitLb     = mustUnit("lb")
	unitKg     = mustUnit("kg")
	unitIn     = mustUnit("in")
	unitCm     = mustUnit("cm")
	unitFt     = mustUnit("ft")
	unitM      = mustUnit("m")
	unitGal    = mustUnit("gal")
	unitL      = mustUnit("l")
	unitF      = mustUnit("F")
	unitC      = mustUnit("C")
	unitDegree = mustUnit("degree")
	unitDay    = mustUnit("day")
	unitHour   = mustUnit("hour")
	unitMinute = mustUnit("minute")
	unitWeek   = mustUnit("week")
	unitMonth  = mustUnit("month")
	unitV      = mustUnit("V")
	unitPct    = mustUnit("%")
	unitBatch  = mustUnit("batch")
	unitBag    = mustUnit("bag")
	unitBale   = mustUnit("bale")
	unitStone  = mustUnit("stone")
	unitNipple = mustUnit("nipple")
)

func mustUnit(name string) unitID {
	if u := unitNamed(name); u != 0 {
		return u
	}
	panic("reading: no unit " + name)
}

// unitNamed is the unit of that name, 0 if there is none.
func unitNamed(name string) unitID {
	for i, u := range units {
		if u.name == name {
			return unitID(i)
		}
	}
	return 0
}

// unitWords lists the ways each unit is written.
var unitWords = []struct{ unit, words string }{
	{"lb", "lb, lbs, pound, pounds, pnd, pnds, punds, ponds, poud, pouns, lb's, pds, libs"},
	{"kg", "kg, kgs, kilo, kilos, kilogram, kilograms, kilogramm, kilogrammes, kgm"},
	{"g", "grams, gram, gr"},
	{"oz", "oz, ounce, ounces"},
	{"short ton", "ton, tons"},
	{"tonne", "tonne, tonnes"},
	{"hundredweight", "cwt, hundredweight"},
	{"in", "in, inch, inches, ins, inchs"},
	{"ft", "ft, feet, foot"},
	{"yd", "yd, yds, yard, yards"},
	{"cm", "cm, cms, centimeter, centimeters, centimetre, centimetres, centi"},
	{"m", "m, meter, meters, metre, metres"},
	{"mm", "mm, millimeter, millimeters"},
	{"gal", "gal, gals, gallon, gallons, galons, galon, gall, gallns"},
	{"qt", "qt, qts, quart, quarts"},
	{"pt", "pint, pints"},
	{"l", "l, ltr, ltrs, liter, liters, litre, litres, lit, lt"},
	{"ml", "ml, cc"},
	{"m3", "m3, cubic meters, cubic metres"},
	{"sq ft", "sq ft, sqft, square feet, square foot, sq feet, sq foot, ft2, sq. ft, sf"},
	{"m2", "m2, m², sqm, sq m, square meters, square metres, square meter, square metre, sq meters, sq metres, qm"},
	{"acre", "acre, acres"},
	{"ha", "ha, hectare, hectares"},
	{"F", "f, fahrenheit, degf"},
	{"C", "c, celsius, degc, centigrade"},
	{"degree", "degree, degrees, deg, degs, grad"},
	{"day", "day, days, d, dys, dayz, tag, tage, tagen"},
	{"week", "week, weeks, wk, wks, w"},
	{"month", "month, months, mo, mos, mth, mths"},
	{"hour", "hour, hours, hr, hrs, h"},
	{"minute", "minute, minutes, min, mins"},
	{"kV", "kv, kilovolt, kilovolts"},
	{"V", "v, volt, volts"},
	{"%", "percent, pct, per cent"},
	{"bag", "bag, bags, bagz, bgs"},
	{"sack", "sack, sacks"},
	{"bucket", "bucket, buckets, bucketful, bucketfuls, buckts, bkt, bkts"},
	{"scoop", "scoop, scoops, scoopful, scoopfuls"},
	{"batch", "batch, batches, batchs"},
	{"pail", "pail, pails, pales"},
	{"can", "coffee can, coffee cans"},
	{"bale", "bale, bales"},
	{"USD", "dollar, dollars, bucks, buck, usd, us dollars, us dollar"},
	{"EUR", "euro, euros, eur"},
	{"GBP", "quid, quid's, gbp, pounds sterling"},
	{"CHF", "chf, francs, franken"},
	{"CAD", "cad, canadian dollars"},
	{"AUD", "aud, australian dollars"},
	{"NZD", "nzd"},
	{"SEK", "sek, kronor"},
	{"DKK", "dkk, kroner"},
	{"NOK", "nok"},
	{"PLN", "pln, zloty"},
	{"PHP", "php, peso, pesos, piso"},
	{"MXN", "mxn, mexican pesos"},
	{"INR", "inr, rupee, rupees"},
	{"ZAR", "zar, rand, rands"},
	{"CZK", "czk, koruna"},
	{"HUF", "huf, forint"},
	{"nipple", "nipple, nipples, nips, drinker, drinkers, nipple drinker, nipple drinkers, drinker things, drinker thing, drinker nipple, drinker nipples, nipple things, nipple thing, nipple thingies, drinker thingies, little drinker things, little nipple things, nipple waterers, nipple waterer"},
	{"stone", "stone, stones, st"},
}

func (u unitID) dim() dimension { return units[u].dim }
func (u unitID) metric() bool   { return units[u].metric }
func (u unitID) name() string   { return units[u].name }

// si is the value of v of this unit in its dimension's SI unit.
func (u unitID) si(v float64) float64 { return v*units[u].factor + units[u].offset }
