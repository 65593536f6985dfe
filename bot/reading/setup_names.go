package reading

import (
	"strings"

	"troughbell/model"
)

// setUpState is what the text itself has set up so far, so that later words of
// the same text may speak of it.
type setUpState struct {
	inIt             bool   // the pigs are in the pen that is being told of
	feeders, barrels []int8 // the herd's that were spoken of
	inSpan           []int8 // those of the span in hand
	sizes            map[string]float64
	pens             []string
}

// placeWords can be part of a thing's name although they also have another
// meaning.
var placeWords = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`north south east west northern southern eastern western left right back front top bottom upper lower low high
		big small large little old new main creek oak hill barn shed house road far near middle center centre blue red green white black yellow grey gray brown
		home wood woods corner gate long short round square first second third field yard lot pasture orchard apple cherry pear plum maple pine birch ash elm
		brook river pond valley ridge meadow clover stone sand clay bank grove garden spring summer winter rest outer inner half quarter deep well`) {
		m[w] = true
	}
	return m
}()

// stopWords never are part of a name.
var stopWords = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`the a an i we my our they they're there there's it it's is are was were each both all with of and at in on for to has have had holds hold about
		two three four five six one also then plus total feed water this that these those currently now here pigs pig named called name names them their his her got get gets we've i've
		which while where but or so as from by per ok okay please just only today yesterday around roughly them's us you me he she him his who when what how why am be been do does did not no yes
		because since until till after before if us me trash garbage can farm split divided duroc durocs hampshire hampshires yorkshire yorkshires berkshire berkshires landrace tamworth tamworths mangalitsa kunekune pietrain cross crosses crossbred crossbreds be's feeder feeders nipple nipples deep wide long-ish capacity size sized hi hello tag tags eartag eartags tagged numbered`) {
		m[w] = true
	}
	return m
}()

// nameLike says that an item can be a word of a new thing's name.
func (r *reader) nameLike(k int) bool {
	it := &r.items[k]
	if it.kind == itThing || it.kind == itName {
		return true
	}
	if it.kind == itWord && placeWords[it.s] {
		return true
	}
	if apartWords[it.s] {
		return r.tellsApart(k)
	}
	if it.kind != itWord && !(it.kind == itFrac && it.capital) && !(it.kind == itDay && it.capital && it.day.form == dayNone) {
		return false
	}
	if it.s == "a" && it.capital && k+1 < len(r.items) && (r.items[k+1].kind == itDim || r.items[k+1].qty(area)) {
		return true // a pen called A
	}
	if stopWords[it.s] || it.is(sNamed) && !it.capital || it.is(sHolds) && !it.capital {
		return false
	}
	if strings.Contains(it.s, " ") && !it.capital && !placeWords[firstWord(it.s)] {
		return false
	}
	if it.capital && (it.gap < gapStop || k == 0 || it.sense.empty() || placeWords[it.s] || !it.known) {
		return !it.isAny(setOf(sButcher, sTarget, sChore, sZone, sHerd, sWallow, sTell, sQuiet))
	}
	if !it.known || placeWords[it.s] {
		return true
	}
	return it.sense.empty() && it.unit == 0
}

func firstWord(s string) string {
	w, _, _ := strings.Cut(s, " ")
	return w
}

func (r *reader) badName(name string) bool {
	l := strings.ToLower(name)
	return len(l) < 1 || stopWords[l]
}

func genericRank(w string) int {
	switch {
	case strings.HasPrefix(w, "water"), strings.HasPrefix(w, "feed"), w == "nipple":
		return 1
	case w == "":
		return 0
	}
	return 2
}

// singular is the word for one of the kind, as the person says it.
func singular(w string) string {
	if _, last, found := strings.Cut(w, " "); found {
		w = last
	}
	switch w {
	case "waters", "water", "h2o", "watered", "waterers", "waterer", "drinkers", "drinker":
		return "barrel"
	case "brl", "brls", "barel", "barels", "barrell", "barrells", "barrles":
		return "barrel"
	case "feedr", "self-feeder", "selffeeder":
		return "feeder"
	case "hoper":
		return "hopper"
	case "ibc":
		return "ibc"
	}
	if len(w) > 3 && strings.HasSuffix(w, "s") {
		return w[:len(w)-1]
	}
	return w
}

// nameThings gives names to what was set up without one: the person's word for
// it, numbered where there are several.
func (r *reader) nameThings(ts []newThing, word string, kind thingKind) {
	h := r.c.Herd
	have := map[string]bool{}
	existing := 0
	only := ""
	switch kind.key {
	case model.SetFeeder:
		existing = len(h.Feeders)
		for _, f := range h.Feeders {
			have[strings.ToLower(f.Name)], only = true, f.Name
		}
		if word == "" || word == "feed" {
			word = "feeder"
		}
	case model.SetBarrel:
		existing = len(h.Barrels)
		for _, b := range h.Barrels {
			have[strings.ToLower(b.Name)], only = true, b.Name
		}
		if word == "" {
			word = "barrel"
		}
	case model.SetPen:
		existing = len(h.Pens)
		for _, p := range h.Pens {
			have[strings.ToLower(p.Name)], only = true, p.Name
		}
		if word == "" {
			word = "pen"
		}
	}
	if len(ts) == 1 && ts[0].name == "" {
		if existing == 1 { // the only one there is gets its size
			ts[0].name = only
			return
		}
		if existing == 0 {
			ts[0].name = word
			return
		}
	}
	n := 1
	for x := range ts {
		if ts[x].name != "" {
			continue
		}
		for have[word+" "+itoa(n)] {
			n++
		}
		ts[x].name = word + " " + itoa(n)
		n++
	}
}

func itoa(n int) string {
	if n >= 10 {
		return itoa(n/10) + string(rune('0'+n%10))
	}
	return string(rune('0' + n))
}

// namesAhead gives a thing that is set up the name before its word, where the
// cut left that to the clause before: "55 gal, red | hopper 300 lb".
func (r *reader) namesAhead(spans []span) []span {
	kinds := map[frame]thingKind{fSetFeeder: feederKind, fSetBarrel: barrelKind, fSetPen: penKind}
	for n := 1; n < len(spans); n++ {
		a, b := &spans[n-1], &spans[n]
		kind, sets := kinds[b.frame]
		if !sets || a.i >= a.j || b.i >= b.j {
			continue
		}
		if it := &r.items[b.i]; it.kind != itWord || !it.isAny(kind.generic) || it.gap != gapNone {
			continue
		}
		t := a.j - 1
		for t > a.i && r.items[t].gap == gapNone && r.nameLike(t) {
			t--
		}
		if t == a.i || !r.nameLike(t) || r.items[t].gap < gapAnd {
			continue
		}
		a.j, b.i = t, t
	}
	return spans
}

// weightBack gives pigs that came the weight of each, where the cut took it to the
// feeder behind: "Fern and Bo, | 55 lb each, hopper 250 lb".
func (r *reader) weightBack(spans []span) []span {
	for n := 1; n < len(spans); n++ {
		a, b := &spans[n-1], &spans[n]
		if a.frame != fArrive || b.frame != fSetFeeder || b.i+2 >= b.j || a.i >= a.j {
			continue
		}
		if r.items[b.i].qty(mass) && r.items[b.i+1].is(sEach) && r.items[b.i+1].gap == gapNone && r.items[b.i+2].gap >= gapAnd && r.firstQty(*a, mass) < 0 {
			a.j, b.i = b.i+2, b.i+2
		}
	}
	return spans
}
