package picture

import (
	"sort"

	"troughbell/bot/wording"
	"troughbell/model"
)

// together draws many pigs in one part: each as a thin line with its name at the
// end, over the band of their mean.
func (g Growth) together(s *sheet) {
	title, note := g.title(s)
	y := s.head(title, note)
	low, high, step := g.scale(s, 6)
	const names = 250.0
	tall := max(760, float64(len(g.Pigs))*nameRoom+40)
	f := frame{
		left: 130, top: y + 34, right: Width - names, bottom: y + 34 + tall,
		from: float64(g.From), to: float64(g.To), low: low, high: high,
	}
	s.values(f, step, true)
	s.days(f, s.months(f))
	was, comes := g.Mean.split(s, g.Today)
	s.band("mean then", s.pal.series[0], 0.16, f, was.days, was.low, was.high)
	s.band("mean", s.pal.series[0], 0.28, f, comes.days, comes.low, comes.high)
	g.target(s, f, true)
	g.now(s, f, true)
	var ends []nameAt
	for k, p := range g.oneOfAlike(s).byEnd() {
		i := s.pal.series[k%len(s.pal.series)]
		was, comes := p.split(s, g.Today)
		if len(was.days) > 1 {
			s.line(p.Name, i, 3, f.course(was.days, was.mid)...)
		}
		if len(comes.days) > 1 {
			s.dash(p.Name+" ahead", i, 3, f.course(comes.days, comes.mid)...)
		}
		for _, w := range p.Seen {
			s.dot(p.Name+" by "+w.By, readingShapes[w.By], i, 5, f.at(float64(w.On), s.kg(w.Kg)))
		}
		if n := len(p.On); n > 0 {
			end := p.Kg[n-1].Mid
			ends = append(ends, nameAt{
				name: p.Name, weight: s.v.Quantity(wording.Kg(end), "bare"), ink: i,
				at: f.at(float64(p.On[n-1]), s.kg(end)),
			})
		}
	}
	s.names(f, ends)
	s.high = g.legend(s, f.bottom+104) + edge
}

// oneOfAlike puts pigs that were never weighed by themselves, and so have one and
// the same course, together under their number.
func (g Growth) oneOfAlike(s *sheet) Growth {
	alike := map[model.Interval][]PigGrowth{}
	end := func(p PigGrowth) model.Interval {
		if len(p.Seen) > 0 || len(p.Kg) == 0 {
			return model.Interval{}
		}
		return p.Kg[len(p.Kg)-1]
	}
	for _, p := range g.Pigs {
		alike[end(p)] = append(alike[end(p)], p)
	}
	var pigs []PigGrowth
	for _, p := range g.Pigs {
		same := alike[end(p)]
		switch {
		case end(p) == model.Interval{} || len(same) == 1:
			pigs = append(pigs, p)
		case same[0].Name == p.Name:
			p.Name = s.v.Label("others", wording.Args{Q: []model.Quantity{wording.N(len(same))}})
			pigs = append(pigs, p)
		}
	}
	g.Pigs = pigs
	return g
}

// byEnd lists the pigs by what they weigh last, the heaviest first.
func (g Growth) byEnd() []PigGrowth {
	out := append([]PigGrowth(nil), g.Pigs...)
	end := func(p PigGrowth) float64 {
		if len(p.Kg) == 0 {
			return 0
		}
		return p.Kg[len(p.Kg)-1].Mid
	}
	sort.SliceStable(out, func(i, j int) bool { return end(out[i]) > end(out[j]) })
	return out
}

// nameAt is a name for the end of a line.
type nameAt struct {
	name, weight string
	ink          ink
	at           point
}

// nameRoom is the height that a name takes.
const nameRoom = 36.0

// names puts names right of a frame, each as near to the end of its line as the
// others let it, with a thread to the line.
func (s *sheet) names(f frame, ends []nameAt) {
	if len(ends) == 0 {
		return
	}
	wish := make([]float64, len(ends))
	for i, e := range ends {
		wish[i] = e.at.y
	}
	ys := spread(wish, nameRoom, f.top, f.bottom)
	for i, e := range ends {
		s.line(e.name+" thread", e.ink, 2, e.at, point{f.right + 8, e.at.y}, point{f.right + 28, ys[i]})
		w := s.width(e.weight, labelText, false)
		name := s.cut(s.pigName(e.name), labelText, true, Width-f.right-36-w-22)
		_, until := s.text(f.right+34, ys[i]+10, labelText, text, true, rightOf, name)
		s.text(until+10, ys[i]+10, labelText, faint, false, rightOf, e.weight)
	}
}

// spread moves heights that are in order apart, each as little as may be, so that
// neighbours stand at least room apart and all within the bounds where they fit.
func spread(wish []float64, room, top, bottom float64) []float64 {
	type pile struct {
		sum   float64 // of the wishes, each less the height of what is piled above it
		n     int
		first int
	}
	var piles []pile
	place := func(p pile) float64 { // of the pile's first
		y := p.sum / float64(p.n)
		return max(top, min(y, bottom-room*float64(p.n-1)))
	}
	for i, w := range wish {
		piles = append(piles, pile{w, 1, i})
		for len(piles) > 1 {
			above, below := piles[len(piles)-2], piles[len(piles)-1]
			if place(above)+room*float64(above.n) <= place(below) {
				break
			}
			above.sum += below.sum - room*float64(above.n)*float64(below.n)
			above.n += below.n
			piles = append(piles[:len(piles)-2], above)
		}
	}
	out := make([]float64, len(wish))
	for _, p := range piles {
		for k := range p.n {
			out[p.first+k] = place(p) + room*float64(k)
		}
	}
	return out
}
