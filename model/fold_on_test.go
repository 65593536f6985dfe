package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A herd that grew record by record is the one that its records folded anew make,
// and the herds that it grew from stay as they were.
func TestFoldingOn(t *testing.T) {
	records := aWholeSeason(t).records
	last := records[len(records)-1].At
	records = append(records,
		Record{ID: "q", On: DayOf(last), At: last.Add(time.Hour), Fact: Question{Code: "x"}},
		Record{ID: "s", On: DayOf(last), At: last.Add(time.Hour), Fact: Settled{Question: "q", How: "answered"}},
		Record{ID: "a", On: DayOf(last), At: last.Add(time.Hour), Fact: Alarm{What: AlarmOut}},
		Record{ID: "e", On: DayOf(last), At: last.Add(2 * time.Hour), Fact: Spend{Amount: 3, Currency: "EUR", What: "straw"}},
		Record{ID: "n", On: DayOf(last), At: last.Add(2 * time.Hour), Fact: Note{What: "gate"}},
	)
	grown, anew := 0, 0
	rapid.Check(t, func(r *rapid.T) {
		all := rapid.Permutation(records).Draw(r, "records")
		if rapid.Bool().Draw(r, "in order") {
			all = records
		}
		have := rapid.IntRange(0, len(all)-2).Draw(r, "have")
		from := Fold(all[:have])
		h := from
		for i, record := range all[have:] {
			next, ok := h.With(record)
			if !ok {
				anew++
				next = Fold(all[:have+i+1])
			} else {
				grown++
			}
			other := record
			other.Fact = Note{What: "another herd"}
			_, _ = h.With(other) // must leave no trace in what grew from the same
			require.Equal(r, Fold(all[:have+i]), h)
			h = next
		}
		require.Equal(r, Fold(all), h)
		require.Equal(r, Fold(all[:have]), from)
	})
	require.NotZero(t, grown)
	require.NotZero(t, anew)
}

func TestNoKindGrowsThatChangesWhatIsShared(t *testing.T) {
	for _, f := range []Fact{Arrive{}, Gone{}, Booked{}, Move{}, Worm{}, Treat{}, Setting{}, Void{}, Weather{}, Forecast{}} {
		_, ok := newHerd().With(Record{ID: "r", At: time.Now(), Fact: f})
		require.False(t, ok, "%s", f.Kind())
	}
}
