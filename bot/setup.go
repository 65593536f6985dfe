package bot

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// stepChores is the step of the chores, which asks for the clock as well.
const stepChores = "chores"

// setupSteps are the questions of setting up, in their order. Each can be
// skipped, and is put once.
var setupSteps = []struct {
	name  string
	known func(h *model.Herd) bool
	// fits says that an entry answers the question.
	fits func(f model.Fact) bool
	// leads are ways to fill in what a bare answer leaves out. {} is the answer
	// as it stands; {1} and {2} are its numbers, for answers of as many numbers
	// and nothing else ("265", "2 55s"); {l} is the unit of volume, {w} that of
	// weight.
	leads []string
}{
	{
		"pigs",
		func(h *model.Herd) bool { return len(h.Animals) > 0 },
		func(f model.Fact) bool { _, ok := f.(model.Arrive); return ok },
		[]string{"{1} pigs came today, {2} {w} each", "{1} pigs came today", "{} pigs came today", "pigs came today: {}"},
	},
	{
		"target",
		func(h *model.Herd) bool { return h.TargetStated },
		setsKey(model.SetTarget),
		[]string{"target {1} {w}", "target {}", "target weight {}"},
	},
	{
		"feeder",
		func(h *model.Herd) bool { return len(h.Feeders) > 0 },
		setsKey(model.SetFeeder),
		[]string{"{1} feeders, {2} {l} each", "feeder holds {1} {l}", "feeder holds {}", "feeders: {}"},
	},
	{
		"water",
		func(h *model.Herd) bool { return len(h.Barrels) > 0 },
		setsKey(model.SetBarrel),
		[]string{"{1} water barrels, {2} {l} each", "one water barrel, {1} {l}", "water barrels: {}", "{} water barrels"},
	},
	{
		stepChores,
		func(h *model.Herd) bool { return h.Chore.Stated && h.Zone != "" },
		func(f model.Fact) bool {
			return setsKey(model.SetChore)(f) || setsKey(model.SetHour)(f) || setsKey(model.SetZone)(f)
		},
		[]string{"chores {}", "chore day {}"},
	},
}

func setsKey(key string) func(model.Fact) bool {
	return func(f model.Fact) bool {
		s, ok := f.(model.Setting)
		return ok && s.Key == key
	}
}

// fill puts an answer into a lead; ok is false where the lead takes as many
// numbers as the answer does not have.
func fill(lead, answer, units string) (string, bool) {
	volume, weight := "gal", "lb"
	if units == model.Metric {
		volume, weight = "l", "kg"
	}
	wants := strings.Count(lead, "{1}") + strings.Count(lead, "{2}")
	pairs := []string{"{}", answer, "{l}", volume, "{w}", weight}
	if wants > 0 {
		numbers := bareNumbers(answer)
		if len(numbers) != wants {
			return "", false
		}
		for i, n := range numbers {
			pairs = append(pairs, fmt.Sprintf("{%d}", i+1), n)
		}
	}
	return strings.NewReplacer(pairs...).Replace(lead), true
}

// bareNumbers are the numbers of an answer that is nothing but numbers: "4 48",
// "2 55s", "2 x 55"; nil for any other.
func bareNumbers(answer string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(strings.ToLower(answer), func(r rune) bool { return r == ' ' || r == ',' || r == '@' }) {
		if w == "x" || w == "by" || w == "at" || w == "of" {
			continue
		}
		w = strings.TrimRight(w, "s\u2019'.")
		if _, err := strconv.ParseFloat(w, 64); err != nil {
			return nil
		}
		out = append(out, w)
	}
	return out
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
		bare := bareNumbers(text) != nil
		if !bare && answers(first, step.fits) {
			first.Answers = true
			return first
		}
		if !bare && saysSomething(first) {
			return first
		}
		if step.name != "pigs" && speaksOfPigs(text) { // no answer to a question about a thing
			return first
		}
		for _, lead := range step.leads {
			filled, ok := fill(lead, strings.TrimSpace(text), c.Herd.Units)
			if !ok {
				continue
			}
			if r := reading.Read(c, filled); len(r.Left) == 0 && answersOnly(r, step.fits) {
				r.Answers = true
				return r
			}
		}
	}
	return first
}

func speaksOfPigs(text string) bool {
	return slices.ContainsFunc(strings.Fields(strings.ToLower(text)), func(w string) bool {
		switch strings.Trim(w, ".,;:!?") {
		case "pig", "pigs", "piglet", "piglets", "hog", "hogs":
			return true
		}
		return false
	})
}

// isSkipLabel reports whether the text is the label, or its number, that skips.
func isSkipLabel(p *reading.Pending, text string) bool {
	for i, l := range p.Labels {
		if i == len(p.Labels)-1 && strings.EqualFold(l, strings.TrimSpace(text)) {
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

// answersOnly reports whether the text is the answer and nothing in doubt.
func answersOnly(r reading.Reading, fits func(model.Fact) bool) bool {
	for _, e := range r.Entries {
		if _, ok := e.Act.(reading.Fact); !ok {
			return false
		}
	}
	return answers(r, fits)
}

// saysSomething reports whether a text is a clear thing of its own: a question,
// an alarm, a wish, a plan, or a record that no bare number could be.
func saysSomething(r reading.Reading) bool {
	for _, e := range r.Entries {
		switch a := e.Act.(type) {
		case reading.Ask, reading.Help, reading.Do, reading.Undo:
			return true
		case reading.None:
			if a.Reason == reading.NonePlan { // "i'll order straw on friday" is no chore day
				return true
			}
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
	// A step that was passed over is not asked again, and does not stay open.
	for _, q := range t.s.Herd.Open() {
		if q.F.About == "setup" {
			if err := t.append(t.note(model.Settled{Question: q.ID, How: "dropped"})); err != nil {
				return "", err
			}
		}
	}
	for _, step := range setupSteps {
		if step.known(t.s.Herd) || t.s.Herd.Skipped[step.name] || asked[step.name] {
			continue
		}
		text, labels := t.voice().SetupQuestion(step.name)
		q, err := packQuestion(reading.Clarify{About: "setup", Code: step.name}, text, labels, t.m.Text, step.name)
		if err != nil {
			return "", err
		}
		t.buttons = rows(labels)
		return text, t.append(t.note(q))
	}
	if len(t.s.Herd.Animals) == 0 || t.before.setUp() || !t.s.setUp() {
		return "", nil
	}
	var said []string
	if len(asked) > 0 { // who said all at once has read it all
		t.closed = true
		said = append(said, t.voice().SetupDone(t.s.Herd))
	}
	if len(t.s.Herd.Refills)+len(t.s.Herd.FeedLevels) == 0 {
		said = append(said, t.voice().First())
	}
	return strings.Join(said, "\n"), nil
}

// settingUp reports whether a question of setting up waits for its answer.
func (s *State) settingUp() bool {
	return slices.ContainsFunc(s.Herd.Open(), func(q model.Dated[model.Question]) bool { return q.F.About == "setup" })
}

// setUp reports whether every step is known or skipped. Who was asked for the chores
// and the clock and told the chores has the clock that was shown.
func (s *State) setUp() bool {
	shown := s.Herd.Chore.Stated && slices.ContainsFunc(s.Herd.Questions, func(q model.Dated[model.Question]) bool {
		return q.F.About == "setup" && q.F.Code == stepChores
	})
	for _, step := range setupSteps {
		if !step.known(s.Herd) && !s.Herd.Skipped[step.name] && !(shown && step.name == stepChores) {
			return false
		}
	}
	return true
}
