package season

import (
	"fmt"
	"math"
	"strings"

	"troughbell/model"
)

// refill pours what a line asks for, as far as there is room.
func (k *keeper) refill(s stop, t task) {
	names := t.line.names
	if len(names) == 0 {
		return
	}
	amounts := make([]float64, len(names))
	switch {
	case strings.HasPrefix(t.code, "refill_visit"), strings.HasPrefix(t.code, "refill_brim"):
		for i := range names {
			amounts[i] = t.line.q[2+i]
		}
	default: // an amount for all of them
		for i := range names {
			amounts[i] = t.line.q[0] / float64(len(names))
		}
	}
	if k.shed && len(t.line.q) > 1 && t.line.q[1] > 0 {
		k.say(s, nil, "mixed %.0f", t.line.q[1])
	}
	look := k.looks(t)
	for i, name := range names {
		v := k.feeder(name)
		if v == nil {
			continue
		}
		if look && v.level > 0 {
			k.say(s, nil, "%s %s", v.name, eye(v.level/v.holds))
		}
		k.pour(s, v, amounts[i], strings.Contains(t.code, "brim"))
	}
}

func (k *keeper) feeder(name string) *vessel { return find(k.farm.feeders, name) }
func (k *keeper) barrel(name string) *vessel { return find(k.farm.barrels, name) }

func find(vs []*vessel, name string) *vessel {
	for _, v := range vs {
		if strings.EqualFold(v.name, name) {
			return v
		}
	}
	return nil
}

// pour puts feed into a feeder and texts it. What is poured is rounded up to a
// handy amount; the texted amount is what the keeper thinks it was.
func (k *keeper) pour(s stop, v *vessel, kg float64, brim bool) {
	k.fills.feed[k.farm.day(s.at)] = true
	handy := 5.0
	if k.us {
		handy = 10 * lbKg
	}
	said := math.Ceil(kg/handy) * handy
	full := brim || k.brim
	empty := v.level <= 0
	pours := said * k.scoop * around(k.rng, pourSD)
	room := v.holds - v.level
	if full || pours >= room {
		pours, full = room, true
		said = pours / k.scoop / around(k.rng, pourSD)
	}
	said = math.Round(k.weight(said))
	act := func() { v.level, v.unseen = min(v.holds, v.level+pours), false }
	if k.lazy && k.rng.Float64() < forgetChance {
		act()
		k.forgot["refill"] = fmt.Sprintf("%s %.0f", v.name, said)
		return
	}
	if said < 1 {
		act()
		k.say(s, nil, "%s full", v.name)
		return
	}
	if empty && k.rng.Float64() < tellsOneDry {
		k.say(s, nil, "%s empty", v.name)
	}
	text := fmt.Sprintf("%s %.0f", v.name, said)
	if len(k.farm.feeders) == 1 && k.rng.Float64() < 0.5 {
		text = fmt.Sprintf("filled %.0f", said)
		if k.us && k.rng.Float64() < 0.3 {
			text += " lb"
		}
	}
	if full {
		text += " full"
	}
	k.say(s, act, "%s", text)
}

// find is what the keeper sees on a chore day without being told: what is empty
// is texted and filled.
func (k *keeper) find(s stop) {
	for _, v := range k.farm.feeders {
		if v.level <= 0 && !k.asked("refill") {
			k.pour(s, v, v.holds/2, false)
		}
	}
	for _, v := range k.farm.barrels {
		if v.level <= 0 && !k.asked("water") {
			k.fillWater(s, task{what: "water", line: nudgeLine{names: []string{v.name}}})
		}
	}
}

// asked reports whether a task of the kind waits.
func (k *keeper) asked(what string) bool {
	for _, t := range k.tasks {
		if t.what == what {
			return true
		}
	}
	return false
}

// fillWater fills the barrels that a line names, to the top.
func (k *keeper) fillWater(s stop, t task) {
	k.fills.water[k.farm.day(s.at)] = true
	all := len(t.line.names) >= len(k.farm.barrels)
	var fill []*vessel
	for _, name := range t.line.names {
		if v := k.barrel(name); v != nil {
			fill = append(fill, v)
		}
	}
	act := func() {
		for _, v := range fill {
			v.level, v.unseen = v.holds, false
		}
	}
	if k.lazy && k.rng.Float64() < forgetChance {
		act()
		k.forgot["water"] = "barrels full"
		return
	}
	look := k.looks(t)
	dry := total(k.farm.barrels) <= 0 && k.rng.Float64() < tellsDry
	if dry {
		k.say(s, nil, "%s", map[bool]string{true: "barrel empty", false: "all barrels empty"}[len(k.farm.barrels) == 1])
	}
	for _, v := range fill {
		if look && v.level > 0 {
			k.say(s, nil, "%s barrel %s", v.name, eye(v.level/v.holds))
		}
		if v.level <= 0 && !dry && k.rng.Float64() < tellsOneDry {
			k.say(s, nil, "%s barrel empty", v.name)
		}
	}
	switch {
	case all && len(fill) == 1:
		k.say(s, act, "%s", k.pick("barrel full", "water full", "filled the barrel"))
	case all:
		k.say(s, act, "%s", k.pick("barrels full", "all barrels full", "water all full"))
	default:
		for i, v := range fill {
			var do func()
			if i == 0 {
				do = act
			}
			k.say(s, do, "%s barrel full", v.name)
		}
	}
}

func (k *keeper) pick(of ...string) string { return of[k.rng.IntN(len(of))] }

// move takes the pigs to the next pen.
func (k *keeper) move(s stop) {
	if !k.pens {
		return
	}
	k.pen = (k.pen + 1) % len(penNames)
	k.say(s, nil, "moved all to %s", penNames[k.pen])
}

var penNames = []string{"Alder", "Birch", "Cedar", "Elm"}

// book takes the day that the butcher has.
func (k *keeper) book(s stop) {
	if k.booked {
		return
	}
	k.booked = true
	_, month, day := k.slot.Date()
	k.say(s, nil, "butcher %s %d, %d pigs", strings.ToLower(month.String()[:3]), day, len(k.farm.herd.alive(k.farm.day(s.at))))
}

// buy gets what the shed is short of, for a few weeks.
func (k *keeper) buy(s stop, t task) {
	if !k.shed {
		return
	}
	for i, name := range t.line.names {
		need := t.line.q[2*i+1] - t.line.q[2*i]
		kg := math.Ceil((need*3+20)/25) * 25
		k.say(s, nil, "bought %.0f %s", math.Round(k.weight(kg)), name)
	}
}

// check answers what the program asks about a chore day or a silence.
func (k *keeper) check(s stop, t task) {
	switch t.code {
	case "check_not_filled": // done, but not texted
		for _, what := range t.line.names {
			if text, ok := k.forgot[what]; ok {
				delete(k.forgot, what)
				k.say(s, nil, "%s %s", text, lastChore(k, s))
			}
		}
	case "check_silence", "check_feed_level":
		k.seen(s)
		if t.code == "check_silence" {
			k.seenWater(s)
		}
	case "check_water_level":
		k.seenWater(s)
	}
}

func lastChore(k *keeper, s stop) string {
	day := model.DayOf(s.at.In(k.farm.loc))
	for d := day; d > day-8; d-- {
		for _, w := range k.chores {
			if d.Weekday() == w {
				if d == day {
					return "today"
				}
				return strings.ToLower(w.String())
			}
		}
	}
	return "today"
}

// seen texts the level of each feeder by eye.
func (k *keeper) seen(s stop) {
	for _, v := range k.farm.feeders {
		k.say(s, nil, "%s %s", v.name, eye(v.level/v.holds))
	}
}

func (k *keeper) seenWater(s stop) {
	for _, v := range k.farm.barrels {
		k.say(s, nil, "%s barrel %s", v.name, eye(v.level/v.holds))
	}
}

// eye is a level as people put it.
func eye(part float64) string {
	switch {
	case part <= 0:
		return "empty"
	case part < 0.125:
		return "nearly empty"
	case part < 0.375:
		return "a quarter left"
	case part < 0.625:
		return "half left"
	case part < 0.9:
		return "three quarters left"
	}
	return "still nearly full"
}
