package answer

import (
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
	return a.task("worming", "worming_now", d)
}

// move says when the pigs should leave their pen.
func move(a asked) Answer {
	d, err := a.h.MoveDue(a.today)
	if err != nil {
		return a.missing(err)
	}
	return a.task("move", "move_now", d)
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
