package wording_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestEchoOfSpillsAndRain(t *testing.T) {
	for _, c := range []struct {
		fact model.Fact
		us   string
	}{
		{model.FeedLevel{Feeder: "north", Spilled: true, SpilledKg: model.Float(20 * lb)}, "north spilled 20 lb"},
		{model.FeedLevel{Spilled: true}, "feeder spilled"},
		{model.Weather{RainMm: model.Float(25.4)}, "rain 1 in"},
		{model.Weather{HighC: model.Float(30), RainMm: model.Float(12.7)}, "high 86 °F, rain 0.5 in"},
	} {
		require.Equal(t, c.us, us(t).Echo(reading.Entry{Act: reading.Fact{Fact: c.fact}}))
	}
	require.Equal(t, "rain 12 mm", metric(t).Echo(reading.Entry{Act: reading.Fact{Fact: model.Weather{RainMm: model.Float(12)}}}))
}
