package reading

// leanings are what the herd's state makes likelier from the start: a herd not
// set up yet is being set up.
func (r *reader) leanings() {
	h := r.c.Herd
	if len(h.Animals) == 0 {
		r.bias[fArrive] += 0.9
		r.bias[fWeigh] -= 2.5
		r.bias[fGone] -= 1
		r.bias[fSick] -= 0.5
		r.bias[fWeather]--
		r.bias[fMove] -= 0.5
	} else {
		r.bias[fArrive]--
	}
	if len(h.Feeders) == 0 {
		r.bias[fSetFeeder] += 1
		r.bias[fFeed] -= 0.7
	} else {
		r.bias[fSetFeeder] -= 0.9
	}
	if len(h.Barrels) == 0 {
		r.bias[fSetBarrel] += 1.3
		r.bias[fWater] -= 1.2
	} else {
		r.bias[fSetBarrel] -= 0.9
	}
	if len(h.Pens) == 0 {
		r.bias[fSetPen] += 0.5
	}
	if h.Chore.Stated {
		r.bias[fChore] -= 1.5
	}
	if len(r.items) < 6 {
		r.bias[fUnits] += 0.5
	}
	if r.c.LastNudge == nil {
		r.bias[fSnooze] -= 0.4
	}
	r.bias[fSize] -= 0.2
}

// noise says that a long text is no message: most of it means nothing, and what
// seems to mean something stands in scraps between.
func (r *reader) noise() bool {
	if len(r.items) < noiseWords {
		return false
	}
	said, taken, scraps := 0, 0, 0
	for k := range r.items {
		it := &r.items[k]
		if it.kind == itWord && it.isAny(setOf(sFiller, sAnd)) {
			continue
		}
		said++
		if it.used {
			taken++
		}
	}
	for _, e := range r.out {
		switch a := e.Act.(type) {
		case Fact:
			if a.Kind() == "alarm" {
				return false
			}
			scraps++
		case None:
		default:
			scraps++
		}
	}
	return scraps > 3 && 2*taken < said
}

// noiseWords is how long a text must be to be taken for noise.
const noiseWords = 60
