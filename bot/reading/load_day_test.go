package reading

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// On or about a booked day a short word says that the booked pigs went; on another
// day it does not.
func TestLoadedOnTheBookedDay(t *testing.T) {
	day := func(s string) model.Day {
		d, err := model.ParseDay(s)
		require.NoError(t, err)
		return d
	}
	herd := func(b model.Booked) *model.Herd {
		at := day("2026-04-18").At(600, time.UTC)
		return model.Fold([]model.Record{
			{ID: "r1", On: day("2026-04-18"), At: at, Fact: model.Arrive{Count: 4, Animals: []string{"Tank", "Hank", "Ivy", "Dot"}, WeightKg: model.Float(22)}},
			{ID: "r2", On: day("2026-06-18"), At: at.AddDate(0, 2, 0), Fact: b},
		})
	}
	all := model.Booked{Day: day("2026-09-01")}
	two := model.Booked{Day: day("2026-09-01"), Count: 2, Animals: []string{"Ivy", "Dot"}}
	any2 := model.Booked{Day: day("2026-09-01"), Count: 2}
	for _, c := range []struct {
		text   string
		b      model.Booked
		now    string
		gone   []string
		on     string
		intent string
	}{
		{"loaded all", all, "2026-09-01", []string{model.All}, "2026-09-01", "gone"},
		{"All loaded.", all, "2026-08-31", []string{model.All}, "2026-08-31", "gone"},
		{"dropped them at the butcher", all, "2026-09-01", []string{model.All}, "2026-09-01", "gone"},
		{"took them in this morning", two, "2026-09-01", []string{"Ivy", "Dot"}, "2026-09-01", "gone"},
		{"took them in yesterday", two, "2026-09-02", []string{"Ivy", "Dot"}, "2026-09-01", "gone"},
		{"they went sep 1", all, "2026-09-05", []string{model.All}, "2026-09-01", "gone"},
		{"butcher has them", all, "2026-09-01", []string{model.All}, "2026-09-01", "gone"},
		{"hauled the pigs", all, "2026-09-01", []string{model.All}, "2026-09-01", "gone"},
		{"loaded all", any2, "2026-09-01", nil, "", "clarify"},
		{"loaded", all, "2026-09-01", []string{model.All}, "2026-09-01", "gone"},
		{"loaded", all, "2026-09-08", nil, "", "none"},
		{"they went sep 1", all, "2026-10-05", []string{model.All}, "2026-09-01", "gone"},
		{"loaded all", all, "2026-06-01", nil, "", "none"},
		{"loaded all", all, "2026-08-15", nil, "", "clarify"},
		{"loaded all", all, "2026-09-20", nil, "", "clarify"},
		{"loaded hay", all, "2026-09-01", nil, "", "none"},
		{"loaded the trailer", all, "2026-09-01", nil, "", "none"},
		{"dropped them at the butcher", model.Booked{Cancelled: true}, "2026-09-01", nil, "", "clarify"},
	} {
		t.Run(c.text+" "+c.now, func(t *testing.T) {
			got := Read(Context{Now: day(c.now).At(600, time.UTC), Herd: herd(c.b)}, c.text)
			require.Len(t, got.Entries, 1)
			e := got.Entries[0]
			require.Equal(t, c.intent, e.Act.Intent())
			if c.gone != nil {
				g := e.Act.(Fact).Fact.(model.Gone)
				require.Equal(t, c.gone, g.Animals)
				require.Equal(t, model.Butchered, g.How)
				require.Equal(t, day(c.on), e.On)
			}
		})
	}
}
