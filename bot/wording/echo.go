package wording

import (
	"fmt"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Echo says one fact in a phrase that reads back to the same fact. The day
// stands in it where it is not today, the time where it was stated. An entry
// that records nothing has no phrase.
func (v Voice) Echo(e reading.Entry) string {
	f, ok := e.Act.(reading.Fact)
	if !ok {
		return ""
	}
	switch f.Fact.(type) {
	case model.Booked, model.Remind, model.AwayFrom, model.Expected, model.Setting: // they carry their own day, or hold from now on
		return v.echoFact(f.Fact)
	}
	return v.echoFact(f.Fact) + v.when(e)
}

// when is the day and time of an entry, each only where it needs saying.
func (v Voice) when(e reading.Entry) string {
	var b strings.Builder
	if e.On != 0 && e.On != v.today() {
		b.WriteString(", " + v.Day(e.On))
	}
	if e.Minute != nil {
		b.WriteString(", " + v.Clock(*e.Minute))
	}
	return b.String()
}

func (v Voice) echoFact(f model.Fact) string {
	switch f := f.(type) {
	case model.Weigh:
		return v.echoWeigh(f)
	case model.Refill:
		return v.echoRefill(f)
	case model.FeedLevel:
		return v.echoFeedLevel(f)
	case model.Stock:
		return v.echoStock(f)
	case model.Mixed:
		return v.echoMixed(f)
	case model.Recipe:
		return v.echoRecipe(f)
	case model.Water:
		return v.echoWater(f)
	case model.WallowFill:
		return v.echoWallow(f)
	case model.Worm:
		return v.echoTreatment("wormed", f.Treatment)
	case model.Treat:
		return v.echoTreatment("treated", f.Treatment)
	case model.Sick:
		return v.echoSick(f)
	case model.Alarm:
		return v.echoAlarm(f)
	case model.Move:
		return v.echoMove(f)
	case model.Fence:
		return "fence " + v.Quantity(model.Quantity{Value: f.Kv, Unit: model.Kilovolts}, styleExact)
	case model.Weather:
		return v.echoWeather(f)
	case model.Arrive:
		return v.echoArrive(f)
	case model.Gone:
		return v.echoGone(f)
	case model.Booked:
		return v.echoBooked(f)
	case model.AwayFrom:
		return "away " + v.Day(f.From) + " to " + v.Day(f.To)
	case model.Expected:
		return v.echoExpected(f)
	case model.Spend:
		return v.echoSpend(f)
	case model.Setting:
		return v.echoSetting(f)
	}
	return v.echoTalk(f)
}

// phrase joins the parts that are there with commas.
func phrase(parts ...string) string {
	var kept []string
	for _, p := range parts {
		if p != "" {
			kept = append(kept, p)
		}
	}
	return strings.Join(kept, ", ")
}

// who says which pigs: "all", or their names.
func who(animals []string) string {
	if len(animals) == 0 || len(animals) == 1 && animals[0] == model.All {
		return model.All
	}
	return Join(animals, "and")
}

func (v Voice) kg(x float64) string { return v.Quantity(Kg(x), styleExact) }
func (v Voice) l(x float64) string  { return v.Quantity(L(x), styleExact) }
func (v Voice) cm(x float64) string {
	return v.Quantity(model.Quantity{Value: x, Unit: model.Centimetres}, styleExact)
}

// fractions that are said as words.
var fractions = []struct {
	value float64
	word  string
}{{0, "empty"}, {0.25, "a quarter"}, {1.0 / 3, "a third"}, {0.5, "half"}, {2.0 / 3, "two thirds"}, {0.75, "three quarters"}, {1, "full"}}

// level says a fraction of a full vessel.
func level(f float64) string {
	for _, known := range fractions {
		if d := f - known.value; d > -0.005 && d < 0.005 {
			return known.word
		}
	}
	return fmt.Sprintf("%s%%", plain(f*100, 0))
}

// levelFull says how full a vessel is: "half full", "empty", "full".
func levelFull(f float64) string {
	w := level(f)
	if w == "empty" || w == "full" {
		return w
	}
	return w + " full"
}

// levelLeft says what is left in a vessel: "half left", "empty", "full".
func levelLeft(f float64) string {
	w := level(f)
	if w == "empty" || w == "full" {
		return w
	}
	return w + " left"
}
