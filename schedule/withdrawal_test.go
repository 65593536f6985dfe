package schedule

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// treated makes Tank clear at the moment; a zero moment means its days are not
// known.
func treated(at time.Time) func(*model.Herd) []model.PigClear {
	return func(h *model.Herd) []model.PigClear {
		var out []model.PigClear
		for _, a := range h.Animals {
			c := model.PigClear{Animal: a, Known: true}
			if a.Name == "Tank" && len(h.Treatments) > 0 {
				c.Treated, c.Known, c.ClearAt = true, !at.IsZero(), at
			}
			out = append(out, c)
		}
		return out
	}
}

func TestDrugClockAgainstTheLoad(t *testing.T) {
	shot := model.Treat{Treatment: model.Treatment{Animals: []string{"Tank"}, WithdrawalDays: model.Int(10)}}
	tests := []struct {
		name, shotAt, booked string
		clear                string
		want                 []string
	}{
		{"not clear by the load", "2026-05-06 12:00", "2026-05-15", "2026-05-16 12:00", []string{
			"Sat 2026-05-09 07:00 standing welfare withdrawal_conflict,book_ahead",
			"Wed 2026-05-13 19:00 off-day danger withdrawal_conflict,book_eve,book_feed,book_clear",
			"Thu 2026-05-14 07:00 off-day welfare book_eve,book_feed,book_clear",
		}},
		{"clear by the load", "2026-05-06 12:00", "2026-05-15", "2026-05-14 12:00", []string{
			"Sat 2026-05-09 07:00 standing routine book_ahead",
			"Wed 2026-05-13 19:00 off-day welfare book_eve,book_feed,book_clear", "Thu 2026-05-14 07:00 off-day welfare book_eve,book_feed,book_clear",
		}},
		{"days not known and booked", "2026-05-06 12:00", "2026-05-15", "", []string{
			"Sat 2026-05-09 07:00 standing welfare withdrawal_unknown,book_ahead",
			"Wed 2026-05-13 19:00 off-day danger withdrawal_unknown,book_eve,book_feed,book_clear", "Thu 2026-05-14 07:00 off-day welfare book_eve,book_feed,book_clear",
		}},
		{"days not known, nothing booked: once in four weeks", "2026-05-06 12:00", "", "", []string{
			"Sat 2026-05-09 07:00 standing routine withdrawal_unknown",
		}},
		{"given in the night before the load: told at once", "2026-05-15 03:00", "2026-05-15", "2026-05-25 03:00", []string{
			"Sat 2026-05-09 07:00 standing routine book_ahead",
			"Wed 2026-05-13 19:00 off-day welfare book_eve,book_feed,book_clear", "Thu 2026-05-14 07:00 off-day welfare book_eve,book_feed,book_clear",
			"Fri 2026-05-15 03:00 off-day danger withdrawal_conflict",
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			l.add("2026-05-11 12:00", model.Note{What: "all good"})
			if tt.booked != "" {
				l.add("2026-05-05 09:00", model.Booked{Day: d(tt.booked), Minute: model.Int(8 * 60)})
			}
			l.add(tt.shotAt, shot)
			var clear time.Time
			if tt.clear != "" {
				clear = l.time(tt.clear)
			}
			f := calm()
			f.clear = treated(clear)
			got := l.walk("2026-05-04 08:00", "2026-05-15 18:00", with(f))
			require.Equal(t, tt.want, texts(got))
			for _, s := range got {
				for _, x := range s.Lines {
					if x.About == aboutWithdrawal {
						require.Equal(t, []string{"Tank"}, x.Names)
					}
				}
			}
		})
	}
}
