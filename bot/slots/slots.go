// Package slots writes entries in the form that other programs rely on: the
// intent and its slots, SI units in the names, values rounded to 0.01.
package slots

import (
	"math"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Of gives the entry's slots by name, ready for JSON, "intent" included. The
// words of a question and of its choices, and the answer to an ask, are put in
// by the caller, who knows whom they are for.
func Of(e reading.Entry) map[string]any {
	s := slots{"intent": e.Act.Intent()}
	switch a := e.Act.(type) {
	case reading.Fact:
		s.fact(a.Fact, e)
	case reading.Ask:
		s.ask(a)
	case reading.Done:
		s.list("about", a.About)
	case reading.Snooze:
		s.snooze(a)
	case reading.Undo:
		s.text("of", a.Of)
	case reading.Help:
		s.text("about", a.About)
	case reading.Do:
		s.text("about", a.What)
		if a.What == "report" {
			s.text("season", a.Arg)
		}
	case reading.Clarify:
		s.text("about", a.About)
	case reading.None:
		s.text("reason", a.Reason)
	}
	if e.Replace != "" {
		s["replaces"] = true
	}
	return s
}

// slots are names with their values; a slot that was not given is absent.
type slots map[string]any

func round(v float64) float64 {
	r := math.Round(v*100) / 100
	if r == 0 {
		return 0 // no minus sign
	}
	return r
}

func (s slots) text(name, v string) {
	if v != "" {
		s[name] = v
	}
}

func (s slots) list(name string, v []string) {
	if len(v) > 0 {
		s[name] = v
	}
}

func (s slots) number(name string, v *float64) {
	if v != nil {
		s[name] = round(*v)
	}
}

func (s slots) amount(name string, v float64) {
	if v != 0 {
		s[name] = round(v)
	}
}

func (s slots) flag(name string, v bool) {
	if v {
		s[name] = true
	}
}

func (s slots) count(name string, v int) {
	if v != 0 {
		s[name] = v
	}
}

// day writes the day that the fact belongs to, and its time if one was stated.
func (s slots) day(e reading.Entry) {
	s["date"] = e.On.String()
	if e.Minute != nil {
		s["at"] = model.FormatClock(*e.Minute)
	}
}

func (s slots) ask(a reading.Ask) {
	s["topic"] = a.Topic
	s.list("animals", a.Animals)
	if a.On != nil {
		s["on"] = a.On.String()
	}
	s.number("target_kg", a.TargetKg)
	s.count("count", a.Count)
	s.number("weight_kg", a.WeightKg)
	s.text("product", a.Product)
	s.text("season", a.Season)
	s.flag("picture", a.Picture)
	if a.Assume != nil {
		as := slots{}
		as.count("count_delta", a.Assume.CountDelta)
		as.number("target_kg", a.Assume.TargetKg)
		as.count("skip_days", a.Assume.SkipDays)
		s["assume"] = map[string]any(as)
	}
}

func (s slots) snooze(z reading.Snooze) {
	s.list("about", z.About)
	s.count("hours", z.Hours)
	switch {
	case z.Until != nil:
		s["until"] = z.Until.String()
	case z.NextChore:
		s["until"] = "next_chore_day"
	case z.Stop:
		s["until"] = "stop"
	}
}

// fact writes a fact's own slots.
func (s slots) fact(f model.Fact, e reading.Entry) {
	switch v := f.(type) {
	case model.Weigh:
		s.list("animals", v.Animals)
		s.amount("weight_kg", v.WeightKg)
		s.amount("girth_cm", v.GirthCm)
		s.amount("length_cm", v.LengthCm)
	case model.Refill:
		s.text("feeder", v.Feeder)
		s.number("feed_kg", v.FeedKg)
		s.flag("full", v.Full)
		s.number("fraction", v.Fraction)
	case model.FeedLevel:
		s.text("feeder", v.Feeder)
		s.number("fraction", v.Fraction)
		s.number("feed_kg", v.FeedKg)
		s.number("days", v.Days)
		s.flag("spilled", v.Spilled)
		s.number("spilled_kg", v.SpilledKg)
	case model.Stock:
		s.text("ingredient", v.Ingredient)
		s.number("feed_kg", v.FeedKg)
		s.number("count", v.Count)
		s.number("amount", v.Amount)
		s.text("currency", v.Currency)
	case model.Mixed:
		s.number("batches", v.Batches)
		s.number("feed_kg", v.FeedKg)
	case model.Water:
		s.text("barrel", v.Barrel)
		s.flag("full", v.Full)
		s.number("litres", v.Litres)
		s.number("fraction", v.Fraction)
		s.flag("seen", v.Seen)
	case model.WallowFill:
		s.number("litres", v.Litres)
		s.number("minutes", v.Minutes)
		if v.Dry {
			s["fraction"], s["seen"] = 0.0, true
		}
	case model.Worm:
		s.treatment(v.Treatment)
	case model.Treat:
		s.treatment(v.Treatment)
	default:
		s.herdFact(f, e)
		return
	}
	s.day(e)
}

func (s slots) treatment(t model.Treatment) {
	s.list("animals", t.Animals)
	s.text("product", t.Product)
	if t.WithdrawalDays != nil {
		s["withdrawal_days"] = *t.WithdrawalDays
	}
}

// herdFact writes the facts that are not about feed, water or drugs.
func (s slots) herdFact(f model.Fact, e reading.Entry) {
	switch v := f.(type) {
	case model.Move:
		s.text("pen", v.Pen)
		s.list("animals", v.Animals)
	case model.Sick:
		s.list("animals", v.Animals)
		s.text("note", v.Note)
		s.flag("well", v.Well)
	case model.Alarm:
		s.text("what", v.What)
		s.list("animals", v.Animals)
		s.flag("over", v.Over)
	case model.Fence:
		s["kv"] = round(v.Kv)
	case model.Weather:
		s.number("high_c", v.HighC)
		s.number("low_c", v.LowC)
		s.number("rh_pct", v.RhPct)
		s.number("rain_mm", v.RainMm)
		s.flag("rained", v.Rained)
	case model.Recipe:
		ing := map[string]any{}
		for name, kg := range v.Ingredients {
			ing[name] = round(kg)
		}
		s["ingredients"] = ing
		s.number("protein_pct", v.ProteinPct)
		if len(v.TagProteinPct) > 0 {
			s["tag_protein_pct"] = v.TagProteinPct
		}
	case model.Spend:
		s["amount"] = round(v.Amount)
		s.text("currency", v.Currency)
		s.text("what", v.What)
		s.flag("income", v.Income)
	case model.Arrive:
		s.arrive(v)
	case model.Gone:
		s.list("animals", v.Animals)
		s.count("count", v.Count)
		s.text("how", v.How)
		s.number("hanging_kg", v.HangingKg)
		s.number("packaged_kg", v.PackagedKg)
		s.number("amount", v.Amount)
		s.text("currency", v.Currency)
	case model.Note:
		s.text("what", v.What)
	default:
		s.ahead(f)
		return
	}
	s.day(e)
}

func (s slots) arrive(v model.Arrive) {
	s["count"] = v.Count
	s.list("animals", v.Animals)
	if len(v.Sexes) > 0 {
		sexes := make([]string, len(v.Sexes))
		for i, x := range v.Sexes {
			sexes[i] = string(x)
		}
		s["sexes"] = sexes
	}
	s.number("weight_kg", v.WeightKg)
	if v.Born != nil {
		s["born"] = v.Born.String()
	}
	s.text("group", v.Group)
}

// ahead writes what looks forward, with its own days, and settings, which have
// none.
func (s slots) ahead(f model.Fact) {
	switch v := f.(type) {
	case model.Booked:
		if v.Day != 0 {
			s["date"] = v.Day.String()
		}
		if v.Minute != nil {
			s["at"] = model.FormatClock(*v.Minute)
		}
		s.count("count", v.Count)
		s.flag("cancelled", v.Cancelled)
	case model.AwayFrom:
		s["from"], s["to"] = v.From.String(), v.To.String()
	case model.Expected:
		if v.Day != 0 {
			s["date"] = v.Day.String()
		}
		s.count("count", v.Count)
		s.flag("cancelled", v.Cancelled)
	case model.Remind:
		s["when"] = v.Day.String()
		if v.Minute != nil {
			s["when"] = v.Day.String() + "T" + model.FormatClock(*v.Minute)
		}
		s.text("what", v.What)
	case model.Setting:
		s.setting(v)
	case model.Done:
		s.list("about", v.About)
	case model.Snooze:
		s.list("about", v.About)
		if !v.Until.IsZero() {
			s["until"] = v.Until.Format(time.RFC3339)
		}
	}
}

func (s slots) setting(v model.Setting) {
	s["key"] = v.Key
	switch {
	case v.Thing != nil:
		s["value"] = thing(*v.Thing)
	case v.Number != nil:
		s["value"] = round(*v.Number)
	case (v.Key == model.SetHour || v.Key == model.SetEve || v.Key == model.SetShop) && len(v.List) == 1:
		s["value"] = v.List[0]
	case len(v.List) > 0:
		s["value"] = v.List
	case v.Text != "":
		s["value"] = v.Text
	}
}

func thing(t model.Thing) map[string]any {
	s := slots{}
	s.text("name", t.Name)
	s.number("capacity_kg", t.CapacityKg)
	s.number("capacity_l", t.CapacityL)
	if t.Nipples != nil {
		s["nipples"] = *t.Nipples
	}
	s.number("area_m2", t.AreaM2)
	s.number("depth_m", t.DepthM)
	if t.InUse != nil {
		s["in_use"] = *t.InUse
	}
	s.text("soil", string(t.Soil))
	s.number("feed_kg", t.FeedKg)
	s.flag("gone", t.Gone)
	return s
}
