package reading

import "troughbell/model"

// longestLevelDenied is how many items a text has at most that denies a level.
const longestLevelDenied = 14

// repliedTo makes the messages that the text replies to all that was told before, until
// the returned function is called.
func (r *reader) repliedTo() func() {
	before := r.c.Before
	for k := range r.c.ReplyTo {
		if _, ok := r.c.ReplyTo[k].Entry.Act.(Fact); ok {
			r.c.Before = r.c.ReplyTo
			break
		}
	}
	return func() { r.c.Before = before }
}

// levelDenied reads a text that denies that something is full, as was told before, and ends
// with how full it is: "no it isn't, the float got stuck, it's at a third", "its not. half".
func (r *reader) levelDenied() (Reading, bool) {
	defer r.repliedTo()()
	n := len(r.items)
	if len(r.c.Before) == 0 || n < 3 || n > longestLevelDenied || len(r.c.ReplyTo) == 0 && r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return Reading{}, false
	}
	not, level := -1, -1
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.quest:
			return Reading{}, false
		case not < 0 && k < 4 && (it.s == "almost" || it.s == "nearly" || it.s == "not quite") && k+1 < n && r.items[k+1].is(sFull),
			not < 0 && k < 4 && (notDoneWords[it.s] || it.s == "its not" || it.s == "it's not"):
			not = k
		case not < 0 && !(it.kind == itWord && it.isAny(setOf(sFiller, sNo, sPronoun, sIs))):
			return Reading{}, false
		case not < 0:
		case it.kind == itFrac || it.qty(percent) || it.is(sEmpty) && !it.is(sFiller):
			if level >= 0 {
				return Reading{}, false
			}
			level = k
		case level >= 0 && !(it.kind == itWord && (it.isAny(setOf(sFiller, sFull)) || amendSmall[it.s])):
			return Reading{}, false
		}
	}
	from := r.pastFull(not+1, level)
	if not < 0 || level <= not+1 || from < r.levelFrom(level) && !r.mereReason(from, r.levelFrom(level)) {
		return Reading{}, false
	}
	var rec *Recorded
	for k := range r.c.Before {
		if r.c.Before[k].Text != r.c.Before[0].Text {
			break
		}
		f, ok := r.c.Before[k].Entry.Act.(Fact)
		full := false
		switch v := f.Fact.(type) {
		case model.Water:
			full = v.Full
		case model.Refill:
			full = v.Full
		}
		if !ok || !full {
			continue
		}
		if rec != nil {
			return Reading{}, false
		}
		rec = &r.c.Before[k]
	}
	if rec == nil {
		return Reading{}, false
	}
	all := r.items
	r.items = []item{r.items[level]}
	e, ok := r.patched(rec, rec.Entry.Act.(Fact).Fact, 0, true)
	r.items = all
	if w, is := e.Act.(Fact).Fact.(model.Water); ok && is {
		w.Seen = true // so it is; nobody poured so much
		e.Act = Fact{w}
	}
	return r.replaced(rec, e), ok
}

// pastFull is where the words end that from item i on say but what is denied, and lead to the
// level at item j: "quite full, call it".
func (r *reader) pastFull(i, j int) int {
	for i < j && i < len(r.items) && r.items[i].kind == itWord && (r.items[i].isAny(setOf(sFull, sFiller, sNo, sAbout)) || amendSmall[r.items[i].s]) {
		i++
	}
	return i
}

// levelFrom is where the words that lead up to the level at item k begin.
func (r *reader) levelFrom(k int) int {
	for k > 0 && r.items[k].gap < gapComma && (r.items[k-1].isAny(setOf(sLeft, sIs, sPronoun, sFull, sAbout)) || r.items[k-1].soft) {
		k--
	}
	return k
}
