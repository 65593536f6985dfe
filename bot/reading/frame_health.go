package reading

import (
	"strings"

	"troughbell/model"
)

// fillSick reads a pig seen unwell, or well again.
func (r *reader) fillSick(s span) {
	well := false
	first, last := -1, -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.is(sSick) || it.is(sWell) {
			well = well || it.is(sWell) && !it.is(sSick)
			if first < 0 {
				first = k
			}
			last = k
			it.used = true
		}
	}
	if first < 0 {
		r.idleSpan(s) // names alone say nothing of how they are
		return
	}
	if open := r.openAlarm(model.AlarmDown); well && open != nil && r.getsUp(s) {
		r.useAll(s)
		r.emit(Fact{model.Alarm{What: model.AlarmDown, Over: true, Animals: open.Animals}}, s)
		return
	}
	sel := r.selectPigs(s.i, s.j)
	if first > s.i && sel.any {
		if own := r.selectPigs(s.i, first); len(own.pigs) > 0 && !own.all && r.find(span{s.frame, first, s.j}, sRest) >= 0 {
			sel = own // "brick's eating again, the rest are fine too"
		}
	}
	if named := r.lastNamed(s.i); !sel.any && named >= 0 && s.i > 0 && r.items[s.i-1].pig == named {
		sel = selection{pigs: []int16{named}, any: true} // the name stands right before
	}
	if !sel.any && len(r.subject) > 0 {
		sel = selection{pigs: append([]int16(nil), r.subject...), any: true}
	}
	if !sel.any && r.alive == 1 {
		sel = selection{pigs: []int16{0}, any: true}
	}
	note := r.sickNote(s, first, last)
	act := func(n []string) Act { return Fact{model.Sick{Animals: n, Note: note, Well: well}} }
	if sel.all && r.anyNamed() && r.alive > 1 && r.quoteHas(s, "one", "a pig") && !r.quoteHas(s, "every one") && !r.has(s, sAll) {
		r.whichPig("sick", s, r.draft(act(nil), s), act) // "one of the pigs is limping"
		return
	}
	if r.oneOf(s) && r.anyNamed() && len(sel.pigs) > 1 && !sel.all { // "one of the little ones is limping"
		var named []int16
		for k := s.i; k < s.j; k++ {
			if it := &r.items[k]; it.pig >= 0 && !it.near {
				named = append(named, it.pig)
			}
		}
		if len(named) != 1 {
			r.whichPig("sick", s, r.draft(act(nil), s), act)
			return
		}
		sel = selection{pigs: named, any: true}
	}
	if !sel.any || sel.lost {
		if r.quoteHas(s, "one", "1", "someone", "somebody") && !r.anyNamed() || !r.anyNamed() {
			r.emit(act([]string{model.All}), s)
			return
		}
		if !r.strongSick(s) {
			r.idleSpan(s)
			return
		}
		r.whichPig("sick", s, r.draft(act(nil), s), act)
		return
	}
	r.remember(sel)
	r.emit(act(sel.names(r)), s)
}

// oneOf says that but one of several is spoken of.
func (r *reader) oneOf(s span) bool {
	for k := max(s.i-3, r.sentenceStart(s.i)); k+1 < s.j; k++ {
		if it := &r.items[k]; (it.soft || it.kind == itNum && it.v == 1 || it.s == "one") && r.items[k+1].is(sOf) && r.items[k+1].gap == gapNone || it.s == "one of" || it.s == "one of the" {
			return true
		}
	}
	return false
}

// openAlarm is the latest alarm of a kind that nothing has ended since, of the
// last days; nil if there is none.
func (r *reader) openAlarm(what string) *model.Alarm {
	alarms := r.c.Herd.Alarms
	for k := len(alarms) - 1; k >= 0; k-- {
		if a := &alarms[k]; a.F.What == what {
			if a.F.Over || r.today-a.On > alarmLasts {
				return nil
			}
			return &a.F
		}
	}
	return nil
}

// alarmLasts is for how many days words without a subject, such as "all in",
// may still speak of an alarm.
const alarmLasts = 5

// getsUp says that a pig is told to be on its legs again.
func (r *reader) getsUp(s span) bool {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "up again", "back up", "up and about", "on her feet", "on his feet", "on its feet", "standing again", "up and walking", "back on her feet", "back on his feet", "better", "fine again", "ok again", "okay again", "recovered", "walking again":
			return true
		}
	}
	return false
}

// strongSick says that a word of the span is a sign of illness and little else,
// so that asking which pig is worth it.
func (r *reader) strongSick(s span) bool {
	return r.quoteHas(s, "limping", "lame", "cough", "coughing", "scours", "scouring", "diarrhea", "off feed", "limp", "panting", "fever", "sick", "not eating", "the runs")
}

// sickNote is the person's own words on what was seen, without the names.
func (r *reader) sickNote(s span, first, last int) string {
	if first < 0 {
		return ""
	}
	from, to := first, last+1
	for to < s.j && r.items[to].gap < gapStop && r.items[to].pig < 0 && r.items[to].kind != itDay && r.items[to].kind != itClock {
		to++
	}
	for from > s.i && r.items[from].gap < gapComma {
		p := &r.items[from-1]
		if p.pig >= 0 || p.group >= 0 || p.isAny(whoWords) || p.is(sPronoun) || p.kind == itDay || p.kind == itClock || p.s == "is" || p.s == "has" || p.s == "was" || p.s == "a" || p.s == "are" || p.s == "got" || p.s == "have" {
			break
		}
		from--
	}
	for k := from; k < to; k++ {
		r.items[k].used = true
	}
	return strings.Trim(r.quote(from, to), " ,;.-")
}

// fillAlarm reads emergencies. They are recorded at once and never asked about
// where the words are clear.
func (r *reader) fillAlarm(s span) {
	sel := r.selectPigs(s.i, s.j)
	var names []string
	if sel.any && !sel.all && len(sel.pigs) > 0 {
		names = sel.names(r)
	}
	a := model.Alarm{Animals: names}
	switch {
	case r.has(s, sNoWater):
		a.What, a.Animals = model.AlarmNoWater, nil
	case r.has(s, sNoFeed):
		a.What, a.Animals = model.AlarmNoFeed, nil
	case r.has(s, sBackIn) && !r.has(s, sOut):
		a.What, a.Over = model.AlarmOut, true
	case r.has(s, sFence) && r.has(s, sDown) && r.find(s, sFence) < r.find(s, sDown) && r.find(s, sDown)-r.find(s, sFence) <= 2:
		a.What, a.Animals = model.AlarmFence, nil
	case r.has(s, sDown) && (sel.any || len(r.subject) > 0):
		a.What = model.AlarmDown
		if !sel.any && len(r.subject) > 0 {
			a.Animals = selection{pigs: r.subject}.names(r)
		}
	case r.has(s, sFence) && !sel.any:
		a.What = model.AlarmFence
	case r.has(s, sOut):
		a.What = model.AlarmOut
	case r.has(s, sDown):
		a.What = model.AlarmDown
	default:
		r.idleSpan(s)
		return
	}
	if a.What == model.AlarmDown && r.quoteHas(span{s.frame, r.sentenceStart(s.i), s.j}, "put", "had to put") && len(a.Animals) > 0 { // "had to put bram down"
		r.useAll(s)
		r.remember(sel)
		r.emit(Fact{model.Gone{Animals: a.Animals, How: model.Died}}, s)
		return
	}
	since := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sOut, sDown, sNoWater, sNoFeed, sBackIn, sFence)) || it.kind == itNum && it.v <= float64(max(r.alive, 1)) {
			it.used = true
		}
		since = since || it.s == "since"
	}
	r.remember(sel)
	if since { // "no water since yesterday" is an alarm of today
		r.emitOn(Fact{a}, s, r.today, nil, false)
		return
	}
	r.emit(Fact{a}, s)
}

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
		case it.kind == itNum && !it.soft && !it.ord:
			kv = it.v
			if kv >= 500 {
				kv /= 1000
			}
		default:
			continue
		}
		it.used = true
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
	if at := r.find(s, sFence); r.find(s, sDead) > at || r.find(s, sDown) > at || r.find(s, sOut) > at {
		r.markFence(s)
		r.emit(Fact{model.Alarm{What: model.AlarmFence}}, s)
		return
	}
	r.idleSpan(s)
}

func (r *reader) markFence(s span) {
	for k := s.i; k < s.j; k++ {
		if r.items[k].isAny(setOf(sFence, sDead)) {
			r.items[k].used = true
		}
	}
}

// fillWeather reads a day's high and low and its humidity.
func (r *reader) fillWeather(s span) {
	w := model.Weather{}
	scale := unitF
	if r.units == model.Metric {
		scale = unitC
	}
	celsius := func(v float64, u unitID, minus bool) float64 {
		if minus {
			v = -v
		}
		if u != unitF && u != unitC {
			u = scale
		}
		return u.si(v)
	}
	for k := s.i; k < s.j; k++ { // a stated scale holds for the whole span
		if it := &r.items[k]; it.unit == unitF || it.unit == unitC {
			scale = it.unit
		}
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		prev, next := &item{}, &item{}
		if k > s.i {
			prev = &r.items[k-1]
		}
		if k+1 < s.j {
			next = &r.items[k+1]
		}
		prev2 := &item{}
		if k > s.i+1 {
			prev2 = &r.items[k-2]
		}
		switch {
		case it.kind == itQty && it.unit == unitPct, it.kind == itNum && (prev.is(sHumid) || prev2.is(sHumid) && prev.is(sFiller) || next.is(sHumid) && !(k+2 < s.j && r.items[k+2].kind == itNum)):
			w.RhPct = model.Float(it.v)
		case it.kind == itSlash || it.kind == itDay && it.day.form == daySlash && w.HighC == nil && r.noDegrees(s):
			w.HighC, w.LowC = model.Float(celsius(it.v, it.unit, false)), model.Float(celsius(it.v2, it.unit, false))
			if *w.LowC > *w.HighC {
				w.HighC, w.LowC = w.LowC, w.HighC
			}
		case it.kind == itNum && !it.soft && !it.ord, it.qty(temperature):
			v := celsius(it.v, it.unit, it.minus)
			low := prev.is(sLow) || prev2.is(sLow) && (prev.is(sFiller) || prev.is(sIs)) || next.is(sLow) && !next.is(sLeft) && next.gap == gapNone && !(k+2 < s.j && r.items[k+2].kind == itNum)
			high := prev.is(sHigh) || next.is(sHigh) && next.gap == gapNone && !(k+2 < s.j && r.items[k+2].kind == itNum)
			switch {
			case low && !high && w.LowC == nil:
				w.LowC = model.Float(v)
			case w.HighC == nil:
				w.HighC = model.Float(v)
			case w.LowC == nil:
				w.LowC = model.Float(v)
				if *w.LowC > *w.HighC && !r.has(s, sHigh) {
					w.HighC, w.LowC = w.LowC, w.HighC
				}
			}
		case it.isAny(setOf(sWeather, sHigh, sLow, sHumid, sHere)):
			it.used = true
			continue
		default:
			continue
		}
		it.used = true
	}
	if k := r.firstAny(s); k >= 0 && r.units == model.US && !r.has(s, sWeather) && !r.has(s, sHigh) && !r.has(s, sLow) && !r.has(s, sHumid) && r.items[k].v < 20 {
		r.idleSpan(s) // a bare number and a day: no weather to speak of
		return
	}
	if w.HighC == nil && w.LowC == nil && w.RhPct == nil || w.Check() != nil {
		r.idleSpan(s)
		return
	}
	r.emit(Fact{w}, s)
}

func (r *reader) noDegrees(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].qty(temperature) || r.items[k].kind == itNum || r.items[k].kind == itSlash {
			return false
		}
	}
	return true
}

// askAlarm asks what a lone "out" or "down" means, the emergency first.
func (r *reader) askAlarm(down bool) {
	s := span{fAlarm, 0, len(r.items)}
	what := model.AlarmOut
	if down {
		what = model.AlarmDown
	}
	e := r.draft(Fact{model.Alarm{What: what}}, s)
	choices := []Choice{{Code: "alarm_" + what, Entries: []Entry{e}}}
	if !down {
		choices = append(choices,
			Choice{Code: "alarm_no_water", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmNoWater}}, s)}},
			Choice{Code: "alarm_no_feed", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmNoFeed}}, s)}})
	} else {
		choices = append(choices, Choice{Code: "alarm_fence", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmFence}}, s)}})
	}
	choices = append(choices, Choice{Code: "nothing"})
	r.clarify(Clarify{About: "alarm", Code: "out_what", Draft: []Entry{e}, Choices: choices}, s)
}

// firstAny finds the first bare number, used or not; -1 if none.
func (r *reader) firstAny(s span) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itNum {
			return k
		}
	}
	return -1
}
