package bot

import (
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

// fadeStands is how long the question whether to go on with a topic can be
// answered by a bare word.
const fadeStands = 14 * 24 * time.Hour

// monthly is how long a topic rests that is to come monthly.
const monthly = 28 * 24 * time.Hour

// fadeTopic is what the latest nudge asked about going on with: its lines have
// the topic "keep:" and what it is about.
func (t *talk) fadeTopic() (about string, ok bool) {
	told, found := t.s.lastNudge(t.m.ReplyNudge)
	if !found {
		return "", false
	}
	tolds := t.s.Herd.Tolds
	if t.m.ReplyNudge == "" && t.now.Sub(tolds[len(tolds)-1].At) > fadeStands {
		return "", false
	}
	for _, topic := range told.Topics {
		if about, ok := strings.CutPrefix(topic, "keep:"); ok {
			return about, true
		}
	}
	return "", false
}

// answersFade takes "keep", "monthly" or "stop" as the answer to that question.
func (t *talk) answersFade() (model.Snooze, bool) {
	about, ok := t.fadeTopic()
	if !ok {
		return model.Snooze{}, false
	}
	f := model.Snooze{About: []string{about}, Topics: []string{"keep:" + about, about}}
	switch schedule.Button(strings.ToLower(strings.TrimSpace(t.m.Text))) {
	case schedule.ButtonKeep:
		f.Until = t.now
	case schedule.ButtonMonthly:
		f.Until = t.now.Add(monthly)
	case schedule.ButtonStop:
		f.Stop = true
	default:
		return model.Snooze{}, false
	}
	return f, true
}

// fade records the answer.
func (t *talk) fade(f model.Snooze) error {
	on := model.DayOf(t.now)
	act := reading.Snooze{About: f.About, Stop: f.Stop}
	if !f.Stop {
		day := model.DayOf(f.Until)
		act.Until = &day
	}
	t.r = reading.Reading{Entries: []reading.Entry{{Act: act, On: on}}}
	text := t.voice().Snoozed(f)
	if !f.Stop && !f.Until.After(t.now) {
		text = t.voice().KeptOn(f.About)
	}
	if err := t.append(t.note(f)); err != nil {
		return err
	}
	t.out.At = t.now
	t.out.Replies = []Reply{{Text: text, Entries: t.r.Entries}}
	return nil
}
