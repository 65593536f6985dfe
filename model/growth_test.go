package model

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// book writes records of an invented herd for a test.
type book struct {
	records []Record
}

func (b *book) add(on Day, fact Fact) *book {
	b.records = append(b.records, Record{
		ID: fmt.Sprint("r", len(b.records)), On: on, At: on.At(600, time.UTC).Add(time.Duration(len(b.records)) * time.Second), Fact: fact,
	})
	return b
}

func (b *book) arrive(on Day, kg float64, names ...string) *book {
	a := Arrive{Count: len(names), Animals: names}
	if kg > 0 {
		a.WeightKg = Float(kg)
	}
	return b.add(on, a)
}

func (b *book) scale(on Day, name string, kg float64) *book {
	return b.add(on, Weigh{Animals: []string{name}, WeightKg: kg, By: ByScale})
}

func (b *book) girth(on Day, name string, kg float64) *book {
	return b.add(on, Weigh{Animals: []string{name}, GirthCm: (kg + 93.326) / 1.8163})
}

func (b *book) herd() *Herd { return Fold(b.records) }

// tableKg is what a pig of the given weight weighs so many table days later.
func tableKg(kg, days float64) float64 {
	later, _ := tableWeight(tableDay(kg) + days)
	return later
}

func weightOf(t *testing.T, h *Herd, name string, on Day) PigWeight {
	t.Helper()
	w, err := h.MeanWeight([]*Animal{h.Animal(name)}, on)
	require.NoError(t, err)
	return w
}

func codes(reasons []Reason) []string {
	var out []string
	for _, r := range reasons {
		out = append(out, r.Code)
	}
	return out
}

func TestWeightsOfNothingKnown(t *testing.T) {
	var missing *Missing
	_, err := new(book).herd().Weights(growthStart)
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "pigs", missing.What)

	h := new(book).arrive(growthStart, 0, "Ada", "Ben").herd()
	_, err = h.Weights(growthStart + 10)
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "weight", missing.What)
	require.Equal(t, []string{"Ada", "Ben"}, missing.Names)
	_, err = h.Target(100, growthStart)
	require.ErrorAs(t, err, &missing)
	_, err = h.MeanWeight(nil, growthStart)
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "pigs", missing.What)
	_, err = h.ExpectReading(h.Animals[0], growthStart, ByTape)
	require.ErrorAs(t, err, &missing)
}

func TestArrivalWeightIsAGuess(t *testing.T) {
	h := new(book).arrive(growthStart, 20, "Ada").herd()
	guess := weightOf(t, h, "Ada", growthStart)
	require.InDelta(t, 20, guess.WeightKg.Mid, 0.5)
	require.Contains(t, codes(guess.Reasons), ReasonArrivalGuess)
	weighed := weightOf(t, new(book).arrive(growthStart, 20, "Ada").scale(growthStart, "Ada", 20).herd(), "Ada", growthStart)
	require.Less(t, weighed.WeightKg.High-weighed.WeightKg.Low, 0.6*(guess.WeightKg.High-guess.WeightKg.Low))
	later := weightOf(t, h, "Ada", growthStart+60)
	require.InDelta(t, tableKg(20, 60), later.WeightKg.Mid, 1, "the published table is the honest guess")
	require.InDelta(t, tableGain(later.WeightKg.Mid), later.GainKgD.Mid, 0.05)
}

func TestAWrongArrivalWeightIsGivenUp(t *testing.T) {
	b := new(book).arrive(growthStart, 18, "Ada", "Ben", "Cob")
	for w := 2; w <= 6; w += 2 {
		for _, name := range []string{"Ada", "Ben", "Cob"} {
			b.scale(growthStart+Day(7*w), name, tableKg(40, 7*float64(w)))
		}
	}
	h := b.herd()
	mean, err := h.MeanWeight(h.Animals, growthStart+70)
	require.NoError(t, err)
	require.InDelta(t, tableKg(40, 70), mean.WeightKg.Mid, 4, "18 was said and 40 was true: that is no sign of fast growth")
}

func TestAgeAloneGivesAWeight(t *testing.T) {
	h := new(book).add(growthStart, Arrive{Count: 2, Born: func() *Day { d := growthStart - 56; return &d }()}).herd()
	w, err := h.Weights(growthStart)
	require.NoError(t, err)
	require.Len(t, w, 2)
	require.InDelta(t, 21, w[0].WeightKg.Mid, 4, "18 to 28 kg at eight weeks (ATTRA; ASAS 2014)")
	require.Less(t, w[0].WeightKg.Low, 18.0)
	require.Greater(t, w[0].WeightKg.High, 24.0)
	require.Contains(t, codes(w[0].Reasons), ReasonAgeGuess)
}

func TestAPigNeverWeighedIsTakenForItsMates(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada", "Ben", "Cob")
	for w := range 5 {
		on := growthStart + Day(7*w)
		b.scale(on, "Ada", tableKg(20, 7*float64(w))).scale(on, "Ben", tableKg(22, 7*float64(w)))
	}
	h := b.herd()
	on := growthStart + 28
	ada, cob := weightOf(t, h, "Ada", on), weightOf(t, h, "Cob", on)
	require.InDelta(t, tableKg(21, 28), cob.WeightKg.Mid, 1.5)
	require.Greater(t, cob.WeightKg.High-cob.WeightKg.Low, 1.5*(ada.WeightKg.High-ada.WeightKg.Low))
	require.Contains(t, codes(cob.Reasons), ReasonNeverWeighed)
}

func TestMeanOfUnnamedPigs(t *testing.T) {
	b := new(book).add(growthStart, Arrive{Count: 6, WeightKg: Float(18)})
	for w := range 6 {
		b.add(growthStart+Day(7*w), Weigh{Animals: []string{All}, WeightKg: tableKg(20, 7.5*float64(w)), By: ByScale})
	}
	h := b.herd()
	mean, err := h.MeanWeight(h.Animals, growthStart+35)
	require.NoError(t, err)
	require.InDelta(t, tableKg(20, 37.5), mean.WeightKg.Mid, 2)
	one := weightOfAnimal(t, h, h.Animals[0], growthStart+35)
	require.InDelta(t, mean.WeightKg.Mid, one.WeightKg.Mid, 0.5)
	require.Greater(t, one.WeightKg.High-one.WeightKg.Low, 1.5*(mean.WeightKg.High-mean.WeightKg.Low), "a mean tells little of one pig")
}

func weightOfAnimal(t *testing.T, h *Herd, a *Animal, on Day) PigWeight {
	t.Helper()
	w, err := h.MeanWeight([]*Animal{a}, on)
	require.NoError(t, err)
	return w
}

func TestAMisreadMeanHardlyCounts(t *testing.T) {
	b := new(book).add(growthStart, Arrive{Count: 6, WeightKg: Float(20)})
	for w := range 6 {
		b.add(growthStart+Day(7*w), Weigh{Animals: []string{All}, WeightKg: tableKg(20, 7*float64(w)), By: ByScale})
	}
	b.add(growthStart+35, Weigh{Animals: []string{All}, WeightKg: 90, By: ByScale})
	h := b.herd()
	mean, err := h.MeanWeight(h.Animals, growthStart+35)
	require.NoError(t, err)
	require.InDelta(t, tableKg(20, 35), mean.WeightKg.Mid, 2.5)
}

func TestMeanOfNamedPigsAddsToTheirOwnWeighings(t *testing.T) {
	b := new(book).arrive(growthStart, 20, "Ada", "Ben")
	b.scale(growthStart+14, "Ada", tableKg(20, 14))
	before := b.herd()
	b.add(growthStart+28, Weigh{Animals: []string{All}, WeightKg: tableKg(20, 28), By: ByScale})
	after := b.herd()
	for _, name := range []string{"Ada", "Ben"} {
		was, is := weightOf(t, before, name, growthStart+28), weightOf(t, after, name, growthStart+28)
		require.Less(t, is.WeightKg.High-is.WeightKg.Low, was.WeightKg.High-was.WeightKg.Low, name)
		require.Contains(t, codes(is.Reasons), ReasonLastWeighed)
	}
}

func TestASlipHardlyMovesTheForecast(t *testing.T) {
	clean := new(book).arrive(growthStart, 20, "Ada")
	for w := range 7 {
		clean.scale(growthStart+Day(7*w), "Ada", tableKg(20, 7*float64(w)))
	}
	slipped := &book{records: append([]Record(nil), clean.records...)}
	slipped.records[5].Fact = Weigh{Animals: []string{"Ada"}, WeightKg: 1.3 * tableKg(20, 28), By: ByScale}
	on := growthStart + 70
	a, b := weightOf(t, clean.herd(), "Ada", on), weightOf(t, slipped.herd(), "Ada", on)
	require.InDelta(t, a.WeightKg.Mid, b.WeightKg.Mid, 1.5)
	require.NotContains(t, codes(a.Reasons), ReasonReadingDoubted)
	require.Contains(t, codes(b.Reasons), ReasonReadingDoubted)
}

// tapeTestKg is about the mean weight at which the tape is held against another.
const tapeTestKg = 60

func TestTapeBiasIsLearnedFromTheScale(t *testing.T) {
	b := new(book).arrive(growthStart, 30, "Ada", "Ben", "Cob")
	for w := range 6 {
		on := growthStart + Day(7*w)
		for i, name := range []string{"Ada", "Ben", "Cob"} {
			kg := tableKg(30+float64(i), 7*float64(w))
			b.girth(on, name, 1.1*kg)
			if name != "Cob" {
				b.scale(on, name, kg)
			}
		}
	}
	h := b.herd()
	bias, sd := h.growth().bias(readingErrors[ByTape], tapeTestKg)
	require.InDelta(t, 0.1, bias, 0.03)
	require.Less(t, sd, 0.02)
	cob := weightOf(t, h, "Cob", growthStart+35)
	require.InDelta(t, tableKg(32, 35), cob.WeightKg.Mid, 3, "Cob was only taped, by a tape that reads high")
	require.Contains(t, codes(cob.Reasons), ReasonTapeBias)
}

func TestTapeBiasIsLearnedFromHangingWeights(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada", "Ben", "Cob", "Dan")
	names := []string{"Ada", "Ben", "Cob", "Dan"}
	for w := range 8 {
		for _, name := range names {
			b.girth(growthStart+Day(14*w), name, 0.92*tableKg(30, 14*float64(w)))
		}
	}
	end := growthStart + 105
	before, _ := b.herd().growth().bias(readingErrors[ByTape], tapeTestKg)
	for _, name := range names {
		b.add(end, Gone{Animals: []string{name}, How: Butchered, HangingKg: Float(0.72 * tableKg(30, 105))})
	}
	after, _ := b.herd().growth().bias(readingErrors[ByTape], tapeTestKg)
	require.Less(t, after, before-0.02)
}

func TestHangingWeightOfPigsWithoutNamesIsEach(t *testing.T) {
	b := new(book).add(growthStart, Arrive{Count: 3, WeightKg: Float(20)})
	b.add(growthStart+120, Gone{Count: 3, How: Butchered, HangingKg: Float(72)})
	h := b.herd()
	mean, err := h.MeanWeight(h.Animals, growthStart+120)
	require.NoError(t, err)
	require.InDelta(t, 100, mean.WeightKg.Mid, 6)
}

func TestHangingTotalIsTheMeanOfTheBatch(t *testing.T) {
	b := new(book).add(growthStart, Arrive{Count: 3, WeightKg: Float(20)})
	end := growthStart + 120
	b.add(end, Gone{Animals: []string{All}, How: Butchered})
	b.add(end+4, Gone{Animals: []string{All}, How: Butchered, HangingKg: Float(3 * 72)})
	h := b.herd()
	mean, err := h.MeanWeight(h.Animals, end)
	require.NoError(t, err)
	require.InDelta(t, 100, mean.WeightKg.Mid, 6)
}

func TestAnEarlierBatchTeachesTheNext(t *testing.T) {
	b := new(book).arrive(growthStart-200, 0, "one", "two", "three", "four")
	for w := range 13 {
		for i, name := range []string{"one", "two", "three", "four"} {
			b.scale(growthStart-200+Day(7*w), name, tableKg(18+float64(i), 0.8*7*float64(w)))
		}
	}
	b.add(growthStart-100, Gone{Animals: []string{All}, How: Butchered})
	b.arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", 20)
	taught := weightOf(t, b.herd(), "Ada", growthStart+56)
	fresh := weightOf(t, new(book).arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", 20).herd(), "Ada", growthStart+56)
	require.Less(t, taught.WeightKg.Mid, fresh.WeightKg.Mid-4, "the herd grew at 0.8 of the table")
	require.Greater(t, taught.WeightKg.Mid, tableKg(20, 0.8*56), "and the next batch may differ")
	require.Less(t, taught.WeightKg.High-taught.WeightKg.Low, fresh.WeightKg.High-fresh.WeightKg.Low)
}

func TestSicknessSlows(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada", "Ben").scale(growthStart, "Ada", 40).scale(growthStart, "Ben", 40)
	b.add(growthStart+2, Sick{Animals: []string{"Ada"}}).add(growthStart+12, Sick{Animals: []string{"Ada"}, Well: true})
	h := b.herd()
	ada, ben := weightOf(t, h, "Ada", growthStart+14), weightOf(t, h, "Ben", growthStart+14)
	require.InDelta(t, ben.WeightKg.Mid-4, ada.WeightKg.Mid, 1.5, "seven days unwell cost about half of a week's gain, or ten days as told")
	require.Contains(t, codes(ada.Reasons), ReasonSickSlow)
	require.NotContains(t, codes(ben.Reasons), ReasonSickSlow)
}

func TestFreshWeanersStandStill(t *testing.T) {
	young := new(book).arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", 7).herd()
	require.InDelta(t, tableKg(7, 14)-2, weightOf(t, young, "Ada", growthStart+14).WeightKg.Mid, 0.8)
	older := new(book).arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", 16).herd()
	require.InDelta(t, tableKg(16, 14), weightOf(t, older, "Ada", growthStart+14).WeightKg.Mid, 0.8)
}

func TestTargetDays(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada", "Ben").arrive(growthStart+1, 0, "Cob")
	for w := range 4 {
		on := growthStart + Day(1+7*w)
		b.scale(on, "Ada", tableKg(50, 7*float64(w))).scale(on, "Ben", tableKg(60, 7*float64(w))).scale(on, "Cob", tableKg(30, 7*float64(w)))
	}
	h := b.herd()
	today := growthStart + 22
	f, err := h.Target(100, today)
	require.NoError(t, err)
	require.Len(t, f.Groups, 2)
	require.Len(t, f.Animals, 3)
	ada, ben, cob := f.Animals[h.Animal("Ada")], f.Animals[h.Animal("Ben")], f.Animals[h.Animal("Cob")]
	require.InDelta(t, float64(growthStart+1)+tableDay(100)-tableDay(50), float64(ada.Days.Mid), 3)
	require.Less(t, ben.Days.Mid, ada.Days.Mid)
	require.Equal(t, cob, f.Groups[1])
	for _, d := range []TargetDay{ada, ben, cob, f.Herd, f.Groups[0]} {
		require.False(t, d.Already)
		require.Less(t, d.Days.Low, d.Days.Mid)
		require.Less(t, d.Days.Mid, d.Days.High)
	}
	mean, err := h.MeanWeight(h.Alive(today), f.Herd.Days.Mid)
	require.NoError(t, err)
	require.InDelta(t, 100, mean.WeightKg.Mid, 1.0, "the median day is the day of the median weight")

	f, err = h.Target(40, today)
	require.NoError(t, err)
	require.Equal(t, TargetDay{Days: DayInterval{today, today, today}, Already: true}, f.Herd)

	var out *OutOfRange
	for _, kg := range []float64{0, -5, 221} {
		_, err = h.Target(kg, today)
		require.ErrorAs(t, err, &out)
	}
}

func TestWeightsBeforeBetweenAndAfterWeighings(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Ada").scale(growthStart+20, "Ada", tableKg(20, 20)).scale(growthStart+40, "Ada", tableKg(20, 40))
	h := b.herd()
	for _, day := range []float64{0, 10, 20, 30, 40, 60} {
		w := weightOf(t, h, "Ada", growthStart+Day(day))
		require.InDelta(t, tableKg(20, day), w.WeightKg.Mid, 1.5, "day %v", day)
		require.Greater(t, w.GainKgD.Mid, 0.4)
	}
	past := weightOf(t, h, "Ada", growthStart+200)
	require.Greater(t, past.WeightKg.Mid, tableEndKg)
	require.Contains(t, codes(past.Reasons), ReasonPastTable)
}

func TestExpectReadingTellsGirthFromWeight(t *testing.T) {
	b := new(book).arrive(growthStart, 0, "Dot").scale(growthStart, "Dot", 60)
	h := b.herd()
	scale, err := h.ExpectReading(h.Animal("Dot"), growthStart+7, ByScale)
	require.NoError(t, err)
	tape, err := h.ExpectReading(h.Animal("Dot"), growthStart+7, ByTape)
	require.NoError(t, err)
	eye, err := h.ExpectReading(h.Animal("Dot"), growthStart+7, ByEye)
	require.NoError(t, err)
	require.Less(t, scale.SD, tape.SD)
	require.Less(t, tape.SD, eye.SD)
	girth, err := WeightFromGirth(35 * cmPerInch)
	require.NoError(t, err)
	require.InDelta(t, tape.Mean, girth.Mean, 2*tape.SD, "35 is a girth in inches")
	require.Greater(t, scale.Mean-35*kgPerPound, 5*scale.SD, "and no weight in pounds")
}
