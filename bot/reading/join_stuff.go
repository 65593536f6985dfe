package reading

import "troughbell/model"

// oneWeather joins what was told of one day's weather piece by piece: "high 35",
// and on the next line "low 26".
func oneWeather(es []Entry) []Entry {
	out := es[:0]
	for _, e := range es {
		if n := len(out); n > 0 && out[n-1].On == e.On {
			a, ok := weatherOf(out[n-1])
			b, ok2 := weatherOf(e)
			if ok && ok2 && a.RainMm == nil && b.RainMm == nil && (a.HighC == nil || b.HighC == nil) && (a.LowC == nil || b.LowC == nil) && (a.RhPct == nil || b.RhPct == nil) {
				both := model.Weather{HighC: either(a.HighC, b.HighC), LowC: either(a.LowC, b.LowC), RhPct: either(a.RhPct, b.RhPct)}
				if both.Check() == nil {
					out[n-1].Act = Fact{both}
					out[n-1].To = max(out[n-1].To, e.To)
					continue
				}
			}
		}
		out = append(out, e)
	}
	return out
}

func either(a, b *float64) *float64 {
	if a != nil {
		return a
	}
	return b
}

func weatherOf(e Entry) (model.Weather, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return model.Weather{}, false
	}
	w, ok := f.Fact.(model.Weather)
	return w, ok
}

// withoutGeneral drops the question which feeder a general word meant where the
// particulars follow: "fed today. big one took 155, small one 70".
func withoutGeneral(es []Entry) []Entry {
	pours := 0
	for _, e := range es {
		if p, ok := refillOf(e); ok && (p.FeedKg != nil || p.Full || p.Fraction != nil) {
			pours++
		}
	}
	if pours == 0 {
		return es
	}
	out := es[:0]
	for _, e := range es {
		if c, ok := e.Act.(Clarify); ok && c.Code == "which_feeder" && len(c.Draft) > 0 {
			if p, ok := refillOf(c.Draft[0]); ok && p.FeedKg == nil && p.Fraction == nil {
				continue
			}
		}
		out = append(out, e)
	}
	return out
}
