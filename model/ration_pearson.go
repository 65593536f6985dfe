package model

// PearsonMix is the answer of a Pearson square: kilograms of a batch.
type PearsonMix struct {
	LeanKg, RichKg, FixedKg float64
}

// PearsonSquare mixes two feeds to a wanted share of a nutrient, the check that
// can be done on paper. lean and rich are the shares of the nutrient in the two
// feeds and wanted that of the whole batch, in percent (0 to 100, lean below
// rich). fixedKg of the batchKg hold none of it: a premix is taken out first and
// the rest raised to make up for it. What is wanted of the rest must lie between
// lean and rich. Outside: *OutOfRange.
//
// Source: Montana State Univ. Extension, Pearson squares (read): the parts of
// each feed are the distance of the wanted share from the other; that wanted
// must lie between the two. Taking out the premix first: computed.
func PearsonSquare(leanPct, richPct, wantedPct, batchKg, fixedKg float64) (PearsonMix, error) {
	switch {
	case !(leanPct >= 0 && leanPct < 100):
		return PearsonMix{}, &OutOfRange{"lean_pct", leanPct, 0, 100}
	case !(richPct > leanPct && richPct <= 100):
		return PearsonMix{}, &OutOfRange{"rich_pct", richPct, leanPct, 100}
	case !(batchKg > 0 && batchKg <= mostBatchKg):
		return PearsonMix{}, &OutOfRange{"batch_kg", batchKg, 0, mostBatchKg}
	case !(fixedKg >= 0 && fixedKg < batchKg):
		return PearsonMix{}, &OutOfRange{"fixed_kg", fixedKg, 0, batchKg}
	}
	rest := batchKg - fixedKg
	raise := batchKg / rest
	if !(wantedPct*raise >= leanPct && wantedPct*raise <= richPct) {
		return PearsonMix{}, &OutOfRange{"wanted_pct", wantedPct, leanPct / raise, richPct / raise}
	}
	rich := rest * (wantedPct*raise - leanPct) / (richPct - leanPct)
	return PearsonMix{LeanKg: rest - rich, RichKg: rich, FixedKg: fixedKg}, nil
}
