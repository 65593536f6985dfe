package reading_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/bot/reading"
	"troughbell/model"
)

func (k *talk) today(now time.Time) model.Day { return model.DayOf(now.In(k.loc)) }

func fact[F model.Fact](t *rapid.T, got reading.Reading) (F, reading.Entry) {
	require.Len(t, got.Entries, 1)
	f, ok := got.Entries[0].Act.(reading.Fact)
	require.True(t, ok, "%#v", got.Entries[0].Act)
	v, ok := f.Fact.(F)
	require.True(t, ok, "%#v", f.Fact)
	return v, got.Entries[0]
}

// TestAmountsAreExact: an amount said in any unit is recorded by the exact
// definition of the unit (international pound 0.45359237 kg, US gallon
// 3.785411784 l).
func TestAmountsAreExact(t *testing.T) {
	k := hollowTalk(t)
	now := time.Date(2026, 7, 18, 18, 30, 0, 0, k.loc)
	rapid.Check(t, func(t *rapid.T) {
		lb := rapid.IntRange(1, 300).Draw(t, "lb")
		r, _ := fact[model.Refill](t, reading.Read(k.context(now), fmt.Sprintf("put %d lb in the north hopper", lb)))
		require.InDelta(t, float64(lb)*0.45359237, *r.FeedKg, 1e-9)
		gal := rapid.IntRange(1, 55).Draw(t, "gal")
		w, _ := fact[model.Water](t, reading.Read(k.context(now), fmt.Sprintf("barrel 1 %d gal", gal)))
		require.InDelta(t, float64(gal)*3.785411784, *w.Litres, 1e-9)
	})
}

// TestFactsLookBack: a weekday named in a fact is today or one of the six days
// before; one named in a booking lies in the seven days ahead.
func TestFactsLookBack(t *testing.T) {
	k := hollowTalk(t)
	names := []string{"sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"}
	rapid.Check(t, func(t *rapid.T) {
		now := time.Date(2026, 7, 12, 18, 30, 0, 0, k.loc).AddDate(0, 0, rapid.IntRange(0, 30).Draw(t, "days on"))
		day := names[rapid.IntRange(0, 6).Draw(t, "weekday")]
		today := model.DayOf(now)
		_, e := fact[model.Fence](t, reading.Read(k.context(now), "fence 5.8 "+day))
		require.LessOrEqual(t, e.On, today)
		require.Greater(t, e.On, today-7)
		require.Equal(t, day[:3], model.WeekdayCode(e.On.Weekday()))
		b, _ := fact[model.Booked](t, reading.Read(k.context(now), "butcher "+day))
		require.Greater(t, b.Day, today)
		require.LessOrEqual(t, b.Day, today+7)
		require.Equal(t, day[:3], model.WeekdayCode(b.Day.Weekday()))
	})
}

// TestOrderOfFacts: independent facts in any order are read as the same facts.
func TestOrderOfFacts(t *testing.T) {
	k := hollowTalk(t)
	now := time.Date(2026, 7, 18, 18, 30, 0, 0, k.loc)
	parts := []string{"north 150 full", "barrel 1 full", "fence 5.8", "hosed 30 min", "bram limping"}
	whole := func(order []string) map[string]int {
		text := ""
		for i, p := range order {
			if i > 0 {
				text += ", "
			}
			text += p
		}
		got := map[string]int{}
		for _, e := range reading.Read(k.context(now), text).Entries {
			got[brief([]reading.Entry{e}, "2026-07-18")]++
		}
		return got
	}
	want := whole(parts)
	require.Len(t, want, len(parts))
	rapid.Check(t, func(t *rapid.T) {
		require.Equal(t, want, whole(rapid.Permutation(parts).Draw(t, "order")))
	})
}

// TestSpokenNumbers: numbers said in words are the numbers.
func TestSpokenNumbers(t *testing.T) {
	k := hollowTalk(t)
	now := time.Date(2026, 7, 18, 18, 30, 0, 0, k.loc)
	ones := []string{
		"", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
		"fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
	}
	tens := []string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(11, 299).Draw(t, "n")
		words := ""
		if n >= 100 {
			words = ones[n/100] + " hundred "
		}
		if m := n % 100; m < 20 {
			words += ones[m]
		} else {
			words += tens[m/10] + " " + ones[m%10]
		}
		r, _ := fact[model.Refill](t, reading.Read(k.context(now), "put "+words+" pounds in the north hopper"))
		require.InDelta(t, float64(n)*0.45359237, *r.FeedKg, 1e-9, words)
	})
}
