package wording_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

var chicago = func() *time.Location {
	l, err := time.LoadLocation("America/Chicago")
	if err != nil {
		panic(err)
	}
	return l
}()

// now is a Saturday, after chores.
var now = time.Date(2026, 7, 11, 10, 30, 0, 0, chicago)

const (
	lb  = 0.45359237
	gal = 3.785411784
	in  = 2.54
)

func day(s string) model.Day {
	d, err := model.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

// journal collects facts of an invented herd.
type journal struct {
	t       *testing.T
	records []model.Record
}

func (j *journal) add(on string, minute int, said bool, facts ...model.Fact) *journal {
	for _, f := range facts {
		require.NoError(j.t, f.Check())
		d := day(on)
		j.records = append(j.records, model.Record{
			ID: fmt.Sprintf("r%d", len(j.records)+1), On: d, At: d.At(minute, chicago), Said: said, Fact: f,
		})
	}
	return j
}

func (j *journal) herd() *model.Herd { return model.Fold(j.records) }

func setting(key string, t model.Thing) model.Setting { return model.Setting{Key: key, Thing: &t} }

// orchard is four pigs, two hoppers and two water barrels in US units.
func orchard(t *testing.T) *journal {
	j := &journal{t: t}
	return j.add("2026-04-18", 600, true,
		model.Setting{Key: model.SetUnits, Text: model.US},
		model.Setting{Key: model.SetZone, Text: "America/Chicago"},
		model.Arrive{
			Count: 4, Animals: []string{"Fern", "Clove", "Sorrel", "Basil"},
			Sexes: []model.Sex{model.Gilt, model.Gilt, model.Barrow, model.Barrow}, WeightKg: model.Float(48 * lb),
		},
		setting(model.SetFeeder, model.Thing{Name: "north", CapacityKg: model.Float(300 * lb)}),
		setting(model.SetFeeder, model.Thing{Name: "south", CapacityKg: model.Float(250 * lb)}),
		setting(model.SetBarrel, model.Thing{Name: "blue", CapacityL: model.Float(55 * gal), Nipples: model.Int(2)}),
		setting(model.SetBarrel, model.Thing{Name: "white", CapacityL: model.Float(55 * gal), Nipples: model.Int(2)}),
		setting(model.SetPen, model.Thing{Name: "oak", AreaM2: model.Float(370), InUse: &yes}),
		setting(model.SetWallow, model.Thing{AreaM2: model.Float(4.5), DepthM: model.Float(0.15)}),
	)
}

var yes = true

// metricHerd is three pigs, one feeder and one barrel in metric units.
func metricHerd(t *testing.T) *journal {
	j := &journal{t: t}
	return j.add("2026-04-18", 600, true,
		model.Setting{Key: model.SetUnits, Text: model.Metric},
		model.Arrive{Count: 3, Animals: []string{"Erle", "Birke", "Hasel"}, WeightKg: model.Float(22)},
		setting(model.SetFeeder, model.Thing{Name: "Automat", CapacityKg: model.Float(130)}),
		setting(model.SetBarrel, model.Thing{Name: "Tonne", CapacityL: model.Float(200), Nipples: model.Int(2)}),
	)
}

func us(t *testing.T) wording.Voice { return wording.Voice{Herd: orchard(t).herd(), Now: now} }

func metric(t *testing.T) wording.Voice { return wording.Voice{Herd: metricHerd(t).herd(), Now: now} }

// entry is a fact of today.
func entry(f model.Fact) reading.Entry {
	return reading.Entry{Act: reading.Fact{Fact: f}, On: model.DayOf(now)}
}
