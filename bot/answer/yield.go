package answer

import (
	"math"
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// yield says what a pig gives: on the day asked about, else the day booked,
// else the day the target is reached.
func yield(a asked) Answer {
	on, err := a.yieldDay()
	if err != nil {
		return a.missing(err)
	}
	y, err := a.h.Yield(on)
	if err != nil {
		return a.missing(err)
	}
	live, hanging, retail := y.LiveKg, y.HangingKg, y.RetailKg
	some := a.named
	if b, ok := a.h.NextBooking(a.today); ok && !a.named && a.On == nil && a.TargetKg == nil {
		a.pigs = a.h.BookedPigs(b, a.today)
		some = true
	}
	if some || a.TargetKg != nil {
		if live, err = a.liveOf(on); err != nil {
			return a.missing(err)
		}
		hanging, retail = part(live, y.HangingKg, y.LiveKg), part(live, y.RetailKg, y.LiveKg)
	}
	data := map[string]any{"on": on.String(), "pigs": len(a.pigs)}
	bounds(data, "live", live)
	bounds(data, "hanging", hanging)
	bounds(data, "retail", retail)
	args := wording.Args{Names: a.subject(), Days: []model.Day{on}, Q: append(append(span(retail), span(hanging)...), span(live)...)}
	text := a.say("yield", args)
	n := max(len(a.pigs), 1)
	more := a.freezer(data, retail.Scale(float64(n)))
	if n > 1 {
		more = a.say("yield_all", wording.Args{Q: []model.Quantity{
			wording.N(n), wording.Kg(retail.Mid * float64(n)), wording.Kg(hanging.Mid * float64(n)),
		}}) + " " + more
	}
	if more = strings.TrimSpace(more); more != "" {
		text += "\n" + more
	}
	sum := model.Reason{Code: "yield_sum", Q: []model.Quantity{
		wording.Kg(live.Mid), share(hanging.Mid, live.Mid), wording.Kg(hanging.Mid), share(retail.Mid, hanging.Mid), wording.Kg(retail.Mid),
	}}
	return Answer{Data: data, Text: text, Reasons: append(append([]model.Reason{sum}, y.Reasons...), model.Reason{Code: model.ReasonFreezerSpace})}
}

// litresPerCubicFoot: freezers are sold by the cubic foot where pounds are used.
const litresPerCubicFoot = 28.316846592

// freezer adds the space that the packed meat takes, and says it.
func (a asked) freezer(data map[string]any, packed model.Interval) string {
	space, err := model.FreezerL(packed.Mid)
	if err != nil {
		return ""
	}
	data["freezer_l"], data["freezer_low_l"], data["freezer_high_l"] = kg(space.Mid), kg(space.Low), kg(space.High)
	return a.say("freezer", wording.Args{Q: []model.Quantity{
		{Value: math.Ceil(space.Mid / litresPerCubicFoot), Unit: model.Count}, wording.L(space.Mid),
	}})
}

func (a asked) yieldDay() (model.Day, error) {
	if a.On != nil {
		return *a.On, nil
	}
	if b, ok := a.h.NextBooking(a.today); ok && a.TargetKg == nil {
		return b.Day, nil
	}
	f, err := a.h.Target(a.target(), a.today)
	if err != nil {
		return 0, err
	}
	return f.Herd.Days.Mid, nil
}

// liveOf is the live weight asked about: the weight itself, or that of the pigs
// named on the day.
func (a asked) liveOf(on model.Day) (model.Interval, error) {
	if a.TargetKg != nil {
		return model.Interval{Low: *a.TargetKg, Mid: *a.TargetKg, High: *a.TargetKg}, nil
	}
	w, err := a.h.MeanWeight(a.pigs, on)
	return w.WeightKg, err
}

// part carries a share of the herd's pigs over to another live weight: its own
// relative error, without that of the herd's weight, and that of the new one.
func part(live, cut, of model.Interval) model.Interval {
	mid := live.Mid * cut.Mid / of.Mid
	side := func(cut, cutMid, of, ofMid, live, liveMid float64) float64 {
		own := square(cut/cutMid-1) - square(of/ofMid-1)
		return math.Sqrt(max(own, 0) + square(live/liveMid-1))
	}
	return model.Interval{
		Low:  mid * (1 - side(cut.Low, cut.Mid, of.Low, of.Mid, live.Low, live.Mid)),
		Mid:  mid,
		High: mid * (1 + side(cut.High, cut.Mid, of.High, of.Mid, live.High, live.Mid)),
	}
}

func share(a, b float64) model.Quantity {
	return model.Quantity{Value: 100 * a / b, Unit: model.Percent}
}

func square(x float64) float64 { return x * x }
