package model

import (
	"math"
	"time"
)

// OddKind says how something does not fit.
type OddKind string

// What does not fit.
const (
	OddMore  OddKind = "more"  // more feed or water gone than the pigs take
	OddLess  OddKind = "less"  // less gone
	OddEmpty OddKind = "empty" // a feeder found empty well before its cautious edge
)

// OddFeed is feed gone that does not fit what the herd is known to eat.
type OddFeed struct {
	Kind   OddKind
	Record string // of the fill, or of the word that it was empty
	Feeder string
	From   time.Time // when the feeder was full before; zero where that is not known (OddEmpty)
	At     time.Time
	// UsedKg left the feeder since From, WantKg was expected to. Of OddEmpty UsedKg is
	// zero and WantKg what should be left in it.
	UsedKg, WantKg float64
	// Both says that it took this span and the one before to see it.
	Both    bool
	Reasons []Reason
}

// From when on feed gone does not fit: a herd of which nothing is amiss is asked
// less than once a season, see TestQuestionsToSoundHerdsAreRare.
const (
	oddFeedPart  = 0.20 // of what was expected, at least
	oddFeedZ     = 2.5  // standard errors of what was expected
	oddFeedBothZ = 2.0  // of two spans together, each of which says the same
	oddFeedDays  = 4.0  // the shortest span that is looked at
	// oddSettleDays is how long pigs that came settle in: what they eat then says
	// little. Pigs of an open trial ate half their allowance in the first week
	// (Lauridsen et al. 1999, computed from the published data set).
	oddSettleDays = 10.0
	// oddHotC is how much hotter than its normal a day may have been of which no
	// temperature was told: judgement.
	oddHotC = 3.0
)

// OddFeed lists the feed gone that does not fit, in the order of time: from full
// to full over at least 4 days a fifth more or less than expected and beyond what
// the herd's own scatter explains, in one span or in two that follow each other;
// and feeders found empty before their 2 % edge. Less in a span that may have been
// hot, or in which pigs were told sick or thirsty, is less than that explains too.
// What was answered LeftOut or AsUsual is not listed, nor what was told as spilled.
func (h *Herd) OddFeed() []OddFeed {
	if len(h.Refills)+len(h.FeedLevels) == 0 {
		return nil
	}
	f := h.feeding()
	if f.err != nil {
		return nil
	}
	var out []OddFeed
	before := map[string]FeedFill{}
	for _, fill := range f.fills {
		last, ok := before[fill.Feeder]
		before[fill.Feeder] = fill
		if h.answered(fill.Record) || !fill.Closed {
			continue
		}
		o, odd := f.oddFill(fill, nil)
		if !odd && ok && last.Closed && last.At.Equal(fill.Since) && !h.answered(last.Record) {
			if _, already := f.oddFill(last, nil); !already {
				o, odd = f.oddFill(fill, &last)
			}
		}
		if odd {
			out = append(out, o)
		}
	}
	for _, find := range f.finds {
		if h.answered(find.record.ID) || find.expected.Mean < cautiousEdge*find.expected.SD {
			continue
		}
		b := f.feeders[find.feeder]
		if find.expected.Mean < oddFeedPart*b.capacityKg {
			continue
		}
		out = append(out, OddFeed{
			Kind: OddEmpty, Record: find.record.ID, Feeder: b.name, From: find.since.at, At: find.record.At,
			WantKg: find.expected.Mean,
			Reasons: f.oddReasons(Reason{Code: ReasonFeedOddEmpty, Names: []string{b.name}, Q: []Quantity{
				{find.expected.Mean, Kilograms}, {max(find.expected.Mean-cautiousEdge*find.expected.SD, 0), Kilograms},
			}}, find.record.At),
		})
	}
	return out
}

// answered reports whether the person has said what was the matter with a record,
// or that nothing was.
func (h *Herd) answered(record string) bool {
	v := h.verdict(record)
	return v == LeftOut || v == AsUsual
}

// judged reports whether the fill ends a span that can be judged: one from full
// to full that is long enough, of pigs that have settled in.
func (f *feedFit) judged(fill FeedFill) bool {
	since := wallDays(fill.Since)
	if fill.Since.IsZero() || wallDays(fill.At)-since < oddFeedDays {
		return false
	}
	for _, g := range f.h.Groups {
		if came := wallDays(g.ArriveAt); came <= wallDays(fill.At) && since < came+oddSettleDays {
			return false
		}
	}
	return true
}

// off is by how many standard errors the fill took more than expected.
func (f FeedFill) off() float64 {
	if f.SDKg <= 0 {
		return 0
	}
	return (f.TookKg - f.Expected.Mid) / f.SDKg
}

// oddFill judges a fill, with the one before where the two are judged together:
// what each took beside what was expected of it is independent of the other where
// nothing is amiss, so that their standardized sum is again standard normal.
func (f *feedFit) oddFill(fill FeedFill, before *FeedFill) (OddFeed, bool) {
	used, want, z, most := fill.UsedKg, fill.WantKg(), fill.off(), oddFeedZ
	from := fill.Since
	if before != nil {
		if before.off()*z <= 0 {
			return OddFeed{}, false
		}
		used, want, z, most = used+before.UsedKg, want+before.WantKg(), (z+before.off())/math.Sqrt2, oddFeedBothZ
		from = before.Since
	}
	o := OddFeed{Record: fill.Record, Feeder: fill.Feeder, From: from, At: fill.At, UsedKg: used, WantKg: want, Both: before != nil}
	switch {
	case want <= 0:
		return o, false
	case z >= most && used >= (1+oddFeedPart)*want:
		o.Kind = OddMore
	case z <= -most && used <= (1-oddFeedPart)*want*f.heatLeaves(DayOf(from), DayOf(fill.At)):
		o.Kind = OddLess
	default:
		return o, false
	}
	o.Reasons = f.oddReasons(Reason{Code: ReasonFeedOdd, Names: []string{fill.Feeder}, On: DayOf(from), Q: []Quantity{
		{used, Kilograms}, {want, Kilograms}, {z80 * want / math.Abs(z) * math.Abs(used/want-1), Kilograms},
	}}, fill.At.Add(-time.Second))
	return o, true
}

// heatLeaves is the part of its appetite that a span of days may have left the
// pigs where nobody told how warm it was.
func (f *feedFit) heatLeaves(from, to Day) float64 {
	sum, days := 0.0, 0
	for d := from; d <= to; d++ {
		part := 1.0
		if air := f.h.Air(d); air.Guessed {
			if use, err := f.use.on(d); err == nil {
				part = weatherFactor(max(air.MeanC()+oddHotC, mildC), use.weightKg, f.h.hasWallow(d))
			}
		}
		sum += part
		days++
	}
	return sum / float64(days)
}

// oddReasons explains what was expected up to a moment, beginning with the sum.
func (f *feedFit) oddReasons(sum Reason, at time.Time) []Reason {
	out := []Reason{sum}
	g, _, err := f.at(at)
	if err != nil {
		return out
	}
	use, err := f.use.on(DayOf(at))
	if err != nil {
		return out
	}
	out = append(out, Reason{Code: ReasonFeedPigs, Q: []Quantity{
		{float64(use.pigs), Count}, {use.weightKg, Kilograms}, {math.Exp(g.mean[placeAppetite]) * use.kg, KilogramsPerDay},
	}})
	return append(out, f.appetiteReasons(Estimate{g.mean[placeAppetite], math.Sqrt(g.at(placeAppetite, placeAppetite))}, at)...)
}
