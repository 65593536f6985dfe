package wording_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/bot/wording"
	"troughbell/model"
)

func TestQuantity(t *testing.T) {
	q := func(v float64, u model.Unit) model.Quantity { return model.Quantity{Value: v, Unit: u} }
	for _, row := range []struct {
		q          model.Quantity
		style      string
		us, metric string
	}{
		{wording.Kg(81.647), "", "180 lb", "82 kg"},
		{wording.Kg(12.3), "", "27 lb", "12.5 kg"},
		{wording.Kg(1.2), "", "2.5 lb", "1 kg"},
		{wording.Kg(129.4), "feed", "285 lb", "130 kg"},
		{wording.Kg(30.3), "feed", "67 lb", "30 kg"},
		{wording.Kg(1283), "feed", "2,830 lb", "1,280 kg"},
		{wording.Kg(-2), "sign", "-4.5 lb", "-2 kg"},
		{wording.Kg(2), "sign", "+4.5 lb", "+2 kg"},
		{wording.KgD(0.787), "", "1.7 lb a day", "0.79 kg a day"},
		{wording.KgD(12.2), "feed", "27 lb a day", "12 kg a day"},
		{wording.L(150), "", "40 gal", "150 l"},
		{wording.L(416.4), "", "110 gal", "415 l"},
		{wording.LD(41), "", "11 gal a day", "41 l a day"},
		{wording.Days(1.2), "", "1 day", "1 day"},
		{wording.Days(6.7), "", "7 days", "7 days"},
		{wording.Days(6.7), "down", "6 days", "6 days"},
		{wording.Days(0.4), "down", "under 1 days", "under 1 days"},
		{q(34.4, model.Celsius), "", "94 °F", "34 °C"},
		{q(0.743, model.Percent), "fine", "0.74%", "0.74%"},
		{q(17.04, model.Percent), "", "17%", "17%"},
		{q(370, model.SquareMetres), "", "3,980 sq ft", "370 m²"},
		{q(1.3, model.SquareMetres), "", "14 sq ft", "1.3 m²"},
		{q(1.3, model.Centimetres), "", "0.5 in", "13 mm"},
		{q(96.5, model.Centimetres), "", "38 in", "96 cm"},
		{q(0.15, model.Metres), "", "0.5 ft", "0.1 m"},
		{q(5.84, model.Kilovolts), "", "5.8 kV", "5.8 kV"},
		{q(13.68, model.MegajoulesPerKg), "", "1,485 kcal/lb", "13.7 MJ/kg"},
		{q(3.268, model.Ratio), "", "3.27", "3.27"},
		{q(30, model.Minutes), "", "30 min", "30 min"},
		{wording.Cash(61), "", "$61", "€61"},
		{wording.Cash(61.456), "", "$61.46", "€61.46"},
		{wording.Cash(1997.6), "", "$1,998", "€1,998"},
		{wording.Cash(-12.5), "", "-$12.50", "-€12.50"},
		{wording.Cash(8.18), "per", "$3.71/lb", "€8.18/kg"},
		{wording.N(4), "", "4", "4"},
	} {
		require.Equal(t, row.us, us(t).Quantity(row.q, row.style), "%v %s", row.q, row.style)
		require.Equal(t, row.metric, metric(t).Quantity(row.q, row.style), "%v %s", row.q, row.style)
	}
	require.Equal(t, "61 CAD", us(t).Amount(61, "CAD"))
}

func TestRange(t *testing.T) {
	require.Equal(t, "167–193", us(t).Range(wording.Kg(167*lb), wording.Kg(193*lb), ""))
	require.Equal(t, "82", metric(t).Range(wording.Kg(81.9), wording.Kg(82.1), ""))
	require.Equal(t, "$3.20–$3.90", us(t).Range(wording.Cash(3.2), wording.Cash(3.9), ""))
}

// What is said of a weight is never off by more than half of its last digit.
func TestWeightIsRoundedNotInvented(t *testing.T) {
	v := us(t)
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(3, 400).Draw(t, "kg")
		said := v.Quantity(wording.Kg(kg), "")
		var pounds float64
		_, err := fmt.Sscanf(said, "%f lb", &pounds)
		require.NoError(t, err)
		require.LessOrEqual(t, math.Abs(pounds*lb-kg), 0.5*lb+1e-9, said)
	})
}

// What the person stated is said back so that it reads to the same hundredth.
func TestExactReadsBack(t *testing.T) {
	for _, v := range []wording.Voice{us(t), metric(t)} {
		rapid.Check(t, func(t *rapid.T) {
			kg := float64(rapid.IntRange(1, 100000).Draw(t, "hundredths")) / 100
			if rapid.Bool().Draw(t, "pounds") {
				kg *= lb
			}
			said := strings.ReplaceAll(v.Quantity(wording.Kg(kg), "exact"), ",", "")
			var number float64
			var unit string
			_, err := fmt.Sscanf(said, "%f %s", &number, &unit)
			require.NoError(t, err)
			if unit == "lb" {
				number *= lb
			}
			require.InDelta(t, kg, number, 0.005, said)
		})
	}
}

func TestDays(t *testing.T) {
	for _, row := range []struct {
		from, to   string // a day alone where they are one
		us, metric string
	}{
		{"2026-09-12", "2026-09-12", "Sat Sep 12", "Sat 12 Sep"},
		{"2027-01-01", "2027-01-01", "Fri Jan 1 2027", "Fri 1 Jan 2027"},
		{"2026-08-14", "2026-09-15", "Aug 14–Sep 15", "14 Aug–15 Sep"},
		{"2026-08-14", "2026-08-25", "Aug 14–25", "14–25 Aug"},
		{"2027-08-14", "2027-08-25", "Aug 14–25 2027", "14–25 Aug 2027"},
		{"2026-12-28", "2027-01-04", "Dec 28–Jan 4 2027", "28 Dec–4 Jan 2027"},
		{"2025-05-02", "2025-10-04", "May 2–Oct 4 2025", "2 May–4 Oct 2025"},
		{"2024-12-28", "2025-01-04", "Dec 28 2024–Jan 4 2025", "28 Dec 2024–4 Jan 2025"},
	} {
		from, to := day(row.from), day(row.to)
		require.Equal(t, row.us, us(t).DayRange(from, to))
		require.Equal(t, row.metric, metric(t).DayRange(from, to))
		if from == to {
			require.Equal(t, row.us, us(t).Day(from))
			require.Equal(t, row.metric, metric(t).Day(from))
		}
	}
	sep := day("2026-09-12")
	require.Equal(t, "Sep 12", us(t).ShortDay(sep))
	require.Equal(t, "12 Sep", metric(t).ShortDay(sep))
	require.Equal(t, "Saturday September 12 2026", us(t).LongDay(sep))
	require.Equal(t, "Saturday 12 September 2026", metric(t).LongDay(sep))
	require.Equal(t, "Sat Sep 12", wording.Voice{Now: now}.Day(sep), "US where no units were stated")
}

func TestMoments(t *testing.T) {
	at := func(d string, h, m int) time.Time { return day(d).At(h*60+m, chicago) }
	for _, row := range []struct {
		at         time.Time
		us, metric string
	}{
		{at("2026-07-11", 18, 0), "today 6 pm", "today 18:00"},
		{at("2026-07-12", 0, 0), "tomorrow 12 am", "tomorrow 0:00"},
		{at("2026-07-16", 6, 0), "Thu 6 am", "Thu 6:00"},
		{at("2026-08-05", 12, 30), "Wed Aug 5, 12:30 pm", "Wed 5 Aug 12:30"},
		{at("2026-07-04", 9, 0), "Sat Jul 4, 9 am", "Sat 4 Jul 9:00"},
	} {
		require.Equal(t, row.us, us(t).Moment(row.at))
		require.Equal(t, row.metric, metric(t).Moment(row.at))
	}
}

// What guards the pigs is rounded to the safe side: never later than it is.
func TestEdgeIsCautious(t *testing.T) {
	v := us(t)
	require.Equal(t, "today 4 pm", v.Edge(day("2026-07-11").At(16*60+59, chicago)))
	require.Equal(t, "Wed Jul 15", v.Edge(day("2026-07-16").At(3*60, chicago)))
	require.Equal(t, "Thu Jul 16", v.Edge(day("2026-07-16").At(23*60, chicago)))
	require.Equal(t, "Thu Jul 16", v.Likely(day("2026-07-16").At(3*60, chicago)))
	require.Equal(t, "today 5 pm", v.Likely(day("2026-07-11").At(16*60+40, chicago)))
}

func TestNames(t *testing.T) {
	v := us(t)
	require.Equal(t, "Fern", v.Names([]string{"Fern"}))
	require.Equal(t, "Fern and Clove", v.Names([]string{"Fern", "Clove"}))
	require.Equal(t, "Fern, Clove and Basil", v.Names([]string{"Fern", "Clove", "Basil"}))
	require.Equal(t, "all pigs", v.Names([]string{model.All}))
}
