package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestStockShort(t *testing.T) {
	recipe := model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean meal 48": 10}}
	count := func(name string, kg float64) model.Stock {
		return model.Stock{Ingredient: name, FeedKg: model.Float(kg), Counted: true}
	}
	tests := []struct {
		name  string
		facts []model.Fact
		want  []string
	}{
		{"nothing tracked", []model.Fact{recipe}, []string{
			"Sat 2026-05-09 07:00 standing routine ", "Sat 2026-05-16 07:00 standing routine ",
		}},
		{"enough", []model.Fact{recipe, count("corn", 500), count("soybean meal 48", 200)}, []string{
			"Sat 2026-05-09 07:00 standing routine ", "Sat 2026-05-16 07:00 standing routine ",
		}},
		// The herd eats 5 kg a day: 35 kg a week, a quarter of it meal.
		{"meal short for the next visit: a week ahead and on the evening before", []model.Fact{recipe, count("corn", 500), count("soybean meal 48", 12)}, []string{
			"Sat 2026-05-09 07:00 standing routine stock_short",
			"Fri 2026-05-15 17:00 off-day routine stock_eve",
			"Sat 2026-05-16 07:00 standing routine stock_short",
		}},
		{"bought in bags of a known size", []model.Fact{
			recipe, count("corn", 500), count("soybean meal 48", 8),
			model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: "bag", FeedKg: model.Float(25)}},
			model.Stock{Ingredient: "soybean meal 48", Count: model.Float(2)},
		}, []string{
			"Sat 2026-05-09 07:00 standing routine ", "Sat 2026-05-16 07:00 standing routine ",
		}},
		{"counted anew", []model.Fact{recipe, count("corn", 500), count("soybean meal 48", 500), count("soybean meal 48", 12)}, []string{
			"Sat 2026-05-09 07:00 standing routine stock_short",
			"Fri 2026-05-15 17:00 off-day routine stock_eve",
			"Sat 2026-05-16 07:00 standing routine stock_short",
		}},
		{"mixed and then poured is not taken twice", []model.Fact{recipe, count("corn", 500), count("soybean meal 48", 60), model.Mixed{Batches: model.Float(2)}, model.Refill{FeedKg: model.Float(80)}}, []string{
			"Sat 2026-05-09 07:00 standing routine ", "Sat 2026-05-16 07:00 standing routine level_standing",
		}},
		{"used up by mixing", []model.Fact{recipe, count("corn", 500), count("soybean meal 48", 30), model.Mixed{Batches: model.Float(2)}}, []string{
			"Sat 2026-05-09 07:00 standing routine stock_short",
			"Fri 2026-05-15 17:00 off-day routine stock_eve",
			"Sat 2026-05-16 07:00 standing routine stock_short",
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			for i, fact := range tt.facts {
				l.add(l.time("2026-05-06 09:00").Add(minutes(i)).Format("2006-01-02 15:04"), fact)
			}
			// What was poured or mixed at the visit of 9 May.
			if len(l.herd(l.time("2026-05-07 00:00")).Mixes) > 0 {
				l.add("2026-05-09 09:00", model.Mixed{FeedKg: model.Float(35)})
			} else {
				l.add("2026-05-09 09:00", model.Refill{FeedKg: model.Float(35)})
			}
			l.add("2026-05-11 12:00", model.Note{What: "all good"})
			f := calm()
			f.pour = 35
			got := l.walk("2026-05-04 08:00", "2026-05-16 12:00", with(f))
			require.Equal(t, tt.want, texts(got))
		})
	}
}

func TestStockLineSaysWhatIsThereAndWhatIsNeeded(t *testing.T) {
	l := newHerd(t, "America/Chicago").add("2026-05-06 09:00",
		model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean meal 48": 10}},
		model.Stock{Ingredient: "soybean meal 48", FeedKg: model.Float(12)},
		model.Stock{Ingredient: "corn", FeedKg: model.Float(40)})
	f := calm()
	f.h, f.pour = l.herd(l.time("2026-05-09 07:00")), 35
	due, _ := decide(f.h, f, l.time("2026-05-09 07:00"))
	require.Len(t, due, 1)
	line := due[0].Lines[0]
	require.Equal(t, CodeStockShort, line.Code)
	require.Equal(t, d("2026-05-16"), line.On)
	require.Equal(t, []string{"corn", "soybean meal 48"}, line.Names)
	for i, want := range []float64{40 - 35*0.75, 35 * 0.75, 12 - 35*0.25, 35 * 0.25} {
		require.InDelta(t, want, line.Q[i].Value, 0.01)
		require.Equal(t, model.Kilograms, line.Q[i].Unit)
	}
}
