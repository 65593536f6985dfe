package reading

import "strings"

// otherPigFacts are words that give a number beside a pig's name another meaning
// than its weight or girth.
var otherPigFacts = setOf(sSold, sDied, sLost, sSlaughtered, sHung, sPackaged, sWorm, sTreat, sProduct, sWithdraw, sGave, sNamed, sBorn, sAge, sMove, sBook, sButcher, sTarget, sRemind, sNote, sSick, sGain, sWeather, sTotal, sCrate, sEmptyCrate, sIf, sWhatIf, sNo, sUndo, sPlan, sNot, sHearsay, sBackIn, sOut, sDown)

// nameAndNumber says that a piece of the sentence is but a pig's name and a
// number, which is what it weighs or measures whatever stands beside it: "hazel
// 181 and we bought a gate".
func (r *reader) nameAndNumber(k int) bool {
	it := &r.items[k]
	if it.near || it.init || it.kind != itName || k+1 >= len(r.items) || it.gap < gapAnd && k > 0 || it.quest || int(it.pig) >= r.alive {
		return false
	}
	n := &r.items[k+1]
	if n.gap != gapNone || n.soft || n.ord || n.v < 14 || n.kind != itNum && !n.qty(mass) || n.unit == unitStone || k+2 < len(r.items) && r.items[k+2].gap < gapAnd {
		return false
	}
	for x := r.sentenceStart(k); x < r.sentenceEnd(k); x++ {
		if r.items[x].isAny(otherPigFacts) && !(x < r.clauseFrom(k) || x >= r.clauseEnd(k)) {
			return false
		}
		if r.items[x].isAny(setOf(sSold, sHung, sPackaged, sSlaughtered, sNamed, sBorn, sWorm, sProduct, sTreat, sIf, sWhatIf, sNo, sHearsay)) {
			return false
		}
	}
	return true
}

// headedWeights takes the words that ask for weights where they head a list of them
// for a heading: "weights today 506 257, 507 264".
func (r *reader) headedWeights() {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sTopic) || it.kind != itWord || it.quest || it.isAny(setOf(sAskSure, sWhatIf)) || k != r.sentenceStart(k) || !strings.HasPrefix(it.s, "weight") {
			continue
		}
		n := k + 1
		for n < len(r.items) && (r.items[n].kind == itDay || r.items[n].is(sFiller)) {
			n++
		}
		if n+1 < len(r.items) && r.items[n].pig >= 0 && r.items[n+1].number() && !r.items[n+1].soft {
			it.sense = setOf(sWeigh)
		}
	}
}
