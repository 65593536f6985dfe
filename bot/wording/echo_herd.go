package wording

import (
	"troughbell/model"
)

func (v Voice) echoArrive(a model.Arrive) string {
	s := countNoun(float64(a.Count), "pig", "pigs") + " came"
	if a.Group != "" {
		s = a.Group + ": " + s
	}
	if who := arrivals(a); who != "" {
		s += ": " + who
	}
	each, born := "", ""
	if a.WeightKg != nil {
		each = v.kg(*a.WeightKg)
		if a.Count > 1 {
			each += " each"
		}
	}
	if a.Born != nil {
		born = "born " + v.Day(*a.Born)
	}
	return phrase(s, each, born)
}

// arrivals says names with their sexes, or how many of each sex.
func arrivals(a model.Arrive) string {
	if len(a.Animals) == 0 {
		return sexCounts(a.Sexes)
	}
	words := make([]string, len(a.Animals))
	for i, name := range a.Animals {
		words[i] = name
		if i < len(a.Sexes) && a.Sexes[i] != "" {
			words[i] += " " + string(a.Sexes[i])
		}
	}
	return Join(words, "and")
}

func sexCounts(sexes []model.Sex) string {
	var words []string
	for _, sex := range []model.Sex{model.Barrow, model.Gilt, model.Boar, model.Sow} {
		n := 0
		for _, s := range sexes {
			if s == sex {
				n++
			}
		}
		if n > 0 {
			words = append(words, countNoun(float64(n), string(sex), string(sex)+"s"))
		}
	}
	return Join(words, "and")
}

func (v Voice) echoGone(g model.Gone) string {
	subject := Join(g.Animals, "and")
	if len(g.Animals) == 0 || len(g.Animals) == 1 && g.Animals[0] == model.All {
		subject = model.All
		if g.Count > 0 {
			subject = countNoun(float64(g.Count), "pig", "pigs")
		}
	}
	hung, packed, paid := "", "", ""
	if g.HangingKg != nil {
		hung = "hung " + v.kg(*g.HangingKg)
	}
	if g.PackagedKg != nil {
		packed = "packaged " + v.kg(*g.PackagedKg)
	}
	if g.Amount != nil {
		paid = " for " + v.Amount(*g.Amount, g.Currency)
	}
	switch {
	case g.How == model.Butchered && hung != "":
		return phrase(subject+" "+hung, packed) + paid
	case g.How == model.Butchered && packed != "" && subject == model.All:
		return packed + paid
	case g.How == model.Butchered && packed != "":
		return subject + " " + packed + paid
	}
	return phrase(subject+" "+g.How, hung, packed) + paid
}

func (v Voice) echoBooked(b model.Booked) string {
	if b.Cancelled {
		if b.Day == 0 {
			return "butcher cancelled"
		}
		return "butcher " + v.Day(b.Day) + " cancelled"
	}
	at := v.Day(b.Day)
	if b.Minute != nil {
		at = v.dayThen(b.Day, v.Clock(*b.Minute))
	}
	switch {
	case len(b.Animals) > 0:
		at += " " + Join(b.Animals, "and")
	case b.Count > 0 && b.Minute == nil:
		at = v.dayThen(b.Day, countNoun(float64(b.Count), "pig", "pigs"))
	case b.Count > 0:
		at += " " + countNoun(float64(b.Count), "pig", "pigs")
	}
	return "butcher " + at
}

func (v Voice) echoExpected(x model.Expected) string {
	switch {
	case x.Cancelled:
		return "expect no pigs"
	case x.Count == 0:
		return "expect pigs " + v.Day(x.Day)
	}
	return "expect " + countNoun(float64(x.Count), "pig", "pigs") + " " + v.Day(x.Day)
}

func (v Voice) echoSpend(s model.Spend) string {
	verb := "spent"
	if s.Income {
		verb = "received"
	}
	said := verb + " " + v.Amount(s.Amount, s.Currency)
	switch {
	case s.What == "":
		return said
	case s.Income:
		return said + " for " + s.What
	}
	return said + " on " + s.What
}
