package bot_test

import (
	"context"
	"errors"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/store"
)

// skies is a source of forecasts that are made up.
type skies struct {
	days  []model.ForecastDay
	err   error
	asked []model.Place
}

func (s *skies) Days(_ context.Context, at model.Place, _ *time.Location) ([]model.ForecastDay, error) {
	s.asked = append(s.asked, at)
	return s.days, s.err
}

// skyBook is a herd that forecasts are fetched for, on a Thursday morning.
func skyBook(t *testing.T) (*book, *skies, *bot.Sky, *bot.Clock) {
	b := openBook(t, store.Options{})
	source := &skies{}
	sky := bot.NewSky(b.store, b.desk, source, func() time.Time { return b.now }, func(err error) { t.Error(err) })
	b.now = time.Date(2026, 7, 9, 9, 0, 0, 0, b.zone)
	b.text(t, setUp)
	return b, source, sky, &bot.Clock{Store: b.store, Desk: b.desk}
}

// until has the herd looked at whenever it is due until the moment; each time,
// forecasts that are wanted are fetched. It gives the texts of the nudges.
func (b *book) until(t *testing.T, sky *bot.Sky, clock *bot.Clock, day int, hour int) {
	t.Helper()
	for end := time.Date(2026, 7, day, hour, 0, 0, 0, b.zone); b.now.Before(end); b.now = b.now.Add(time.Minute) {
		require.Empty(t, clock.Look(context.Background(), []int64{int64(b.herd)}, b.now))
		for sky.Waiting() > 0 {
			require.NoError(t, sky.Next(context.Background()))
		}
	}
}

// told is the codes of what the herd was told of the weather, with their moments.
func (b *book) told(t *testing.T) (out []string) {
	for _, n := range b.state(t).Tolds {
		for _, about := range n.F.About {
			if about == "heat" || about == "cold" {
				out = append(out, n.At.In(b.zone).Format("Mon 15:04 ")+about+" "+n.F.Grade)
			}
		}
	}
	return out
}

func TestHeatIsToldTheEveningBefore(t *testing.T) {
	b, source, sky, clock := skyBook(t)
	b.until(t, sky, clock, 9, 10)
	require.Empty(t, source.asked, "nobody said where the herd is")

	out := b.text(t, "location 44.3149, -89.9512")
	require.Equal(t, "Location 44.3, -90.0. Heat and frost by MET Norway's forecast, the evening before. "+
		"Nothing finer than a tenth of a degree is kept. To stop: location off.", said(out))
	friday := model.DateDay(2026, 7, 10)
	source.days = []model.ForecastDay{
		{On: friday - 1, HighC: model.Float(24)},
		{On: friday, HighC: model.Float(34), LowC: model.Float(21), RhPct: model.Float(50)},
		{On: friday + 9, HighC: model.Float(40)},
	}
	b.until(t, sky, clock, 9, 18)
	require.Equal(t, []model.Place{{LatDeg: 44.3, LonDeg: -90}, {LatDeg: 44.3, LonDeg: -90}}, source.asked, "at once, and at five")
	h := b.state(t)
	w, forecast, ok := h.WeatherOf(friday)
	require.True(t, forecast && ok)
	require.Equal(t, 34.0, *w.HighC)
	_, _, ok = h.WeatherOf(friday + 9)
	require.False(t, ok, "too far off to be worth keeping")

	b.until(t, sky, clock, 10, 12)
	require.Equal(t, []string{"Thu 19:00 heat danger", "Fri 07:00 heat danger"}, b.told(t))
	require.Len(t, source.asked, 3, "and at five in the morning")

	// It is no word of the person's: nothing to undo, nothing in the history.
	require.Equal(t, "Undo this? location 44.3, -90.0.", said(b.text(t, "undo")))
	b.text(t, "yes")
	require.Nil(t, b.state(t).Place)
	b.until(t, sky, clock, 11, 12)
	require.Len(t, source.asked, 3, "no place, no question")
}

func TestFrostIsToldFromTheForecast(t *testing.T) {
	b, source, sky, clock := skyBook(t)
	source.days = []model.ForecastDay{{On: model.DateDay(2026, 7, 10), LowC: model.Float(-6)}}
	b.text(t, "location 44.3, -89.9")
	b.until(t, sky, clock, 10, 12)
	require.Equal(t, []string{"Thu 19:00 cold welfare"}, b.told(t))
}

func TestNewsOfAForecastOnly(t *testing.T) {
	b, source, sky, clock := skyBook(t)
	source.days = []model.ForecastDay{{On: model.DateDay(2026, 7, 10), HighC: model.Float(26), LowC: model.Float(14)}}
	b.text(t, "location 44.3, -89.9")
	before := b.state(t).ForecastAt
	require.True(t, before.IsZero())
	b.until(t, sky, clock, 9, 12)
	first := b.state(t).ForecastAt
	require.False(t, first.IsZero())
	b.until(t, sky, clock, 9, 18)
	require.Equal(t, first, b.state(t).ForecastAt, "the same again is not kept twice")
}

func TestAFailedForecastIsAskedForAgain(t *testing.T) {
	b, source, sky, clock := skyBook(t)
	b.text(t, "location 44.3, -89.9")
	source.err = errors.New("no network")
	ctx := context.Background()
	require.Empty(t, clock.Look(ctx, []int64{int64(b.herd)}, b.now))
	require.ErrorContains(t, sky.Next(ctx), "no network")
	require.NoError(t, b.store.Read(ctx, func(tx *store.Tx) error {
		row, err := tx.Herd(b.herd)
		require.False(t, row.LookAgain.After(b.now.Add(15*time.Minute)))
		return err
	}))
	source.err = nil
	source.days = []model.ForecastDay{{On: model.DateDay(2026, 7, 10), HighC: model.Float(26)}}
	b.until(t, sky, clock, 9, 10)
	require.Len(t, source.asked, 2)
	require.False(t, b.state(t).ForecastAt.IsZero())
}

func TestNoForecastOfAPlaceThatWasLeft(t *testing.T) {
	b, source, sky, clock := skyBook(t)
	source.days = []model.ForecastDay{{On: model.DateDay(2026, 7, 10), HighC: model.Float(38)}}
	b.text(t, "location 44.3, -89.9")
	require.Empty(t, clock.Look(context.Background(), []int64{int64(b.herd)}, b.now))
	b.text(t, "location off")
	require.NoError(t, sky.Next(context.Background()))
	require.Empty(t, source.asked)
	require.True(t, b.state(t).ForecastAt.IsZero())
}

func TestWithoutAForecastThePlaceIsKeptAndSaidSo(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	require.Equal(t, "Location 44.3, -90.0. No forecast is fetched here; text the day's high, as in: 94 today.", said(b.text(t, "location 44.3149, -89.9512")))
	helper := b.member(t, "Sam", store.Helper)
	require.NotContains(t, said(b.message(t, bot.Message{ID: "h1", Text: "location 50.1, 8.2", From: helper})), "50.1")
}
