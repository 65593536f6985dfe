package replay_test

import (
	"context"
	"fmt"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/picture"
	"troughbell/bot/replay"
	"troughbell/bot/wording"
	"troughbell/model"
)

// sayings collects all that a person would read: replies, nudges, buttons, charts and
// the words of documents.
type sayings struct {
	from string // the text from which on it is collected
	on   bool
	text string // said last
	all  []saying
}

type saying struct{ to, line string }

func (s *sayings) add(to string, texts ...string) {
	if !s.on {
		return
	}
	for _, text := range texts {
		for _, l := range strings.Split(text, "\n") {
			s.all = append(s.all, saying{to, l})
		}
	}
}

func (s *sayings) buttons(to string, buttons [][]string) {
	for _, row := range buttons {
		s.add(to, row...)
	}
}

func (s *sayings) Text(_ time.Time, _, text string, _ *model.Herd) error {
	s.text, s.on = text, s.on || text == s.from
	return nil
}

func (s *sayings) Reply(_ time.Time, r bot.Reply, _ *model.Herd) error {
	s.add(s.text, r.Text)
	s.buttons(s.text, r.Buttons)
	for _, p := range r.Pictures {
		s.add(s.text, p.Chart(picture.Screen{Columns: 80}))
	}
	for _, f := range r.Files {
		switch {
		case strings.HasSuffix(f.Name, ".html"):
			page := string(f.Bytes)
			page = page[strings.Index(page, "<body>"):]
			s.add(s.text+" (report)", strings.Split(regexp.MustCompile(`<[^>]*>`).ReplaceAllString(page, "\n"), "\n")...)
		case strings.HasSuffix(f.Name, ".ics"):
			for _, l := range strings.Split(strings.ReplaceAll(string(f.Bytes), "\r\n ", ""), "\r\n") {
				if title, ok := strings.CutPrefix(l, "SUMMARY:"); ok {
					s.add(s.text+" (calendar)", title)
				}
			}
		}
	}
	return nil
}

func (s *sayings) Nudge(p bot.Push, _ *model.Herd) error {
	s.add("nudge", p.Text)
	s.buttons("nudge", p.Buttons)
	return nil
}
func (s *sayings) Failed(int, error) error { return nil }
func (s *sayings) Ready(time.Time) error   { return nil }

const months = `(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)`

// Units and forms of times that belong to one kind of person, and forms of days that
// can be misread by either.
var (
	usForms     = regexp.MustCompile(`\d(–\d+)? ?(lb|lbs|gal|in|ft|sq ft|cu ft|°F|oz|am|pm|kcal/lb)\b|/lb\b|, lb\b`)
	metricForms = regexp.MustCompile(`\d(–\d+)? ?(kg|g|l|cm|m|m²|m2|°C|MJ/kg)\b|/kg\b|, kg\b|\b\d{1,2}:\d\d\b`)
	numberDays  = regexp.MustCompile(`\b20\d\d-\d\d-\d\d\b|\b(0?[1-9]|1[0-2])/(0?[1-9]|[12]\d|3[01])\b|\b\d{1,2}\.\d{1,2}\. [a-z]`)
	// A day before its month, and behind it. What stands in the first group says that
	// the number belongs to the month before it, or the month to the number before it.
	dayFirst   = regexp.MustCompile(`(\b` + months + ` )?\b\d{1,2} ` + months + `\b`)
	monthFirst = regexp.MustCompile(`(\b\d{1,2} )?\b` + months + ` \d{1,2}\b`)
	// ownWords are those of the person, quoted.
	ownWords = regexp.MustCompile(`"[^"]*"|Not understood.*|You texted.*`)
	twelve   = regexp.MustCompile(`\d{1,2}:\d\d [ap]m\b`) // a time of the one clock, which has the other's form in it
)

// everything is asked of a herd: all topics, commands and helps, the documents and
// pictures, and what falls due in the ten days after.
func everything(now time.Time, units string) string {
	texts := []string{units}
	for _, c := range wording.Commands {
		if c.Name == "newherd" || c.Name == "herd" || c.Name == "invite" || c.Name == "undo" {
			continue
		}
		texts = append(texts, wording.CommandText(c.Name, ""))
	}
	for _, t := range wording.Topics {
		texts = append(texts, "help "+t.Name)
	}
	texts = append(texts,
		"why?", "how much feed until the butcher?", "what will they yield?", "sitter sheet", "ration?", "when do they move?", "when to worm?",
		"is it too hot?", "plan", "plan 4 pigs", "history", "settings", "chart of the feed", "chart of water", "heat picture", "chart of costs",
		"graph of growth", "how big is the feeder?", "fence 5.8", "herd name is Long Acre", "how much did they gain?", "what if I skip 2 days?",
		"how long till butcher?", "why?", "how much water is left?", "why?", "how much feed is left?", "why?", "what do they weigh?", "why?",
		"what do they cost?", "why?", "when to worm?", "why?", map[string]string{"metric units": "high 34 C today", "US units": "high 94 today"}[units], "are they clear?", "calendar file", "report",
	)
	var b strings.Builder
	at := now
	for _, text := range texts {
		at = at.Add(time.Minute)
		fmt.Fprintf(&b, "%s | %s\n", at.Format("2006-01-02 15:04"), text)
	}
	fmt.Fprintf(&b, "%s |\n", at.AddDate(0, 0, 10).Format("2006-01-02 15:04"))
	return b.String()
}

// Whoever switches units is spoken to in them from then on, in all that is said of
// what was told before too: no unit of the other kind is left over, no time of the
// other clock, no day as a row of numbers, and none in the order of the other kind.
func TestUnitsAreSwitchedEverywhere(t *testing.T) {
	t.Parallel()
	lines := map[string]int{}
	for name, log := range logs(t) {
		if testing.Short() && len(name)%2 == 0 {
			continue
		}
		t.Run(name, func(t *testing.T) {
			for units, wrong := range map[string]struct{ unit, day *regexp.Regexp }{
				"metric units": {usForms, monthFirst}, "US units": {metricForms, dayFirst},
			} {
				from := newShed(t)
				_, now := from.play(log)
				if from.deleted() {
					return
				}
				s := &sayings{from: units}
				p, err := replay.New(context.Background(), from.store, from.herd, from.zone, s)
				require.NoError(t, err)
				require.NoError(t, p.Play(context.Background(), strings.NewReader(everything(now, units))))
				for _, x := range s.all {
					line := ownWords.ReplaceAllString(strings.ReplaceAll(x.line, " in use", ""), "")
					if units == "US units" {
						line = twelve.ReplaceAllString(line, "")
					}
					for _, m := range wrong.day.FindAllStringSubmatch(line, -1) {
						if m[1] == "" {
							t.Errorf("%s, to %q: the day %q in: %s", units, x.to, m[0], x.line)
						}
					}
					if m := wrong.unit.FindString(line); m != "" {
						t.Errorf("%s, to %q: %q in: %s", units, x.to, m, x.line)
					}
					if m := numberDays.FindString(line); m != "" {
						t.Errorf("%s, to %q: the day %q in: %s", units, x.to, m, x.line)
					}
				}
				lines[units] += len(s.all)
			}
		})
	}
	for units, n := range lines {
		require.Greater(t, n, 2000, "little was said in %s", units)
	}
}
