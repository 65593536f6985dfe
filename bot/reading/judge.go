package reading

import (
	"errors"
	"time"

	"troughbell/model"
)

// judge says what readings and amounts the herd's own state allows. It is a
// seam: tests put their own in place.
type judge interface {
	// weight is what a reading of the pig on the day would show, in kilograms.
	weight(a *model.Animal, on model.Day, by string) (model.Estimate, error)
	// bought is what a pig of that birth weighs on the day it comes, in kilograms.
	bought(born, on model.Day) (model.Estimate, error)
	// girth and tape turn tape readings into kilograms.
	girth(cm float64) (model.Estimate, error)
	tape(girthCm, lengthCm float64) (model.Estimate, error)
	// room is what fits into a feeder at most, in kilograms, 0 if not known.
	room(f *model.Feeder) float64
	// held is the cautious figure of what a feeder holds at the moment, in
	// kilograms, 0 if not known.
	held(f *model.Feeder, at time.Time) float64
}

type herdJudge struct{ h *model.Herd }

func (j herdJudge) weight(a *model.Animal, on model.Day, by string) (model.Estimate, error) {
	if a == nil {
		return model.Estimate{}, errors.New("no pig")
	}
	return j.h.ExpectReading(a, on, by)
}

func (j herdJudge) bought(born, on model.Day) (model.Estimate, error) {
	h := model.Fold([]model.Record{{ID: "bought", On: on, At: on.At(12*60, time.UTC), Fact: model.Arrive{Count: 1, Born: &born}}})
	return h.ExpectReading(h.Animals[0], on, model.ByScale)
}

// A slip of the tape often lies outside the range of the published formulas; it
// is to be judged all the same.
func (j herdJudge) girth(cm float64) (model.Estimate, error) { return j.tape(cm, 0) }

func (j herdJudge) tape(g, l float64) (model.Estimate, error) {
	if g <= 0 || l < 0 {
		return model.Estimate{}, errors.New("no tape reading")
	}
	w, _ := model.ReadTape(g, l)
	return w, nil
}

func (j herdJudge) held(f *model.Feeder, at time.Time) float64 {
	left, err := j.h.FeedLeft(at)
	if err != nil {
		return 0 // nothing is known of the level: the feeder's size decides
	}
	for _, x := range left.Feeders {
		if x.Name == f.Name {
			return max(x.LevelKg.Low, 0)
		}
	}
	return 0
}

// densestFeed is the heaviest that a litre of feed weighs, in kilograms: shelled
// corn, 721 kg to the cubic metre (published test weight of 56 lb a bushel).
const densestFeed = 0.75

func (j herdJudge) room(f *model.Feeder) float64 {
	switch {
	case f.CapacityKg != nil:
		return *f.CapacityKg
	case f.CapacityL != nil:
		return *f.CapacityL * densestFeed
	}
	return 0
}
