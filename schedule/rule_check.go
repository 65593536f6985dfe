package schedule

import (
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// silenceDays are the days without a word after which one line asks whether all
// is well; restDays is the last, after which between rounds only what is always told is.
var silenceDays = []model.Day{9, restDays}

const restDays = model.Day(28)

const (
	questionDays = 14            // a question is not asked again after so long
	questionRest = 2 * time.Hour // nor so soon
)

// checkVisit asks at a visit for what the figures lack, and once more what was
// left unanswered.
func checkVisit(v *view) []need {
	out := append(v.lacksFeed(), v.lacksWater()...)
	if q, ok := v.openQuestion(); ok && q.F.About != "setup" {
		n := questionNeed(q)
		n.since, n.token = q.At, "" // after the evening's telling, see below
		n.Topic += ":visit"
		out = append(out, n)
	}
	return out
}

func (v *view) lacksFeed() []need {
	_, err := v.f.RefillPlan(v.visitAt(), v.next)
	m, ok := lacks(err)
	names := v.feedersUnspoken()
	switch {
	case ok && (m.What == "level" || m.What == "capacity"):
		names = m.Names
	case err != nil || len(names) == 0 || len(names) == len(v.h.Feeders):
		return nil
	}
	return []need{{Line: Line{
		About: aboutCheck, Topic: "check:feed", Grade: Routine, Code: CodeCheckFeedLevel, Names: names,
	}, quiet: 6 * day}}
}

// feedersUnspoken lists the feeders of which nothing was ever logged: pigs are
// fed past them in every figure.
func (v *view) feedersUnspoken() []string {
	spoken := map[*model.Feeder]bool{}
	for _, r := range v.h.Refills {
		spoken[v.h.Feeder(r.F.Feeder)] = true
		if r.F.Feeder == "" {
			return nil // one word for all
		}
	}
	for _, l := range v.h.FeedLevels {
		spoken[v.h.Feeder(l.F.Feeder)] = true
		if l.F.Feeder == "" {
			return nil
		}
	}
	var out []string
	for _, f := range v.h.Feeders {
		if !spoken[f] {
			out = append(out, f.Name)
		}
	}
	return out
}

func (v *view) lacksWater() []need {
	_, err := v.f.WaterLeft(v.visitAt())
	m, ok := lacks(err)
	names := v.barrelsUnspoken()
	switch {
	case ok && (m.What == "water_level" || m.What == "capacity"):
		names = m.Names
	case err != nil || len(names) == 0 || len(names) == len(v.h.Barrels):
		return nil
	}
	return []need{{Line: Line{
		About: aboutCheck, Topic: "check:water", Grade: Routine, Code: CodeCheckWaterLevel, Names: names,
	}, quiet: 6 * day}}
}

// barrelsUnspoken lists the barrels of which nothing was ever logged.
func (v *view) barrelsUnspoken() []string {
	spoken := map[*model.Barrel]bool{}
	for _, w := range v.h.Waters {
		if w.F.Barrel == "" {
			return nil
		}
		spoken[v.h.Barrel(w.F.Barrel)] = true
	}
	var out []string
	for _, b := range v.h.Barrels {
		if !spoken[b] {
			out = append(out, b.Name)
		}
	}
	return out
}

// checkBetween asks whether all is well after a silence, repeats a question in
// the evening, and asks for a fill that was not logged.
func checkBetween(v *view) []need {
	var out []need
	if q, ok := v.openQuestion(); ok {
		n := questionNeed(q)
		d := model.DayOf(q.At.In(v.loc))
		n.Earliest = v.evening(d)
		if q.At.Add(questionRest).After(n.Earliest) {
			n.Earliest = v.evening(d + 1)
		}
		n.Latest = n.Earliest.Add(day)
		out = append(out, n)
	}
	word := lastWord(v.h)
	said := model.DayOf(word.In(v.loc))
	for _, days := range silenceDays {
		at := v.evening(said + days)
		code := CodeCheckSilence
		if days == restDays {
			code = CodeCheckSilenceLast
		}
		out = append(out, need{token: token("check:silence", said, int(days)), Line: Line{
			About: aboutCheck, Topic: "check:silence", Grade: Routine, Code: code, On: said,
			Earliest: at, Latest: at.Add(4 * day),
			Q: []model.Quantity{{Value: float64(days), Unit: model.Days}},
		}})
	}
	return append(out, v.notFilled()...)
}

// openQuestion is the latest question without an answer.
func (v *view) openQuestion() (model.Dated[model.Question], bool) {
	open := v.h.Open()
	for i := len(open) - 1; i >= 0; i-- {
		// One about what does not fit is put once; a file waits no longer than a day.
		if q := open[i]; q.F.Of == "" && q.F.About != "import" {
			return q, v.start.Sub(q.At) < questionDays*day
		}
	}
	return model.Dated[model.Question]{}, false
}

func questionNeed(q model.Dated[model.Question]) need {
	tok := token("check:question", q.ID)
	return need{token: tok, buttons: []Button{}, Line: Line{
		About: aboutCheck, Topic: tok, Grade: Routine, Code: CodeCheckQuestion,
		Names: []string{q.ID, q.F.About, q.F.Code}, At: q.At,
	}}
}

// topicNotFilled is the topic of asking for a fill that was not logged.
const topicNotFilled = "check:filled"

// notFilled asks, on the evening after a chore day, for the fill that the
// standing message asked for and nobody logged.
func (v *view) notFilled() []need {
	visit := v.prev
	d := model.DayOf(visit)
	var asked []string
	for _, t := range v.tolds {
		if key, _, _ := strings.Cut(t.F.Key, tokenGap); t.F.Standing && key == standingToken(d) {
			asked = t.F.About
		}
	}
	from := d.At(0, v.loc)
	logged := func(at time.Time) bool { return !at.Before(from) }
	// Who said "done" has said it; the amount is wanted, but not nagged for.
	settled := func(about string) bool {
		n := need{Line: Line{About: about, Topic: about}}
		return slices.ContainsFunc(v.h.Dones, func(d model.Dated[model.Done]) bool {
			return logged(d.At) && v.speaksOf(d.F.About, d.F.Topics, d.At, &n)
		})
	}
	l := Line{
		About: aboutCheck, Topic: topicNotFilled, Grade: Routine, Code: CodeCheckNotFilled, On: d,
		Earliest: v.evening(d + 1), Latest: v.evening(d + 1).Add(day),
	}
	if slices.Contains(asked, aboutRefill) && !logged(v.feedSpoken()) && !settled(aboutRefill) {
		l.Names = append(l.Names, aboutRefill)
	}
	var water time.Time
	latest(v.h.Waters, func(at time.Time) { water = at })
	if slices.Contains(asked, aboutWater) && !logged(water) && !settled(aboutWater) {
		l.Names = append(l.Names, aboutWater)
	}
	if len(l.Names) == 0 {
		return nil
	}
	return []need{{Line: l, token: token("check:filled", d), quiet: 3 * day}}
}
