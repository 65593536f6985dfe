package model

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// season of an invented herd, told record by record.
type toldHerd struct {
	loc     *time.Location
	records []Record
}

func tellHerd(t testing.TB) *toldHerd {
	loc, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	return &toldHerd{loc: loc}
}

func (s *toldHerd) moment(at string) time.Time {
	m, err := time.ParseInLocation("2006-01-02 15:04", at, s.loc)
	if err != nil {
		panic(err)
	}
	return m
}

func (s *toldHerd) tell(at string, facts ...Fact) *toldHerd {
	for _, f := range facts {
		if err := f.Check(); err != nil {
			panic(err)
		}
		m := s.moment(at)
		s.records = append(s.records, Record{ID: fmt.Sprint(len(s.records)), On: DayOf(m), At: m, Said: true, Fact: f})
	}
	return s
}

func (s *toldHerd) herd() *Herd { return Fold(s.records) }

// fit learns from the herd's feed records, its pigs taken at weights of which
// nothing is in doubt.
func (s *toldHerd) fit(weightKg float64) *feedFit {
	return fitFeed(s.herd(), steadyWeights{s.herd(), weightKg, 0})
}

// steadyWeights holds all pigs at one weight, so that a test can do the sums by
// hand.
type steadyWeights struct {
	h      *Herd
	kg     float64
	spread float64 // relative, of what is known of the mean
}

func (w steadyWeights) interval() Interval {
	return Interval{w.kg * (1 - z80*w.spread), w.kg, w.kg * (1 + z80*w.spread)}
}

func (w steadyWeights) medianWeights(pigs []*Animal, _ Day) ([]pigKg, error) {
	out := make([]pigKg, len(pigs))
	for i, a := range pigs {
		out[i] = pigKg{a, w.kg}
	}
	return out, nil
}

func (w steadyWeights) MeanWeight(_ []*Animal, on Day) (PigWeight, error) {
	return PigWeight{On: on, WeightKg: w.interval()}, nil
}

func fourEaters() Arrive {
	return Arrive{Count: 4, Animals: []string{"Tank", "Biscuit", "Mabel", "Dot"}, WeightKg: Float(60)}
}

func feederKg(name string, kg float64) Setting {
	return Setting{Key: SetFeeder, Thing: &Thing{Name: name, CapacityKg: Float(kg)}}
}

// believed gives mean and standard error of a place of the belief at a moment.
func believed(t testing.TB, f *feedFit, at time.Time, place int) Estimate {
	g, _, err := f.at(at)
	require.NoError(t, err)
	_, variance := g.along(f.weights(place, 1))
	return Estimate{g.mean[place], math.Sqrt(variance)}
}
