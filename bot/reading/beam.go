package reading

import "math/bits"

// span is a run of items that one frame explains.
type span struct {
	frame frame
	i, j  int // items[i:j]
}

// What it costs to begin another frame at a boundary, and to stay in one across
// it, by the strength of the boundary.
var (
	cutCost  = [...]float32{gapNone: 1.4, gapAnd: 0.7, gapComma: 0.35, gapSemi: 0.1, gapStop: 0}
	stayCost = [...]float32{gapNone: 0, gapAnd: 0.05, gapComma: 0.2, gapSemi: 0.7, gapStop: 1.6}
)

// missingCost is what an incomplete frame costs.
const missingCost = 3.5

// idleCut is the part of a cut's cost that is not due behind idle words.
const idleCut = 0.75

// beamWidth is how many readings of the text so far are kept.
const beamWidth = 24

// doubt is the part of what an incomplete frame lacks that counts against it
// while its missing parts may still come.
const doubt = 0.6

// hypothesis is one way to cut the text up to an item.
type hypothesis struct {
	score float32
	rank  float32 // score less the doubt
	frame frame
	parts uint8
	start int32 // the first item of the frame
	prev  int32 // the hypothesis before that item, in trail; -1 none
}

// cut divides the items into spans and says which frame each is. It looks at
// each item once, with a bounded number of ways to read what came before.
func (r *reader) cut() []span {
	beam := append(r.beam[:0], hypothesis{frame: fIdle, prev: -1})
	next := r.next[:0]
	trail := r.trail[:0]
	for i := range r.items {
		it := &r.items[i]
		r.features(it)
		forced := r.force[i]
		// The best way to end whatever came before.
		best, bestAt := float32(-1e9), 0
		for k := range beam {
			s := beam[k].score - r.unfinished(&beam[k])
			if beam[k].frame == fIdle && i > 0 && r.items[beam[k].start].gap >= gapStop { // words before a fact cost little
				s += idleCut * cutCost[max(it.gap, it.lead)]
			}
			if s > best {
				best, bestAt = s, k
			}
		}
		next = next[:0]
		opened := int32(-1)
		for f := fIdle; f < numFrames; f++ {
			if forced != 0 && f != frame(forced) || forced == 0 && f >= fSpill { // no word opens what only a whole sentence tells
				continue
			}
			w, part := r.weigh(f, 0)
			if f != fIdle && w <= 0 && forced == 0 {
				continue
			}
			if opened < 0 {
				trail = append(trail, beam[bestAt])
				opened = int32(len(trail) - 1)
			}
			lean := r.bias[f]
			if i > 0 && beam[bestAt].frame == f && lean > 0 {
				lean = 0 // going on with the same is no new reason
			}
			h := hypothesis{score: best + w + lean - cutCost[max(it.gap, it.lead)], frame: f, parts: part, start: int32(i), prev: opened}
			next = keep(next, h)
		}
		for k := range beam {
			h := beam[k]
			if forced != 0 && h.frame != frame(forced) || i == 0 {
				continue
			}
			w, part := r.weigh(h.frame, h.parts)
			if h.frame != fIdle || it.gap < gapStop {
				h.score -= stayCost[it.gap]
			}
			h.score += w
			h.parts |= part
			next = keep(next, h)
		}
		beam, next = next, beam
	}
	best, bestAt := float32(-1e9), 0
	for k := range beam {
		if s := beam[k].score - r.unfinished(&beam[k]); s > best {
			best, bestAt = s, k
		}
	}
	spans := r.spans[:0]
	end := len(r.items)
	for h := &beam[bestAt]; end > 0; {
		spans = append(spans, span{h.frame, int(h.start), end})
		end = int(h.start)
		if h.prev < 0 {
			break
		}
		h = &trail[h.prev]
	}
	for a, b := 0, len(spans)-1; a < b; a, b = a+1, b-1 {
		spans[a], spans[b] = spans[b], spans[a]
	}
	r.beam, r.next, r.trail, r.spans = beam, next, trail, spans
	return spans
}

// keep adds a hypothesis to a bounded beam. Of two in the same frame with the
// same parts the better one stays.
func keep(beam []hypothesis, h hypothesis) []hypothesis {
	var lacks float32
	for _, group := range votes.need[h.frame] {
		if h.parts&group == 0 {
			lacks += missingCost
		}
	}
	h.rank = h.score - doubt*lacks
	worst := -1
	for k := range beam {
		if beam[k].frame == h.frame && beam[k].parts == h.parts {
			if h.score > beam[k].score {
				beam[k] = h
			}
			return beam
		}
		if beam[k].frame != fIdle && (worst < 0 || beam[k].rank < beam[worst].rank) {
			worst = k
		}
	}
	if len(beam) < beamWidth {
		return append(beam, h)
	}
	if h.rank > beam[worst].rank || h.frame == fIdle {
		beam[worst] = h
	}
	return beam
}

// unfinished is what the parts that a frame lacks cost.
func (r *reader) unfinished(h *hypothesis) float32 {
	var cost float32
	for _, group := range votes.need[h.frame] {
		if h.parts&group == 0 {
			cost += missingCost
		}
	}
	return cost
}

// oneAmount are the frames that take one amount; a second one is likely another
// fact.
var oneAmount = [numFrames]bool{fFence: true, fTarget: true, fWallow: true}

// weigh is what the item in hand says for a frame that has the given parts.
func (r *reader) weigh(f frame, parts uint8) (float32, uint8) {
	if f == fIdle {
		return r.idle, 0
	}
	best, part, any := float32(0), uint8(0), false
	table := &votes.of[f]
	for _, x := range r.feats {
		v := &table[x]
		if !v.set {
			continue
		}
		w := v.before
		if parts&bAnchor != 0 {
			w = v.after
		}
		if !any || w > best {
			best, any = w, true
		}
		part |= v.part
	}
	if !any {
		return r.foreign, 0
	}
	if part&bAmount != 0 && parts&bAmount != 0 && oneAmount[f] {
		best -= 0.5
	}
	return best, part
}

// features lists what an item shows, and what it costs a frame or nobody to
// take it.
func (r *reader) features(it *item) {
	r.feats = r.feats[:0]
	add := func(x feature) { r.feats = append(r.feats, x) }
	for w, word := range it.sense {
		for word != 0 {
			bit := trailing(word)
			word &^= 1 << bit
			x := sense(w<<6 + bit)
			if x != sFiller {
				add(feature(x))
			}
		}
	}
	r.idle, r.foreign = 0, -0.25
	switch it.kind {
	case itNum:
		switch {
		case it.soft:
			add(kSoft)
		case it.clock > 0 || it.ord:
			add(kNum)
		default:
			add(kNum)
			if it.v <= float64(max(r.alive, 1)) {
				add(kFew)
			}
		}
		r.idle = -0.25
	case itQty:
		r.idle = -0.4
		switch it.unit.dim() {
		case mass, stones:
			add(kMass)
		case length:
			add(kLength)
		case volume:
			add(kVolume)
		case area:
			add(kArea)
		case temperature:
			add(kTemp)
		case days:
			add(kDays)
		case hours:
			add(kHours)
		case voltage:
			add(kVolt)
		case percent:
			add(kPct)
		case vessel:
			if it.unit != unitBale { // straw is no feed
				add(kVessel)
			}
		case money:
			add(kMoney)
		case nippleCount:
			add(kNipples)
		}
	case itDim:
		r.idle = -0.4
		if it.unit != 0 && (it.unit == unitFt || it.unit == unitM || it.unit.dim() == area || it.unit == mustYd) || it.v3 > 0 {
			add(kSides)
		} else {
			add(kPair)
			if it.unit == 0 {
				add(kSides)
			}
		}
	case itDay:
		add(kDay)
		if it.day.every {
			add(kEvery)
		}
		if it.day.form == daySlash {
			r.idle = -0.05
		}
	case itClock:
		add(kClock)
	case itSlash:
		add(kSlash)
	case itFrac:
		add(kFrac)
		r.idle = -0.2
	case itWord, itName, itThing:
		r.wordFeatures(it, add)
	}
	if it.sense.has(sFiller) {
		r.foreign = -0.02
	}
}

func (r *reader) wordFeatures(it *item, add func(feature)) {
	if it.pig >= 0 || it.stray {
		add(kPig)
		r.idle = -0.5
		r.foreign = strayName
	}
	if it.group >= 0 {
		add(kGroup)
	}
	if it.feeder >= 0 {
		add(kFeeder)
	}
	if it.barrel >= 0 {
		add(kBarrel)
	}
	if it.pen >= 0 {
		add(kPen)
	}
	if it.either {
		add(kEither)
	}
	if it.canon == zoneCanon {
		add(kZoneName)
	}
	if it.unit != 0 {
		switch it.unit.dim() {
		case vessel:
			add(kVessel)
		case mass, volume, length:
			add(kUnitWord)
		case money:
			add(kMoneyWord)
		}
	}
	if it.isAny(ownWords) && it.pig < 0 {
		r.foreign = strayWord
	}
	if len(r.feats) > 0 {
		return
	}
	r.foreign = -0.15
	if it.sense.has(sFiller) {
		return
	}
	if it.known {
		add(kOther)
	} else {
		add(kBlank)
	}
}

// ownWords are words that hardly ever stand in a fact of another kind, and
// strayWord is what it costs one to take them.
var ownWords = setOf(sFence, sWallow, sWorm, sProduct, sNoWater, sNoFeed, sHung, sHumid, sMixed)

const strayWord = -0.9

// strayName is what it costs to take the name of a pig into a fact that is about
// no pig.
const strayName = -1.3

func trailing(w uint64) int { return bits.TrailingZeros64(w) }

var mustYd = mustUnit("yd")
