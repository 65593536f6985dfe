package reading

import (
	"math"
	"slices"
	"strconv"
	"time"

	"troughbell/model"
)

// Which of the last records a text that puts one right means, and what that holds.

// amendWithin is how many records back such a text may reach.
const amendWithin = 12

// recent is the fact of the n-th record before, where a text may still speak of it.
func (r *reader) recent(n int) (model.Fact, bool) {
	if n >= amendWithin || r.c.Now.Sub(r.c.Before[n].At) > 48*time.Hour {
		return nil, false
	}
	f, ok := r.c.Before[n].Entry.Act.(Fact)
	return f.Fact, ok
}

// holdsAmount says that the n-th record has the amount of an item, bare numbers being of
// the unit that its own text has.
func (r *reader) holdsAmount(n int, it *item) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	if it.kind == itNum && r.holdsNumber(f, it.v) {
		return true
	}
	in := r.inUnitOf(it, r.c.Before[n].Text)
	old, ok := r.amountOf(f, in)
	now, is := r.asAmount(f, in)
	return ok && is && math.Abs(old-now) < 0.006*math.Abs(old)
}

// amountOf is the amount of a record that one of the item's kind could take the place of.
func (r *reader) amountOf(f model.Fact, it *item) (float64, bool) {
	of := func(v *float64) (float64, bool) {
		if v == nil {
			return 0, false
		}
		return *v, true
	}
	switch v := f.(type) {
	case model.Weigh:
		switch {
		case it.qty(length):
			return v.GirthCm, v.GirthCm > 0
		case it.qty(mass), it.kind == itNum && v.GirthCm == 0:
			return v.WeightKg, v.WeightKg > 0
		case it.kind == itNum:
			return v.GirthCm, true
		}
	case model.Refill:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
	case model.FeedLevel:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
	case model.Stock:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
		if it.qty(money) {
			return of(v.Amount)
		}
	case model.Water:
		if it.qty(volume) || it.kind == itNum {
			return of(v.Litres)
		}
	case model.WallowFill:
		if it.qty(volume) {
			return of(v.Litres)
		}
	case model.Fence:
		if it.kind == itNum || it.qty(voltage) {
			return v.Kv, true
		}
	case model.Spend:
		if it.kind == itNum || it.qty(money) {
			return v.Amount, true
		}
	case model.Mixed:
		if it.kind == itNum || it.unit == unitBatch {
			return of(v.Batches)
		}
	case model.Weather:
		if it.kind == itNum || it.qty(temperature) {
			return of(v.HighC)
		}
	}
	return 0, false
}

// asAmount is what an item is in the unit that amountOf gives a record's amount in.
func (r *reader) asAmount(f model.Fact, it *item) (float64, bool) {
	switch v := f.(type) {
	case model.Weigh:
		switch {
		case it.qty(length):
			return it.si() * 100, true
		case it.qty(mass):
			return it.si(), true
		case v.GirthCm > 0:
			return r.lengthUnit().si(it.v) * 100, true
		}
		return r.massUnit().si(it.v), true
	case model.Refill, model.FeedLevel, model.Stock:
		if it.qty(money) {
			return it.v, true
		}
		return r.feedAmount(it)
	case model.Water, model.WallowFill:
		if it.kind == itNum {
			return r.volumeUnit().si(it.v), true
		}
		return it.si(), true
	case model.Fence:
		if it.v >= 500 {
			return it.v / 1000, true
		}
		return it.v, true
	case model.Weather:
		if it.kind == itQty {
			return it.si(), true
		}
		if r.units == model.Metric {
			return it.v, true
		}
		return unitF.si(it.v), true
	}
	return it.v, true
}

// couldPut says that the amount may have been meant where the n-th record has another:
// one not far from it, or with the same digits.
func (r *reader) couldPut(n int, it *item) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	in := r.inUnitOf(it, r.c.Before[n].Text)
	old, ok := r.amountOf(f, in)
	now, is := r.asAmount(f, in)
	if !ok || !is || now <= 0 || old <= 0 || now == old {
		return false
	}
	if _, weighed := f.(model.Weigh); weighed {
		return now > old/1.6 && now < old*1.6
	}
	return now > old/11 && now < old*11
}

// speaksOf says that the n-th record has all that the text names it by.
func (r *reader) speaksOf(a *amends, n int) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	if a.kind != "" && !kindNamed(f, a.kind) || a.thing != nil && !holdsThing(r, f, a.thing) || len(a.pigs) > 0 && !slices.Contains(AnimalsOf(f), r.pigs[a.pigs[0]].Name) {
		return false
	}
	for _, w := range a.words {
		if !r.toldWith(n, w) {
			return false
		}
	}
	return true
}

// kindNamed says that a record is of the kind that a text names it by.
func kindNamed(f model.Fact, kind string) bool {
	is := string(f.Kind())
	switch kind {
	case "girth":
		return is == "weigh"
	case "refill":
		return is == "refill" || is == "feed_level" || is == "stock"
	case "worm":
		return is == "worm" || is == "treat"
	}
	return is == kind
}

// pigTagged is the living pig that is called by a number, or the only one whose name ends
// in it; -1 if none.
func (r *reader) pigTagged(v float64) int16 {
	found := int16(-1)
	for p := range r.alive {
		name := r.pigs[p].Name
		if t, err := strconv.ParseFloat(lastWord(name), 64); err != nil || t != v {
			continue
		}
		if lastWord(name) == name {
			return int16(p)
		}
		if found >= 0 {
			return -1 // "red 3" or "blue 3"
		}
		found = int16(p)
	}
	return found
}

// hotterThanAnyDayC is a number that is no day's heat in degrees Celsius.
const hotterThanAnyDayC = 50

// How well a record is what a text means: it could be, it is told by its kind or by its
// pig, or it has the very value that was wrong or right.
const (
	couldBe = 1
	named   = 2
	held    = 3
)

// meansRecord says how well the n-th record is the one that the text puts right; 0 not at
// all.
func (r *reader) meansRecord(a *amends, n int) int {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	animals := AnimalsOf(f)
	score := 0
	if a.kind != "" {
		if !kindNamed(f, a.kind) {
			return 0
		}
		score = named
	}
	for _, w := range a.words {
		if !r.toldWith(n, w) {
			return 0
		}
		score = named
	}
	if a.product != "" {
		t, ok := treatmentOf(f)
		if !ok || t.Product == a.product || a.num != nil {
			return 0
		}
		score = max(score, couldBe)
		if a.notProduct {
			score = held
		}
	}
	for _, v := range a.stays {
		if !r.holdsNumber(f, v) {
			return 0
		}
		score = held
	}
	if a.notNum != nil {
		if !r.holdsAmount(n, a.notNum) {
			return 0
		}
		score = held
	}
	for _, p := range a.notPigs {
		if r.tagAsNumber(a, p, n) {
			score = held
			continue
		}
		if !slices.Contains(animals, r.pigs[p].Name) {
			return 0
		}
		score = held
	}
	if a.notThing != nil {
		if !holdsThing(r, f, a.notThing) {
			return 0
		}
		score = held
	}
	if a.thing != nil {
		switch {
		case !takesThing(f, a.thing):
			return 0
		case holdsThing(r, f, a.thing) && a.num == nil && !a.level:
			return 0 // it is there already
		case holdsThing(r, f, a.thing):
			score = max(score, named)
		case a.num != nil && !r.holdsAmount(n, a.num), a.level:
			return 0 // another thing with an amount of its own
		}
		score = max(score, couldBe)
	}
	if a.level {
		switch v := f.(type) {
		case model.Water, model.FeedLevel:
		case model.Refill:
			if a.thing == nil && !(a.notLevel && v.Full) {
				return 0
			}
		default:
			return 0
		}
		score = max(score, couldBe)
	}
	switch {
	case len(a.pigs) == 0 && a.num != nil:
		switch {
		case r.holdsAmount(n, a.num) && a.thing == nil:
			return 0
		case !r.couldPut(n, a.num) && score < held && a.thing == nil:
			return 0
		}
		return max(score, couldBe)
	case len(a.pigs) == 0:
		return score
	}
	name := r.pigs[a.pigs[0]].Name
	if len(animals) == 0 || animals[0] == model.All {
		return 0
	}
	has := slices.Contains(animals, name)
	switch {
	case a.num == nil && has:
		return 0
	case a.num == nil:
		if len(animals) > 1 && len(a.notPigs) == 0 {
			return 0
		}
		return max(score, couldBe)
	case r.holdsAmount(n, a.num) && !has && len(animals) == 1:
		return held // the 75 was juno's
	case has && len(animals) == 1 && !r.holdsAmount(n, a.num) && (score == held || r.couldPut(n, a.num)):
		return max(score, named)
	}
	return 0
}

// treatmentOf is what a worming or a treatment was with.
func treatmentOf(f model.Fact) (model.Treatment, bool) {
	switch v := f.(type) {
	case model.Worm:
		return v.Treatment, true
	case model.Treat:
		return v.Treatment, true
	}
	return model.Treatment{}, false
}

// tagAsNumber says that a pig that is denied is but a number that the n-th record has:
// "207 was 210 not 201".
func (r *reader) tagAsNumber(a *amends, p int16, n int) bool {
	v, err := strconv.ParseFloat(r.pigs[p].Name, 64)
	return err == nil && a.num != nil && r.holdsNumber(r.c.Before[n].Entry.Act.(Fact).Fact, v)
}

// holdsThing says that a record is of the feeder, the barrel or the pen of an item.
func holdsThing(r *reader, f model.Fact, it *item) bool {
	h := r.c.Herd
	switch v := f.(type) {
	case model.Refill:
		return it.feeder >= 0 && h.Feeders[it.feeder].Name == v.Feeder
	case model.FeedLevel:
		return it.feeder >= 0 && h.Feeders[it.feeder].Name == v.Feeder
	case model.Water:
		return it.barrel >= 0 && h.Barrels[it.barrel].Name == v.Barrel
	case model.Move:
		return it.pen >= 0 && h.Pens[it.pen].Name == v.Pen
	}
	return false
}

// takesThing says that a record is of a thing of the item's kind.
func takesThing(f model.Fact, it *item) bool {
	switch f.(type) {
	case model.Refill, model.FeedLevel:
		return it.feeder >= 0
	case model.Water:
		return it.barrel >= 0
	case model.Move:
		return it.pen >= 0
	}
	return false
}
