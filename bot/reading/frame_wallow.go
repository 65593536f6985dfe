package reading

import "troughbell/model"

// fillWallow reads water run into the wallow, or the wallow seen dry.
func (r *reader) fillWallow(s span) {
	if k := r.find(s, sWallow); k >= 0 && r.wallowLevel(k) && !r.has(span{s.frame, k, s.j}, sFill) && !r.has(span{s.frame, k, s.j}, sHose) { // a level that no record holds
		i, j := r.stretch(k)
		r.useAll(span{s.frame, i, j})
		r.emit(Fact{model.Note{What: r.quote(i, j)}}, s)
		return
	}
	w := model.WallowFill{}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(volume):
			w.Litres = model.Float(it.si())
		case it.qty(hours):
			w.Minutes = model.Float(it.si() * 60)
		case it.kind == itWord && it.unit == unitHour && w.Minutes == nil: // "an hour of hose"
			w.Minutes = model.Float(60)
		case it.kind == itNum && !it.soft && k+1 < s.j && (r.items[k+1].s == "h" || r.items[k+1].s == "hr") && r.items[k+1].gap == gapNone:
			w.Minutes = model.Float(it.v * 60)
		case it.kind == itNum && !it.soft && !it.ord && w.Minutes == nil && w.Litres == nil:
			if u := r.carry[volume]; u != 0 && !r.has(s, sHose) { // "30 gallons in the barrel, and 40 more in the wallow"
				w.Litres = model.Float(u.si(it.v))
			} else {
				w.Minutes = model.Float(it.v) // "hosed 30": minutes of hose
			}
		case it.kind == itFrac && k+1 < s.j && r.items[k+1].unit == unitHour, it.kind == itFrac && r.quoteHas(s, "hour"):
			w.Minutes = model.Float(it.v * 60)
		case it.is(sEmpty):
			w.Dry = true
		case it.isAny(setOf(sWallow, sHose, sFill, sPour, sFull, sWater)), it.is(sFiller):
		default:
			continue
		}
		it.used = true
	}
	fresh := false
	for k := s.i; k < s.j; k++ {
		fresh = fresh || r.newWater(k)
	}
	filled := fresh || w.Litres != nil || w.Minutes != nil || r.has(s, sHose) || r.has(s, sFill) || r.has(s, sPour) || r.has(s, sFull)
	if filled {
		w.Dry = false
	} else if !w.Dry && (r.quoteHas(s, "fine", "ok", "okay", "good", "great", "alright", "all right", "still good", "looks good", "holding") || r.has(s, sWell) || s.j < len(r.items) && r.items[s.j].is(sWell) && r.items[s.j].gap == gapNone) {
		r.useAll(s) // all is well with it: nothing to write down
		return
	} else if !w.Dry && !r.has(s, sDone) && (s.j-s.i > 3 || r.wallowAside(s)) {
		r.idleSpan(s)
		return
	}
	for k := s.i; k < s.j; k++ {
		if r.items[k].isAny(setOf(sWallow, sHose, sFill, sPour, sFull, sDone, sLook)) {
			r.items[k].used = true
		}
	}
	if w.Litres != nil {
		w.Minutes = nil
	}
	r.emit(Fact{w}, s)
}

// wallowWater gives an amount of water said right behind a wallow's filling to
// the wallow: "replenished with thirty gallons of water".
func (r *reader) wallowWater(s span) bool {
	k := r.firstQty(s, volume)
	if k < 0 || len(r.out) == 0 || r.items[s.i].gap >= gapComma || r.has(s, sBarrel) || r.hasBarrel(s) {
		return false
	}
	last := &r.out[len(r.out)-1]
	f, ok := last.Act.(Fact)
	if !ok {
		return false
	}
	w, ok := f.Fact.(model.WallowFill)
	if !ok || w.Litres != nil || w.Minutes != nil || last.To > r.items[s.i].from || r.sentenceStart(s.i) == s.i {
		return false
	}
	w.Litres = model.Float(r.items[k].si())
	last.Act = Fact{w}
	r.useAll(s)
	return true
}

func (r *reader) hasBarrel(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].barrel >= 0 {
			return true
		}
	}
	return false
}

// wallowAside says that the wallow is but the place of something else: "dead by
// the wallow", "in the wallow all day".
func (r *reader) wallowAside(s span) bool {
	k := r.find(s, sWallow)
	if k < 0 {
		return false
	}
	for n := k - 1; n >= 0 && n >= k-2 && r.items[n+1].gap < gapComma; n-- {
		switch r.items[n].s {
		case "about", "in", "by", "near", "at", "beside", "around", "from", "into", "of", "next", "behind", "on":
			return true
		}
	}
	return false
}

// wallowDeed says that the stretch of item k up to a comma or an "and", which
// names the wallow, tells of water run into it and of nothing else: "in the wallow
// I add water 15 minutes".
func (r *reader) wallowDeed(k int) bool {
	i, j := r.stretch(k)
	told := false
	for n := i; n < j; n++ {
		it := &r.items[n]
		switch {
		case it.quest, it.pig >= 0, it.feeder >= 0, it.barrel >= 0, it.qty(length), it.qty(area), it.kind == itDim, it.qty(mass), it.is(sNot), it.is(sDeep) && !it.is(sFiller),
			it.isAny(setOf(sBarrel, sFeeder, sFence, sAskSure, sWhatIf, sTopic, sMute, sStop, sRemind, sUndo, sCorrect, sEmpty, sDone)) && !it.isAny(setOf(sFiller, sWallow, sFill, sFull)):
			return false
		case it.qty(hours), it.qty(volume), it.isAny(setOf(sFill, sHose, sWatered)), it.is(sPour) && it.s != "plus", r.newWater(n):
			told = true
		}
	}
	return told
}

// newWater says that item k tells of fresh water: "has new water".
func (r *reader) newWater(k int) bool {
	it := &r.items[k]
	if k == 0 || !it.is(sWater) || it.gap != gapNone {
		return false
	}
	switch r.items[k-1].s {
	case "new", "fresh", "clean", "more", "some fresh", "some new", "some more":
		return true
	}
	return false
}

// wallowLevel says that the stretch of item k, which names the wallow, tells how full
// it was seen to be and of no water run into it: "wallow half full".
func (r *reader) wallowLevel(k int) bool {
	i, j := r.stretch(k)
	level := false
	for n := i; n < j; n++ {
		it := &r.items[n]
		switch {
		case it.quest, it.pig >= 0, it.feeder >= 0, it.barrel >= 0, it.unit == unitHour, it.number() && !it.soft && !it.qty(percent),
			it.kind == itWord && it.isAny(setOf(sFill, sHose, sPour, sWatered, sFeeder, sBarrel, sNot, sPlan, sAskSure)) && !it.is(sFiller) && !it.is(sWallow):
			return false
		case it.kind == itFrac, it.qty(percent), it.is(sLow) && !r.toppedThen(k):
			level = true
		}
	}
	return level
}

// toppedThen says that the sentence of item k tells of something put in: "wallow was low,
// topped it up".
func (r *reader) toppedThen(k int) bool {
	s := span{fWallow, r.sentenceStart(k), r.sentenceEnd(k)}
	return r.has(s, sFill) || r.has(s, sHose) || r.has(s, sPour) || r.has(s, sWatered)
}

// stretch is what stands around item k up to the next comma or "and" on either
// side.
func (r *reader) stretch(k int) (i, j int) {
	i, j = k, k+1
	for i > 0 && r.items[i].gap < gapAnd {
		i--
	}
	for j < len(r.items) && r.items[j].gap < gapAnd {
		j++
	}
	return i, j
}

// hoseDeed says that the stretch of item k tells for how long the hose ran, and
// into no barrel: the wallow is what is hosed.
func (r *reader) hoseDeed(k int) bool {
	i, j := r.stretch(k)
	s := span{fWallow, i, j}
	if r.firstQty(s, hours) < 0 || r.hasBarrel(s) {
		return false
	}
	for n := i; n < j; n++ {
		if it := &r.items[n]; it.quest || it.pig >= 0 || it.feeder >= 0 || it.isAny(setOf(sBarrel, sFeeder, sNot, sPlan, sAskSure)) && !it.is(sFiller) {
			return false
		}
	}
	return r.has(s, sFill) || r.has(s, sPour) || r.has(s, sHose)
}
