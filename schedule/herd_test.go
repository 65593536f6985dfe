package schedule

import (
	"fmt"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// log builds a herd's records: each at a local moment written as 2026-05-16 08:10.
type log struct {
	t       testing.TB
	loc     *time.Location
	records []model.Record
}

func newLog(t testing.TB, zone string) *log {
	loc, err := time.LoadLocation(zone)
	require.NoError(t, err)
	return &log{t: t, loc: loc}
}

func (l *log) time(s string) time.Time {
	at, err := time.ParseInLocation("2006-01-02 15:04", s, l.loc)
	require.NoError(l.t, err)
	return at
}

func (l *log) add(at string, facts ...model.Fact) *log {
	m := l.time(at)
	for _, f := range facts {
		require.NoError(l.t, f.Check())
		l.records = append(l.records, model.Record{
			ID: fmt.Sprintf("r%d", len(l.records)+1), On: model.DayOf(m), At: m, Said: true, By: "Ann", Fact: f,
		})
	}
	return l
}

func (l *log) tell(now time.Time, ns []Nudge) {
	for _, n := range ns {
		l.records = append(l.records, model.Record{
			ID: fmt.Sprintf("r%d", len(l.records)+1), On: model.DayOf(now), At: now, Fact: n.Told(),
		})
	}
}

// herd is the herd as it is known at the moment: what is said later is not in it.
func (l *log) herd(now time.Time) *model.Herd {
	var known []model.Record
	for _, r := range l.records {
		if !r.At.After(now) {
			known = append(known, r)
		}
	}
	return model.Fold(known)
}

// nextSaid is the moment of the next record after now.
func (l *log) nextSaid(now time.Time) (at time.Time, ok bool) {
	for _, r := range l.records {
		if r.At.After(now) && (!ok || r.At.Before(at)) {
			at, ok = r.At, true
		}
	}
	return at, ok
}

// newHerd is an invented herd that came on Monday 4 May 2026, with its settings.
func newHerd(t testing.TB, zone string) *log {
	return newLog(t, zone).add("2026-05-04 08:00",
		model.Setting{Key: model.SetZone, Text: zone},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: model.Float(250)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel", CapacityL: model.Float(200)}},
		model.Arrive{Count: 3, Animals: []string{"Dot", "Tank", "Mabel"}, WeightKg: model.Float(25)},
	)
}

// sent is a nudge as it went out.
type sent struct {
	at time.Time
	Nudge
}

func (s sent) String() string {
	kind := "off-day"
	if s.Standing {
		kind = "standing"
	}
	return fmt.Sprintf("%s %s %s %s", s.at.Format("Mon 2006-01-02 15:04"), kind, s.Grade, strings.Join(codes(s.Lines), ","))
}

func codes(ls []Line) []string {
	var out []string
	for _, l := range ls {
		out = append(out, l.Code)
	}
	return out
}

func texts(ss []sent) []string {
	var out []string
	for _, s := range ss {
		out = append(out, s.String())
	}
	return out
}

// walk lives from one moment to another by looking again when Decide says so,
// and records what is told.
func (l *log) walk(from, to string, of func(*model.Herd) figures) []sent {
	return l.walkSpan(l.time(from), l.time(to), of)
}

func (l *log) walkSpan(from, to time.Time, of func(*model.Herd) figures) []sent {
	var out []sent
	for now := from; !now.After(to); {
		h := l.herd(now)
		due, next := decide(h, of(h), now)
		for _, n := range due {
			out = append(out, sent{now, n})
		}
		require.True(l.t, next.After(now), "look again at %s is not after %s", next, now)
		require.LessOrEqual(l.t, next.Sub(now), 24*time.Hour)
		if at, ok := l.nextSaid(now); ok && at.Before(next) {
			next = at
		}
		l.tell(now, due)
		now = next
	}
	return out
}

func containsMark(key string) bool { return strings.Contains(key, snoozeMark) }

// weather is what was told at a moment of a day's high and low.
func (l *log) weather(at, on string, highC, lowC float64) {
	l.records = append(l.records, model.Record{
		ID: fmt.Sprintf("r%d", len(l.records)+1), On: d(on), At: l.time(at),
		Fact: model.Weather{HighC: model.Float(highC), LowC: model.Float(lowC)},
	})
}

func minutes(n int) time.Duration { return time.Duration(n) * time.Minute }
