package schedule

import (
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// oddFor is for how long something that does not fit is worth asking about.
const oddFor = 2 * day

// oddBetween asks about feed, water or growth that does not fit: one question a
// day, about the gravest, in the evening of the day on which it was told. Its
// answer teaches, or leaves the span out.
func oddBetween(v *view) []need {
	found := v.odd()
	if len(found) == 0 {
		return nil
	}
	for _, t := range v.tolds {
		if !t.At.Before(v.start) && slices.ContainsFunc(t.F.Topics, func(topic string) bool { return strings.HasPrefix(topic, oddTopic) }) {
			return nil
		}
	}
	for _, n := range found {
		if !v.told(n.token) {
			return []need{n}
		}
	}
	return nil
}

const oddTopic = "check:odd:"

// odd lists what does not fit, the gravest first.
func (v *view) odd() []need {
	var out []need
	recent := func(at time.Time) bool { return v.start.Sub(at) < oddFor && at.Before(v.end) }
	add := func(l Line, of string, at time.Time, choices ...string) {
		d := model.DayOf(at.In(v.loc))
		l.About, l.Topic, l.Of, l.Choices = aboutCheck, oddTopic+of, of, choices
		l.Earliest = v.evening(d)
		if l.Code == CodeOddFeedEmpty { // they stand before an empty trough
			l.Earliest = at.Add(lateReply)
		}
		l.Latest = v.evening(d).Add(day)
		out = append(out, need{Line: l, token: token("check:odd", of), buttons: []Button{}})
	}
	for _, o := range v.f.OddFeed() {
		if !recent(o.At) {
			continue
		}
		l := Line{Grade: Welfare, Names: []string{o.Feeder}, Reasons: o.Reasons, At: o.At, On: model.DayOf(o.From.In(v.loc))}
		l.Q = []model.Quantity{{Value: o.UsedKg, Unit: model.Kilograms}, {Value: o.WantKg, Unit: model.Kilograms}}
		switch o.Kind {
		case model.OddEmpty:
			l.Code, l.On, l.Q = CodeOddFeedEmpty, model.DayOf(o.At.In(v.loc)), l.Q[1:]
			add(l, o.Record, o.At, ChoiceTrough, ChoiceSpilled, ChoiceOthers, ChoiceAte)
		case model.OddLess:
			l.Code = CodeOddFeedLess
			add(l, o.Record, o.At, ChoiceDrinkers, ChoicePigOff, ChoiceStuck, ChoiceAteLess)
		default:
			l.Code, l.Grade = CodeOddFeedMore, Routine
			add(l, o.Record, o.At, ChoiceSpilled, ChoiceOthers, ChoiceAte, ChoiceNotFull)
		}
	}
	for _, o := range v.f.OddWater() {
		if !recent(o.At) {
			continue
		}
		l := Line{Grade: Welfare, Names: o.Barrels, Reasons: o.Reasons, At: o.At, On: model.DayOf(o.From.In(v.loc))}
		l.Q = []model.Quantity{{Value: o.DrawnL, Unit: model.Litres}, {Value: o.WantL, Unit: model.Litres}}
		if o.Kind == model.OddLess {
			l.Code = CodeOddWaterLess
			add(l, o.Record, o.At, ChoiceClogged, ChoiceRain, ChoicePigOff, ChoiceDrankLess)
			continue
		}
		l.Code = CodeOddWaterMore
		add(l, o.Record, o.At, ChoiceLeak, ChoiceOthers, ChoiceDrank, ChoiceNotFull)
	}
	for _, s := range v.f.GrowthStalls() {
		at := s.On.At(noon, v.loc)
		if !recent(at) {
			continue
		}
		add(Line{
			Grade: Routine, Code: CodeOddGrowth, Names: slices.Concat(s.Animals, s.Also), Reasons: s.Reasons, On: s.From, At: at,
			Q: []model.Quantity{{Value: s.EachGainKg, Unit: model.Kilograms}, {Value: s.EachWantKg, Unit: model.Kilograms}, {Value: float64(s.On - s.From), Unit: model.Days}},
		}, s.Record, at, ChoiceIll, ChoiceShort, ChoiceBullied, ChoiceMisread)
	}
	slices.SortStableFunc(out, func(a, b need) int { return slices.Index(oddOrder, a.Code) - slices.Index(oddOrder, b.Code) })
	return out
}

// oddOrder is what is asked about first: what the pigs lack before what is lost.
var oddOrder = []string{CodeOddFeedEmpty, CodeOddWaterLess, CodeOddFeedLess, CodeOddWaterMore, CodeOddFeedMore, CodeOddGrowth}
