package bot

import (
	"time"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

// whyStands is for how long a bare "why?" speaks of the latest nudge.
const whyStands = 7 * 24 * time.Hour

// whyNudge answers a "why?" that speaks of a nudge: one that replies to it, or a
// bare one where the nudge came after the latest question. The nudge is worked out
// once more from what was known when it was told, and its reasons are said. The
// answer is empty where there is no such nudge, or it has no reasons.
func (t *talk) whyNudge(q reading.Ask) (answer.Answer, error) {
	told, ok := t.nudgeMeant()
	if q.Topic != "why" || !ok {
		return answer.Answer{}, nil
	}
	at := len(t.s.Journal)
	for i, e := range t.s.Journal {
		if e.ID == told.ID {
			at = i
			break
		}
	}
	then, err := NewState(t.s.Row, t.s.Journal[:at], t.s.Zone)
	if err != nil {
		return answer.Answer{}, err
	}
	now := told.At.In(t.s.Zone)
	due, _ := schedule.Decide(then.Herd, now)
	for _, n := range due {
		if n.Key != told.F.Key {
			continue
		}
		n.Lines = t.linesAsked(n.Lines)
		var reasons []model.Reason
		for depth := 0; depth < whyDepth; depth++ { // of several lines, the first reason of each comes first
			for _, l := range n.Lines {
				if depth < len(l.Reasons) {
					reasons = append(reasons, l.Reasons[depth])
				}
			}
		}
		return answer.Answer{Text: t.voice().Why(reasons), Reasons: reasons, Data: map[string]any{"of": "nudge"}}, nil
	}
	return answer.Answer{}, nil
}

// linesAsked are the lines of a nudge whose topics the text names, as in "why the
// water?"; all of them where it names none of them.
func (t *talk) linesAsked(lines []schedule.Line) []schedule.Line {
	var out []schedule.Line
	for _, about := range reading.Topics(t.m.Text) {
		for _, l := range lines {
			if l.About == about {
				out = append(out, l)
			}
		}
	}
	if len(out) == 0 {
		return lines
	}
	return out
}

// whyDepth is how many reasons of a line are looked at.
const whyDepth = 6

// nudgeMeant is the nudge that a "why?" speaks of; false where it is the latest
// question that it speaks of.
func (t *talk) nudgeMeant() (model.Dated[model.Told], bool) {
	tolds := t.s.Herd.Tolds
	for i := len(tolds) - 1; i >= 0; i-- {
		switch {
		case t.m.ReplyNudge != "":
			if tolds[i].F.Key == t.m.ReplyNudge {
				return tolds[i], true
			}
		case t.m.ReplyTo != "", t.now.Sub(tolds[i].At) > whyStands, t.asked != nil && !tolds[i].At.After(t.asked.At):
			return model.Dated[model.Told]{}, false
		default:
			return tolds[i], true
		}
	}
	return model.Dated[model.Told]{}, false
}
