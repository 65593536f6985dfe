package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Between two seasons there are two messages at the most: in winter, and before pigs
// that were said to come.
func TestOffSeason(t *testing.T) {
	told := func(l *log, from, to string) []string {
		var out []string
		for _, s := range l.walk(from, to, with(calm())) {
			for _, x := range s.Lines {
				out = append(out, s.at.Format("Mon 2006-01-02 15:04 ")+x.Code)
			}
		}
		return out
	}
	season := func() *log {
		l := newHerd(t, "America/Chicago").
			add("2026-05-12 07:00", model.Gone{How: model.Butchered, Animals: []string{model.All}}).
			add("2026-05-12 20:00", model.Note{What: "more shade"})
		require.Equal(t, []string{"Tue 2026-05-12 19:00 season_over"}, told(l, "2026-05-12 00:00", "2026-06-01 00:00"))
		return l
	}
	// 110 days before 4 May 2027 is a Thursday.
	require.Equal(t, []string{"Sat 2027-01-16 07:00 season_order"}, told(season(), "2026-06-01 00:00", "2028-06-01 00:00"))

	expecting := season().add("2026-12-01 09:00", model.Expected{Day: d("2027-04-10"), Count: 4})
	require.Equal(t, []string{"Wed 2027-03-31 07:00 season_ready"}, told(expecting, "2026-06-01 00:00", "2027-04-12 00:00"))

	moved := season().
		add("2026-12-01 09:00", model.Expected{Day: d("2027-04-10"), Count: 4}).
		add("2026-12-02 09:00", model.Expected{Day: d("2027-05-01"), Count: 3})
	require.Equal(t, []string{"Wed 2027-04-21 07:00 season_ready"}, told(moved, "2026-06-01 00:00", "2027-05-10 00:00"))

	cancelled := season().
		add("2027-01-25 09:00", model.Expected{Day: d("2027-04-10")}).
		add("2027-02-02 09:00", model.Expected{Cancelled: true})
	require.Empty(t, told(cancelled, "2027-02-02 10:00", "2027-06-10 00:00"))

	early := season().
		add("2026-12-01 09:00", model.Expected{Day: d("2027-04-10")}).
		add("2027-03-25 09:00", model.Arrive{Count: 4})
	require.NotContains(t, told(early, "2027-03-25 10:00", "2027-04-12 00:00"), "Wed 2027-03-31 07:00 season_ready")
}

// Pigs may be expected before there ever were any.
func TestFirstPigsAreExpected(t *testing.T) {
	l := newLog(t, "America/Chicago").add("2026-03-01 09:00", model.Expected{Day: d("2026-04-11"), Count: 2})
	var got []string
	for _, s := range l.walk("2026-03-01 09:00", "2026-05-01 00:00", with(calm())) {
		got = append(got, s.at.Format("2006-01-02 15:04 ")+s.Lines[0].Code)
	}
	require.Equal(t, []string{"2026-04-01 07:00 season_ready"}, got)
}
