package slots_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/slots"
	"troughbell/model"
)

func day(s string) model.Day {
	d, err := model.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

func fact(f model.Fact) reading.Entry {
	return reading.Entry{Act: reading.Fact{Fact: f}, On: day("2026-07-04")}
}

func timed(e reading.Entry, minute int) reading.Entry {
	e.Minute = &minute
	return e
}

func setting(s model.Setting) reading.Entry { return fact(s) }

var yes, no = true, false

// TestOf has a row for each intent and each way to fill its slots.
func TestOf(t *testing.T) {
	d := day("2026-08-01")
	quarter := model.Int(7*60 + 5)
	tests := []struct {
		name  string
		entry reading.Entry
		want  string
	}{
		{"a weight", fact(model.Weigh{Animals: []string{"Fern"}, WeightKg: 50 * 0.45359237}), `{"intent":"weigh","animals":["Fern"],"weight_kg":22.68,"date":"2026-07-04"}`},
		{"a tape", fact(model.Weigh{Animals: []string{"Fern"}, GirthCm: 38 * 2.54, LengthCm: 41.5 * 2.54}), `{"intent":"weigh","animals":["Fern"],"girth_cm":96.52,"length_cm":105.41,"date":"2026-07-04"}`},
		{"a pour", fact(model.Refill{Feeder: "north", FeedKg: model.Float(40)}), `{"intent":"refill","feeder":"north","feed_kg":40,"date":"2026-07-04"}`},
		{"filled up", fact(model.Refill{Full: true}), `{"intent":"refill","full":true,"date":"2026-07-04"}`},
		{"filled to half", fact(model.Refill{Fraction: model.Float(0.5)}), `{"intent":"refill","fraction":0.5,"date":"2026-07-04"}`},
		{"an empty feeder", fact(model.FeedLevel{Feeder: "north", Fraction: model.Float(0)}), `{"intent":"feed_level","feeder":"north","fraction":0,"date":"2026-07-04"}`},
		{"feed for days", fact(model.FeedLevel{Days: model.Float(3)}), `{"intent":"feed_level","days":3,"date":"2026-07-04"}`},
		{"bags bought", fact(model.Stock{Ingredient: "corn", FeedKg: model.Float(226.8), Count: model.Float(10), Amount: model.Float(120), Currency: "USD"}), `{"intent":"stock","ingredient":"corn","feed_kg":226.8,"count":10,"amount":120,"currency":"USD","date":"2026-07-04"}`},
		{"mixed", fact(model.Mixed{Batches: model.Float(2)}), `{"intent":"mixed","batches":2,"date":"2026-07-04"}`},
		{"a dry barrel", fact(model.Water{Barrel: "oak", Fraction: model.Float(0), Seen: true}), `{"intent":"water","barrel":"oak","fraction":0,"seen":true,"date":"2026-07-04"}`},
		{"litres", fact(model.Water{Litres: model.Float(20 * 3.785411784)}), `{"intent":"water","litres":75.71,"date":"2026-07-04"}`},
		{"all full", fact(model.Water{Full: true}), `{"intent":"water","full":true,"date":"2026-07-04"}`},
		{"wallow by the minute", fact(model.WallowFill{Minutes: model.Float(20)}), `{"intent":"wallow","minutes":20,"date":"2026-07-04"}`},
		{"wallow topped up", fact(model.WallowFill{}), `{"intent":"wallow","date":"2026-07-04"}`},
		{"wormed at a time", timed(fact(model.Worm{Treatment: model.Treatment{Animals: []string{"all"}, Product: "ivermectin", WithdrawalDays: model.Int(18)}}), 9*60+5), `{"intent":"worm","animals":["all"],"product":"ivermectin","withdrawal_days":18,"date":"2026-07-04","at":"09:05"}`},
		{"treated, no days at all", fact(model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}, WithdrawalDays: model.Int(0)}}), `{"intent":"treat","animals":["Fern"],"withdrawal_days":0,"date":"2026-07-04"}`},
		{"treated, days unknown", fact(model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}}}), `{"intent":"treat","animals":["Fern"],"date":"2026-07-04"}`},
		{"moved", fact(model.Move{Pen: "ash", Animals: []string{"all"}}), `{"intent":"move","pen":"ash","animals":["all"],"date":"2026-07-04"}`},
		{"sick", fact(model.Sick{Animals: []string{"Fern"}, Note: "limps"}), `{"intent":"sick","animals":["Fern"],"note":"limps","date":"2026-07-04"}`},
		{"out", fact(model.Alarm{What: "out", Animals: []string{"Fern"}}), `{"intent":"alarm","what":"out","animals":["Fern"],"date":"2026-07-04"}`},
		{"a dead fence", fact(model.Fence{Kv: 0}), `{"intent":"fence","kv":0,"date":"2026-07-04"}`},
		{"weather", fact(model.Weather{HighC: model.Float(35), LowC: model.Float(-0.001), RhPct: model.Float(60)}), `{"intent":"weather","high_c":35,"low_c":0,"rh_pct":60,"date":"2026-07-04"}`},
		{"a mix", fact(model.Recipe{Ingredients: map[string]float64{"corn": 74 * 0.45359237}}), `{"intent":"recipe","ingredients":{"corn":33.57},"date":"2026-07-04"}`},
		{"spent", fact(model.Spend{Amount: 45.5, Currency: "EUR", What: "straw"}), `{"intent":"spend","amount":45.5,"currency":"EUR","what":"straw","date":"2026-07-04"}`},
		{"arrived", fact(model.Arrive{Count: 2, Animals: []string{"Fern", "Ash"}, Sexes: []model.Sex{model.Gilt, model.Barrow}, WeightKg: model.Float(21.3), Born: &d}), `{"intent":"arrive","count":2,"animals":["Fern","Ash"],"sexes":["gilt","barrow"],"weight_kg":21.3,"born":"2026-08-01","date":"2026-07-04"}`},
		{"gone", fact(model.Gone{Animals: []string{"Fern"}, How: "butchered", HangingKg: model.Float(84.5), PackagedKg: model.Float(60), Amount: model.Float(300)}), `{"intent":"gone","animals":["Fern"],"how":"butchered","hanging_kg":84.5,"packaged_kg":60,"amount":300,"date":"2026-07-04"}`},
		{"booked", fact(model.Booked{Day: d, Minute: quarter, Count: 2}), `{"intent":"booked","date":"2026-08-01","at":"07:05","count":2}`},
		{"expected", fact(model.Expected{Day: d, Count: 4}), `{"intent":"expected","date":"2026-08-01","count":4}`},
		{"expected none", fact(model.Expected{Cancelled: true}), `{"intent":"expected","cancelled":true}`},
		{"away", fact(model.AwayFrom{From: d, To: d + 6}), `{"intent":"away","from":"2026-08-01","to":"2026-08-07"}`},
		{"a note", fact(model.Note{What: "gate sticks"}), `{"intent":"note","what":"gate sticks","date":"2026-07-04"}`},
		{"a reminder", fact(model.Remind{Day: d, Minute: quarter, What: "call"}), `{"intent":"remind","when":"2026-08-01T07:05","what":"call"}`},
		{"a reminder for a day", fact(model.Remind{Day: d, What: "call"}), `{"intent":"remind","when":"2026-08-01","what":"call"}`},
		{"a plain question", reading.Entry{Act: reading.Ask{Topic: "feed_left"}}, `{"intent":"ask","topic":"feed_left"}`},
		{"a question in full", reading.Entry{Act: reading.Ask{
			Topic: "butcher_date", Animals: []string{"Fern"}, On: &d, TargetKg: model.Float(120.2),
			Assume: &model.Assumption{CountDelta: -1, TargetKg: model.Float(130), SkipDays: 7},
		}}, `{"intent":"ask","topic":"butcher_date","animals":["Fern"],"on":"2026-08-01","target_kg":120.2,"assume":{"count_delta":-1,"target_kg":130,"skip_days":7}}`},
		{"done", reading.Entry{Act: reading.Done{About: []string{"refill", "water"}}}, `{"intent":"done","about":["refill","water"]}`},
		{"snoozed for hours", reading.Entry{Act: reading.Snooze{About: []string{"worm"}, Hours: 2}}, `{"intent":"snooze","about":["worm"],"hours":2}`},
		{"snoozed to a day", reading.Entry{Act: reading.Snooze{Until: &d}}, `{"intent":"snooze","until":"2026-08-01"}`},
		{"undo", reading.Entry{Act: reading.Undo{Of: "refill"}}, `{"intent":"undo","of":"refill"}`},
		{"help", reading.Entry{Act: reading.Help{About: "weigh"}}, `{"intent":"help","about":"weigh"}`},
		{"a doubt", reading.Entry{Act: reading.Clarify{About: "weigh"}}, `{"intent":"clarify","about":"weigh"}`},
		{"nothing", reading.Entry{Act: reading.None{Reason: "chatter"}}, `{"intent":"none","reason":"chatter"}`},
		{"a correction", reading.Entry{Act: reading.Fact{Fact: model.Fence{Kv: 5}}, On: d, Replace: "r7"}, `{"intent":"fence","kv":5,"date":"2026-08-01","replaces":true}`},
		{"name", setting(model.Setting{Key: model.SetHerd, Text: "Larch"}), `{"intent":"settings","key":"herd","value":"Larch"}`},
		{"zone", setting(model.Setting{Key: model.SetZone, Text: "Europe/Berlin"}), `{"intent":"settings","key":"zone","value":"Europe/Berlin"}`},
		{"target", setting(model.Setting{Key: model.SetTarget, Number: model.Float(120.2019)}), `{"intent":"settings","key":"target_kg","value":120.2}`},
		{"chore days", setting(model.Setting{Key: model.SetChore, List: []string{"sat"}}), `{"intent":"settings","key":"chore_days","value":["sat"]}`},
		{"hour", setting(model.Setting{Key: model.SetHour, List: []string{"07:00"}}), `{"intent":"settings","key":"hour","value":"07:00"}`},
		{"quiet hours", setting(model.Setting{Key: model.SetQuiet, List: []string{"21:00", "06:00"}}), `{"intent":"settings","key":"quiet","value":["21:00","06:00"]}`},
		{"a feeder", setting(model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "north", CapacityKg: model.Float(136.08)}}), `{"intent":"settings","key":"feeder","value":{"name":"north","capacity_kg":136.08}}`},
		{"a barrel", setting(model.Setting{Key: model.SetBarrel, Thing: &model.Thing{CapacityL: model.Float(55 * 3.785411784), Nipples: model.Int(2)}}), `{"intent":"settings","key":"barrel","value":{"capacity_l":208.2,"nipples":2}}`},
		{"a pen in use", setting(model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "oak", AreaM2: model.Float(371.612), InUse: &yes}}), `{"intent":"settings","key":"pen","value":{"name":"oak","area_m2":371.61,"in_use":true}}`},
		{"a pen not in use", setting(model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "oak", InUse: &no}}), `{"intent":"settings","key":"pen","value":{"name":"oak","in_use":false}}`},
		{"the wallow", setting(model.Setting{Key: model.SetWallow, Thing: &model.Thing{AreaM2: model.Float(4.459), DepthM: model.Float(0.1524)}}), `{"intent":"settings","key":"wallow","value":{"area_m2":4.46,"depth_m":0.15}}`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, err := json.Marshal(slots.Of(tt.entry))
			require.NoError(t, err)
			require.JSONEq(t, tt.want, string(got))
		})
	}
}
