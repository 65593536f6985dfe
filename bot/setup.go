package bot

import (
	"fmt"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// setupSteps are the questions of setting up, in their order. Each can be
// skipped, and is put once.
var setupSteps = []struct {
	name  string
	known func(h *model.Herd) bool
	// fits says that an entry answers the question.
	fits func(f model.Fact) bool
	// leads are ways to fill in what a bare answer leaves out ("265", "2 55s").
	leads func(units string) []string
}{
	{
		"pigs",
		func(h *model.Herd) bool { return len(h.Animals) > 0 },
		func(f model.Fact) bool { _, ok := f.(model.Arrive); return ok },
		func(string) []string { return []string{"%s pigs came today", "pigs came today: %s", "%s pigs"} },
	},
	{
		"target",
		func(h *model.Herd) bool { return h.TargetStated },
		setsKey(model.SetTarget),
		func(string) []string { return []string{"target %s", "target weight %s"} },
	},
	{
		"feeder",
		func(h *model.Herd) bool { return len(h.Feeders) > 0 },
		setsKey(model.SetFeeder),
		func(units string) []string {
			return []string{"feeder holds %s", "feeder holds %s " + volume(units), "%s " + volume(units) + " feeder", "%s " + volume(units) + " feeders"}
		},
	},
	{
		"water",
		func(h *model.Herd) bool { return len(h.Barrels) > 0 },
		setsKey(model.SetBarrel),
		func(units string) []string {
			return []string{"water barrels %s", "%s " + volume(units) + " water barrels", "water barrel %s " + volume(units)}
		},
	},
	{
		"chores",
		func(h *model.Herd) bool { return h.Chore.Stated && h.Zone != "" },
		func(f model.Fact) bool {
			return setsKey(model.SetChore)(f) || setsKey(model.SetHour)(f) || setsKey(model.SetZone)(f)
		},
		func(string) []string { return []string{"chores %s", "chore day %s"} },
	},
}

func setsKey(key string) func(model.Fact) bool {
	return func(f model.Fact) bool {
		s, ok := f.(model.Setting)
		return ok && s.Key == key
	}
}

func volume(units string) string {
	if units == model.Metric {
		return "l"
	}
	return "gal"
}

// readSetup reads the answer to a set-up question. A bare number is read in the
// light of the question; a text that is plainly something else is left so.
func readSetup(c reading.Context, p *reading.Pending, text string) reading.Reading {
	if strings.EqualFold(strings.TrimSpace(text), "skip") || isSkipLabel(p, text) {
		return reading.Reading{Answers: true, Entries: []reading.Entry{{
			Act: reading.Do{What: "skip"}, On: model.DayOf(c.Now),
		}}}
	}
	first := reading.Read(c, text)
	for _, step := range setupSteps {
		if step.name != p.Setup {
			continue
		}
		if answers(first, step.fits) {
			first.Answers = true
			return first
		}
		if saysSomething(first) {
			return first
		}
		for _, lead := range step.leads(c.Herd.Units) {
			r := reading.Read(c, fmt.Sprintf(lead, text))
			if answers(r, step.fits) && len(r.Left) == 0 {
				r.Answers = true
				return r
			}
		}
	}
	return first
}

// isSkipLabel reports whether the text is the label, or its number, that skips.
func isSkipLabel(p *reading.Pending, text string) bool {
	for i, l := range p.Labels {
		if i == len(p.Labels)-1 && (strings.EqualFold(l, strings.TrimSpace(text))) {
			return true
		}
	}
	return false
}

func answers(r reading.Reading, fits func(model.Fact) bool) bool {
	for _, e := range r.Entries {
		if f, ok := e.Act.(reading.Fact); ok && fits(f.Fact) {
			return true
		}
	}
	return false
}

// saysSomething reports whether a text is a clear thing of its own: a question,
// an alarm, a wish, or a record that no bare number could be.
func saysSomething(r reading.Reading) bool {
	for _, e := range r.Entries {
		switch a := e.Act.(type) {
		case reading.Ask, reading.Help, reading.Do, reading.Undo:
			return true
		case reading.Fact:
			switch a.Kind() {
			case "weigh", "feed_level", "weather", "fence", "note":
			default:
				return true
			}
		}
	}
	return false
}

// nextSetup is the next question of setting up, recorded as asked; or, after
// the last one, what the herd looks like now.
func (t *talk) nextSetup() (string, error) {
	asked := map[string]bool{}
	for _, q := range t.s.Herd.Questions {
		if q.F.About == "setup" {
			asked[q.F.Code] = true
		}
	}
	for _, step := range setupSteps {
		if step.known(t.s.Herd) || t.s.Herd.Skipped[step.name] || asked[step.name] {
			continue
		}
		text, labels := t.voice().SetupQuestion(step.name)
		q, err := packQuestion(reading.Clarify{About: "setup", Code: step.name}, labels, t.m.Text, step.name)
		if err != nil {
			return "", err
		}
		t.buttons = rows(labels)
		return text, t.append(t.note(q))
	}
	if len(t.s.Herd.Animals) > 0 && len(asked) > 0 && !t.before.setUp() && t.s.setUp() {
		return t.voice().SetupDone(t.s.Herd), nil
	}
	return "", nil
}

// setUp reports whether every step is known or skipped.
func (s *State) setUp() bool {
	for _, step := range setupSteps {
		if !step.known(s.Herd) && !s.Herd.Skipped[step.name] {
			return false
		}
	}
	return true
}
