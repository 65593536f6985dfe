package season

import (
	"math"
	"math/rand/v2"
)

// A grower is a type of pig by how fast it lives through a record's weeks. The
// records' own pigs gained 0.96 kg a day between 25 and 100 kg.
type grower struct {
	name  string
	speed float64 // of growth, the records' pigs being 1
	sd    float64 // between herds, relative
}

// growers span what is published for outdoor herds: the records' own pace;
// 0.83 kg a day in hoops in summer (Honeyman and Harmon, J. Anim. Sci.
// 81:1663-1670, 2003, abstract read); 0.70 kg a day in a US farrow-to-finish
// budget (Iowa State Extension, Ag Decision Maker B1-30, read); 0.64 kg a day at
// the best of a slow, mostly outdoor breed (Sabbioni et al., Ital. J. Anim. Sci.,
// abstract read).
var growers = []grower{
	{"hybrid", 1.0, 0.04},
	{"hoop", 0.87, 0.05},
	{"cross", 0.76, 0.05},
	{"slow", 0.66, 0.04},
}

// eatsLess is the power of the speed with which daily feed falls: pigs of 1936
// gained 0.594 kg a day on 3.40 kg of feed a kg of gain (Woodman et al., open
// data set), the records' pigs 0.962 on 2.29; computed from the two.
var eatsLess = math.Log(0.594*3.40/(0.962*2.29)) / math.Log(0.594/0.962)

// Beyond the end of its record a pig follows a Gompertz curve towards 230 kg
// (Lewis and Emmans, J. Anim. Sci. 98(4) skaa087, 2020, read), at the rate of its
// own last four weeks; its feed rises with the weight as between the upper two
// weights of 1,968 pigs, 83.5 kg and 2.30 kg a day, 102.5 kg and 2.47 (after
// Schinckel, review table, read).
const matureKg = 230.0

var feedRise = math.Log(2.47/2.30) / math.Log(102.5/83.5)

const (
	lastWeeks   = 4
	tailFeedSD  = 0.15 // of a week's feed beyond the record, relative: 17 to 30 % are computed from the records for one pig and one week, part of it weighing
	tailSpeedSD = 0.10 // of a week's growth beyond the record
)

// life is a pig's growth and feed by its own clock, in days of a record's pig.
type life struct {
	rec     grown
	rate    float64 // of the Gompertz curve beyond the record, a day
	endKg   float64
	endFeed float64 // kg a day at the end of the record
	tail    []tailWeek
}

type tailWeek struct{ kg, feed float64 }

const tailWeeks = 30

func newLife(rec grown, rng *rand.Rand) life {
	n := len(rec.kg)
	l := life{rec: rec, endKg: rec.kg[n-1]}
	gain := (rec.kg[n-1] - rec.kg[n-1-lastWeeks]) / (7 * lastWeeks)
	mid := (rec.kg[n-1] + rec.kg[n-1-lastWeeks]) / 2
	l.rate = gain / (mid * math.Log(matureKg/mid))
	for _, kg := range rec.feedKg[len(rec.feedKg)-lastWeeks:] {
		l.endFeed += kg / (7 * lastWeeks)
	}
	l.endFeed *= math.Pow(l.endKg/mid, feedRise)
	kg := l.endKg
	for range tailWeeks {
		l.tail = append(l.tail, tailWeek{kg, l.endFeed * math.Pow(kg/l.endKg, feedRise) * around(rng, tailFeedSD)})
		kg += 7 * l.rate * kg * math.Log(matureKg/kg) * around(rng, tailSpeedSD)
	}
	return l
}

// at gives weight and daily feed after so many days of the pig's own clock.
func (l life) at(days float64) (kg, feedKgD float64) {
	week := days / 7
	i := int(week)
	part := week - float64(i)
	if i < len(l.rec.feedKg) {
		return l.rec.kg[i] + part*(l.rec.kg[i+1]-l.rec.kg[i]), l.rec.feedKg[i] / 7
	}
	if i -= len(l.rec.feedKg); i >= len(l.tail)-1 {
		last := l.tail[len(l.tail)-1]
		return last.kg, last.feed
	}
	return l.tail[i].kg + part*(l.tail[i+1].kg-l.tail[i].kg), l.tail[i].feed
}

// around is a factor with mean about 1 and a relative spread.
func around(rng *rand.Rand, sd float64) float64 { return math.Exp(sd*rng.NormFloat64() - sd*sd/2) }
