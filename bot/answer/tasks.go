package answer

import (
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// worming says when the next worming, or a dung test, is due.
func worming(a asked) Answer {
	d, err := a.h.WormingDue(a.today)
	if err != nil {
		return a.missing(err)
	}
	if d.Blocked {
		return a.task("worming_blocked", "worming_blocked_now", d)
	}
	out := a.task("worming", "worming_now", d)
	days, known := a.h.WormerDays()
	if !known {
		return out
	}
	last, err := a.h.LastDoseBefore(a.now, days)
	if err != nil { // no butcher booked
		return out
	}
	out.Data["last_dose"] = a.moment(last.At)
	out.Data["last_dose_withdrawal_days"] = days
	code := "last_dose"
	if last.Gone {
		code = "last_dose_gone"
	}
	out.Text += " " + a.say(code, wording.Args{
		Days: []model.Day{model.DayOf(last.Load)}, Moments: []time.Time{last.At.In(a.now.Location())}, Q: []model.Quantity{wording.Days(float64(days))},
	})
	out.Reasons = append(out.Reasons, last.Reasons...)
	return out
}

// move says when the pigs should leave their pen.
func move(a asked) Answer {
	d, err := a.h.MoveDue(a.today)
	if err != nil {
		return a.missing(err)
	}
	out := a.task("move", "move_now", d)
	for _, r := range d.Reasons {
		if r.Code == model.MoveWet {
			out.Text += " " + a.v.Why([]model.Reason{r})
		}
	}
	out.Reasons = append(out.Reasons, a.ground(d.Pen, out.Data)...)
	return out
}

// ground adds what the pigs leave in the ground of the pen they are in: nitrogen
// and, if the herd has worms, eggs that rest does not cure.
func (a asked) ground(p *model.Pen, data map[string]any) []model.Reason {
	var out []model.Reason
	if pens, err := a.h.PenNitrogenYear(a.today); err == nil {
		for _, n := range pens {
			if n.Pen == p && n.KgHa > 0 {
				data["nitrogen_kg_ha"], data["nitrogen_over"] = kg(n.KgHa), n.Over
				out = append(out, n.Reasons...)
			}
		}
	}
	if pens, err := a.h.PenWorms(a.today); err == nil {
		for _, w := range pens {
			if w.Pen == p && w.InfectiveFrom != 0 {
				data["worm_eggs_from"] = w.InfectiveFrom.String()
				out = append(out, w.Reasons...)
			}
		}
	}
	return out
}

// task says a task with its day and why; from its day on in other words.
func (a asked) task(code, nowCode string, d model.Due) Answer {
	why := a.v.Why(d.Reasons)
	data := map[string]any{"date": d.On.String(), "days": int(d.On - a.today), "why": why}
	args := wording.Args{Days: []model.Day{d.On}}
	if d.Pen != nil {
		args.Names = []string{d.Pen.Name}
		data["pen"] = d.Pen.Name
	} else if names := a.v.NamesOf(d.Pigs); len(names) > 0 && (len(names) > 1 || names[0] != model.All) {
		args.Names = names
	}
	if d.Blocked {
		data["blocked"] = true
	}
	if d.On <= a.today {
		code = nowCode
	}
	text := a.say(code, args)
	if first := a.v.Why(d.Reasons[:min(1, len(d.Reasons))]); first != "" {
		text += "\n" + first
	}
	return Answer{Data: data, Text: text, Reasons: d.Reasons}
}
