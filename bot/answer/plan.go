package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// weanedKg is what is assumed of pigs of a plan that names no weight: about
// 45 lb, eight weeks old. Common practice, no source.
const weanedKg = 20.4

// drumL is the common drum, 55 US gallons, that feeders and barrels of a plan are
// counted in.
const drumL = 208.2

// plan works out what pigs will need, for a newcomer or for the herd as it is.
func plan(a asked) Answer {
	q := model.NeedsQuery{Count: a.Count, From: a.today, WeightKg: weanedKg, TargetKg: a.target()}
	q.LeadDays, _ = a.h.BookingLead()
	if a.On != nil {
		q.From = *a.On
	}
	assumed, own := a.WeightKg == nil, q.Count == 0
	if !assumed {
		q.WeightKg = *a.WeightKg
	}
	if q.Count == 0 {
		pigs := a.h.Alive(a.today)
		coming, ok := a.h.Coming(a.today)
		switch {
		case len(pigs) == 0 && ok && coming.Count > 0:
			q.Count, own = coming.Count, false
			if a.On == nil {
				q.From = coming.Day
			}
		case len(pigs) == 0:
			return a.missing(&model.Missing{What: "count"})
		default:
			q.Count = len(pigs)
		}
		if w, err := a.h.MeanWeight(pigs, a.today); err == nil && assumed {
			q.WeightKg, assumed = w.WeightKg.Mid, false
		}
	}
	n, err := model.PlanNeeds(q)
	if err != nil {
		return a.missing(err)
	}
	data := planData(q, n)
	args := wording.Args{
		Days: []model.Day{n.Target.Mid, n.Target.Low, n.Target.High, n.BookBy, q.From},
		Q: []model.Quantity{
			wording.N(q.Count), wording.Kg(q.TargetKg), wording.Kg(n.FeedKg.Mid),
			wording.N(n.Feeders), wording.N(n.Barrels), wording.N(n.Nipples),
			area(n.ShelterM2), area(n.ShadeM2), area(n.PenM2), wording.Kg(q.WeightKg), wording.L(drumL),
		},
	}
	code := "plan"
	if n.BookBy <= a.today {
		code = "plan_late"
	}
	text := a.say(code, args) + "\n" + a.say("plan_things", args) + "\n" + a.say("plan_room", args)
	text += "\n" + a.setUp(q, n, data)
	if own {
		n.Reasons = append(a.outgrown(data), n.Reasons...)
	}
	if assumed {
		text += "\n" + a.say("plan_assumed", args)
	}
	return Answer{Data: data, Text: text, Reasons: n.Reasons}
}

// setUp says how high nipples hang, the strands and wire of a pen, and the money
// at the herd's own price of feed.
func (a asked) setUp(q model.NeedsQuery, n model.Needs, data map[string]any) string {
	var said []string
	now, err := model.NippleHeightCm(q.WeightKg, false)
	end, err2 := model.NippleHeightCm(q.TargetKg, false)
	if err == nil && err2 == nil {
		data["nipple_cm"], data["nipple_end_cm"] = kg(now), kg(end)
		cm := func(x float64) model.Quantity { return model.Quantity{Value: x, Unit: model.Centimetres} }
		said = append(said, a.say("plan_nipples", wording.Args{Q: []model.Quantity{cm(now), cm(end), wording.N(n.FeederHoles)}}))
	}
	strands, err := model.FenceStrandsCm(q.WeightKg)
	wire, err2 := model.FenceWireM(n.PenM2, max(len(strands), 1))
	if err == nil && err2 == nil {
		data["strands_cm"], data["wire_m"] = strands, kg(wire)
		said = append(said, a.say("plan_fence", wording.Args{Q: []model.Quantity{
			wording.N(len(strands)), {Value: wire, Unit: model.Metres},
		}}))
	}
	if price, _, ok := a.h.FeedPrice(a.now); ok {
		data["feed_money"], data["feed_price_kg"] = kg(price*n.FeedKg.Mid), fine(price)
		said = append(said, a.say("plan_money", wording.Args{Q: []model.Quantity{wording.Cash(price * n.FeedKg.Mid), wording.Cash(price)}}))
	}
	return strings.Join(said, " ")
}

// outgrown adds what the herd as it is outgrows and when; the next of it comes
// first among the reasons.
func (a asked) outgrown(data map[string]any) []model.Reason {
	ready, err := a.h.Adequacy(a.today)
	if err != nil || len(ready.Ahead) == 0 {
		return nil
	}
	var list []map[string]any
	for _, o := range ready.Ahead {
		list = append(list, map[string]any{
			"what": o.Code, "date": o.Days.Mid.String(), "low": o.Days.Low.String(), "high": o.Days.High.String(),
			"from_kg": kg(o.FromKg), "value": kg(o.Value),
		})
	}
	data["outgrown"] = list
	return ready.Ahead[0].Reasons
}

func area(m2 float64) model.Quantity { return model.Quantity{Value: m2, Unit: model.SquareMetres} }

// planData is the needs of a plan by the contract's names.
func planData(q model.NeedsQuery, n model.Needs) map[string]any {
	months := map[string]any{}
	for _, m := range n.FeedByMonthKg {
		months[m.Month.String()[:7]] = kg(m.FeedKg)
	}
	return map[string]any{
		"count": q.Count, "from": q.From.String(), "weight_kg": kg(q.WeightKg), "target_kg": kg(q.TargetKg),
		"feed_kg": kg(n.FeedKg.Mid), "feed_low_kg": kg(n.FeedKg.Low), "feed_high_kg": kg(n.FeedKg.High),
		"feed_by_month_kg": months, "holes": n.FeederHoles,
		"feeders": n.Feeders, "barrels": n.Barrels, "nipples": n.Nipples,
		"shelter_m2": kg(n.ShelterM2), "shade_m2": kg(n.ShadeM2), "pen_m2": kg(n.PenM2),
		"dates": map[string]any{
			"from": q.From.String(), "target": n.Target.Mid.String(), "low": n.Target.Low.String(),
			"high": n.Target.High.String(), "book_by": n.BookBy.String(),
		},
	}
}
