package reading

// What is told to be full or soaked in passing, and is neither a feeder nor a barrel:
// "hands full", "full moon tonight", "me - soaked".

// fullInPassing takes the meaning from such words.
func (r *reader) fullInPassing() {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.is(sFull) && it.kind == itWord && lastWord(it.s) == "full":
			if k+1 < len(r.items) && r.items[k+1].gap == gapNone && fullSpans[r.items[k+1].s] {
				r.blank(k)
				r.blank(k + 1)
				continue
			}
			if n := r.fullOwner(k); n >= 0 {
				r.blank(n)
				r.blank(k)
			}
		case it.is(sHose) && lastWord(it.s) == "soaked" && r.personSoaked(k):
			r.blank(k)
		}
	}
}

// fullOwner is the word before the "full" at item k for what is full and holds neither
// feed nor water, -1 where there is none.
func (r *reader) fullOwner(k int) int {
	for n := k - 1; n >= 0 && n >= k-4 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		if it.pig < 0 && it.kind == itWord && fullOwners[it.s] {
			return n
		}
		if it.kind != itWord || !it.isAny(setOf(sIs, sFiller, sPronoun, sAbout)) {
			return -1
		}
	}
	return -1
}

var (
	fullSpans  = setOfWords(split("moon, day, days, week, night, shift, time, house, speed, steam, stop, story, sun, shade, bloom, swing, belly, bellies, stomach, stomachs, inbox, schedule, plate, name, circle, service, blast, throttle, send, on"))
	fullOwners = setOfWords(split("hand, hands, hands were, hands are, plate, inbox, mailbox, voicemail, phone, belly, bellies, stomach, stomachs, tummy, tummies, head, schedule, calendar, day, week, moon, house, freezer, fridge, pockets, bladder, memory, storage, church, room, diary"))
)

// personSoaked says that the "soaked" at item k tells of a person whom the rain met:
// "me soaked", "i am soaked", "got soaked".
func (r *reader) personSoaked(k int) bool {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; n != k && it.isAny(setOf(sWallow, sBarrel, sFeed, sFeeder, sPigs)) && it.kind == itWord || it.number() && !it.soft {
			return false
		}
	}
	if k == 0 {
		return false
	}
	switch firstWord(r.items[k].s) {
	case "is", "are", "was", "were", "got", "am", "get":
		return true
	}
	p := &r.items[k-1]
	switch p.s {
	case "me", "im", "i'm", "am", "i am", "we're", "were", "got", "was", "we are", "myself", "absolutely", "totally", "completely":
		return true
	}
	return p.is(sIs) || lastWord(p.s) == "got"
}
