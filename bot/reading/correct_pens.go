package reading

import (
	"strconv"

	"troughbell/model"
)

// pensMeant takes a bare number for the pen that is called by it, where the record made
// last moved pigs to one called by another: "3, fat thumbs" behind "moved them to pen 4".
func (r *reader) pensMeant(a *amends) {
	if a.num == nil || a.num.kind != itNum || a.thing != nil || len(a.pigs) > 0 || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return
	}
	f, ok := r.c.Before[0].Entry.Act.(Fact)
	m, moved := f.Fact.(model.Move)
	if !ok || !moved {
		return
	}
	was, ok := penNumber(m.Pen)
	if !ok || was == a.num.v || a.notNum != nil && a.notNum.v != was {
		return
	}
	for n, p := range r.c.Herd.Pens {
		if v, ok := penNumber(p.Name); !ok || v != a.num.v {
			continue
		}
		for k := range a.now {
			if a.now[k].from == a.num.from {
				it := &a.now[k]
				it.kind, it.pen = itThing, int8(n)
				a.thing = it
			}
		}
		a.num, a.notNum, a.cue = nil, nil, a.cue || a.notNum != nil
		return
	}
}

// penNumber is the number that a pen is called by: "4", "pen 4".
func penNumber(name string) (float64, bool) {
	v, err := strconv.ParseFloat(lastWord(name), 64)
	return v, err == nil
}
