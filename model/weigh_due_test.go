package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestWeighDue(t *testing.T) {
	weekly := func(weeks int, names ...string) *book {
		b := new(book).arrive(growthStart, 0, names...)
		for w := range weeks {
			for _, n := range names {
				b.scale(growthStart+Day(7*w), n, tableKg(25, 7*float64(w)))
			}
		}
		return b
	}
	settled := growthStart + weighSettleDays
	for _, row := range []struct {
		name   string
		b      *book
		today  Day
		on     Day
		reason string
	}{
		{"nothing known: once they have settled", new(book).arrive(growthStart, 0, "Ada"), growthStart + 2, settled, ReasonWeighNone},
		{"a weight was said on arrival", new(book).arrive(growthStart, 20, "Ada"), growthStart + 2, growthStart + weighEveryDays, ReasonWeighNone},
		{"one weighing: the target day is wide open", weekly(1, "Ada"), growthStart + 2, growthStart + weighEveryDays, ReasonWeighWide},
		{"near the target: weekly", weekly(15, "Ada"), growthStart + 99, growthStart + 98 + weighLateDays, ReasonWeighNear},
		{
			"booked before the target: the last month counts from there",
			weekly(6, "Ada").add(growthStart+36, Booked{Day: growthStart + 70}), growthStart + 36, growthStart + 42, ReasonWeighNear,
		},
	} {
		t.Run(row.name, func(t *testing.T) {
			due, err := row.b.herd().WeighDue(row.today)
			require.NoError(t, err)
			require.Equal(t, row.on.String(), due.On.String())
			require.Equal(t, row.reason, due.Reasons[0].Code)
			require.Len(t, due.Pigs, 1)
		})
	}
	_, err := new(book).herd().WeighDue(growthStart)
	var missing *Missing
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "pigs", missing.What)
}

func TestWeighDueIsAtMostMonthlyWhereTheDayIsKnown(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada", "Ben", "Cob", "Dan", "Eve", "Fay", "Gus", "Hal")
	for w := range 8 {
		for i, a := range b.herd().Animals {
			b.scale(growthStart+Day(7*w), a.Name, tableKg(20+float64(i), 7*float64(w)))
		}
	}
	h := b.herd()
	due, err := h.WeighDue(growthStart + 50)
	require.NoError(t, err)
	require.Equal(t, growthStart+49+weighLastMonth, due.On)
	require.Len(t, due.Pigs, 8)
}

func TestWeighDueOfALaterGroup(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", 25).arrive(growthStart+10, 0, "Ben")
	h := b.herd()
	due, err := h.WeighDue(growthStart + 12)
	require.NoError(t, err)
	require.Equal(t, growthStart+10+weighSettleDays, due.On)
	require.Equal(t, []*Animal{h.Animal("Ben")}, due.Pigs)
}
