package reading

// What is asked of the deed told right before, without naming it: "put 60 gal in the
// wallow. when next", "180 l in the tank. how many days is that".
var (
	whenNext  = phrasesOf("when next, when again, next when, when's next, whens next, when's the next, whens the next, when is next, when is the next, when is the next one, next one when")
	thatLasts = phrasesOf("how many days is that, how long is that, how long will that last, how long does that last, how many days will that last, how long will that do, will that last, will that do, is that enough")
)

// askedNext is the topic of such a question, "" if it is none.
func (r *reader) askedNext(s span) string {
	said := r.said(s)
	next := s.j-s.i <= 5 && saysAny(said, whenNext)
	if !next && !saysAny(said, thatLasts) || r.has(s, sFeed) || r.has(s, sWater) {
		return ""
	}
	for n := len(r.out) - 1; n >= 0; n-- {
		f, ok := r.out[n].Act.(Fact)
		if !ok {
			continue
		}
		topic := deedsDue[string(f.Kind())]
		if f.Kind() == "feed_level" {
			topic = "feed_left"
		}
		if !next && topic != "feed_left" && topic != "water_left" {
			return ""
		}
		return topic
	}
	return ""
}

// namedBehindAsk says that a pig is named behind the words that ask, so that the question
// is of it and not of what is left without it.
func (r *reader) namedBehindAsk(s span) bool {
	asks := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		asks = asks || it.is(sAskSure) && !it.is(sWhatIf) && firstWord(it.s) == "how"
		if asks && it.pig >= 0 {
			return true
		}
	}
	return !asks
}
