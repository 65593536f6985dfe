package season

import (
	"fmt"
	"math"
	"strings"
)

const (
	lbKg = 0.45359237
	galL = 3.785411784
	inCm = 2.54
)

// weight is kilograms in the keeper's unit.
func (k *keeper) weight(kg float64) float64 {
	if k.us {
		return kg / lbKg
	}
	return kg
}

func (k *keeper) unit() string {
	if k.us {
		return "lb"
	}
	return "kg"
}

// setUp texts what the program needs to know, on the first day.
func (k *keeper) setUp(zone string, targetKg float64) {
	day := k.farm.herd.from
	s := stop{at: day.At(10*60, k.farm.loc)}
	units := "metric units"
	if k.us {
		units = "US units"
	}
	k.say(s, nil, "our herd is called Farrowfield, %s, %s", zone, units)
	var names []string
	sum := 0.0
	for _, p := range k.farm.herd.pigs {
		names = append(names, p.name)
		sum += p.kg[0]
	}
	each := k.weight(sum/float64(len(names))) * around(k.rng, 0.04)
	k.say(s, nil, "%d pigs came this morning: %s and %s, about %.0f %s each", len(names),
		strings.Join(names[:len(names)-1], ", "), names[len(names)-1], each, k.unit())
	for _, v := range k.farm.feeders {
		k.say(s, nil, "feeder %s holds %.0f %s", v.name, k.weight(v.told), k.unit())
	}
	for _, v := range k.farm.barrels {
		if k.us {
			k.say(s, nil, "water barrel %s, %.0f gal with 2 nipples", v.name, v.told/galL)
		} else {
			k.say(s, nil, "water barrel %s, %.0f l with 2 nipples", v.name, v.told)
		}
	}
	var days []string
	for _, w := range k.chores {
		days = append(days, strings.ToLower(w.String()))
	}
	k.say(s, nil, "target %.0f %s, chore days %s, %d am", k.weight(targetKg), k.unit(), strings.Join(days, " and "), k.hour)
	if k.pens {
		side := 30 // metres
		if k.us {
			side = 100
		}
		u := "m"
		if k.us {
			u = "ft"
		}
		var pens []string
		for _, n := range penNames {
			pens = append(pens, fmt.Sprintf("%s %dx%d %s", n, side, side, u))
		}
		k.say(s, nil, "pens: %s. they are in %s", strings.Join(pens, ", "), penNames[0])
	}
	if k.shed {
		k.say(s, nil, "a batch is 35 %[1]s corn, 13 %[1]s soybean meal, 2 %[1]s mineral", k.unit())
		k.say(s, nil, "bought 400 %[1]s corn, 150 %[1]s soybean meal, 25 %[1]s mineral", k.unit())
	}
	first := k.farm.herd.feedOn(0) * 10
	for _, v := range k.farm.feeders {
		k.pour(s, v, min(v.holds, first/float64(len(k.farm.feeders))), false)
	}
	k.say(s, func() {
		for _, v := range k.farm.barrels {
			v.level = v.holds
		}
		k.farm.settled = true
	}, "all barrels full")
	if k.wallow {
		if k.us {
			k.say(s, nil, "dug a wallow, 8 by 10 ft, 8 inches deep")
		} else {
			k.say(s, nil, "dug a wallow, 2 by 3 m, 20 cm deep")
		}
		k.say(s, nil, "filled the wallow")
	}
}

// tell texts what happened to the pigs, and the heat.
func (k *keeper) tell(s stop, d int) {
	if s.chore {
		return
	}
	for i, p := range k.farm.herd.pigs {
		for j, e := range []struct {
			day  int
			text string
		}{{p.sick + 1, "%s off feed"}, {p.well + 1, "%s is eating again"}, {p.dies, "%s died"}} {
			key := i*4 + j + 1
			if e.day > 0 && d >= e.day && d < e.day+3 && !k.told[key] && (j == 2 || p.dies < 0 || d < p.dies) {
				k.told[key] = true
				k.say(s, nil, e.text, p.name)
			}
		}
	}
	if a := k.farm.herd.air[d]; k.talks && a.highC >= hotDayC {
		if k.us {
			k.say(s, nil, "%.0f today", a.highC*9/5+32)
		} else {
			k.say(s, nil, "%.0f degrees today", a.highC)
		}
	}
}

// mostWeighed is how many pigs are weighed on one day.
const mostWeighed = 8

// weigh weighs or tapes the pigs, and holds the tape against the scale if the
// keeper has one for that.
func (k *keeper) weigh(s stop, check bool) {
	d := k.farm.day(s.at)
	pigs := k.farm.herd.alive(d)
	order := k.rng.Perm(len(pigs))
	if len(order) > mostWeighed {
		order = order[:mostWeighed]
	}
	var scale, tape []string
	check = check && k.checks
	for n, i := range order {
		p := pigs[i]
		if k.scale || check && n < 3 {
			kg := p.kg[d] + scaleSD*k.rng.NormFloat64()
			scale = append(scale, fmt.Sprintf("%s %.0f %s", strings.ToLower(p.name), k.weight(kg), k.unit()))
		}
		if !k.scale {
			cm := k.shape.girthCm(k.index(p), p.kg[d], k.rng)
			if k.us {
				tape = append(tape, fmt.Sprintf("%s %.4g girth", strings.ToLower(p.name), math.Round(cm/inCm*2)/2))
			} else {
				tape = append(tape, fmt.Sprintf("%s %.0f cm girth", strings.ToLower(p.name), cm))
			}
		}
	}
	if len(tape) > 0 {
		k.say(s, nil, "%s", strings.Join(tape, ", "))
	}
	if len(scale) > 0 {
		k.checked = true
		k.say(s, nil, "%s", strings.Join(scale, ", "))
	}
}

func (k *keeper) index(p *pig) int {
	for i, q := range k.farm.herd.pigs {
		if q == p {
			return i
		}
	}
	return 0
}

// answerDoubt answers what the program asked back, as well as the keeper knows.
func (k *keeper) answerDoubt() {
	r := k.pending
	k.pending = nil
	if r == nil || k.doubted > 0 {
		k.doubted = 0
		return
	}
	for _, q := range r.Questions {
		for _, l := range q.Labels {
			if strings.EqualFold(l, "yes") {
				k.doubted++
				at := k.farm.now
				k.lines = append([]line{{at: at, text: l}}, k.lines...)
				return
			}
		}
	}
}
