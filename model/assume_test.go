package model

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"
)

func assumedHerd(t *testing.T) *toldHerd {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
	s.tell("2026-06-06 09:00", Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
	s.tell("2026-06-07 09:00", Worm{Treatment: Treatment{Animals: []string{All}, Product: "fenbendazole", WithdrawalDays: Int(14)}}, Move{Pen: "north"})
	return s.tell("2026-06-13 09:00", Refill{FeedKg: Float(70), Full: true})
}

func TestAssumeMoreAndFewerPigs(t *testing.T) {
	s := assumedHerd(t)
	h := s.herd()
	at := s.moment("2026-06-14 09:00")
	on := DayOf(at)
	now, err := h.FeedLeft(at)
	require.NoError(t, err)
	for _, c := range []struct {
		delta, alive int
	}{{0, 4}, {2, 6}, {-1, 3}, {-3, 1}} {
		a := h.Assume(Assumption{CountDelta: c.delta}, on)
		require.Len(t, a.Alive(on), c.alive)
		left, err := a.FeedLeft(at)
		require.NoError(t, err)
		// What was learned stays, what the pigs eat from now on changes.
		require.InEpsilon(t, now.UseKgD.Mid*float64(c.alive)/4, left.UseKgD.Mid, 0.03, "%+d", c.delta)
		require.InEpsilon(t, now.FeedKg.Mid, left.FeedKg.Mid, 0.06, "%+d", c.delta)
		weights, err := a.Weights(on)
		require.NoError(t, err)
		require.Len(t, weights, c.alive)
		_, err = a.Target(a.TargetKg, on)
		require.NoError(t, err)
		require.LessOrEqual(t, len(a.Withdrawal(at)), c.alive)
	}
	require.Empty(t, h.Assume(Assumption{CountDelta: -9}, on).Alive(on))
}

func TestAssumeUponAssume(t *testing.T) {
	s := assumedHerd(t)
	h := s.herd()
	at := s.moment("2026-06-14 09:00")
	on := DayOf(at)
	twice := h.Assume(Assumption{CountDelta: 2}, on).Assume(Assumption{CountDelta: 2}, on)
	once := h.Assume(Assumption{CountDelta: 4}, on)
	require.Len(t, twice.Alive(on), 8)
	a, err := twice.FeedLeft(at)
	require.NoError(t, err)
	b, err := once.FeedLeft(at)
	require.NoError(t, err)
	require.InEpsilon(t, b.UseKgD.Mid, a.UseKgD.Mid, 0.01)
}

func TestAssumeAnotherTarget(t *testing.T) {
	s := assumedHerd(t)
	h := s.herd()
	a := h.Assume(Assumption{TargetKg: Float(100)}, DateDay(2026, 6, 14))
	require.Equal(t, 100.0, a.TargetKg)
	require.Equal(t, DefaultTargetKg, h.TargetKg)
}

// The real herd is to the bit what it was, however much was assumed of it.
func TestAssumeLeavesTheHerdAlone(t *testing.T) {
	s := assumedHerd(t)
	h := s.herd()
	at := s.moment("2026-06-14 09:00")
	before, err := h.FeedLeft(at)
	require.NoError(t, err)
	shown := func(h *Herd) string {
		var names []string
		for _, a := range h.Animals {
			names = append(names, a.Name)
			require.Nil(t, a.Gone)
		}
		b, err := json.Marshal([]any{names, len(h.Groups), len(h.Groups[0].Pigs), h.TargetKg, len(h.Gones)})
		require.NoError(t, err)
		return string(b)
	}
	was := shown(h)
	for _, delta := range []int{3, -2, 1, -4} {
		a := h.Assume(Assumption{CountDelta: delta, TargetKg: Float(90), SkipDays: 7}, DayOf(at))
		_ = a.Assume(Assumption{CountDelta: -delta}, DayOf(at)).Alive(DayOf(at))
		for _, g := range a.Groups {
			for _, p := range g.Pigs {
				require.Same(t, g, p.Group)
				require.Same(t, p, a.Animals[p.Number])
			}
		}
		for _, m := range a.Moves {
			for _, p := range m.Pigs {
				require.Same(t, a.Animals[p.Number], p)
			}
		}
		for _, g := range a.Treatments {
			for _, p := range g.Pigs {
				require.Same(t, a.Animals[p.Number], p)
			}
		}
	}
	require.Equal(t, was, shown(h))
	after, err := s.herd().FeedLeft(at)
	require.NoError(t, err)
	require.Equal(t, before, after)
	again, err := h.FeedLeft(at)
	require.NoError(t, err)
	require.Equal(t, before, again)
}

func TestAssumeOnAnEmptyHerd(t *testing.T) {
	h := tellHerd(t).herd()
	on := DateDay(2026, 6, 14)
	require.Len(t, h.Assume(Assumption{CountDelta: 2}, on).Alive(on), 2)
	require.Empty(t, h.Assume(Assumption{CountDelta: -2}, on).Alive(on))
}
