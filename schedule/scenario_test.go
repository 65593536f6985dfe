package schedule

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// calm is a herd with nothing to do: each scenario changes one thing.
func calm() fake {
	return fake{feedDays: 300, waterDays: 300, weightKg: 60, capacityKg: 250, useKgD: 5}
}

func weekly(from, what string) []string {
	var out []string
	at, _ := time.Parse("2006-01-02", from)
	for range 2 {
		out = append(out, at.Format("Mon 2006-01-02")+" 07:00 standing routine "+what)
		at = at.AddDate(0, 0, 7)
	}
	return out
}

func d(s string) model.Day {
	day, err := model.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return day
}

func TestScenarios(t *testing.T) {
	empty := weekly("2026-05-09", "")
	tests := []struct {
		name string
		f    func(*fake)
		say  func(*log)
		want []string
	}{
		{"nothing is due", nil, nil, empty},
		{"worming due after the next visit waits", func(f *fake) { f.worm = d("2026-05-17") }, nil, []string{
			empty[0], "Sat 2026-05-16 07:00 standing routine worm_due",
		}},
		{"worming due before the next visit is pulled to this one", func(f *fake) { f.worm = d("2026-05-15") }, nil, []string{
			"Sat 2026-05-09 07:00 standing routine worm_due", "Sat 2026-05-16 07:00 standing routine worm_due",
		}},
		{"done silences worming", func(f *fake) { f.worm = d("2026-05-15") }, func(l *log) {
			l.add("2026-05-09 12:00", model.Done{About: []string{aboutWorm}})
		}, []string{"Sat 2026-05-09 07:00 standing routine worm_due", empty[1]}},
		{"done without a word speaks of the latest nudge", func(f *fake) { f.worm = d("2026-05-15") }, func(l *log) {
			l.add("2026-05-09 12:00", model.Done{})
		}, []string{"Sat 2026-05-09 07:00 standing routine worm_due", empty[1]}},
		{"a blocked worming is said once", func(f *fake) { f.worm, f.wormBlocked = d("2026-05-15"), true }, nil, []string{
			"Sat 2026-05-09 07:00 standing routine worm_blocked", empty[1],
		}},
		{"tomorrow brings it back on its own", func(f *fake) { f.move = d("2026-05-10") }, func(l *log) {
			l.add("2026-05-09 12:00", model.Snooze{About: []string{aboutMove}, Until: l.time("2026-05-10 07:00")})
		}, []string{
			"Sat 2026-05-09 07:00 standing routine move_due", "Sun 2026-05-10 07:00 off-day routine move_due",
			"Sat 2026-05-16 07:00 standing routine move_due",
		}},
		{"tomorrow, settled meanwhile", func(f *fake) { f.wallowDays = 9 }, func(l *log) {
			l.add("2026-05-09 12:00", model.Snooze{About: []string{aboutWallow}, Until: l.time("2026-05-10 07:00")})
			l.add("2026-05-09 18:00", model.WallowFill{})
		}, []string{"Sat 2026-05-09 07:00 standing routine wallow_visit", "Sat 2026-05-16 07:00 standing routine wallow_visit"}},
		{"next chore day", func(f *fake) { f.move = d("2026-05-10") }, func(l *log) {
			l.add("2026-05-09 12:00", model.Snooze{About: []string{aboutMove}, Until: l.time("2026-05-16 07:00")})
		}, weekly("2026-05-09", "move_due")},
		{"stopped for the season", func(f *fake) { f.move = d("2026-05-10") }, func(l *log) {
			l.add("2026-05-09 12:00", model.Snooze{Topics: []string{aboutMove}, Stop: true})
		}, []string{"Sat 2026-05-09 07:00 standing routine move_due", empty[1]}},
		{"muted", func(f *fake) { f.move = d("2026-05-10") }, func(l *log) {
			l.add("2026-05-05 12:00", model.Setting{Key: model.SetMute, Text: aboutMove})
		}, empty},
		{"a question is asked again that evening, then at the visit", nil, func(l *log) {
			l.add("2026-05-06 10:00", model.Question{About: "refill", Code: "bag_size"})
		}, []string{
			"Wed 2026-05-06 19:00 off-day routine check_question",
			"Sat 2026-05-09 07:00 standing routine check_question", empty[1],
		}},
		{"a question answered in time", nil, func(l *log) {
			l.add("2026-05-06 10:00", model.Question{About: "refill", Code: "bag_size"})
			l.add("2026-05-06 10:05", model.Settled{Question: l.records[len(l.records)-1].ID, How: "answered"})
		}, empty},
		{"a reminder at its minute and one for a day", nil, func(l *log) {
			l.add("2026-05-06 10:00", model.Remind{Day: d("2026-05-07"), Minute: model.Int(15*60 + 30), What: "call the shop"},
				model.Remind{Day: d("2026-05-09"), What: "bring the tape"})
		}, []string{"Thu 2026-05-07 15:30 off-day routine own_reminder", "Sat 2026-05-09 07:00 standing routine own_reminder", empty[1]}},
		{"a reminder in the quiet hours comes before them", nil, func(l *log) {
			l.add("2026-05-06 10:00", model.Remind{Day: d("2026-05-07"), Minute: model.Int(22 * 60), What: "shut the gate"},
				model.Remind{Day: d("2026-05-08"), Minute: model.Int(5 * 60), What: "trailer"})
		}, []string{"Thu 2026-05-07 20:59 off-day routine own_reminder,own_reminder", empty[0], empty[1]}},
		{"a reminder asked for in the quiet hours", nil, func(l *log) {
			l.add("2026-05-06 21:30", model.Remind{Day: d("2026-05-06"), Minute: model.Int(22 * 60), What: "shut the gate"})
		}, []string{"Wed 2026-05-06 22:00 off-day routine own_reminder", empty[0], empty[1]}},
		{"pigs out, never called over", nil, func(l *log) {
			l.add("2026-05-06 20:00", model.Alarm{What: model.AlarmOut})
		}, []string{
			"Wed 2026-05-06 22:00 off-day danger alarm_out", "Thu 2026-05-07 00:00 off-day danger alarm_out",
			"Thu 2026-05-07 02:00 off-day danger alarm_out", "Thu 2026-05-07 04:00 off-day danger alarm_out", empty[0], empty[1],
		}},
		{"pigs out and in again", nil, func(l *log) {
			l.add("2026-05-06 12:00", model.Alarm{What: model.AlarmOut})
			l.add("2026-05-06 14:30", model.Alarm{What: model.AlarmOut, Over: true})
		}, []string{"Wed 2026-05-06 14:00 off-day danger alarm_out", empty[0], empty[1]}},
		{"no water, filled", nil, func(l *log) {
			l.add("2026-05-06 12:00", model.Alarm{What: model.AlarmNoWater})
			l.add("2026-05-06 13:00", model.Water{Full: true})
		}, empty},
		{"a pig down, answered", nil, func(l *log) {
			l.add("2026-05-06 12:00", model.Alarm{What: model.AlarmDown, Animals: []string{"Dot"}})
			l.add("2026-05-06 14:10", model.Done{})
		}, []string{"Wed 2026-05-06 14:00 off-day danger alarm_down", empty[0], empty[1]}},
		{"a dead fence waits for the waking hour", nil, func(l *log) {
			l.add("2026-05-06 20:00", model.Alarm{What: model.AlarmFence})
			l.add("2026-05-07 06:30", model.Fence{Kv: 6})
		}, []string{"Thu 2026-05-07 06:00 off-day danger alarm_fence", empty[0], empty[1]}},
		{"a weak fence is brought up at the visit", nil, func(l *log) {
			l.add("2026-05-06 12:00", model.Fence{Kv: 1.8})
			l.add("2026-05-09 09:00", model.Fence{Kv: 6})
		}, []string{"Sat 2026-05-09 07:00 standing welfare alarm_fence_low", empty[1]}},
		{"barrels seen empty", nil, func(l *log) {
			l.add("2026-05-06 20:30", model.Water{Fraction: model.Float(0), Seen: true})
			l.add("2026-05-06 23:00", model.Water{Full: true})
		}, []string{"Wed 2026-05-06 22:30 off-day danger water_seen_empty", empty[0], empty[1]}},
		{"heat told for tomorrow", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatAlert} }, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 33, 20)
		}, []string{"Wed 2026-05-06 19:00 off-day welfare heat_alert", empty[0], empty[1]}},
		{"dangerous heat told for tomorrow", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatDanger} }, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 33, 20)
		}, []string{"Wed 2026-05-06 19:00 off-day danger heat_danger", "Thu 2026-05-07 07:00 off-day danger heat_danger", empty[0], empty[1]}},
		{"dangerous heat forecast before dawn breaks the quiet hours", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatDanger} }, func(l *log) {
			l.add("2026-05-07 05:10", model.Forecast{Days: []model.ForecastDay{{On: d("2026-05-07"), HighC: model.Float(33)}}})
		}, []string{"Thu 2026-05-07 05:10 off-day danger heat_danger", empty[0], empty[1]}},
		{"who told of dangerous heat was answered, and is told again later", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatDanger} }, func(l *log) {
			l.weather("2026-05-07 05:10", "2026-05-07", 33, 20)
		}, []string{"Thu 2026-05-07 07:10 off-day danger heat_danger", empty[0], empty[1]}},
		{"heat told late in the evening waits for the day", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatAlert} }, func(l *log) {
			l.weather("2026-05-06 22:10", "2026-05-07", 33, 20)
		}, []string{"Thu 2026-05-07 07:00 off-day welfare heat_alert", empty[0], empty[1]}},
		{"a day to watch stands in the message of the chore day", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-09"): model.HeatWatch} }, func(l *log) {
			l.weather("2026-05-08 12:00", "2026-05-09", 29, 20)
		}, []string{"Sat 2026-05-09 07:00 standing routine heat_watch", empty[1]}},
		{"figures of heat without a told temperature alarm nobody", func(f *fake) { f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatDanger} }, nil, empty},
		{"a hard freeze and young pigs", func(f *fake) { f.weightKg = 23 }, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 5, -6)
		}, []string{"Wed 2026-05-06 19:00 off-day welfare cold_freeze,cold_night", empty[0], empty[1]}},
		{"frost does not harm heavy pigs in straw", func(f *fake) { f.weightKg = 110 }, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 8, -3)
		}, empty},
		{"the last pig goes", func(f *fake) { f.feedDays, f.waterDays = 5, 5 }, func(l *log) {
			l.add("2026-05-07 09:00", model.Gone{Animals: []string{model.All}, How: model.Butchered})
		}, []string{"Thu 2026-05-07 19:00 off-day routine season_over"}},
		{"away over a chore day", func(f *fake) { f.move = d("2026-05-10") }, func(l *log) {
			l.add("2026-05-06 09:00", model.AwayFrom{From: d("2026-05-08"), To: d("2026-05-12")})
			l.add("2026-05-06 09:30", model.Question{About: "refill", Code: "bag_size"})
			l.add("2026-05-06 09:31", model.Settled{Question: l.records[len(l.records)-1].ID, How: "answered"})
		}, []string{"Tue 2026-05-12 19:00 off-day routine catch_up_away,move_due", "Sat 2026-05-16 07:00 standing routine move_due"}},
		{"water ends while away", func(f *fake) { f.waterDays = 5.2 }, func(l *log) {
			l.add("2026-05-06 09:00", model.AwayFrom{From: d("2026-05-08"), To: d("2026-05-12")})
			l.add("2026-05-09 11:00", model.Water{Full: true})
			l.add("2026-05-13 11:00", model.Water{Full: true})
		}, []string{
			"Fri 2026-05-08 19:00 off-day welfare water_midweek", "Tue 2026-05-12 19:00 off-day routine catch_up_away,water_visit",
			"Sat 2026-05-16 07:00 standing routine water_brim",
		}},
		{"book the butcher", func(f *fake) { f.book = d("2026-05-01") }, nil, weekly("2026-05-09", "book_by")},
		{"a booked day passes without a word", nil, func(l *log) {
			l.add("2026-05-05 09:00", model.Booked{Day: d("2026-05-08"), Minute: model.Int(9 * 60)})
		}, []string{
			"Wed 2026-05-06 19:00 off-day welfare book_eve,book_feed,book_clear", "Thu 2026-05-07 07:00 off-day welfare book_eve,book_feed,book_clear",
			"Fri 2026-05-08 19:00 off-day routine check_gone",
		}},
		{"a booked day comes nearer", nil, func(l *log) {
			l.add("2026-05-06 09:00", model.Booked{Day: d("2026-05-14"), Minute: model.Int(9 * 60)})
			l.add("2026-05-14 10:00", model.Gone{Animals: []string{"Dot"}, How: model.Butchered})
		}, []string{
			"Sat 2026-05-09 07:00 standing routine book_ahead", "Tue 2026-05-12 19:00 off-day welfare book_eve,book_feed,book_clear",
			"Wed 2026-05-13 07:00 off-day welfare book_eve,book_feed,book_clear", empty[1],
		}},
		{"a ration too thin is said once", func(f *fake) {
			f.ration = model.Ration{SIDLysinePct: 0.6, NeededSIDLysinePct: 0.8, Change: map[string]float64{"soybean meal 48": 4}}
		}, nil, []string{"Sat 2026-05-09 07:00 standing routine ration_short", empty[1]}},
		{"the feeder will be too small in two weeks", func(f *fake) { f.useKgD = 40 }, nil, []string{
			"Sat 2026-05-09 07:00 standing routine capacity_feed", empty[1],
		}},
		{"the wallow has no use on cool days", func(f *fake) { f.wallowDays = 6 }, func(l *log) {
			l.weather("2026-05-08 12:00", "2026-05-09", 11, 6)
		}, []string{empty[0], "Sat 2026-05-16 07:00 standing routine wallow_visit"}},
		{"a dry wallow on a hot day", func(f *fake) {
			f.wallowDays, f.heat = 2, map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatAlert}
		}, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 33, 20)
			l.add("2026-05-08 18:00", model.WallowFill{})
			l.add("2026-05-14 18:00", model.WallowFill{})
		}, []string{
			"Wed 2026-05-06 19:00 off-day welfare heat_alert", "Thu 2026-05-07 07:00 off-day welfare wallow_heat",
			"Sat 2026-05-09 07:00 standing routine wallow_visit", "Sat 2026-05-16 07:00 standing routine wallow_visit",
		}},
		{"a wallow with water in it on a hot day", func(f *fake) {
			f.wallowDays, f.heat = 8, map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatAlert}
		}, func(l *log) {
			l.weather("2026-05-06 12:00", "2026-05-07", 33, 20)
			l.add("2026-05-08 18:00", model.WallowFill{})
		}, []string{"Wed 2026-05-06 19:00 off-day welfare heat_alert", empty[0], "Sat 2026-05-16 07:00 standing routine wallow_visit"}},
		{"one of two barrels seen empty is no emergency", nil, func(l *log) {
			l.add("2026-05-05 12:00", model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "tote", CapacityL: model.Float(500)}})
			l.add("2026-05-06 12:00", model.Water{Barrel: "tote", Fraction: model.Float(0), Seen: true})
			l.add("2026-05-06 18:00", model.Water{Full: true})
		}, empty},
		{"both seen empty, one after the other", nil, func(l *log) {
			l.add("2026-05-05 12:00", model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "tote", CapacityL: model.Float(500)}})
			l.add("2026-05-06 12:00", model.Water{Barrel: "tote", Fraction: model.Float(0), Seen: true})
			l.add("2026-05-06 13:00", model.Water{Barrel: "barrel", Fraction: model.Float(0), Seen: true})
			l.add("2026-05-06 18:00", model.Water{Full: true})
		}, []string{"Wed 2026-05-06 15:00 off-day danger water_seen_empty", empty[0], empty[1]}},
		{"a mute does not silence a danger", nil, func(l *log) {
			l.add("2026-05-05 12:00", model.Setting{Key: model.SetMute, Text: aboutWater})
			l.add("2026-05-06 12:00", model.Water{Fraction: model.Float(0), Seen: true})
			l.add("2026-05-06 18:00", model.Water{Full: true})
		}, []string{"Wed 2026-05-06 14:00 off-day danger water_seen_empty", empty[0], empty[1]}},
		{"a danger can be put off for two hours only", nil, func(l *log) {
			l.add("2026-05-06 12:00", model.Alarm{What: model.AlarmOut})
			l.add("2026-05-06 14:30", model.Snooze{Topics: []string{"alarm:out"}, Until: l.time("2026-05-08 07:00")})
			l.add("2026-05-06 16:45", model.Alarm{What: model.AlarmOut, Over: true})
		}, []string{"Wed 2026-05-06 14:00 off-day danger alarm_out", "Wed 2026-05-06 16:30 off-day danger alarm_out", empty[0], empty[1]}},
		{"a snooze ends at the cautious edge", func(f *fake) { f.waterDays = 3 }, func(l *log) { // 7 May 8:00
			l.add("2026-05-06 20:00", model.Snooze{Topics: []string{"water:between"}, Until: l.time("2026-05-08 07:00")})
			l.add("2026-05-07 09:00", model.Water{Full: true})
			l.add("2026-05-09 09:00", model.Water{Full: true})
			l.add("2026-05-11 09:00", model.Water{Full: true})
			l.add("2026-05-13 09:00", model.Water{Full: true})
			l.add("2026-05-15 09:00", model.Water{Full: true})
		}, []string{
			"Wed 2026-05-06 19:00 off-day welfare water_midweek", "Thu 2026-05-07 08:00 off-day welfare water_midweek",
			"Sat 2026-05-09 07:00 standing routine water_brim",
			"Sat 2026-05-16 07:00 standing routine water_brim",
		}},
		{"a level that will not last is not repeated right after the reply", func(f *fake) { f.waterDays = 0.4 }, func(l *log) {
			l.add("2026-05-04 10:00", model.Water{Fraction: model.Float(0.1)})
			l.add("2026-05-04 13:00", model.Gone{Animals: []string{model.All}, How: model.Sold})
		}, []string{
			"Mon 2026-05-04 09:00 off-day welfare water_midweek", "Mon 2026-05-04 11:00 off-day welfare water_midweek",
			"Mon 2026-05-04 19:00 off-day routine season_over",
		}},
		{"feed ends on the chore day itself and nothing is logged", func(f *fake) { f.feedDays = 5.25 }, func(l *log) { // 9 May 14:00
			l.add("2026-05-09 21:00", model.Refill{Full: true})
			l.add("2026-05-14 21:00", model.Refill{Full: true})
		}, []string{
			"Sat 2026-05-09 07:00 standing routine refill_brim", "Sat 2026-05-09 19:00 off-day welfare refill_midweek_brim",
			"Thu 2026-05-14 19:00 off-day welfare refill_midweek", "Sat 2026-05-16 07:00 standing routine refill_brim",
		}},
		{"set up on a chore day after its hour", nil, func(l *log) {
			l.add("2026-05-16 06:00", model.Setting{Key: model.SetHour, List: []string{"05:30"}})
		}, empty[:1]},
		{"back from away with water short: one line", func(f *fake) { f.waterDays = 9 }, func(l *log) { // 13 May 8:00
			l.add("2026-05-06 09:00", model.AwayFrom{From: d("2026-05-08"), To: d("2026-05-12")})
			l.add("2026-05-13 07:30", model.Water{Full: true})
		}, []string{"Tue 2026-05-12 19:00 off-day welfare catch_up_away,water_midweek", "Sat 2026-05-16 07:00 standing routine water_brim"}},
		{"too few drinkers is said once", nil, func(l *log) {
			l.add("2026-05-05 12:00", model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel", Nipples: model.Int(1)}})
		}, []string{"Sat 2026-05-09 07:00 standing routine capacity_nipples", empty[1]}},
		{"a ration much too rich", func(f *fake) {
			f.ration = model.Ration{OK: true, SIDLysinePct: 1.1, NeededSIDLysinePct: 0.8, Change: map[string]float64{"soybean meal 48": -4}}
		}, nil, []string{"Sat 2026-05-09 07:00 standing routine ration_rich", empty[1]}},
		{"a ration that is right", func(f *fake) {
			f.ration = model.Ration{OK: true, SIDLysinePct: 0.9, NeededSIDLysinePct: 0.8}
		}, nil, empty},
		{"a second routine word on one day waits", func(f *fake) { f.pour = 35 }, func(l *log) {
			l.add("2026-05-08 10:00", model.Question{About: "refill", Code: "bag_size"})
			l.add("2026-05-08 19:30", model.Settled{Question: l.records[len(l.records)-1].ID, How: "answered"},
				model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean meal 48": 10}},
				model.Stock{Ingredient: "corn", FeedKg: model.Float(10)})
			l.add("2026-05-09 09:00", model.Stock{Ingredient: "corn", FeedKg: model.Float(500)})
		}, []string{"Fri 2026-05-08 19:00 off-day routine check_question", "Sat 2026-05-09 07:00 standing routine stock_short", empty[1]}},
		{"no question follows the person away", nil, func(l *log) {
			l.add("2026-05-10 10:00", model.AwayFrom{From: d("2026-05-11"), To: d("2026-05-13")}, model.Remind{Day: d("2026-05-11"), What: "passport"})
			l.add("2026-05-11 10:00", model.Question{About: "refill", Code: "bag_size"})
			l.add("2026-05-14 10:00", model.Settled{Question: l.records[len(l.records)-1].ID, How: "answered"})
		}, []string{empty[0], "Mon 2026-05-11 07:00 off-day routine own_reminder", "Wed 2026-05-13 19:00 off-day routine catch_up_away,check_question", empty[1]}},
		{"a reminder for a moment that had passed", nil, func(l *log) {
			l.add("2026-05-06 10:00", model.Remind{Day: d("2026-05-06"), Minute: model.Int(8 * 60), What: "call the shop"})
		}, empty},
		{"feed that stands is knocked", nil, func(l *log) {
			l.add("2026-05-05 09:00", model.Refill{FeedKg: model.Float(200)})
		}, []string{empty[0], "Sat 2026-05-16 07:00 standing routine level_standing"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			f := calm()
			if tt.f != nil {
				tt.f(&f)
			}
			if tt.say != nil {
				tt.say(l)
			}
			// A word now and then, so that the silence is not remarked on.
			l.add("2026-05-11 12:00", model.Note{What: "all good"})
			require.Equal(t, tt.want, texts(l.walk("2026-05-04 08:00", "2026-05-17 00:00", with(f))))
		})
	}
}

func TestSixLinesAtMostAndNothingAskedForIsLost(t *testing.T) {
	f := calm()
	f.feedDays, f.waterDays, f.wallowDays = 6, 6, 4
	f.worm, f.move, f.weigh, f.book = d("2026-05-10"), d("2026-05-10"), d("2026-05-10"), d("2026-05-01")
	l := newHerd(t, "America/Chicago")
	for range 8 {
		l.add("2026-05-05 12:00", model.Remind{Day: d("2026-05-09"), What: "something"})
	}
	now := l.time("2026-05-09 07:00")
	l.walkSpan(l.time("2026-05-04 08:00"), now.Add(-minutes(1)), with(f))
	h := l.herd(now)
	due, _ := decide(h, with(f)(h), now)
	require.Len(t, due, 2)
	require.True(t, due[0].Standing)
	require.False(t, due[1].Standing)
	require.Equal(t, []string{aboutRefill, aboutWater, aboutOwn}, due[0].About())
	require.Len(t, due[0].Lines, mostLines)
	require.Len(t, due[1].Lines, 4)
	l.tell(now, due)
	h = l.herd(now)
	again, _ := decide(h, with(f)(h), now.Add(minutes(1)))
	require.Empty(t, again)
}

func TestLinesSayWhy(t *testing.T) {
	f := calm()
	f.feedDays, f.heat = 8, map[model.Day]model.HeatClass{d("2026-05-09"): model.HeatWatch}
	l := newHerd(t, "America/Chicago").add("2026-05-06 09:00", model.AwayFrom{From: d("2026-05-15"), To: d("2026-05-17")})
	l.weather("2026-05-08 09:00", "2026-05-09", 29, 18)
	now := l.time("2026-05-09 07:00")
	h := l.herd(now)
	due, _ := decide(h, with(f)(h), now)
	require.Len(t, due, 1)
	why := map[string][]model.Reason{}
	for _, x := range due[0].Lines {
		why[x.About] = x.Reasons
	}
	require.Equal(t, []model.Reason{
		{Code: ReasonNextVisit, On: d("2026-05-23")}, {Code: ReasonAway, On: d("2026-05-17")},
	}, why[aboutRefill])
	require.Equal(t, model.HeatHighTold, why[aboutHeat][0].Code)
}

func TestSeasonCountsItsOwnPigs(t *testing.T) {
	l := newHerd(t, "America/Chicago").
		add("2026-08-01 09:00", model.Gone{Animals: []string{model.All}, How: model.Butchered}).
		add("2027-05-01 09:00", model.Arrive{Count: 2, Animals: []string{"Fig", "Plum"}, WeightKg: model.Float(25)}).
		add("2027-06-01 09:00", model.Gone{Animals: []string{"Fig"}, How: model.Died}).
		add("2027-08-01 09:00", model.Gone{Animals: []string{"Plum"}, How: model.Butchered})
	now := l.time("2027-08-01 19:00")
	h := l.herd(now)
	due, _ := decide(h, with(calm())(h), now)
	require.Len(t, due, 1)
	require.Equal(t, []string{aboutSeason}, due[0].About())
	require.Equal(t, []model.Quantity{{Value: 2, Unit: model.Count}, {Value: 1, Unit: model.Count}}, due[0].Lines[0].Q)
}

func TestLateLooksSayOnlyWhatIsStillOfUse(t *testing.T) {
	f := calm()
	f.heat = map[model.Day]model.HeatClass{d("2026-05-07"): model.HeatAlert}
	l := newHerd(t, "America/Chicago")
	l.weather("2026-05-07 03:00", "2026-05-07", 33, 20)
	for at, want := range map[string]int{"2026-05-07 16:30": 1, "2026-05-07 17:30": 0} {
		now := l.time(at)
		h := l.herd(now)
		due, _ := decide(h, with(f)(h), now)
		require.Len(t, due, want, at)
	}
}

func TestAStopEndsWithTheSeason(t *testing.T) {
	f := calm()
	f.move, f.feedDays, f.waterDays = d("2026-05-05"), 1000, 1000
	l := newHerd(t, "America/Chicago").
		add("2026-05-09 12:00", model.Snooze{About: []string{aboutMove}, Stop: true}).
		add("2026-08-01 09:00", model.Gone{Animals: []string{model.All}, How: model.Butchered}).
		add("2027-05-03 09:00", model.Arrive{Count: 2, WeightKg: model.Float(25)})
	for at, want := range map[string][]string{"2026-05-16 07:00": nil, "2027-05-08 07:00": {CodeMoveDue}} {
		now := l.time(at)
		h := l.herd(now)
		due, _ := decide(h, with(f)(h), now)
		require.Len(t, due, 1)
		require.True(t, due[0].Standing)
		require.Equal(t, want, codes(due[0].Lines), at)
	}
}
