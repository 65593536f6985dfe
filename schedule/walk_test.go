package schedule

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

// drawn is a season with an invented herd, drawn at random: what is said when.
func drawn(t *rapid.T, tb testing.TB) (*log, func(*model.Herd) figures, time.Time, time.Time) {
	zone := rapid.SampledFrom([]string{"America/New_York", "Africa/Cairo", "Australia/Lord_Howe", "Europe/Berlin", "America/Santiago", "Asia/Beirut"}).Draw(t, "zone")
	start := rapid.SampledFrom([]string{"2026-03-05", "2026-04-22", "2026-10-02", "2026-10-30", "2026-07-01", "2026-09-02", "2026-03-26", "2028-02-24"}).Draw(t, "start")
	l := newLog(tb, zone)
	from := l.time(start + " 08:00")
	l.add(start+" 08:00",
		model.Setting{Key: model.SetChore, List: drawnChore(t)},
		model.Setting{Key: model.SetHour, List: []string{drawnHour(t)}},
		model.Setting{Key: model.SetEve, List: drawnEve(t)},
		model.Setting{Key: model.SetQuiet, List: drawnQuiet(t)},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel", CapacityL: model.Float(200)}},
		model.Arrive{Count: 3, Animals: []string{"Dot", "Tank", "Mabel"}, WeightKg: model.Float(25)},
	)
	first := model.DayOf(from)
	f := fake{
		feedDays:   rapid.Float64Range(1, 15).Draw(t, "feed"),
		waterDays:  rapid.Float64Range(1, 15).Draw(t, "water"),
		wallowDays: rapid.Float64Range(1, 9).Draw(t, "wallow"),
		weightKg:   30, capacityKg: 200, useKgD: 8,
		worm: first + model.Day(rapid.IntRange(0, 14).Draw(t, "worm")),
		move: first + model.Day(rapid.IntRange(0, 14).Draw(t, "move")),
		heat: map[model.Day]model.HeatClass{},
	}
	for range rapid.IntRange(0, 10).Draw(t, "facts") {
		at := from.Add(time.Duration(rapid.IntRange(1, 7*24*60).Draw(t, "minute")) * time.Minute)
		d := model.DayOf(at)
		var fact model.Fact
		switch rapid.IntRange(0, 13).Draw(t, "kind") {
		case 0:
			fact = model.Refill{FeedKg: model.Float(80)}
		case 1:
			fact = model.Water{Full: true}
		case 2:
			fact = model.Water{Seen: true, Fraction: model.Float(0)}
		case 3:
			fact = model.Alarm{What: rapid.SampledFrom([]string{model.AlarmOut, model.AlarmDown, model.AlarmFence}).Draw(t, "what")}
		case 4:
			fact = model.Remind{Day: d + 1, Minute: model.Int(rapid.IntRange(0, 1439).Draw(t, "of day")), What: "gate"}
		case 5:
			fact = model.Snooze{About: []string{aboutWater, aboutWallow}, Until: at.Add(time.Duration(rapid.IntRange(1, 40).Draw(t, "hours")) * time.Hour)}
		case 6:
			leaves := d + model.Day(rapid.IntRange(0, 2).Draw(t, "leaves"))
			fact = model.AwayFrom{From: leaves, To: leaves + model.Day(rapid.IntRange(0, 4).Draw(t, "away"))}
		case 7:
			f.heat[d+1] = rapid.SampledFrom([]model.HeatClass{model.HeatWatch, model.HeatAlert, model.HeatDanger}).Draw(t, "class")
			l.records = append(l.records, model.Record{ID: fmt.Sprintf("w%d", d), On: d + 1, At: at, Fact: model.Weather{HighC: model.Float(34), LowC: model.Float(-6)}})
			continue
		case 8:
			fact = model.Done{About: []string{aboutWater, aboutRefill}}
		case 9:
			fact = model.Setting{Key: model.SetHour, List: []string{drawnHour(t)}}
		case 10:
			fact = model.Setting{Key: model.SetChore, List: drawnChore(t)}
		case 11:
			fact = model.Setting{Key: model.SetEve, List: drawnEve(t)}
		case 12:
			fact = model.Setting{Key: model.SetQuiet, List: drawnQuiet(t)}
		case 13:
			fact = model.Alarm{What: model.AlarmOut, Over: true}
		}
		l.records = append(l.records, model.Record{ID: fmt.Sprintf("r%d", len(l.records)+1), On: d, At: at, By: "Ann", Fact: fact})
	}
	return l, with(f), from, from.Add(8 * 24 * time.Hour)
}

func drawnChore(t *rapid.T) []string {
	return rapid.SampledFrom([][]string{{"sat"}, {"wed", "sun"}, {"fri"}, {"sat", "sun"}}).Draw(t, "chore")
}

func drawnHour(t *rapid.T) string {
	return rapid.SampledFrom([]string{"07:00", "02:30", "00:00", "19:30"}).Draw(t, "hour")
}

// drawnEve is the hour of the evening before a round; often none.
func drawnEve(t *rapid.T) []string {
	return rapid.SampledFrom([][]string{nil, nil, {"19:00"}, {"23:30"}}).Draw(t, "eve")
}

func drawnQuiet(t *rapid.T) []string {
	return rapid.SampledFrom([][]string{{"21:00", "06:00"}, {"00:30", "07:30"}, {"18:30", "09:00"}}).Draw(t, "quiet")
}

func (l *log) copy() *log {
	c := *l
	c.records = append([]model.Record(nil), l.records...)
	return &c
}

// everyMinute lives the same span asking each minute.
func (l *log) everyMinute(from, to time.Time, of func(*model.Herd) figures) []sent {
	var out []sent
	h := l.herd(from)
	said := len(l.records)
	next, more := l.nextSaid(from)
	for now := from; !now.After(to); now = now.Add(time.Minute) {
		if more && !next.After(now) || len(l.records) != said {
			h, said = l.herd(now), len(l.records)
			next, more = l.nextSaid(now)
		}
		due, _ := decide(h, of(h), now)
		for _, n := range due {
			out = append(out, sent{now, n})
		}
		l.tell(now, due)
	}
	return out
}

func TestLookingAgainWhenToldMissesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, _ := drawn(rt, t)
		mid := from.Add(time.Duration(rapid.IntRange(0, 7*24*60).Draw(rt, "watched from")) * time.Minute)
		l.walkSpan(from, mid, of)
		to := mid.Add(30 * time.Hour)
		minutes := l.copy().everyMinute(mid, to, of)
		looks := l.copy().walkSpan(mid, to, of)
		require.Equal(t, texts(minutes), texts(looks))
		for i := range looks {
			require.Equal(t, minutes[i].Key, looks[i].Key)
		}
	})
}

func TestWhatIsToldKeepsTheRules(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, to := drawn(rt, t)
		keys := map[string]bool{}
		standing := map[model.Day]int{}
		routine := map[model.Day]int{}
		for _, s := range l.walkSpan(from, to, of) {
			require.False(t, keys[s.Key], "%s went out twice", s.Key)
			keys[s.Key] = true
			require.LessOrEqual(t, len(s.Lines), mostLines)
			d := model.DayOf(s.at)
			h := l.herd(s.at)
			if s.Standing {
				standing[d]++
				require.True(t, h.IsChoreDay(d) || h.Chore.EveMinute != nil && h.IsChoreDay(d+1), "%s", s)
				continue
			}
			require.NotEmpty(t, s.Lines)
			exact := s.Lines[0].About == aboutOwn
			if s.Grade != Danger && !exact {
				require.False(t, h.Quiet.Holds(model.MinuteOf(s.at)), "%s in the quiet hours", s)
			}
			if s.Grade == Routine && !exact && s.Lines[0].About != aboutCatchUp && !containsMark(s.Key) {
				routine[d]++
				require.LessOrEqual(t, routine[d], 1, "%s", s)
			}
		}
		for d, n := range standing {
			require.Equal(t, 1, n, "standing messages on %s", d)
		}
	})
}

func TestNoRoundIsPassedOver(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, to := drawn(rt, t)
		l.walkSpan(from, to, of)
		told := map[string]bool{}
		for _, r := range l.records {
			if f, ok := r.Fact.(model.Told); ok && f.Standing {
				key, _, _ := strings.Cut(f.Key, tokenGap)
				told[key] = true
			}
		}
		h := l.herd(to)
		stood := func(d model.Day) bool { // a change of the rhythm moved it onto a day that had one
			return slices.ContainsFunc(h.Tolds, func(t model.Dated[model.Told]) bool { return t.F.Standing && t.On == d })
		}
		for c := h.NextChore(h.Chore.Since.In(from.Location()).Add(-time.Minute)); !c.After(to); c = h.NextChore(c) {
			d := model.DayOf(c)
			require.True(t, told[standingToken(d)] || h.Away(d) || stood(d), "the round of %s, set at %s", c, h.Chore.Since)
		}
	})
}
