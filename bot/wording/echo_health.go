package wording

import (
	"fmt"
	"math"
	"strings"

	"troughbell/model"
)

func (v Voice) echoTreatment(verb string, t model.Treatment) string {
	days := ""
	if t.WithdrawalDays != nil {
		days = countNoun(float64(*t.WithdrawalDays), "day", "days") + " withdrawal"
	}
	return phrase(verb+" "+who(t.Animals), t.Product, days)
}

func (v Voice) echoSick(s model.Sick) string {
	ill := who(s.Animals)
	if s.Count > 0 {
		ill = countNoun(float64(s.Count), "pig", "pigs")
	}
	switch {
	case namesAilment(s.Note):
		return ill + " has " + s.Note
	case s.Note != "":
		return ill + " " + s.Note
	case s.Well:
		return ill + " well again"
	}
	return ill + " sick"
}

// alarms says what is wrong, and what it is when it is over.
var alarms = map[string]struct{ on, over string }{
	model.AlarmOut:     {"out", "back in"},
	model.AlarmDown:    {"down", "up again"},
	model.AlarmNoWater: {"no water", "water back"},
	model.AlarmNoFeed:  {"no feed", "feed back"},
	model.AlarmFence:   {"fence down", "fence fixed"},
}

func (v Voice) echoAlarm(a model.Alarm) string {
	words, ok := alarms[a.What]
	if !ok {
		return fmt.Sprintf("alarm: %s", a.What)
	}
	say := words.on
	if a.Over {
		say = words.over
	}
	if a.What == model.AlarmNoWater && a.Hours != nil && !a.Over {
		return say + " for " + countNoun(math.Round(*a.Hours), "hour", "hours")
	}
	if a.What != model.AlarmOut && a.What != model.AlarmDown {
		return say
	}
	subject := "pigs"
	if a.What == model.AlarmDown {
		subject = "pig"
	}
	if name := who(a.Animals); name != model.All {
		subject = name
	}
	return subject + " " + say
}

func (v Voice) echoMove(m model.Move) string { return "moved " + who(m.Animals) + " to " + m.Pen }

func (v Voice) echoWeather(w model.Weather) string {
	var high, low, rh string
	if w.HighC != nil {
		high = "high " + v.celsius(*w.HighC)
	}
	if w.LowC != nil {
		low = "low " + v.celsius(*w.LowC)
	}
	if w.RhPct != nil {
		rh = "humidity " + v.Quantity(model.Quantity{Value: *w.RhPct, Unit: model.Percent}, styleExact)
	}
	var rain string
	if w.RainMm != nil {
		rain = "rain " + v.rain(*w.RainMm)
	}
	if rain == "" && w.Rained {
		rain = "heavy rain"
	}
	if said := phrase(high, low, rh, rain); said != "" {
		return said
	}
	return "weather"
}

// rain writes millimetres of rain as they were said: in inches where the person
// has those and they are the rounder number.
func (v Voice) rain(mm float64) string {
	inches := mm / (10 * cmPerIn)
	if !v.Metric() && decimals(inches) <= max(decimals(mm), 1) {
		return plain(inches, 2) + " in"
	}
	return plain(mm, 1) + " mm"
}

func (v Voice) celsius(c float64) string {
	return v.Quantity(model.Quantity{Value: c, Unit: model.Celsius}, styleExact)
}

// namesAilment says that a note is what a pig has, not what it does: "the scours", "a
// cut ear".
func namesAilment(note string) bool {
	for _, w := range []string{"the ", "a ", "an ", "some "} {
		if strings.HasPrefix(strings.ToLower(note), w) {
			return true
		}
	}
	return false
}
