package reading

import (
	"slices"

	"troughbell/model"
)

// What is told of one pig or another is recorded of neither: "wormed hazel or
// clover" asks which.

// eitherPig asks which pig is meant where what a span yielded, r.out[from:], is told
// of one of several that an "or" stands between.
func (r *reader) eitherPig(s span, from int) {
	if from >= len(r.out) || !ofOnePig[s.frame] {
		return
	}
	names := r.eitherNames(r.sentenceStart(s.i), r.sentenceEnd(s.j-1))
	if len(names) == 0 {
		return
	}
	for k := from; k < len(r.out); k++ {
		e := r.out[k]
		f, ok := e.Act.(Fact)
		if !ok {
			continue
		}
		if alarm, is := f.Fact.(model.Alarm); is && hasAny(alarm.Animals, names) { // never asked about
			alarm.Animals = nil
			r.out[k].Act = Fact{alarm}
			continue
		}
		if !hasAny(AnimalsOf(f.Fact), names) {
			continue
		}
		c := Clarify{About: f.Intent(), Code: "which_animal", Want: "animals", Draft: []Entry{e}}
		for _, n := range names[:min(len(names), 4)] {
			one := e
			if v, ok := withAnimals(f.Fact, []string{n}); ok {
				one.Act = Fact{v}
				c.Choices = append(c.Choices, Choice{Label: n, Entries: []Entry{one}})
			}
		}
		r.out[k].Act = c
	}
}

// ofOnePig are the frames whose facts a pig can be taken for another in.
var ofOnePig = map[frame]bool{fSick: true, fGone: true, fDrug: true, fMove: true, fAlarm: true, fWeigh: true}

// eitherNames are the pigs of items[i:j] between whose names an "or" stands.
func (r *reader) eitherNames(i, j int) []string {
	var names []string
	add := func(k int) {
		if n := r.pigs[r.items[k].pig].Name; n != "" && !slices.Contains(names, n) {
			names = append(names, n)
		}
	}
	for k := i + 1; k+1 < j; k++ {
		if r.items[k].s != "or" || r.items[k-1].pig < 0 {
			continue
		}
		n := k + 1
		for n+1 < j && n < k+3 && r.items[n].isAny(setOf(sFiller, sAbout)) && r.items[n].pig < 0 { // "otis or maybe hazel"
			n++
		}
		if r.items[n].pig < 0 || r.items[n].pig == r.items[k-1].pig {
			continue
		}
		for m := k - 1; m >= i && r.items[m].pig >= 0; m-- { // "hazel, clover or otis"
			add(m)
			if r.items[m].gap != gapComma {
				break
			}
		}
		add(n)
	}
	return names
}

func hasAny(of, names []string) bool {
	return slices.ContainsFunc(of, func(n string) bool { return slices.Contains(names, n) })
}

// nearDear asks about what is dear, a drug, a death, a sale, where it was told of a
// pig by a word that is only nearly its name; and about anything where the word
// only looks like it.
func (r *reader) nearDear(s span, from int) {
	for k := from; k < len(r.out); k++ {
		e := r.out[k]
		f, ok := e.Act.(Fact)
		if !ok || f.Intent() == "alarm" { // an emergency is never asked about
			continue
		}
		names := AnimalsOf(f.Fact)
		for n := s.i; n < s.j && len(names) > 0; n++ {
			it := &r.items[n]
			if it.pig < 0 || !it.alike && !(dear(f.Intent()) && (it.near || it.bent)) || !slices.Contains(names, r.pigs[it.pig].Name) {
				continue
			}
			r.out[k].Act = Clarify{About: f.Intent(), Code: "near_name", Names: names, Draft: []Entry{e}, Choices: []Choice{{Code: "yes", Entries: []Entry{e}}, {Code: "no"}}}
			break
		}
	}
}
