package reading

import (
	"slices"

	"troughbell/model"
)

// treatmentCompleted reads a text that is but what a treatment of the last days
// lacked: its product, its withdrawal days, with or without the pig's name:
// "oxytetracycline", "hank 28 days".
func (r *reader) treatmentCompleted() (*Recorded, Entry, bool) {
	product, pigs := "", 0
	var withdrawal *int
	for k := range r.items {
		it := &r.items[k]
		m := r.lex.of[it.s]
		switch {
		case it.pig >= 0 && !it.near:
			pigs++
		case it.qty(days) && k > 0 && r.items[k-1].s == "in": // "vet in 16 days"
			return nil, Entry{}, false
		case it.qty(days) && withdrawal == nil:
			withdrawal = model.Int(int(it.si() + 0.5))
		case it.is(sProduct) && m != nil && m.drug != "" && product == "":
			product = m.drug
		case labelWords[it.s] && it.pig < 0:
		case it.kind == itNum && it.soft, it.number(), it.isAny(setOf(sWorm, sTreat, sAgo)) && product == "":
			return nil, Entry{}, false
		case it.isAny(setOf(sWithdraw, sFiller, sIs, sPronoun, sYes, sAnd, sNo)) && it.kind == itWord || it.isAny(setOf(sAbout, sGave)):
		default:
			return nil, Entry{}, false
		}
	}
	if product == "" && withdrawal == nil || pigs > 1 || len(r.items) > 11 {
		return nil, Entry{}, false
	}
	sel := r.selectPigs(0, len(r.items))
	for k := range r.c.Before {
		rec := &r.c.Before[k]
		f, ok := rec.Entry.Act.(Fact)
		if !ok || r.c.Now.Sub(rec.At) > 7*24*3600*1e9 {
			continue
		}
		var t model.Treatment
		switch v := f.Fact.(type) {
		case model.Treat:
			t = v.Treatment
		case model.Worm:
			t = v.Treatment
		default:
			if pigs == 0 && k > 3 {
				return nil, Entry{}, false
			}
			continue
		}
		if pigs == 1 && !slices.Equal(t.Animals, sel.names(r)) || product != "" && t.Product != "" && t.Product != product || withdrawal != nil && t.WithdrawalDays != nil || withdrawal == nil && t.Product != "" {
			continue
		}
		if product != "" {
			t.Product = product
		}
		if withdrawal != nil {
			t.WithdrawalDays = withdrawal
		}
		e := rec.Entry
		switch f.Fact.(type) {
		case model.Treat:
			e.Act = Fact{model.Treat{Treatment: t}}
		default:
			e.Act = Fact{model.Worm{Treatment: t}}
		}
		return rec, e, e.Act.(Fact).Check() == nil
	}
	return nil, Entry{}, false
}

// labelWords tell where the days of a drug were read, or call the drug told before.
var labelWords = setOfWords(split(`wormer, the wormer, drug, stuff, medicine, medication, jab, shot, injection, box, label, bottle, packet, package, pack, tin, tub, leaflet, sachet, tube, can, found, i found, looked, looked it up, checked, asked, the vet, vet, vet says, says, said, say, read, states, meat, clearance, up, with, turns, turned out, apparently, going by, according to, rang, phoned, called, googled, after all, you asked`))
