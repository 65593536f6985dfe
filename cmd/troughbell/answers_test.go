package main

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// is says whether a value of an answer has the promised type.
type is func(v any) bool

var (
	isNumber is = func(v any) bool { _, ok := v.(float64); return ok }
	isBool   is = func(v any) bool { _, ok := v.(bool); return ok }
	isText   is = func(v any) bool { s, ok := v.(string); return ok && s != "" }
	isDay    is = func(v any) bool {
		s, ok := v.(string)
		if !ok {
			return false
		}
		_, err := time.Parse(time.DateOnly, s)
		return err == nil
	}
	isMoment is = func(v any) bool { // with the offset of the herd's zone
		s, ok := v.(string)
		if !ok {
			return false
		}
		at, err := time.Parse(time.RFC3339, s)
		_, east := at.Zone()
		return err == nil && (east == -5*3600 || east == -6*3600)
	}
)

func has(fields map[string]is) is {
	return func(v any) bool {
		m, ok := v.(map[string]any)
		for name, is := range fields {
			x, there := m[name]
			ok = ok && there && is(x)
		}
		return ok
	}
}

// each is a map of the names, all of them, to the same.
func each(is is, names ...string) is {
	return func(v any) bool {
		m, ok := v.(map[string]any)
		ok = ok && len(m) == len(names)
		for _, n := range names {
			ok = ok && is(m[n])
		}
		return ok
	}
}

var (
	pigs    = []string{"Hazel", "Clover", "Otis", "Pepper"}
	reaches = map[string]is{"date": isDay, "low": isDay, "high": isDay, "days": isNumber}
	lasts   = map[string]is{"days": isNumber, "low_days": isNumber, "empty": isMoment}
)

func with(fields map[string]is, more map[string]is) map[string]is {
	out := map[string]is{}
	for k, v := range fields {
		out[k] = v
	}
	for k, v := range more {
		out[k] = v
	}
	return out
}

// TestAnswers asks in words and looks at the figures: the promised keys, each of
// its type.
func TestAnswers(t *testing.T) {
	db := kept(t, orchardJuly)
	tests := []struct {
		text, topic string
		want        map[string]is
	}{
		{"how long till butcher?", "butcher_date", with(reaches, map[string]is{"animals": each(has(reaches), pigs...)})},
		{"when will Hazel reach 250 lb?", "butcher_date", with(reaches, map[string]is{"animals": each(has(reaches), "Hazel")})},
		{"what do they weigh?", "weight", map[string]is{"on": isDay, "animals": each(has(map[string]is{
			"weight_kg": isNumber, "low_kg": isNumber, "high_kg": isNumber, "gain_kg_d": isNumber,
		}), pigs...)}},
		{"how are they growing?", "growth", map[string]is{"on": isDay, "animals": each(has(map[string]is{
			"weight_kg": isNumber, "low_kg": isNumber, "high_kg": isNumber, "gain_kg_d": isNumber,
		}), pigs...)}},
		{"how much feed is left?", "feed_left", with(lasts, map[string]is{
			"feed_kg": isNumber, "use_kg_d": isNumber, "feeders": each(has(with(lasts, map[string]is{
				"feed_kg": isNumber, "use_kg_d": isNumber,
			})), "big hopper", "small hopper"),
		})},
		{"how much feed do i need until august 1?", "feed_need", map[string]is{"feed_kg": isNumber, "low_kg": isNumber, "high_kg": isNumber, "batches": isNumber}},
		{"how much water is left?", "water_left", map[string]is{
			"litres": isNumber, "use_l_d": isNumber, "days": isNumber, "low_days": isNumber, "barrels": each(has(map[string]is{
				"litres": isNumber, "use_l_d": isNumber, "days": isNumber, "low_days": isNumber,
			}), "shed", "hill"),
		}},
		{"is the ration ok?", "ration_check", map[string]is{
			"crude_protein_pct": isNumber, "lysine_pct": isNumber, "sid_lysine_pct": isNumber, "energy_mj_kg": isNumber,
			"needed_sid_lysine_pct": isNumber, "for_weight_kg": isNumber, "ok": isBool, "change": each(isNumber, "soybean meal 48"),
		}},
		{"what will a pig yield?", "yield", map[string]is{
			"live_kg": isNumber, "live_low_kg": isNumber, "live_high_kg": isNumber,
			"hanging_kg": isNumber, "hanging_low_kg": isNumber, "hanging_high_kg": isNumber,
			"retail_kg": isNumber, "retail_low_kg": isNumber, "retail_high_kg": isNumber,
		}},
		{"what have they cost so far?", "cost", map[string]is{
			"spent": isNumber, "forecast": isNumber, "per_kg_hanging": isNumber, "per_kg_live": isNumber, "currency": isText,
		}},
		{"when is worming due?", "worming", map[string]is{"date": isDay, "why": isText}},
		{"when do i move them?", "move", map[string]is{"date": isDay, "why": isText}},
		{"when is the wallow dry?", "wallow", map[string]is{"date": isDay, "why": isText}},
		{"are they clear?", "withdrawal", map[string]is{"clear_at": isMoment, "clear": isDay, "animals": each(has(map[string]is{
			"clear_at": isMoment, "clear": isDay,
		}), pigs...)}},
		{"how hot is it for the pigs today?", "heat", map[string]is{"thi": isNumber, "class": isText, "rh_assumed": isBool}},
		{"plan for 6 pigs", "plan", map[string]is{
			"feed_kg": isNumber, "feeders": isNumber, "barrels": isNumber, "nipples": isNumber, "shelter_m2": isNumber,
			"shade_m2": isNumber, "pen_m2": isNumber, "dates": has(map[string]is{"target": isDay}),
		}},
		{"what's due?", "today", nil},
		{"history of Hazel", "history", nil},
		{"how big is the feeder?", "sizes", nil},
	}
	for _, tt := range tests {
		t.Run(tt.text, func(t *testing.T) {
			e := parsed(t, db, "2026-07-04T10:00", tt.text)[0]
			require.Len(t, e.Entries, 1, e.raw)
			require.Equal(t, "ask", e.Entries[0]["intent"], e.raw)
			require.Equal(t, tt.topic, e.Entries[0]["topic"])
			answer, ok := e.Entries[0]["answer"].(map[string]any)
			require.True(t, ok, e.raw)
			for key, is := range tt.want {
				require.True(t, is(answer[key]), "%s: %v", key, answer[key])
			}
			require.NotEmpty(t, e.Reply)
		})
	}
}

// asked gives the figures of an answer.
func asked(t *testing.T, db, now, text string) map[string]any {
	t.Helper()
	e := parsed(t, db, now, text)[0]
	require.Len(t, e.Entries, 1, e.raw)
	answer, ok := e.Entries[0]["answer"].(map[string]any)
	require.True(t, ok, e.raw)
	return answer
}

// at walks down a path of names.
func at(v any, path ...string) any {
	for _, p := range path {
		v = v.(map[string]any)[p]
	}
	return v
}

func figure(t *testing.T, v any, path ...string) float64 {
	t.Helper()
	n, ok := at(v, path...).(float64)
	require.True(t, ok, "%v of %v", path, v)
	return n
}

// Figures of one answer agree with each other.
func TestFiguresAgree(t *testing.T) {
	db := kept(t, orchardJuly)
	now := moment(t, "2026-07-04T10:00:00-05:00")
	const clock = "2026-07-04T10:00"

	b := asked(t, db, clock, "how long till butcher?")
	for _, who := range append([]map[string]any{b}, at(b, "animals", "Hazel").(map[string]any), at(b, "animals", "Otis").(map[string]any)) {
		day, err := time.Parse(time.DateOnly, who["date"].(string))
		require.NoError(t, err)
		require.InDelta(t, day.Sub(time.Date(2026, 7, 4, 0, 0, 0, 0, time.UTC)).Hours()/24, who["days"], 0)
		require.LessOrEqual(t, who["low"], who["date"])
		require.LessOrEqual(t, who["date"], who["high"])
	}
	require.NotContains(t, b, "not_before", "none was treated")

	f := asked(t, db, clock, "how much feed is left?")
	require.InDelta(t, figure(t, f, "feed_kg"), figure(t, f, "feeders", "big hopper", "feed_kg")+figure(t, f, "feeders", "small hopper", "feed_kg"), 0.03)
	require.InDelta(t, figure(t, f, "use_kg_d"), figure(t, f, "feeders", "big hopper", "use_kg_d")+figure(t, f, "feeders", "small hopper", "use_kg_d"), 0.03)
	first := map[string]any{}
	for _, feeder := range f["feeders"].(map[string]any) {
		m := feeder.(map[string]any)
		require.LessOrEqual(t, m["low_days"], m["days"])
		require.InDelta(t, m["days"], moment(t, m["empty"].(string)).Sub(now).Hours()/24, 0.01)
		if first["empty"] == nil || moment(t, m["empty"].(string)).Before(moment(t, first["empty"].(string))) {
			first = m
		}
	}
	for _, key := range []string{"days", "low_days", "empty"} {
		require.Equal(t, first[key], f[key], "%s of the first feeder to run dry", key)
	}

	w := asked(t, db, clock, "how much water is left?")
	require.InDelta(t, figure(t, w, "litres"), figure(t, w, "barrels", "shed", "litres")+figure(t, w, "barrels", "hill", "litres"), 0.03)
	require.LessOrEqual(t, w["low_days"], w["days"])
	require.LessOrEqual(t, figure(t, w, "litres"), 110*3.785411784, "no more than they hold")

	y := asked(t, db, clock, "what will a pig yield?")
	require.Greater(t, y["live_kg"], y["hanging_kg"])
	require.Greater(t, y["hanging_kg"], y["retail_kg"])
	c := asked(t, db, clock, "what have they cost so far?")
	require.Equal(t, 45.0, c["spent"])
	require.Equal(t, "USD", c["currency"])
	require.InDelta(t, c["per_kg_hanging"], figure(t, c, "forecast")/4/figure(t, y, "hanging_kg"), 0.006)
	require.InDelta(t, c["per_kg_live"], figure(t, c, "forecast")/4/figure(t, y, "live_kg"), 0.006)

	n := asked(t, db, clock, "how much feed do i need until august 1?")
	require.InDelta(t, n["batches"], figure(t, n, "feed_kg")/(100*0.45359237), 0.01, "a batch is 100 lb")

	r := asked(t, db, clock, "is the ration ok?")
	require.Equal(t, figure(t, r, "sid_lysine_pct") >= figure(t, r, "needed_sid_lysine_pct"), r["ok"])
	g := asked(t, db, clock, "what do they weigh?")
	sum := 0.0
	for _, pig := range pigs {
		sum += figure(t, g, "animals", pig, "weight_kg")
	}
	require.InDelta(t, sum/4, r["for_weight_kg"], 0.02)
}

// One more pig, a skipped week: only the answer assumes it.
func TestAssumptions(t *testing.T) {
	db := kept(t, orchardJuly)
	const clock = "2026-07-04T10:00"
	plain := asked(t, db, clock, "how much feed is left?")
	e := parsed(t, db, clock, "how long will the feed last with one more pig?")[0].Entries[0]
	require.Equal(t, map[string]any{"count_delta": 1.0}, e["assume"])
	require.InDelta(t, figure(t, plain, "use_kg_d")*5/4, figure(t, e["answer"], "use_kg_d"), 0.35)
	require.Less(t, figure(t, e["answer"], "days"), figure(t, plain, "days"))
	require.Equal(t, plain, asked(t, db, clock, "how much feed is left?"))
	heavier := parsed(t, db, clock, "when will they be 280 lb?")[0].Entries[0]
	require.Equal(t, 127.01, heavier["target_kg"])
	require.Greater(t, figure(t, heavier["answer"], "days"), figure(t, asked(t, db, clock, "how long till butcher?"), "days"))
}

// A target that is passed: today and 0.
func TestAlreadyThere(t *testing.T) {
	db := kept(t, orchardJuly)
	got := asked(t, db, "2026-07-04T10:00", "when will they be 100 lb?")
	require.Equal(t, "2026-07-04", got["date"])
	require.Equal(t, 0.0, got["days"])
	for _, pig := range pigs {
		require.Equal(t, "2026-07-04", at(got, "animals", pig, "date"))
		require.Equal(t, 0.0, at(got, "animals", pig, "days"))
	}
}

// Pigs without names are one entry, "all".
func TestNamelessPigs(t *testing.T) {
	db := kept(t, "2026-05-16 08:10 | our herd is Plain, central time, US units, 6 pigs came today, 48 lb each\n")
	for text, topic := range map[string]string{
		"what do they weigh?": "weight", "how long till butcher?": "butcher_date", "are they clear?": "withdrawal",
	} {
		got := asked(t, db, "2026-06-20T10:00", text)
		animals := got["animals"].(map[string]any)
		require.Len(t, animals, 1, topic)
		require.Contains(t, animals, "all", topic)
	}
}

// What is unknown has no answer, and the reply asks for it.
func TestUnknown(t *testing.T) {
	db := kept(t, "2026-05-16 08:10 | our herd is Empty, central time, US units\n")
	for _, text := range []string{
		"how long till butcher?", "what do they weigh?", "how much feed is left?", "how much water is left?", "is the ration ok?",
		"what will a pig yield?", "when is worming due?", "when do i move them?", "when is the wallow dry?", "are they clear?",
		"how much feed do i need until august 1?", "how hot is it for the pigs today?",
	} {
		e := parsed(t, db, "2026-05-16T10:00", text)[0]
		require.Equal(t, "ask", e.Entries[0]["intent"], e.raw)
		require.NotContains(t, e.Entries[0], "answer", e.raw)
		require.Contains(t, strings.ToLower(e.Reply), "text", "it says what to text: %s", e.Reply)
	}
}

// TestClearMoments reckons the promised rule anew: the last dose plus N times 24
// hours, or the same wall time N days on, whichever is later; 23:59 of the day
// where the hour was not told.
func TestClearMoments(t *testing.T) {
	chicago, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	tests := []struct {
		name, said, text string
		dose             time.Time
		days             int
	}{
		{"in summer", "2026-07-04 09:00", "wormed all with ivermectin at 8:15, 18 days withdrawal", time.Date(2026, 7, 4, 8, 15, 0, 0, chicago), 18},
		{"hour not told", "2026-07-04 09:00", "wormed all with ivermectin, 18 days withdrawal", time.Date(2026, 7, 4, 23, 59, 0, 0, chicago), 18},
		{"over the change in autumn", "2026-10-24 09:00", "wormed all with ivermectin at 8:15, 18 days withdrawal", time.Date(2026, 10, 24, 8, 15, 0, 0, chicago), 18},
		{"over the change in spring", "2027-03-06 09:00", "wormed all with ivermectin at 8:15, 18 days withdrawal", time.Date(2027, 3, 6, 8, 15, 0, 0, chicago), 18},
		{"hour not told, in autumn", "2026-10-24 09:00", "wormed all with ivermectin, 18 days withdrawal", time.Date(2026, 10, 24, 23, 59, 0, 0, chicago), 18},
		{"no days at all", "2026-07-04 09:00", "wormed all with ivermectin at 8:15, 0 days withdrawal", time.Date(2026, 7, 4, 8, 15, 0, 0, chicago), 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			log := "2026-06-20 08:10 | our herd is Dose, central time (America/Chicago), US units, 2 pigs came today, Ash and Elm, 48 lb each\n"
			db := kept(t, log+tt.said+" | "+tt.text+"\n")
			got := asked(t, db, strings.Replace(tt.said, " 09:00", "T09:05", 1), "are they clear?")
			y, m, d := tt.dose.Date()
			want := time.Date(y, m, d+tt.days, tt.dose.Hour(), tt.dose.Minute(), 0, 0, chicago)
			if elapsed := tt.dose.Add(time.Duration(tt.days) * 24 * time.Hour); elapsed.After(want) {
				want = elapsed
			}
			for _, who := range []any{got, at(got, "animals", "Ash"), at(got, "animals", "Elm")} {
				require.Equal(t, want.Format(time.RFC3339), at(who, "clear_at"))
				require.Equal(t, want.Format(time.DateOnly), at(who, "clear"))
			}
			if tt.days > 0 {
				first := time.Date(y, m, want.Day()+1, 0, 0, 0, 0, chicago)
				if want.Month() != m {
					first = time.Date(y, want.Month(), want.Day()+1, 0, 0, 0, 0, chicago)
				}
				butcher := asked(t, db, strings.Replace(tt.said, " 09:00", "T09:05", 1), "how long till butcher?")
				require.Equal(t, first.Format(time.DateOnly), butcher["not_before"])
			}
		})
	}
}

// Unknown days are not clear, of one pig as of the herd.
func TestUnknownWithdrawal(t *testing.T) {
	db := kept(t, orchard+"2026-07-04 09:00 | gave Otis penicillin\n")
	got := asked(t, db, "2026-09-01T10:00", "are they clear?")
	require.Contains(t, got, "clear")
	require.Nil(t, got["clear"])
	require.Nil(t, got["clear_at"])
	otis := at(got, "animals", "Otis").(map[string]any)
	require.Contains(t, otis, "clear")
	require.Nil(t, otis["clear"])
	require.NotNil(t, at(got, "animals", "Hazel", "clear"))
}

// The temperature-humidity index, reckoned anew from the humidity that the
// answer names: F - (0.55 - 0.55 RH)(F - 58), as the livestock weather safety
// index has it.
func TestHeatIndex(t *testing.T) {
	db := kept(t, orchardJuly)
	got := asked(t, db, "2026-07-04T10:00", "how hot is it for the pigs today?")
	f, rh := 95.0, figure(t, got, "rh_pct")/100
	thi := f - (0.55-0.55*rh)*(f-58)
	require.InDelta(t, thi, got["thi"], 0.01)
	require.Equal(t, true, got["rh_assumed"])
	require.Equal(t, "emergency", got["class"])
	told := kept(t, orchardJuly+"2026-07-05 09:00 | 75 degrees, 50% humidity\n")
	mild := asked(t, told, "2026-07-05T10:00", "how hot is it for the pigs today?")
	require.Equal(t, false, mild["rh_assumed"])
	require.Equal(t, "normal", mild["class"])
}
