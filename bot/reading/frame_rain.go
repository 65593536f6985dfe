package reading

import (
	"strings"

	"troughbell/model"
)

// mostRainMm is the rain of a day above which nobody can have meant it.
const mostRainMm = 300.0

// rainWords tell of rain that fell.
var rainWords = phrasesOf("rain, rains, rained, raining, rainfall, downpour, rain gauge, gauge, precip, precipitation")

// soakers are ways to say that it rained hard or long without an amount. They
// count only as all that a sentence says.
var soakers = split("rained all night, rained all day, rained hard, rained heavily, rained a lot, rained really hard, heavy rain, hard rain, soaking rain, good rain, a good rain, big rain, lots of rain, a lot of rain, downpour, a downpour, rain all night, rain all day, poured rain, steady rain, it poured all night, it poured all day, poured all night, poured all day, pouring rain, buckets of rain, rained buckets, rained cats and dogs, rained through the night, rained overnight, rained most of the night, rained most of the day, soaker, rained nonstop, rained non stop")

var soaking = phrasesOf(strings.Join(soakers, ","))

// soakerRest are the words that may stand beside them.
var soakerRest = map[string]bool{
	"it": true, "we": true, "had": true, "got": true, "has": true, "have": true, "a": true, "the": true, "last": true, "night": true, "today": true, "yesterday": true,
	"here": true, "this": true, "morning": true, "afternoon": true, "evening": true, "really": true, "again": true, "some": true, "very": true, "just": true, "so": true, "there": true, "was": true, "been": true, "overnight": true, "another": true,
}

// tellsRain finds the items around item k that tell how much rain fell, or the whole
// sentence that it rained hard or long.
func (r *reader) tellsRain(k int) (from, to int, ok bool) {
	pieces := r.pieces(k)
	for _, s := range pieces[:2] {
		if r.tellsAmountOfRain(k, s) {
			return s.i, s.j, true
		}
	}
	sentence := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	return sentence.i, sentence.j, r.onlySoaked(sentence)
}

// tellsAmountOfRain says that a span tells how much rain fell, or that some will.
func (r *reader) tellsAmountOfRain(k int, s span) bool {
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.quest || it.pig >= 0 || it.qty(mass) || it.kind == itDim || it.isAny(setOf(sGirth, sTape, sFeeder, sWeigh, sWallow, sPen, sButcher)) && it.s != "long" {
			return false
		}
	}
	said := r.said(s)
	if saysAny(said, denied) {
		return r.rainAhead(s, said)
	}
	millimetres := r.items[k].qty(length) && r.items[k].unit.name() == "mm"
	if !saysAny(said, rainWords) && !(millimetres && r.onlyDayBeside(k, s)) {
		return false
	}
	mm, ok := r.rainMm(s)
	return ok && mm <= mostRainMm
}

// rainAhead says that a clause speaks of rain and a day to come and little else, so
// that it is known for what records nothing.
func (r *reader) rainAhead(s span, said string) bool {
	if !saysAny(said, rainWords) || s.j-s.i > 5 {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && (it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0) {
			return true
		}
	}
	return false
}

// onlyDayBeside says that nothing but a day or a time stands beside item k.
func (r *reader) onlyDayBeside(k int, s span) bool {
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; n != k && it.kind != itDay && it.kind != itClock && !it.is(sFiller) && !it.is(sAbout) && it.s != "in" && it.s != "on" {
			return false
		}
	}
	return true
}

// onlySoaked says that the sentence tells of hard or long rain and nothing else.
func (r *reader) onlySoaked(s span) bool {
	said := r.said(s)
	if !saysAny(said, soaking) || saysAny(said, denied) {
		return false
	}
	for _, p := range soakers {
		before, after, ok := strings.Cut(said, " "+p+" ")
		if !ok {
			continue
		}
		rest := true
		for _, w := range strings.Fields(before + " " + after) {
			rest = rest && soakerRest[w]
		}
		if rest {
			return true
		}
	}
	return false
}

// rainMm is the rain told in a span in millimetres: "1.2 inches", "half an inch",
// "an inch and a half", "rained 20".
func (r *reader) rainMm(s span) (float64, bool) {
	perInch := unitIn.si(1) * 1000
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(length) && it.unit != unitFt && it.unit != unitM:
			return it.si() * 1000, it.v > 0
		case it.kind == itWord && it.unit == unitIn && k > s.i && it.s != "in":
			n := k - 1
			if (r.items[n].s == "an" || r.items[n].s == "of an") && n > s.i && r.items[n-1].kind == itFrac {
				n--
			}
			one := &r.items[n]
			inches := 1.0
			switch {
			case one.kind == itFrac:
				inches = one.v
			case one.kind == itDay && one.day.form == daySlash && one.v2 > 0: // "3/4 inch" looks like a day
				inches = one.v / one.v2
			case one.s != "an" && one.s != "a" && one.s != "one":
				return 0, false
			}
			if k+1 < s.j && r.items[k+1].kind == itFrac {
				inches += r.items[k+1].v
			}
			return inches * perInch, true
		}
	}
	for k := s.i; k < s.j; k++ { // a bare number right beside the rain
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord {
			continue
		}
		beside := k > s.i && r.isRain(k-1) || k+1 < s.j && r.isRain(k+1)
		switch {
		case !beside:
			return 0, false
		case r.units == model.Metric:
			return it.v, it.v > 0
		default:
			return it.v * perInch, it.v > 0 && it.v <= 8
		}
	}
	return 0, false
}

func (r *reader) isRain(k int) bool {
	switch r.items[k].s {
	case "rain", "rained", "rainfall", "gauge":
		return true
	}
	return false
}

// rainStart says that the word of item k may begin the telling of rain.
func (r *reader) rainStart(k int) bool {
	switch firstWord(r.items[k].s) {
	case "rain", "rains", "rained", "raining", "rainfall", "downpour", "gauge", "precip", "precipitation", "soaker", "soaking", "poured", "pouring":
		return true
	}
	return r.items[k].qty(length) && r.items[k].unit.name() == "mm"
}

// fillRain reads the rain of a day.
func (r *reader) fillRain(s span) {
	w := model.Weather{Rained: true}
	if mm, ok := r.rainMm(s); ok {
		w = model.Weather{RainMm: model.Float(mm)}
	} else if !r.onlySoaked(s) {
		r.idleSpan(s)
		return
	}
	for k := s.i; k < s.j; k++ { // "3/4 inch" is no day
		if it := &r.items[k]; it.kind == itDay && it.day.form == daySlash && k+1 < s.j && r.items[k+1].unit == unitIn {
			it.kind = itFrac
		}
	}
	r.useAll(s)
	r.emit(Fact{w}, s)
}
