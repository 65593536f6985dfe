package slots_test

import (
	"encoding/json"
	"reflect"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/bot/reading"
	"troughbell/bot/slots"
	"troughbell/model"
)

var day = model.DateDay(2026, time.July, 18)

func day8(d model.Day) *model.Day { return &d }

// TestOf has each kind of entry with the slots that it gives.
func TestOf(t *testing.T) {
	yes := true
	treatment := model.Treatment{Animals: []string{"Dot"}, Product: "penicillin", WithdrawalDays: model.Int(21)}
	for want, act := range map[string]reading.Act{
		`{"animals":["Dot"],"date":"2026-07-18","girth_cm":96.52,"intent":"weigh","length_cm":106.68}`:                            reading.Fact{Fact: model.Weigh{Animals: []string{"Dot"}, GirthCm: 96.52, LengthCm: 106.68}},
		`{"animals":["all"],"date":"2026-07-18","intent":"weigh","weight_kg":81.65}`:                                              reading.Fact{Fact: model.Weigh{Animals: []string{"all"}, WeightKg: 81.6466266, By: model.ByEye}},
		`{"date":"2026-07-18","feed_kg":68.04,"feeder":"north","full":true,"intent":"refill"}`:                                    reading.Fact{Fact: model.Refill{Feeder: "north", FeedKg: model.Float(68.0388555), Full: true}},
		`{"date":"2026-07-18","fraction":0.33,"intent":"feed_level"}`:                                                             reading.Fact{Fact: model.FeedLevel{Fraction: model.Float(1.0 / 3)}},
		`{"date":"2026-07-18","days":2,"intent":"feed_level"}`:                                                                    reading.Fact{Fact: model.FeedLevel{Days: model.Float(2)}},
		`{"amount":185,"count":10,"currency":"USD","date":"2026-07-18","ingredient":"corn","intent":"stock"}`:                     reading.Fact{Fact: model.Stock{Ingredient: "corn", Count: model.Float(10), Amount: model.Float(185), Currency: "USD"}},
		`{"batches":2,"date":"2026-07-18","intent":"mixed"}`:                                                                      reading.Fact{Fact: model.Mixed{Batches: model.Float(2)}},
		`{"barrel":"barrel 2","date":"2026-07-18","fraction":0,"intent":"water","seen":true}`:                                     reading.Fact{Fact: model.Water{Barrel: "barrel 2", Fraction: model.Float(0), Seen: true}},
		`{"date":"2026-07-18","full":true,"intent":"water"}`:                                                                      reading.Fact{Fact: model.Water{Full: true}},
		`{"date":"2026-07-18","intent":"wallow","minutes":30}`:                                                                    reading.Fact{Fact: model.WallowFill{Minutes: model.Float(30)}},
		`{"animals":["Dot"],"date":"2026-07-18","intent":"worm","product":"penicillin","withdrawal_days":21}`:                     reading.Fact{Fact: model.Worm{Treatment: treatment}},
		`{"animals":["Dot"],"date":"2026-07-18","intent":"treat","product":"penicillin","withdrawal_days":21}`:                    reading.Fact{Fact: model.Treat{Treatment: treatment}},
		`{"animals":["Dot"],"date":"2026-07-18","intent":"treat","withdrawal_days":0}`:                                            reading.Fact{Fact: model.Treat{Treatment: model.Treatment{Animals: []string{"Dot"}, WithdrawalDays: model.Int(0)}}},
		`{"date":"2026-07-18","intent":"move","pen":"oak"}`:                                                                       reading.Fact{Fact: model.Move{Pen: "oak"}},
		`{"animals":["Dot"],"date":"2026-07-18","intent":"sick","note":"limping"}`:                                                reading.Fact{Fact: model.Sick{Animals: []string{"Dot"}, Note: "limping"}},
		`{"date":"2026-07-18","intent":"alarm","what":"no_water"}`:                                                                reading.Fact{Fact: model.Alarm{What: model.AlarmNoWater}},
		`{"date":"2026-07-18","intent":"fence","kv":5.8}`:                                                                         reading.Fact{Fact: model.Fence{Kv: 5.8}},
		`{"date":"2026-07-18","high_c":34.44,"intent":"weather","low_c":-1.11,"rh_pct":60}`:                                       reading.Fact{Fact: model.Weather{HighC: model.Float(34.4444), LowC: model.Float(-1.1111), RhPct: model.Float(60)}},
		`{"date":"2026-07-18","ingredients":{"corn":33.57},"intent":"recipe"}`:                                                    reading.Fact{Fact: model.Recipe{Ingredients: map[string]float64{"corn": 33.56583538}}},
		`{"amount":61,"currency":"USD","date":"2026-07-18","intent":"spend","what":"straw"}`:                                      reading.Fact{Fact: model.Spend{Amount: 61, Currency: "USD", What: "straw"}},
		`{"animals":["Dot"],"born":"2026-02-20","count":2,"date":"2026-07-18","intent":"arrive","sexes":["gilt"],"weight_kg":20}`: reading.Fact{Fact: model.Arrive{Count: 2, Animals: []string{"Dot"}, Sexes: []model.Sex{model.Gilt}, WeightKg: model.Float(20), Born: day8(model.DateDay(2026, time.February, 20))}},
		`{"animals":["Dot"],"date":"2026-07-18","hanging_kg":86.18,"how":"butchered","intent":"gone"}`:                            reading.Fact{Fact: model.Gone{Animals: []string{"Dot"}, How: model.Butchered, HangingKg: model.Float(86.18)}},
		`{"at":"07:00","count":4,"date":"2026-09-01","intent":"booked"}`:                                                          reading.Fact{Fact: model.Booked{Day: model.DateDay(2026, time.September, 1), Minute: model.Int(420), Count: 4}},
		`{"from":"2026-07-24","intent":"away","to":"2026-08-03"}`:                                                                 reading.Fact{Fact: model.AwayFrom{From: model.DateDay(2026, time.July, 24), To: model.DateDay(2026, time.August, 3)}},
		`{"date":"2026-07-18","intent":"note","what":"second barrel"}`:                                                            reading.Fact{Fact: model.Note{What: "second barrel"}},
		`{"intent":"remind","what":"wire","when":"2026-07-24T18:00"}`:                                                             reading.Fact{Fact: model.Remind{Day: model.DateDay(2026, time.July, 24), Minute: model.Int(1080), What: "wire"}},
		`{"intent":"remind","what":"wire","when":"2026-07-24"}`:                                                                   reading.Fact{Fact: model.Remind{Day: model.DateDay(2026, time.July, 24), What: "wire"}},
		`{"intent":"settings","key":"herd","value":"Fernhollow"}`:                                                                 reading.Fact{Fact: model.Setting{Key: model.SetHerd, Text: "Fernhollow"}},
		`{"intent":"settings","key":"target_kg","value":120.2}`:                                                                   reading.Fact{Fact: model.Setting{Key: model.SetTarget, Number: model.Float(120.20197805)}},
		`{"intent":"settings","key":"chore_days","value":["sat"]}`:                                                                reading.Fact{Fact: model.Setting{Key: model.SetChore, List: []string{"sat"}}},
		`{"intent":"settings","key":"hour","value":"07:00"}`:                                                                      reading.Fact{Fact: model.Setting{Key: model.SetHour, List: []string{"07:00"}}},
		`{"intent":"settings","key":"quiet","value":["21:00","06:00"]}`:                                                           reading.Fact{Fact: model.Setting{Key: model.SetQuiet, List: []string{"21:00", "06:00"}}},
		`{"intent":"settings","key":"barrel","value":{"capacity_l":208.2,"name":"blue","nipples":2}}`:                             reading.Fact{Fact: model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "blue", CapacityL: model.Float(208.19764812), Nipples: model.Int(2)}}},
		`{"intent":"settings","key":"pen","value":{"area_m2":371.61,"in_use":true,"name":"oak"}}`:                                 reading.Fact{Fact: model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "oak", AreaM2: model.Float(371.61216), InUse: &yes}}},
		`{"intent":"settings","key":"size","value":{"feed_kg":22.68,"name":"bag"}}`:                                               reading.Fact{Fact: model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: "bag", FeedKg: model.Float(22.6796185)}}},
		`{"assume":{"count_delta":2},"intent":"ask","topic":"feed_need"}`:                                                         reading.Ask{Topic: "feed_need", Assume: &model.Assumption{CountDelta: 2}},
		`{"animals":["Dot"],"intent":"ask","on":"2026-09-01","target_kg":120.2,"topic":"target"}`:                                 reading.Ask{Topic: "target", Animals: []string{"Dot"}, On: day8(model.DateDay(2026, time.September, 1)), TargetKg: model.Float(120.20197805)},
		`{"about":["refill"],"intent":"done"}`:                                                                                    reading.Done{About: []string{"refill"}},
		`{"hours":2,"intent":"snooze"}`:                                                                                           reading.Snooze{Hours: 2},
		`{"intent":"undo","of":"fence"}`:                                                                                          reading.Undo{Of: "fence"},
		`{"about":"feed","intent":"help"}`:                                                                                        reading.Help{About: "feed"},
		`{"intent":"none","reason":"plan"}`:                                                                                       reading.None{Reason: reading.NonePlan},
		`{"about":"weigh","intent":"clarify"}`:                                                                                    reading.Clarify{About: "weigh", Code: "which_animal"},
	} {
		b, err := json.Marshal(slots.Of(reading.Entry{Act: act, On: day}))
		require.NoError(t, err)
		require.JSONEq(t, want, string(b))
	}
}

// TestEveryKind: each kind of fact that a text can record has slots of its own,
// not only its intent.
func TestEveryKind(t *testing.T) {
	quiet := map[model.Kind]bool{"told": true, "question": true, "settled": true, "void": true, "done": true, "snooze": true}
	for _, f := range model.Facts() {
		if quiet[f.Kind()] {
			continue // the program's own
		}
		if f.Kind() == "booked" {
			f = model.Booked{Day: day}
		}
		got := slots.Of(reading.Entry{Act: reading.Fact{Fact: f}, On: day})
		require.Equal(t, string(f.Kind()), got["intent"])
		require.Greater(t, len(got), 1, "%s", reflect.TypeOf(f))
	}
}

// TestStated: the time stands there only if it was stated, and a correction
// says so.
func TestStated(t *testing.T) {
	e := reading.Entry{Act: reading.Fact{Fact: model.Fence{Kv: 5.8}}, On: day}
	require.NotContains(t, slots.Of(e), "at")
	require.NotContains(t, slots.Of(e), "replaces")
	e.Minute, e.Replace = model.Int(490), "r7"
	require.Equal(t, "08:10", slots.Of(e)["at"])
	require.Equal(t, true, slots.Of(e)["replaces"])
}

// TestRounding: amounts are written to the hundredth, never with a minus zero.
func TestRounding(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(-0.01, 500).Draw(t, "kg")
		got := slots.Of(reading.Entry{Act: reading.Fact{Fact: model.Refill{FeedKg: &kg}}, On: day})["feed_kg"].(float64)
		require.InDelta(t, kg, got, 0.005000001)
		b, err := json.Marshal(got)
		require.NoError(t, err)
		require.NotEqual(t, "-0", string(b))
	})
}
