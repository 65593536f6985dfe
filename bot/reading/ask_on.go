package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// askedLately is for how long a question may be gone on with.
const askedLately = time.Hour

// longestOn is how many items a text has at most that goes on with a question.
const longestOn = 8

// askedOn reads a text that asks what was asked last of other pigs, of another day or for
// another weight: "and the blues?", "what about oct 1", "with two less pigs?".
func (r *reader) askedOn() (Reading, bool) {
	last := r.c.LastAsked
	if last == nil || last.Topic == "" || last.Topic == "plan" || last.Topic == "why" || r.c.Now.Sub(last.At) > askedLately || len(r.items) > longestOn || r.part {
		return Reading{}, false
	}
	if len(r.c.Before) > 0 && r.c.Before[0].At.After(last.At) {
		return Reading{}, false
	}
	s := span{fAsk, 0, len(r.items)}
	opens, named := strings.HasSuffix(strings.TrimSpace(r.text), "?") || r.andAhead(), false
	for k := range r.items {
		it := &r.items[k]
		switch w := it.s; {
		case it.pig >= 0 && !it.near || it.group >= 0, it.kind == itDay && !it.day.every, it.isAny(setOf(sBarrow, sGilt)):
			named = true
		case it.number() && !it.soft && !it.ord && (it.kind == itNum || it.qty(mass) || it.qty(head)):
			named = true
		case onWords[w], k == 0 && it.is(sAnd):
			opens = opens || k < 2 && (it.is(sAnd) || it.isAny(setOf(sWhatIf, sAskSure)))
		case it.kind == itWord && it.isAny(setOf(sMore, sFewer, sPigs)):
		case it.soft, it.kind == itWord && it.isAny(setOf(sFiller, sPronoun, sTo, sBy, sOn, sAt, sIf, sWhatIf)) && !it.isAny(setOf(sNot, sPlan)):
		default:
			return Reading{}, false
		}
	}
	if !opens || !named || r.notThen(0) {
		return Reading{}, false
	}
	a := *last
	a.At, a.What, a.Picture, a.Dark, a.Light = time.Time{}, "", false, false, false
	on, target := a.On, a.TargetKg
	a.On, a.TargetKg, a.Assume, a.Count = nil, nil, nil, 0
	r.askDay(&a, s)
	r.askAssume(&a, s)
	if a.Assume == nil {
		r.askAmounts(&a, s)
	}
	sel := r.selectPigs(0, len(r.items))
	other := sel.any && !sel.all && len(sel.pigs) > 0 && !sel.lost && !sel.stray
	if other {
		a.Animals = sel.names(r)
	}
	if !other && a.On == nil && a.TargetKg == nil && a.Assume == nil {
		return Reading{}, false
	}
	if a.On == nil && a.TargetKg == nil {
		a.On, a.TargetKg = on, target
	}
	got := r.just(a)
	return got, true
}

// onWords open a text that goes on with a question, or steer it.
var onWords = setOfWords(split("and, what about, how about, what about the, how about the, what if, or, with, then, for, till, until, by, at, to, on, about, same for, same"))

// andAhead says that the text begins with a word that goes on: "and brick too".
func (r *reader) andAhead() bool {
	for k := 0; k < len(r.toks) && k < 3; k++ {
		switch r.toks[k].s {
		case "and", "n", "plus", "&":
			return true
		case "oh", "ah", "o", "ok", "yes", ",":
		default:
			return false
		}
	}
	return false
}

// hePig is the one pig that the message right before told of, or the question asked last,
// where the words speak of a "he" or a "she" and name none: "so whats he putting on a day".
func (r *reader) hePig(said string) []string {
	if !saysAny(said, heWords) {
		return nil
	}
	if last := r.c.LastAsked; last != nil && len(last.Animals) == 1 && r.c.Now.Sub(last.At) <= justTold && (len(r.c.Before) == 0 || !r.c.Before[0].At.After(last.At)) {
		return last.Animals
	}
	var one []string
	for k := range r.c.Before {
		b := &r.c.Before[k]
		if r.c.Now.Sub(b.At) > justTold || b.Text != r.c.Before[0].Text {
			break
		}
		f, ok := b.Entry.Act.(Fact)
		if !ok {
			continue
		}
		switch names := AnimalsOf(f.Fact); {
		case len(names) == 0:
		case len(names) > 1 || names[0] == model.All || one != nil && one[0] != names[0]:
			return nil
		default:
			one = names
		}
	}
	return one
}

var heWords = phrasesOf("he, she, him, her, his, he's, she's, hes, shes, he'll, she'll, he'd, she'd")
