package reading

import "troughbell/model"

// Dying, losing and selling are told of much that is no pig.

// machines die without any pig dying.
var machines = setOfWords(split(`truck, mower, tractor, battery, batteries, phone, car, engine, pump, motor, atv, quad, four wheeler, laptop, computer, tv, internet, wifi, radio,
	flashlight, chainsaw, generator, freezer, fridge, dryer, washer, grill, heater, furnace, trailer, van, tree, trees, grass, lawn, garden, tomatoes, plants, corn, beans, hose,
	charger, fence charger, energizer, energiser, cell, cell phone, headlamp, torch, light, bulb, tablet, scale, the scale, tester, thermometer, mixer, grinder, auger, wind, breeze, solar panel, inverter, saw, drill`))

// goneThings takes dying, losing and selling away from what is no pig.
func (r *reader) goneThings() {
	for k := range r.items {
		it := &r.items[k]
		if it.pig < 0 && !it.quest && victimVerbs[it.s] && r.otherVictim(k) {
			it.sense = setOf(sFiller)
			continue
		}
		if it.pig >= 0 || !it.isAny(setOf(sDied, sLost, sSold, sSlaughtered)) {
			continue
		}
		switch {
		case it.s == "put down" && r.laidDown(k):
			it.sense = setOf(sFiller)
		case it.is(sSlaughtered) && (it.s == "killed" || it.s == "dispatched") && r.beastDid(k):
			it.sense = setOf(sDied)
		case it.is(sDied) && r.machineDied(k), (it.is(sSold) || it.is(sLost)) && r.goodsBehind(k):
			it.sense = setOf(sFiller)
		case it.is(sDied) && k > 0 && it.gap == gapNone && (r.items[k-1].s == "no" || r.items[k-1].s == "none" || r.items[k-1].s == "none of them" || r.items[k-1].s == "nobody" || r.items[k-1].s == "no one" || r.items[k-1].s == "nothing"):
			it.sense = setOf(sFiller) // "no deaths"
		}
	}
	r.beastGot()
	r.putToSleep()
}

// putToSleep reads "put otis to sleep" and "buried otis" as deaths.
func (r *reader) putToSleep() {
	for k := 0; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.kind != itWord || it.quest || n.pig < 0 || n.near || n.gap != gapNone {
			continue
		}
		switch {
		case it.s == "buried" && r.closes(k+1):
			it.sense = setOf(sDied)
		case it.s == "put" && saysAny(r.said(span{0, k + 2, min(k+7, r.clauseEnd(k))}), sleepForGood):
			it.sense = setOf(sDied)
			for x := k + 2; x < r.clauseEnd(k); x++ {
				if r.items[x].kind != itDay {
					r.blank(x)
				}
			}
		}
	}
}

var sleepForGood = phrasesOf("to sleep, out of his misery, out of her misery, out of its misery")

// preyers kill pigs.
var preyers = setOfWords(split(`bear, a bear, the bear, coyote, coyotes, a coyote, dog, dogs, the dog, wolf, wolves, cougar, mountain lion, lion, bobcat, fox, foxes, lightning, truck, car, train, boar, wild boar, bears`))

// victimVerbs are verbs of killing that have their victim behind them.
var victimVerbs = setOfWords(split("killed, shot, had to shoot, shoot, butchered, slaughtered, put down, had to put down, dispatched, processed"))

// otherVictim says that what was killed at item k is no pig of the herd: another animal, a
// weed.
func (r *reader) otherVictim(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.group >= 0, it.isAny(whoWords) && it.s != "old", it.number() && !it.soft, firstWord(it.s) == "by":
			return false
		case it.s == "old":
		case it.is(sForeign), preyers[it.s], beasts[it.s]:
			return true
		case !it.is(sFiller) && !it.is(sPronoun) || it.s == "for":
			return r.goodsBehind(k)
		}
	}
	return false
}

// beastDid says that a beast is told to have done what the verb at item k says.
func (r *reader) beastDid(k int) bool {
	from, to := r.clauseFrom(k), r.clauseEnd(k)
	for n := from; n < to; n++ {
		it := &r.items[n]
		if preyers[it.s] && (n < k || n > k && (r.items[n-1].s == "by" || r.items[n-1].s == "by a" || n > 1 && r.items[n-2].s == "by")) {
			it.sense.drop(sForeign)
			return true
		}
	}
	return false
}

// beastGot reads "a coyote got otis" as a death.
func (r *reader) beastGot() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if (it.s == "got" || it.s == "took" || it.s == "ate") && preyers[r.items[k-1].s] && it.gap == gapNone && r.items[k+1].pig >= 0 && !r.items[k+1].near && r.closes(k+1) {
			it.sense = setOf(sDied)
			r.items[k-1].sense.drop(sForeign)
		}
	}
}

// machineDied says that what is told to be dead at item k is a machine or a plant.
func (r *reader) machineDied(k int) bool {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; it.pig >= 0 || it.group >= 0 || it.is(sPigs) || it.soft {
			return false
		}
	}
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		if machines[r.items[n].s] || machines[lastWord(r.items[n].s)] {
			return true
		}
		if !r.items[n].isAny(setOf(sFiller, sIs)) {
			return false
		}
	}
	return false
}

// goodsBehind says that what was sold or lost at item k is a thing: a plain word
// that means nothing here, behind an article or a count.
func (r *reader) goodsBehind(k int) bool {
	if firstWord(r.items[k].s) == "we" && len(r.items) == k+1 {
		return false
	}
	led := lastWord(r.items[k].s) == "a"
	for n := k + 1; n < len(r.items) && n <= k+5 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.group >= 0, it.stray, it.near, it.isAny(whoWords), runts[it.s], it.kind == itFrac, it.qty(money), it.kind == itDay:
			return false
		case it.kind == itQty && it.unit.dim() == vessel, it.kind == itWord && it.unit != 0 && it.unit.dim() == vessel, it.s == "dozen", it.s == "eggs":
			return true
		case it.kind == itNum && (!it.soft || it.v > 1):
			led = true
		case it.s == "the", it.s == "a", it.s == "my", it.s == "our", it.s == "some", it.s == "an", it.s == "old", it.s == "that", it.s == "his", it.s == "her":
			led = true
		case it.kind == itWord && (it.known || led && rarerEnglish().has(it.s)) && it.sense.empty() && it.pen < 0 && it.feeder < 0 && it.barrel < 0 && !buyers[it.s]:
			return led || machines[it.s] || eaten[it.s]
		default:
			return false
		}
	}
	return false
}

// buyers are people that pigs are sold to, and eaten is what is sold from a garden.
var (
	buyers = setOfWords(split(`guy, man, lady, woman, couple, family, people, person, girl, boy, buddy, fella, folks, kid, friend, one`))
	eaten  = setOfWords(split(`tomatoes, eggs, hay, corn, potatoes, beans, honey, milk, pumpkins, apples, plants, flowers, firewood, wood`))
)

// oneOfGroup says that but one pig of a kind is told of: "sold a gilt", "one of the
// little ones died".
func (r *reader) oneOfGroup(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].pig >= 0 {
			return false
		}
	}
	if r.oneOf(s) {
		return true
	}
	for k := max(s.i, 1); k < s.j; k++ {
		if it, p := &r.items[k], &r.items[k-1]; it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow)) && !it.is(sAll) && it.gap == gapNone && (p.soft || p.s == "a" || p.s == "one" || p.s == "another" || p.kind == itNum && p.v == 1 || lastWord(p.s) == "a" || it.isAny(setOf(sBarrow, sGilt, sBoar, sSow)) && r.thatOne(k)) && lastByte(it.s) != 's' {
			return true
		}
		if it := &r.items[k]; onePig[it.s] && it.pig < 0 {
			for n := k - 1; n >= s.i && n >= k-4 && r.items[n+1].gap == gapNone; n-- {
				switch r.items[n].s {
				case "the", "that", "this", "my", "our", "a", "one":
					return true // "sold the little runt pig"
				}
			}
		}
	}
	return false
}

// thatOne says that a word for this one or a size stands before the word for a pig at
// item k: "that big barrow", "the gilt".
func (r *reader) thatOne(k int) bool {
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch r.items[n].s {
		case "that", "this", "the", "a", "my", "our":
			return true
		}
	}
	return false
}

var onePig = setOfWords(split("pig, runt, hog, piggy, piglet, porker, shoat, piggie, pigling, the pig, that pig, this pig, my pig, our pig"))

func lastByte(s string) byte {
	if s == "" {
		return 0
	}
	return s[len(s)-1]
}

// withoutSignsOfDeath drops the signs of illness of pigs that the same text tells to
// have died: "otis died of heat stroke".
func withoutSignsOfDeath(es []Entry) []Entry {
	dead := map[string]bool{}
	for _, e := range es {
		if f, ok := e.Act.(Fact); ok {
			if g, is := f.Fact.(model.Gone); is && (g.How == model.Died || g.How == model.Butchered) {
				for _, n := range g.Animals {
					dead[n] = true
				}
			}
		}
	}
	if len(dead) == 0 {
		return es
	}
	out := es[:0]
	for _, e := range es {
		if f, ok := e.Act.(Fact); ok {
			if s, is := f.Fact.(model.Sick); is && allIn(s.Animals, dead) {
				continue
			}
		}
		out = append(out, e)
	}
	return out
}

func allIn(names []string, of map[string]bool) bool {
	for _, n := range names {
		if !of[n] {
			return false
		}
	}
	return len(names) > 0
}

// laidDown says that something else than a pig was put down: "put down straw for
// otis".
func (r *reader) laidDown(k int) bool {
	if k+1 >= len(r.items) || r.items[k+1].gap != gapNone {
		return false
	}
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.group >= 0 || it.kind == itDay || it.isAny(whoWords) || it.is(sPronoun) {
			return false
		}
		if it.number() || it.kind == itWord && (it.sense.empty() && it.known || it.unit != 0 || it.isAny(setOf(sFeed, sIngredient))) {
			return true
		}
		if !it.is(sFiller) {
			return false
		}
	}
	return false
}
