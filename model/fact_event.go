package model

import "errors"

// Move is pigs put into a pen.
type Move struct {
	Pen     string   `json:"pen"`
	Animals []string `json:"animals,omitempty"` // empty: all
}

func (Move) Kind() Kind   { return "move" }
func (Move) Version() int { return 1 }

func (m Move) Check() error {
	if m.Pen == "" {
		return errors.New("a move needs the pen")
	}
	return nil
}

func (m Move) fold(h *Herd, r Record) { h.addMove(m, r) }

// Sick is a pig seen unwell, in the person's words; Well ends it.
type Sick struct {
	Animals []string `json:"animals"`
	// Count is how many of the animals, where they have no names to say which; 0: all.
	Count int    `json:"count,omitempty"`
	Note  string `json:"note,omitempty"`
	Well  bool   `json:"well,omitempty"`
}

func (Sick) Kind() Kind   { return "sick" }
func (Sick) Version() int { return 1 }

func (s Sick) Check() error {
	if len(s.Animals) == 0 {
		return errors.New("a note on health needs the pig")
	}
	if s.Count < 0 {
		return errors.New("the number of pigs unwell must not be negative")
	}
	return nil
}

func (s Sick) fold(h *Herd, r Record) { h.Sicks = append(h.Sicks, dated(s, r)) }

// What an alarm can be about.
const (
	AlarmOut     = "out"
	AlarmDown    = "down"
	AlarmNoWater = "no_water"
	AlarmNoFeed  = "no_feed"
	AlarmFence   = "fence"
)

// Alarm is an emergency as reported; Over ends it.
type Alarm struct {
	What    string   `json:"what"`
	Animals []string `json:"animals,omitempty"`
	Over    bool     `json:"over,omitempty"`
	// Hours is how long it had lasted by then, as far as told: pigs without water.
	Hours *float64 `json:"hours,omitempty"`
}

func (Alarm) Kind() Kind   { return "alarm" }
func (Alarm) Version() int { return 1 }

func (a Alarm) Check() error {
	if a.Hours != nil && !(*a.Hours >= 0 && *a.Hours <= 1000) {
		return errors.New("an alarm has lasted between 0 and 1000 hours")
	}
	switch a.What {
	case AlarmOut, AlarmDown, AlarmNoWater, AlarmNoFeed, AlarmFence:
		return nil
	}
	return errors.New("an alarm is about pigs out, a pig down, water, feed or the fence")
}

func (a Alarm) fold(h *Herd, r Record) { h.Alarms = append(h.Alarms, dated(a, r)) }

// Fence is a voltage read on the wire, in kilovolts.
type Fence struct {
	Kv float64 `json:"kv"`
}

func (Fence) Kind() Kind   { return "fence" }
func (Fence) Version() int { return 1 }

func (f Fence) Check() error {
	if f.Kv < 0 || f.Kv > 20 {
		return errors.New("a fence reads between 0 and 20 kilovolts")
	}
	return nil
}

func (f Fence) fold(h *Herd, r Record) { h.Fences = append(h.Fences, dated(f, r)) }

// Weather is a day's weather as a person told it.
type Weather struct {
	HighC  *float64 `json:"high_c,omitempty"`
	LowC   *float64 `json:"low_c,omitempty"`
	RhPct  *float64 `json:"rh_pct,omitempty"`
	RainMm *float64 `json:"rain_mm,omitempty"` // fallen in the day
	Rained bool     `json:"rained,omitempty"`  // it rained hard or long, how much was not said
}

func (Weather) Kind() Kind   { return "weather" }
func (Weather) Version() int { return 1 }

func (w Weather) Check() error {
	for _, c := range []*float64{w.HighC, w.LowC} {
		if c != nil && (*c < -60 || *c > 60) {
			return errors.New("air temperatures lie between -60 and 60 °C")
		}
	}
	if w.RhPct != nil && (*w.RhPct < 0 || *w.RhPct > 100) {
		return errors.New("humidity lies between 0 and 100 %")
	}
	if w.RainMm != nil && (*w.RainMm < 0 || *w.RainMm > 1000) {
		return errors.New("a day's rain lies between 0 and 1000 mm")
	}
	if w.HighC == nil && w.LowC == nil && w.RhPct == nil && w.RainMm == nil && !w.Rained {
		return errors.New("weather needs a temperature, a humidity or rain")
	}
	return nil
}

func (w Weather) fold(h *Herd, r Record) { h.addWeather(w, r) }

// Note is something to keep, in the person's words.
type Note struct {
	What string `json:"what"`
}

func (Note) Kind() Kind   { return "note" }
func (Note) Version() int { return 1 }

func (n Note) Check() error {
	if n.What == "" {
		return errors.New("a note needs words")
	}
	return nil
}

func (n Note) fold(h *Herd, r Record) { h.Notes = append(h.Notes, dated(n, r)) }
