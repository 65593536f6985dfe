package model

// coldBorne is the night low that pigs bear by weight on a bare floor, in
// Celsius: common practice, no source.
var coldBorne = []struct{ weightKg, lowC float64 }{{23, 10}, {45, 4.4}, {91, -1}}

const (
	// BeddingWorthC is how much colder a night may be on deep dry straw: common
	// practice, no source.
	BeddingWorthC = 7.0
	// FreezeC is the low at which nipples and hoses freeze hard: common practice,
	// no source. From 0 down they may.
	FreezeC = -4.0
)

// NightLowBorneC is the night low in Celsius that pigs of a weight (1 to 220 kg,
// else *OutOfRange) bear out of the draught, on a bare floor or bedded: straight
// lines between the weights of the table, constant below 23 and above 91 kg.
// Common practice, no source.
func NightLowBorneC(weightKg float64, bedded bool) (float64, error) {
	const leastKg, mostKg = 1, 220
	if !(weightKg >= leastKg && weightKg <= mostKg) {
		return 0, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	}
	low := coldBorne[len(coldBorne)-1].lowC
	for i, c := range coldBorne {
		if weightKg > c.weightKg {
			continue
		}
		low = c.lowC
		if i > 0 {
			b := coldBorne[i-1]
			low = b.lowC + (c.lowC-b.lowC)*(weightKg-b.weightKg)/(c.weightKg-b.weightKg)
		}
		break
	}
	if bedded {
		low -= BeddingWorthC
	}
	return low, nil
}

// FrostClass is what a night does to water.
type FrostClass string

// The classes of frost.
const (
	FrostNone FrostClass = "none"
	FrostRime FrostClass = "frost"  // from 0 Celsius down: nipples may freeze, look in the morning
	FrostHard FrostClass = "freeze" // from FreezeC down: they do; drain hoses, bring water by hand twice a day
)

// ClassOfFrost is the class of a night low in Celsius (-60 to 60, else
// *OutOfRange). Common practice, no source.
func ClassOfFrost(lowC float64) (FrostClass, error) {
	switch {
	case !(lowC >= -60 && lowC <= 60):
		return "", &OutOfRange{"low_c", lowC, -60, 60}
	case lowC <= FreezeC:
		return FrostHard, nil
	case lowC <= 0:
		return FrostRime, nil
	}
	return FrostNone, nil
}

// What deep bedding takes: about 90 kg of straw or stalks a pig in 16 weeks of a
// hoop shelter (Iowa State Univ. on hoop finishing, from memory), a third more in
// frost and a third less in summer by judgement.
const beddingKgPigDay = 90.0 / 112

// BeddingKg is the straw that so many pigs (1 to 200) want in so many days (0 to
// 400), with the range between a dry summer and a frosty winter: else
// *OutOfRange. Dry bedding decides, not its weight: add where it is wet.
func BeddingKg(pigs int, days float64) (Interval, error) {
	const mostDays = 400
	switch {
	case pigs < 1 || pigs > mostPigs:
		return Interval{}, &OutOfRange{"count", float64(pigs), 1, mostPigs}
	case !(days >= 0 && days <= mostDays):
		return Interval{}, &OutOfRange{"days", days, 0, mostDays}
	}
	kg := float64(pigs) * days * beddingKgPigDay
	return Interval{kg * 2 / 3, kg, kg * 4 / 3}, nil
}
