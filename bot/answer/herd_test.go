package answer_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

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

var (
	all = []string{model.All}
	yes = true
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

func (j *journal) add(on string, minute int, facts ...model.Fact) *journal {
	for _, f := range facts {
		require.NoError(j.t, f.Check())
		d := day(on)
		j.records = append(j.records, model.Record{
			ID: fmt.Sprintf("r%d", len(j.records)+1), On: d, At: d.At(minute, chicago), Said: true, Fact: f,
		})
	}
	return j
}

func (j *journal) herd() *model.Herd { return model.Fold(j.records) }

func setting(key string, t model.Thing) model.Setting { return model.Setting{Key: key, Thing: &t} }

// orchard is four named pigs with a season behind them, in US units.
func orchard(t *testing.T) *journal {
	j := &journal{t: t}
	j.add("2026-04-18", 600,
		model.Setting{Key: model.SetUnits, Text: model.US},
		model.Setting{Key: model.SetZone, Text: "America/Chicago"},
		model.Setting{Key: model.SetTarget, Number: model.Float(265 * lb)},
		model.Arrive{
			Count: 4, Animals: []string{"Fern", "Clove", "Sorrel", "Basil"},
			Sexes: []model.Sex{model.Gilt, model.Gilt, model.Barrow, model.Barrow}, WeightKg: model.Float(48 * lb),
		},
		setting(model.SetFeeder, model.Thing{Name: "north", CapacityKg: model.Float(300 * lb)}),
		setting(model.SetFeeder, model.Thing{Name: "south", CapacityKg: model.Float(250 * lb)}),
		setting(model.SetBarrel, model.Thing{Name: "blue", CapacityL: model.Float(55 * gal), Nipples: model.Int(2)}),
		setting(model.SetBarrel, model.Thing{Name: "white", CapacityL: model.Float(55 * gal), Nipples: model.Int(2)}),
		setting(model.SetPen, model.Thing{Name: "oak", AreaM2: model.Float(370), InUse: &yes}),
		setting(model.SetPen, model.Thing{Name: "ash", AreaM2: model.Float(370)}),
		setting(model.SetWallow, model.Thing{AreaM2: model.Float(4.5), DepthM: model.Float(0.15)}),
		model.Recipe{Ingredients: map[string]float64{"corn": 74 * lb, "soybean meal 48": 23 * lb, "mineral premix": 3 * lb}},
		model.Stock{Ingredient: "corn", FeedKg: model.Float(2000 * lb), Amount: model.Float(240)},
		model.Stock{Ingredient: "soybean meal 48", FeedKg: model.Float(600 * lb), Amount: model.Float(180)},
		model.Spend{Amount: 380, What: "pigs"},
	)
	j.add("2026-05-23", 540, model.Worm{Treatment: model.Treatment{Animals: all, Product: "ivermectin", WithdrawalDays: model.Int(18)}})
	j.add("2026-06-20", 540,
		model.Weigh{Animals: []string{"Fern"}, GirthCm: 34 * in},
		model.Weigh{Animals: []string{"Clove"}, GirthCm: 33 * in},
		model.Weigh{Animals: []string{"Sorrel"}, GirthCm: 35 * in},
	)
	for i, pour := range []float64{60, 65, 70, 75} {
		d := day("2026-06-20") + model.Day(7*i)
		j.add(d.String(), 545,
			model.Refill{Feeder: "north", FeedKg: model.Float(pour), Full: true},
			model.Refill{Feeder: "south", FeedKg: model.Float(pour / 2), Full: true},
			model.Water{Full: true}, model.WallowFill{},
		)
	}
	j.add("2026-07-11", 550,
		model.Weigh{Animals: []string{"Fern"}, GirthCm: 37 * in, LengthCm: 42 * in},
		model.Weigh{Animals: []string{"Sorrel"}, GirthCm: 38 * in},
		model.Move{Pen: "ash", Animals: all},
	)
	return j
}

// nursery is six pigs without names, nothing weighed, in metric units.
func nursery(t *testing.T) *journal {
	j := &journal{t: t}
	return j.add("2026-06-27", 600,
		model.Setting{Key: model.SetUnits, Text: model.Metric},
		model.Arrive{Count: 6, WeightKg: model.Float(25)},
		setting(model.SetFeeder, model.Thing{Name: "Automat", CapacityKg: model.Float(130)}),
		setting(model.SetBarrel, model.Thing{Name: "Tonne", CapacityL: model.Float(200)}),
		model.Refill{FeedKg: model.Float(100), Full: true},
		model.Water{Full: true},
	)
}
