package model

import (
	"math"
	"time"
)

// OddWater is water gone that does not fit what the herd is known to draw.
type OddWater struct {
	Kind    OddKind // OddMore or OddLess
	Record  string  // of the level seen, or of the fill that told it
	Barrels []string
	From    time.Time // when the level was told before
	At      time.Time
	// DrawnL left the barrels since From, at least; WantL was expected to.
	DrawnL, WantL float64
	Dry           bool // they were found empty: more may have been wanted
	Reasons       []Reason
}

// From when on water gone does not fit: a leak and a clogged or frozen nipple are
// worth a word where it is clearly more or less than the herd's own draw, and
// beyond what the days' straying, the warmth and the pigs' habits explain.
const (
	oddWaterMore = 1.8
	oddWaterLess = 0.5
	oddWaterZ    = 2.8
	oddWaterPart = 0.10 // of what the barrels hold, drawn or expected since
)

// waterFind is a level told against the one expected.
type waterFind struct {
	record   Record
	barrels  []string
	since    time.Time
	drawn, z float64
	want     float64
	dry      bool
}

// untouched reports whether next to nothing was drawn where a good part of the
// barrels was expected to be: pigs have favourites, but they rarely leave a
// nipple alone that runs.
func (f waterFind) untouched(holdsL float64) bool {
	return f.z >= 2 && f.drawn <= 0.1*f.want && f.want >= 0.25*holdsL
}

// find takes down a level that was told: off is how far it lies above the one
// expected, total the variance of that, took the litres expected to be drawn.
func (s *waterState) find(r Record, barrels []string, since time.Time, took, off, total float64, dry bool) {
	if took <= 0 || total <= 0 {
		return
	}
	s.finds = append(s.finds, waterFind{r, barrels, since, took - off, off / math.Sqrt(total), took, dry})
}

// findAll takes down that all barrels were found empty at once.
func (s *waterState) findAll(r Record, barrels []string, off, total float64) {
	since, took := s.since[0], 0.0
	for i, litres := range s.took {
		took += litres
		if s.since[i].After(since) {
			since = s.since[i]
		}
	}
	s.find(r, barrels, since, took, off, total, true)
}

// OddWater lists the water gone that does not fit, in the order of time: between
// two levels told, 1.8 times or half of what was expected and beyond what the
// herd's own scatter explains. What was answered LeftOut or AsUsual is not listed.
func (h *Herd) OddWater() []OddWater {
	if len(h.Barrels) == 0 || len(h.Waters) == 0 {
		return nil
	}
	f := h.water()
	if f.err != nil || len(f.states) == 0 {
		return nil
	}
	var out []OddWater
	for _, find := range f.states[len(f.states)-1].finds {
		o := OddWater{
			Record: find.record.ID, Barrels: find.barrels, From: find.since, At: find.record.At,
			DrawnL: max(find.drawn, 0), WantL: find.want, Dry: find.dry,
		}
		holds := 0.0
		for _, name := range find.barrels {
			if b := h.Barrel(name); b != nil && b.CapacityL != nil {
				holds += *b.CapacityL
			}
		}
		switch {
		case h.answered(find.record.ID) || max(find.want, find.drawn) < oddWaterPart*holds:
			continue
		case find.z <= -oddWaterZ && find.drawn >= oddWaterMore*find.want:
			o.Kind = OddMore
		case find.z >= oddWaterZ && find.drawn <= oddWaterLess*find.want, find.untouched(holds):
			o.Kind = OddLess
		default:
			continue
		}
		o.Reasons = append(h.oddWaterReason(o, find), h.drawnBy(find.record.At)...)
		out = append(out, o)
	}
	return out
}

// oddWaterReason is the sum behind a misfit, with half the 80 % range of what was
// expected.
func (h *Herd) oddWaterReason(o OddWater, find waterFind) []Reason {
	half := z80 * math.Abs((find.drawn-find.want)/find.z)
	return []Reason{{Code: WaterOdd, Names: o.Barrels, On: DayOf(o.From), Q: []Quantity{{o.DrawnL, Litres}, {o.WantL, Litres}, {half, Litres}}}}
}

// drawnBy says what the pigs are taken to draw, and by what.
func (h *Herd) drawnBy(at time.Time) []Reason {
	w, err := h.WaterLeft(at)
	if err != nil {
		return nil
	}
	var out []Reason
	for _, r := range w.Reasons {
		switch r.Code {
		case WaterUse, WaterLearned, WaterPublished, WaterHeat, WaterHeatGuessed:
			out = append(out, r)
		}
	}
	return out
}
