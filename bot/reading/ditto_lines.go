package reading

import (
	"slices"

	"troughbell/model"
)

// A line or a sentence of its own that tells the one before it again, for another pig
// or another barrel: "503 sick, not eating" and below it "504 ditto".

// forceDittos settles such lines.
func (r *reader) forceDittos() {
	for k := range r.items {
		if !r.items[k].is(sDitto) || r.force[k] != 0 {
			continue
		}
		if i, j := r.sentenceStart(k), r.sentenceEnd(k); i > 0 && r.dittoLine(i, j) {
			r.forceRange(i, j, fDitto)
		}
	}
}

// dittoLine says that items[i:j] name pigs or things and say that it is the same with
// them, and nothing else.
func (r *reader) dittoLine(i, j int) bool {
	named := false
	for k := i; k < j; k++ {
		switch it := &r.items[k]; {
		case it.pig >= 0, it.group >= 0, it.barrel >= 0, it.feeder >= 0, it.kind == itWord && it.isAny(setOf(sBarrow, sGilt, sRest)):
			named = true
		case it.is(sDitto), it.isAny(setOf(sFiller, sAnd)), it.kind == itWord && (alsoWords[it.s] || it.isAny(setOf(sFeeder, sBarrel, sWater))):
		default:
			return false
		}
	}
	return named
}

// fillDitto repeats the fact before for those whom the line names.
func (r *reader) fillDitto(s span) {
	if len(r.out) == 0 {
		r.idleSpan(s)
		return
	}
	last := r.out[len(r.out)-1]
	f, ok := last.Act.(Fact)
	if !ok || last.Replace != "" {
		r.idleSpan(s)
		return
	}
	var again []model.Fact
	sel := r.selectPigs(s.i, s.j)
	pigs := sel.any && !sel.all && len(sel.pigs) > 0 && !sel.lost && !sel.near
	switch was := f.Fact.(type) {
	case model.Weigh:
		if pigs && len(was.Animals) > 0 {
			for _, name := range sel.names(r) {
				w := was
				w.Animals = []string{name}
				again = append(again, w)
			}
		}
	case model.Sick, model.Worm, model.Treat, model.Move:
		if names := AnimalsOf(was); pigs && len(names) > 0 {
			if both, ok := withAnimals(was, withNames(names, sel.names(r))); ok {
				r.out[len(r.out)-1].Act = Fact{both}
				r.useAll(s)
				return
			}
		}
	case model.Water:
		for _, name := range r.thingsNamed(s, barrelKind) {
			was.Barrel = name
			again = append(again, was)
		}
	case model.Refill:
		for _, name := range r.thingsNamed(s, feederKind) {
			was.Feeder = name
			again = append(again, was)
		}
	case model.FeedLevel:
		for _, name := range r.thingsNamed(s, feederKind) {
			was.Feeder = name
			again = append(again, was)
		}
	}
	if len(again) == 0 {
		r.idleSpan(s)
		return
	}
	r.useAll(s)
	for _, fact := range again {
		r.emitOn(Fact{fact}, s, last.On, last.Minute, last.Dated)
	}
}

// withNames are some animals and others behind them, each once.
func withNames(names, more []string) []string {
	out := append([]string(nil), names...)
	for _, n := range more {
		if !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	return out
}

// thingsNamed are the feeders or barrels that a span names.
func (r *reader) thingsNamed(s span, kind thingKind) []string {
	var out []string
	for k := s.i; k < s.j; k++ {
		if x := kind.names(&r.items[k]); x >= 0 {
			if name := kind.old(r, x); !slices.Contains(out, name) {
				out = append(out, name)
			}
		}
	}
	return out
}
