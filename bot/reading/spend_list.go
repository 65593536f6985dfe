package reading

// sundries are what money is spent on that is neither feed nor an animal: a bare
// number beside one of them and nothing else is what it cost.
var sundries = setOfWords(split(`straw, hay, bedding, shavings, sawdust, screws, nails, staples, lumber, boards, plywood, tarp, twine, rope, bulb, heat lamp,
	gas, diesel, fuel, salt block, salt lick, salt licks, mineral lick, mineral licks, vet, the vet, vet bill, vet visit, gate, panels, posts, fence posts, insulators, t posts, lime, syringes, needles,
	ear tags, tags, sprinkler, sprinklers, mister, splitter, batteries, battery, cement, gravel, wire, fence wire, hog wire, welded wire, barbed wire, polywire, hose, new hose, garden hose,
	float valve, nipples, fittings, hinges, chain, padlock, bolts, wire clips, ground rod, charger, fence charger, energizer, trailer rental, freezer paper`))

// rolls measure sundries that are otherwise words of the fence or the water.
var rolls = setOfWords(split(`roll, rolls, a roll, spool, spools, coil, coils, new, bought, box, box of, bundle, pair, pack, packs`))

// pricedList is the end of a list of things with what each cost, from item i on:
// "corn 60, straw 48.50, wormer 22"; i where none begins there.
func (r *reader) pricedList(i int) int {
	end := i
	for from := i; from < len(r.items); {
		to := r.clauseEnd(from)
		if !r.thingAndPrice(from, to) {
			break
		}
		end, from = to, to
		if to < len(r.items) && r.items[to].gap >= gapSemi {
			break
		}
	}
	return end
}

// thingAndPrice says that items[i:j] are words and one number, bare or money.
func (r *reader) thingAndPrice(i, j int) bool {
	numbers, words := 0, 0
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itNum && !it.soft && !it.ord, it.qty(money):
			numbers++
		case it.kind == itWord && it.pig < 0 && it.feeder < 0 && it.barrel < 0 && !it.isAny(setOf(sFull, sEmpty, sGirth, sFill)):
			words++
		default:
			return false
		}
	}
	return numbers == 1 && words > 0
}

// forceSundries settles clauses that are but a thing that money is spent on and a
// bare number: "straw 24, screws 6".
func (r *reader) forceSundries() {
	for i := 0; i < len(r.items); {
		j := r.clauseEnd(i)
		if r.force[i] == 0 && !r.items[i].quest && r.sundry(i, j) && !r.has(span{fSpend, r.sentenceStart(i), j}, sHearsay) {
			r.forceRange(i, j, fSpend)
			if n := r.pricedList(j); n > j && r.items[j].gap < gapStop && r.force[j] == 0 && !r.inTrade(j, n) {
				r.forceRange(j, n, fSpend)
				j = n
			}
		}
		i = j
	}
}

// inTrade says that a word of another kind of fact stands in items[i:j].
func (r *reader) inTrade(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itWord && it.isAny(tradeSenses) || it.unit != 0 && it.unit.dim() != money {
			return true
		}
	}
	return false
}

// hourLeads stand before an hour.
var hourLeads = setOfWords(split("at, @, about, around, by, before, after, till, until, from"))

// sundry says that the clause items[i:j] is but a sundry and what it cost.
func (r *reader) sundry(i, j int) bool {
	thing, numbers, rolled, trade := false, 0, false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itNum && k+1 < j && rolls[r.items[k+1].s]: // "2 rolls of wire 84"
		case it.kind == itNum && k > i && hourLeads[r.items[k-1].s]:
			return false // "vet out at 2"
		case it.kind == itNum && !it.soft && !it.ord && it.clock == 0 || it.qty(money):
			numbers++
		case it.unit == unitBale:
		case rolls[it.s] && it.pig < 0:
			rolled = true
		case sundries[it.s] && it.pig < 0 && it.barrel < 0:
			thing = true
			trade = trade || it.isAny(setOf(sFence, sHose, sWater)) || it.unit != 0
		case (it.is(sFence) || it.is(sPigs)) && k+1 < j && sundries[r.items[k+1].s] && r.items[k+1].gap == gapNone: // "fence insulators", "hog panels"
		case it.s == "at" && !thing: // "5.6 at the gate" is no purchase
			return false
		case it.s == "bought", it.s == "on":
		case it.kind == itDay, it.isAny(setOf(sFiller, sIs, sPay, sOf)) && it.pig < 0:
		default:
			return false
		}
	}
	return thing && numbers == 1 && (rolled || !trade)
}
