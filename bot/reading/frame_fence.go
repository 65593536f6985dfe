package reading

import (
	"strings"

	"troughbell/model"
)

// fillFence reads a voltage, or a dead fence.
func (r *reader) fillFence(s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		kv := -1.0
		switch {
		case it.qty(voltage):
			kv = it.si()
			if it.unit == unitV && it.v <= 20 {
				kv = it.v // "5.8 v" on a fence is kilovolts
			}
		case it.kind == itNum && !it.soft && !it.ord && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].kind == itWord && r.items[k+1].sense.empty() && r.items[k+1].unit == 0 && len(r.items[k+1].s) > 3:
			continue // "down in 2 spots"
		case it.kind == itNum && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].isAny(setOf(sPartOf, sPigs)):
			continue // "two of em found the gap in the fence"
		case it.kind == itNum && !it.soft && !it.ord:
			kv = it.v
			if kv >= 500 {
				kv /= 1000
			}
		default:
			continue
		}
		it.used = true
		if now := r.fenceNow(k); now > 0 { // "was down to 1.2, cleared the grass, now 5.9"
			kv = r.items[now].v
			if kv >= 500 {
				kv /= 1000
			}
			r.useAll(span{s.frame, k, now + 1})
			r.skip, s.j = now, max(s.j, now+1)
		}
		if kv > 15 {
			c := Clarify{About: "fence", Code: "implausible_fence", Q: []model.Quantity{{Value: kv, Unit: model.Kilovolts}}, Want: "kv", Draft: []Entry{r.draft(Fact{model.Fence{}}, s)}}
			if v := kv / 10; v <= 12 {
				c.Choices = append(c.Choices, Choice{Code: "meant", Q: []model.Quantity{{Value: v, Unit: model.Kilovolts}}, Entries: []Entry{r.draft(Fact{model.Fence{Kv: v}}, s)}})
			}
			r.clarify(c, s)
			return
		}
		r.markFence(s)
		r.emit(Fact{model.Fence{Kv: kv}}, s)
		return
	}
	if at := r.find(s, sFence); r.find(s, sDead) > at || r.find(s, sDead) >= 0 && firstWord(r.items[r.find(s, sDead)].s) == "no" || r.find(s, sDown) > at || r.find(s, sOut) > at {
		r.markFence(s)
		r.emit(Fact{model.Alarm{What: model.AlarmFence}}, s)
		return
	}
	r.idleSpan(s)
}

// fenceNow is a later reading of the fence in the sentence of the one at item k,
// told as what it is now; 0 if there is none.
func (r *reader) fenceNow(k int) int {
	for n := k + 1; n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sFeed, sBarrel, sWater, sWeather, sHigh, sWeigh, sGirth)) {
			return 0
		}
		if it.kind != itNum && !it.qty(voltage) || it.soft || it.ord {
			continue
		}
		for p := n - 1; p > k && p >= n-labelReach; p-- {
			if r.items[p].is(sNow) || strings.HasPrefix(r.items[p].s, "now ") || r.items[p].s == "back up to" || r.items[p].s == "up to" || r.items[p].s == "back to" {
				return n
			}
		}
		return 0
	}
	return 0
}

func (r *reader) markFence(s span) {
	for k := s.i; k < s.j; k++ {
		if r.items[k].isAny(setOf(sFence, sDead)) {
			r.items[k].used = true
		}
	}
}

// otherVolts says that the sentence of item k tells another reading of the fence, so
// that the one at k is what it was before.
func (r *reader) otherVolts(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; n != k && (it.kind == itNum && !it.soft && !it.ord && it.v < 15 || it.qty(voltage)) {
			return true
		}
	}
	return false
}
