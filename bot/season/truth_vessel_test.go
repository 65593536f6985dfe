package season

// vessel is a feeder or a water barrel as it really is.
type vessel struct {
	name   string
	told   float64 // capacity in kg or litres as the keeper gives it
	holds  float64 // as it is, above the lowest nipple
	level  float64
	likes  float64 // how much the pigs turn to it
	unseen bool    // a spill or a leak since the last fill, that nobody could know
}

func total(vs []*vessel) float64 {
	sum := 0.0
	for _, v := range vs {
		sum += v.level
	}
	return sum
}

// take has the pigs take an amount, from where they like to and there is some.
// It gives what they wanted in vain.
func take(vs []*vessel, amount float64) (lacking float64) {
	for amount > 1e-9 {
		likes := 0.0
		for _, v := range vs {
			if v.level > 0 {
				likes += v.likes
			}
		}
		if likes == 0 {
			return amount
		}
		part := amount // how much goes before the next one is empty
		for _, v := range vs {
			if v.level > 0 {
				part = min(part, v.level*likes/v.likes)
			}
		}
		for _, v := range vs {
			if v.level > 0 {
				if v.level -= part * v.likes / likes; v.level < 1e-9 {
					v.level = 0
				}
			}
		}
		amount -= part
	}
	return 0
}

// anyEmpty reports whether one of them is empty.
func anyEmpty(vs []*vessel) bool {
	for _, v := range vs {
		if v.level <= 0 {
			return true
		}
	}
	return false
}

// anyUnseen reports whether one lost something nobody could know of.
func anyUnseen(vs []*vessel) bool {
	for _, v := range vs {
		if v.unseen {
			return true
		}
	}
	return false
}
