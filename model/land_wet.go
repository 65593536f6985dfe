package model

// Soil is how fast ground drains, in a word.
type Soil string

// The soils. Empty is not said, and drains like loam.
const (
	Sand Soil = "sand"
	Loam Soil = "loam"
	Clay Soil = "clay"
)

func (s Soil) known() bool { return s == "" || s == Sand || s == Loam || s == Clay }

// drainsMmD is the rain in millimetres that ground loses in a day, to the air and
// downwards, before a pig stands in mud: common practice, no source. Published
// rates of infiltration are many times that, but are of ground no pig has trodden.
func (s Soil) drainsMmD() float64 {
	switch s {
	case Sand:
		return 25
	case Clay:
		return 5
	}
	return 10
}

const (
	// wetWear is how much more pigs wear wet ground: a stay is a third shorter.
	// Common practice, no source.
	wetWear = 1.5
	// rainUntoldMm is what is taken for rain of which no amount was said.
	// Judgement.
	rainUntoldMm = 15.0
	// wetLookback is the days of rain that are looked at before a stay.
	wetLookback = 14
)

// wetDays says for each of the days from first to last whether the ground was
// wet: more rain was told than had drained off by the end of the day. Days of
// which no rain was told count as dry.
func (h *Herd) wetDays(s Soil, first, last Day) map[Day]bool {
	wet := map[Day]bool{}
	standing := 0.0
	for d := first - wetLookback; d <= last; d++ {
		w := h.Weathers[d]
		switch {
		case w.RainMm != nil:
			standing += *w.RainMm
		case w.Rained:
			standing += rainUntoldMm
		}
		standing = max(standing-s.drainsMmD(), 0)
		if standing > 0 && d >= first {
			wet[d] = true
		}
	}
	return wet
}
