package reading

import (
	"math/bits"
	"slices"
)

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

// beam is a bounded set of hypotheses, no two of the same frame with the same parts.
type beam struct {
	of    []hypothesis
	keys  []uint16 // frame and parts of each
	worst int      // where the least of a full beam is; -1: not looked for yet
}

func (b *beam) clear() { b.of, b.keys, b.worst = b.of[:0], b.keys[:0], -1 }

// cut divides the items into spans and says which frame each is. It looks at
// each item once, with a bounded number of ways to read what came before.
func (r *reader) cut() []span {
	beam, next := &r.beam, &r.next
	beam.clear()
	beam.keep(hypothesis{frame: fIdle, prev: -1})
	trail := r.trail[:0]
	for i := range r.items {
		it := &r.items[i]
		r.features(it)
		r.countVotes()
		forced := r.force[i]
		// The best way to end whatever came before.
		best, bestAt := float32(-1e9), 0
		for k := range beam.of {
			h := &beam.of[k]
			s := h.score - votes.lacks[h.frame][h.parts]
			if h.frame == fIdle && i > 0 && r.items[h.start].gap >= gapStop { // words before a fact cost little
				s += idleCut * cutCost[max(it.gap, it.lead)]
			}
			if s > best {
				best, bestAt = s, k
			}
		}
		next.clear()
		opened := int32(-1)
		open := func(f frame) {
			w, part := r.weigh(f, 0)
			if f != fIdle && w <= 0 && forced == 0 {
				return
			}
			if opened < 0 {
				trail = append(trail, beam.of[bestAt])
				opened = int32(len(trail) - 1)
			}
			lean := r.bias[f]
			if i > 0 && beam.of[bestAt].frame == f && lean > 0 {
				lean = 0 // going on with the same is no new reason
			}
			next.keep(hypothesis{score: best + w + lean - cutCost[max(it.gap, it.lead)], frame: f, parts: part, start: int32(i), prev: opened})
		}
		if forced != 0 {
			open(frame(forced))
		} else {
			open(fIdle)
			for rest := r.voted & wordFrames; rest != 0; rest &= rest - 1 {
				open(frame(bits.TrailingZeros64(rest)))
			}
		}
		for _, h := range beam.of {
			if forced != 0 && h.frame != frame(forced) || i == 0 {
				continue
			}
			w, part := r.weigh(h.frame, h.parts)
			if h.frame != fIdle || it.gap < gapStop {
				h.score -= stayCost[it.gap]
			}
			h.score += w
			h.parts |= part
			next.keep(h)
		}
		beam, next = next, beam
	}
	best, bestAt := float32(-1e9), 0
	for k := range beam.of {
		h := &beam.of[k]
		if s := h.score - votes.lacks[h.frame][h.parts]; s > best {
			best, bestAt = s, k
		}
	}
	spans := r.spans[:0]
	end := len(r.items)
	for h := &beam.of[bestAt]; end > 0; {
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
	r.trail, r.spans = trail, spans
	return spans
}

// keep adds a hypothesis to a bounded beam. Of two in the same frame with the
// same parts the better one stays.
func (b *beam) keep(h hypothesis) {
	h.rank = h.score - doubt*votes.lacks[h.frame][h.parts]
	key := uint16(h.frame)<<8 | uint16(h.parts)
	if k := slices.Index(b.keys, key); k >= 0 {
		if h.score > b.of[k].score {
			b.of[k], b.worst = h, -1
		}
		return
	}
	if len(b.of) < beamWidth {
		b.of, b.keys = append(b.of, h), append(b.keys, key)
		return
	}
	if b.worst < 0 {
		for k := range b.of {
			if b.of[k].frame != fIdle && (b.worst < 0 || b.of[k].rank < b.of[b.worst].rank) {
				b.worst = k
			}
		}
	}
	if h.rank > b.of[b.worst].rank || h.frame == fIdle {
		b.of[b.worst], b.keys[b.worst], b.worst = h, key, -1
	}
}

// oneAmount are the frames that take one amount; a second one is likely another
// fact.
var oneAmount = [numFrames]bool{fFence: true, fTarget: true, fWallow: true}

// weight is what the features of an item say for a frame: the best vote, and the
// parts that they give.
type weight struct {
	before, after float32
	part          uint8
}

// wordFrames are the frames that a word may open; the others are told by a whole
// sentence.
const wordFrames = (1<<fSpill - 1) &^ (1 << fIdle)

// countVotes counts what the features of the item in hand say for each frame.
func (r *reader) countVotes() {
	r.voted = 0
	for _, x := range r.feats {
		for k := range votes.by[x] {
			v := &votes.by[x][k]
			w := &r.weights[v.frame]
			if bit := uint64(1) << v.frame; r.voted&bit == 0 {
				r.voted |= bit
				*w = weight{v.before, v.after, v.part}
				continue
			}
			w.before, w.after, w.part = max(w.before, v.before), max(w.after, v.after), w.part|v.part
		}
	}
}

// weigh is what the item in hand says for a frame that has the given parts.
func (r *reader) weigh(f frame, parts uint8) (float32, uint8) {
	if f == fIdle {
		return r.idle, 0
	}
	if r.voted&(1<<f) == 0 {
		return r.foreign, 0
	}
	w := r.weights[f]
	best := w.before
	if parts&bAnchor != 0 {
		best = w.after
	}
	if w.part&bAmount != 0 && parts&bAmount != 0 && oneAmount[f] {
		best -= 0.5
	}
	return best, w.part
}

func (r *reader) show(x feature) { r.feats = append(r.feats, x) }

// features lists what an item shows, and what it costs a frame or nobody to
// take it.
func (r *reader) features(it *item) {
	r.feats = r.feats[:0]
	for w, word := range it.sense {
		for word != 0 {
			bit := trailing(word)
			word &^= 1 << bit
			x := sense(w<<6 + bit)
			if x != sFiller {
				r.show(feature(x))
			}
		}
	}
	r.idle, r.foreign = 0, -0.25
	switch it.kind {
	case itNum:
		switch {
		case it.soft:
			r.show(kSoft)
		case it.clock > 0 || it.ord:
			r.show(kNum)
		default:
			r.show(kNum)
			if it.v <= float64(max(r.alive, 1)) {
				r.show(kFew)
			}
		}
		r.idle = -0.25
	case itQty:
		r.idle = -0.4
		switch it.unit.dim() {
		case mass, stones:
			r.show(kMass)
		case length:
			r.show(kLength)
		case volume:
			r.show(kVolume)
		case area:
			r.show(kArea)
		case temperature:
			r.show(kTemp)
		case days:
			r.show(kDays)
		case hours:
			r.show(kHours)
		case voltage:
			r.show(kVolt)
		case percent:
			r.show(kPct)
		case vessel:
			if it.unit != unitBale { // straw is no feed
				r.show(kVessel)
			}
		case money:
			r.show(kMoney)
		case nippleCount:
			r.show(kNipples)
		}
	case itDim:
		r.idle = -0.4
		if it.unit != 0 && (it.unit == unitFt || it.unit == unitM || it.unit.dim() == area || it.unit == mustYd) || it.v3 > 0 {
			r.show(kSides)
		} else {
			r.show(kPair)
			if it.unit == 0 {
				r.show(kSides)
			}
		}
	case itDay:
		r.show(kDay)
		if it.day.every {
			r.show(kEvery)
		}
		if it.day.form == daySlash {
			r.idle = -0.05
		}
	case itClock:
		r.show(kClock)
	case itSlash:
		r.show(kSlash)
	case itFrac:
		r.show(kFrac)
		r.idle = -0.2
	case itWord, itName, itThing:
		r.wordFeatures(it)
	}
	if it.sense.has(sFiller) {
		r.foreign = -0.02
	}
}

func (r *reader) wordFeatures(it *item) {
	if it.pig >= 0 || it.stray {
		r.show(kPig)
		r.idle = -0.5
		r.foreign = strayName
	}
	if it.group >= 0 {
		r.show(kGroup)
	}
	if it.feeder >= 0 {
		r.show(kFeeder)
	}
	if it.barrel >= 0 {
		r.show(kBarrel)
	}
	if it.pen >= 0 {
		r.show(kPen)
	}
	if it.either {
		r.show(kEither)
	}
	if it.canon == zoneCanon {
		r.show(kZoneName)
	}
	if it.unit != 0 {
		switch it.unit.dim() {
		case vessel:
			r.show(kVessel)
		case mass, volume, length:
			r.show(kUnitWord)
		case money:
			r.show(kMoneyWord)
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
		r.show(kOther)
	} else {
		r.show(kBlank)
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
