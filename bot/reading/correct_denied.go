package reading

import "slices"

// replaceDenied puts an entry in the place of the record that holds the number
// denied beside it: "I gave you the wrong figure. Clover weighs 189 pounds, not
// 198."
func (r *reader) replaceDenied(es []Entry) {
	if r.denied == 0 {
		return
	}
	for k := range es {
		f, ok := es[k].Act.(Fact)
		if !ok || es[k].Replace != "" {
			continue
		}
		for n := range r.c.Before {
			rec := &r.c.Before[n]
			old, ok := rec.Entry.Act.(Fact)
			if !ok || rec.ID == "" || r.c.Now.Sub(rec.At) > 48*3600*1e9 || old.Kind() != f.Kind() || !r.holdsNumber(old.Fact, r.denied) || !slices.Equal(animalsOf(old.Fact), animalsOf(f.Fact)) {
				continue
			}
			es[k].Replace, es[k].On, es[k].Dated = rec.ID, rec.Entry.On, rec.Entry.Dated
			break
		}
	}
}
