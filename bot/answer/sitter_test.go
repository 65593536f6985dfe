package answer_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/answer"
	"troughbell/model"
)

// sat is a herd of four whose person is away for the days, as JSON records.
func sitterHerd(t *testing.T, more ...model.Record) (*model.Herd, time.Time) {
	t.Helper()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	at := func(day, hour int) (model.Day, time.Time) {
		m := time.Date(2026, 7, day, hour, 0, 0, 0, zone)
		return model.DayOf(m), m
	}
	add := func(id string, day, hour int, f model.Fact) {
		on, m := at(day, hour)
		more = append(more, model.Record{ID: id, On: on, At: m, Fact: f})
	}
	add("a", 1, 8, model.Arrive{Count: 4, Animals: []string{"Olive", "Rufus", "Nettle", "Gus"}, WeightKg: model.Float(40)})
	add("b", 1, 8, model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "red hopper", CapacityKg: model.Float(120)}})
	add("c", 1, 8, model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "oak", CapacityL: model.Float(400)}})
	add("d", 18, 8, model.Refill{Full: true})
	add("e", 18, 8, model.Water{Full: true})
	_, now := at(18, 9)
	return model.Fold(more), now
}

func awayRecord(from, to int) model.Record {
	day := func(d int) model.Day { return model.DateDay(2026, 7, d) }
	return model.Record{ID: "away", On: day(18), At: time.Date(2026, 7, 18, 13, 0, 0, 0, time.UTC), Fact: model.AwayFrom{From: day(from), To: day(to)}}
}

func TestSitterSheet(t *testing.T) {
	h, now := sitterHerd(t, awayRecord(19, 31))
	sheet := answer.SitterSheet(h, now)
	require.Contains(t, sheet, "For the sitter, Sun Jul 19 to Fri Jul 31: 4 pigs.\n")
	require.Regexp(t, `Come by \w{3} Jul 2\d evening: fill all to the brim, about \d+ lb feed, \d+ gal water\.`, sheet)
	require.Contains(t, sheet, "4 pigs up and eating")
	require.Contains(t, sheet, "call the owner, then the vet")
	require.NotContains(t, sheet, "medicine")
}

func TestSitterSheetNamesPigsThatAreNotClear(t *testing.T) {
	treated := model.Record{ID: "t", On: model.DateDay(2026, 7, 17), At: time.Date(2026, 7, 17, 13, 0, 0, 0, time.UTC), Fact: model.Treat{Treatment: model.Treatment{Animals: []string{"Gus"}, Product: "penicillin", WithdrawalDays: model.Int(28)}}}
	h, now := sitterHerd(t, awayRecord(19, 31), treated)
	require.Contains(t, answer.SitterSheet(h, now), "Not clear of a drug until the owner says so: Gus. Give no medicine.")
}

func TestSitterSheetOfAShortTrip(t *testing.T) {
	h, now := sitterHerd(t, awayRecord(19, 20))
	require.Contains(t, answer.SitterSheet(h, now), "Feed and water last")
}

func TestSitterSheetAsksWhen(t *testing.T) {
	h, now := sitterHerd(t)
	require.Contains(t, answer.SitterSheet(h, now), "away jul 24 to aug 3")
	require.Contains(t, answer.SitterSheet(model.Fold(nil), now), "No pigs")
}

func TestSitterSheetWhereNothingIsKnown(t *testing.T) {
	day := model.DateDay(2026, 7, 18)
	h := model.Fold([]model.Record{
		{ID: "a", On: day, At: day.At(8*60, time.UTC), Fact: model.Arrive{Count: 2}},
		{ID: "b", On: day, At: day.At(9*60, time.UTC), Fact: model.AwayFrom{From: day + 1, To: day + 4}},
	})
	require.Contains(t, answer.SitterSheet(h, day.At(10*60, time.UTC)), "come every day and look")
}
