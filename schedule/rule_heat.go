package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// heatFrom is the hour, in minutes after midnight, from which a danger of the
// day's heat is told at once: before it nothing can be done.
const heatFrom = 4 * 60

// heatSaid is for how long the reply to who told the day's heat stands for a
// nudge; then it comes, for the others of the household and for who forgot.
const heatSaid = 2 * time.Hour

// heatUntil is the hour until which a word on the day's heat is of use.
const heatUntil = 17 * 60

// heatOf gives the heat of a day whose high was told or forecast. A month's normal
// never counts: it is the mean of a latitude, that half the days of any summer exceed,
// and the spells that hurt pigs lie far above it. A warning on it would come in every
// week of every summer alike and say nothing of this one; water and wallow are planned
// by it all the same.
func (v *view) heatOf(d model.Day) (model.Heat, bool) {
	if w, _, _ := v.h.WeatherOf(d); w.HighC == nil {
		return model.Heat{}, false
	}
	h, err := v.f.Heat(d)
	return h, err == nil
}

// hot reports whether the day was told to be one of alert or worse.
func (v *view) hot(d model.Day) bool {
	h, ok := v.heatOf(d)
	return ok && heatGrade(h.Class) != ""
}

func heatGrade(c model.HeatClass) Grade {
	switch c {
	case model.HeatAlert:
		return Welfare
	case model.HeatDanger, model.HeatEmergency:
		return Danger
	}
	return ""
}

func heatLine(d model.Day, h model.Heat) Line {
	code := map[model.HeatClass]string{
		model.HeatWatch: CodeHeatWatch, model.HeatAlert: CodeHeatAlert,
		model.HeatDanger: CodeHeatDanger, model.HeatEmergency: CodeHeatEmergency,
	}[h.Class]
	l := Line{
		About: aboutHeat, Topic: token(aboutHeat, d), Grade: heatGrade(h.Class), Code: code, On: d,
		Q: []model.Quantity{
			{Value: h.HighC, Unit: model.Celsius}, {Value: h.RhPct, Unit: model.Percent}, {Value: h.THI, Unit: model.Ratio},
		},
		Reasons: h.Reasons,
	}
	if l.Grade == "" {
		l.Grade = Routine
	}
	return l
}

// heatVisit says on a chore day that the day or the next is warm enough to
// watch the pigs; more than that is told by heatBetween.
func heatVisit(v *view) []need {
	for _, d := range []model.Day{v.day, v.day + 1} {
		if h, ok := v.heatOf(d); ok && h.Class == model.HeatWatch {
			l := heatLine(d, h)
			l.Topic = aboutHeat
			return []need{{Line: l, since: v.start}}
		}
	}
	return nil
}

// heatBetween tells of tomorrow's heat in the evening and of today's at once;
// the danger of a spell's first day, or of a worse one, again in the morning, for
// what was said the evening before is easily forgotten. Heat short of danger is
// not told each day of a spell.
func heatBetween(v *view) []need {
	var out []need
	if h, ok := v.heatOf(v.day + 1); ok && heatGrade(h.Class) != "" && !v.knownSpell(v.day+1, h.Class) {
		l := heatLine(v.day+1, h)
		l.Earliest, l.Latest = v.evening(v.day), v.end
		out = append(out, need{Line: l, token: token(aboutHeat, v.day+1, "eve", string(h.Class))})
	}
	h, ok := v.heatOf(v.day)
	if !ok || heatGrade(h.Class) == "" || v.knownSpell(v.day, h.Class) {
		return out
	}
	l := heatLine(v.day, h)
	l.Latest = v.day.At(heatUntil, v.loc)
	eve := v.told(token(aboutHeat, v.day, "eve", string(h.Class)))
	switch {
	case l.Grade != Danger && eve, eve && v.heatTold(v.day-1, h.Class):
		return out
	case l.Grade != Danger || eve:
		l.Earliest = v.morning(v.day)
	default:
		l.Earliest = v.day.At(heatFrom, v.loc)
	}
	if at := v.h.HighToldAt(v.day); !at.IsZero() { // the reply said what to do
		l.Earliest = later(l.Earliest, at.Add(heatSaid))
	}
	return append(out, need{
		Line: l, token: token(aboutHeat, v.day, string(h.Class)), breaks: l.Grade == Danger && !eve, quiet: 6 * time.Hour,
	})
}

// spellDays is how many days of a spell pass before heat short of danger is told
// anew (common practice, no source).
const spellDays = 3

// knownSpell reports whether heat short of danger goes on that was told of the
// days before.
func (v *view) knownSpell(d model.Day, c model.HeatClass) bool {
	if heatGrade(c) == Danger {
		return false
	}
	for back := model.Day(1); back <= spellDays; back++ {
		if v.heatTold(d-back, c) {
			return true
		}
	}
	return false
}

// heatClasses are those that are told between visits, the worst last.
var heatClasses = []model.HeatClass{model.HeatAlert, model.HeatDanger, model.HeatEmergency}

// heatTold reports whether heat of the class or worse was told of a day.
func (v *view) heatTold(d model.Day, c model.HeatClass) bool {
	for _, told := range heatClasses[max(0, slices.Index(heatClasses, c)):] {
		if v.told(token(aboutHeat, d, "eve", string(told))) || v.told(token(aboutHeat, d, string(told))) {
			return true
		}
	}
	return false
}
