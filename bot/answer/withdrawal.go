package answer

import (
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// withdrawal says when the pigs are clear. Unknown days are not clear.
func withdrawal(a asked) Answer {
	if len(a.pigs) == 0 {
		return a.missing(&model.Missing{What: "pigs"})
	}
	animals := map[string]any{}
	var parts []string
	names, of := byName(a.pigs)
	for _, name := range names {
		c := a.clearance(of[name])
		animals[name] = a.clearData(c)
		if part := a.clearPart(name, c); part != "" {
			parts = append(parts, part)
		}
	}
	whole := a.clearance(a.pigs)
	data := a.clearData(whole)
	data["animals"] = animals
	text := a.clearVerdict(whole)
	if len(names) > 1 && len(parts) > 0 {
		text += "\n" + strings.Join(parts, " ")
	}
	if line := a.clearBooking(whole); line != "" {
		text += "\n" + line
	}
	return Answer{Data: data, Text: text, Reasons: whole.reasons}
}

// clearData is null where days are unknown; pigs never treated are clear now.
func (a asked) clearData(c clearance) map[string]any {
	if !c.known {
		return map[string]any{"clear_at": nil, "clear": nil}
	}
	at := c.at
	if at.IsZero() {
		at = a.now
	}
	return map[string]any{"clear_at": a.moment(at), "clear": model.DayOf(at.In(a.now.Location())).String()}
}

func (a asked) clearVerdict(c clearance) string {
	args := wording.Args{Names: a.subject(), Moments: moments(c.at, a.now)}
	switch {
	case !c.known:
		args.Names = a.v.NamesOf(c.unknown)
		for _, r := range c.reasons {
			if r.Code == model.WithdrawalUnsettled {
				args.Days = []model.Day{r.On}
				return a.say("clear_unsettled", args)
			}
		}
		return a.say("clear_unknown", args)
	case c.at.After(a.now):
		args.Names = a.v.NamesOf(c.treated)
		return a.say("clear_at", args)
	case c.at.IsZero():
		return a.say("clear_never", args)
	}
	return a.say("clear_already", args)
}

func (a asked) clearPart(name string, c clearance) string {
	args := wording.Args{Names: []string{name}, Moments: moments(c.at, a.now)}
	switch {
	case !c.known:
		return a.say("clear_part_unknown", args)
	case c.at.After(a.now):
		return a.say("clear_part", args)
	}
	return ""
}

// clearBooking holds the day asked about, or the booking, against it.
func (a asked) clearBooking(c clearance) string {
	var load time.Time
	code := "clear_for"
	if a.On != nil {
		load, code = a.On.At(0, a.now.Location()), "clear_on"
	} else if b, ok := a.h.NextBooking(a.today); ok {
		load = a.loadMoment(b)
	} else {
		return ""
	}
	if !c.known || c.at.After(load) {
		code = "not_" + code
	}
	return a.say(code, wording.Args{Days: []model.Day{model.DayOf(load)}})
}
