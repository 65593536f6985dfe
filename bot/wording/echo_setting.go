package wording

import (
	"strings"
	"time"

	"troughbell/model"
)

func (v Voice) echoSetting(s model.Setting) string {
	switch s.Key {
	case model.SetHerd:
		return "herd name " + s.Text
	case model.SetZone:
		return "time zone " + s.Text
	case model.SetUnits:
		if s.Text == model.Metric {
			return "metric units"
		}
		return "US units"
	case model.SetCurrency:
		return "currency " + s.Text
	case model.SetTarget:
		if s.Number != nil {
			return "target " + v.kg(*s.Number)
		}
	case model.SetChore:
		return "chores " + weekdays(s.List)
	case model.SetHour:
		return "nudges at " + v.clockTexts(s.List)
	case model.SetEve:
		if len(s.List) == 0 {
			return "nudges on the chore day itself"
		}
		return "nudges the evening before chores, at " + v.clockTexts(s.List)
	case model.SetShop:
		if len(s.List) == 0 {
			return "tell about shopping at the usual hour"
		}
		return "tell about shopping at " + v.clockTexts(s.List)
	case model.SetQuiet:
		return "quiet " + v.clockTexts(s.List)
	case model.SetMute:
		return "no more nudges: " + About(s.Text)
	case model.SetUnmute:
		if s.Text == model.All {
			return "all nudges again"
		}
		return "nudges again: " + About(s.Text)
	case model.SetSkipped:
		return "skipped: " + s.Text
	case model.SetLevel:
		if s.Text == "" {
			return "no levelling midweek"
		}
		return "level the feed midweek"
	case model.SetPictures:
		if s.Text == model.DarkPictures {
			return "dark pictures"
		}
		return "light pictures"
	case model.SetPlace:
		if s.Text == "" {
			return "location off"
		}
		return "location " + strings.ReplaceAll(s.Text, ",", ", ")
	case model.SetSize:
		if t := s.Thing; t != nil && t.FeedKg != nil {
			return "a " + t.Name + " is " + v.kg(*t.FeedKg)
		}
	}
	return v.echoThing(s)
}

// echoThing says a feeder, barrel, pen or wallow as set up.
func (v Voice) echoThing(s model.Setting) string {
	t := s.Thing
	if t == nil {
		return "setting " + s.Key
	}
	head := thingName(s.Key, t.Name)
	if t.Gone {
		return head + " gone"
	}
	var size, nipples, use string
	switch {
	case t.CapacityKg != nil:
		size = " holds " + v.kg(*t.CapacityKg)
	case t.CapacityL != nil:
		size = " holds " + v.l(*t.CapacityL)
	case t.AreaM2 != nil:
		size = " " + v.Quantity(model.Quantity{Value: *t.AreaM2, Unit: model.SquareMetres}, styleExact)
	}
	if t.DepthM != nil {
		size += " " + v.cm(*t.DepthM*100) + " deep"
	}
	if t.Soil != "" {
		size += " " + string(t.Soil) + " soil"
	}
	if t.Nipples != nil {
		nipples = countNoun(float64(*t.Nipples), "nipple", "nipples")
	}
	if t.InUse != nil {
		use = " not in use"
		if *t.InUse {
			use = " in use"
		}
	}
	return phrase(head+size+use, nipples)
}

// thingName names a thing with its kind, which its own name may say already.
func thingName(kind, name string) string {
	has := strings.Contains(strings.ToLower(name), kind)
	switch {
	case kind == model.SetBarrel && has:
		return "water " + name
	case has:
		return name
	case kind == model.SetBarrel:
		kind = "water barrel"
	}
	return strings.TrimSpace(kind + " " + name)
}

// weekdays names days by their codes: "Sat", "Wed and Sat".
func weekdays(codes []string) string {
	words := make([]string, 0, len(codes))
	for _, c := range codes {
		for w := time.Sunday; w <= time.Saturday; w++ {
			if model.WeekdayCode(w) == c {
				words = append(words, w.String()[:3])
			}
		}
	}
	return Join(words, "and")
}

// clockTexts says one time of day or two as a span.
func (v Voice) clockTexts(texts []string) string {
	words := make([]string, len(texts))
	for i, s := range texts {
		words[i] = s
		if m, err := model.ParseClock(s); err == nil {
			words[i] = v.Clock(m)
		}
	}
	return strings.Join(words, " to ")
}
