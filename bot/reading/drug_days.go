package reading

import "troughbell/model"

// daysOfLabel gives the days that a sentence of its own tells, "the vet said ten
// days", "seven days before meat", to the one drug of the text that lacks them.
func (r *reader) daysOfLabel() {
	at := -1
	for n, e := range r.out {
		if t, ok := drugOf(e); ok {
			if at >= 0 || t.WithdrawalDays != nil {
				return
			}
			at = n
		}
	}
	if at < 0 {
		return
	}
	told := -1
	for k := range r.items {
		it := &r.items[k]
		if it.used || !it.qty(days) || it.from < r.out[at].From || it.v != float64(int(it.v)) || !r.aboutWaiting(k) {
			continue
		}
		if told >= 0 {
			return // two spans of days: which is the label's is not said
		}
		told = k
	}
	if told < 0 {
		return
	}
	r.items[told].used = true
	r.out[at] = waitingFor(r.out[at], int(r.items[told].si()+0.5))
	lo, hi := r.sentenceStart(told), r.sentenceEnd(told)
	for k := lo; k < hi; k++ {
		if r.items[k].kind == itWord {
			r.items[k].used = true
		}
	}
}

func drugOf(e Entry) (model.Treatment, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return model.Treatment{}, false
	}
	switch t := f.Fact.(type) {
	case model.Worm:
		return t.Treatment, true
	case model.Treat:
		return t.Treatment, true
	}
	return model.Treatment{}, false
}

// waitingWords tell that days are those until the meat may be eaten.
var waitingWords = map[string]bool{
	"vet": true, "veterinarian": true, "doctor": true, "label": true, "leaflet": true, "box": true, "bottle": true, "packet": true, "package": true, "tag": true, "tierarzt": true,
	"meat": true, "eat": true, "eating": true, "eaten": true, "sell": true, "slaughter": true, "slaughtered": true, "butcher": true, "butchering": true, "clear": true, "wait": true,
	"waiting": true, "withdrawal": true, "withhold": true, "prescribes": true, "go": true,
}

// aboutWaiting says that the sentence of item k speaks of the label, the vet or of
// when the meat may be eaten, and neither asks nor tells how long a drug is given.
func (r *reader) aboutWaiting(k int) bool {
	s := span{fDrug, r.sentenceStart(k), r.sentenceEnd(k)}
	if r.items[s.i].quest || r.courseDays(k, s) {
		return false
	}
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		if it.is(sWithdraw) || waitingWords[it.s] || waitingWords[firstWord(it.s)] {
			return true
		}
	}
	return false
}

// givenAgain records the drug told of last for the day and hour of a part that names
// nothing else: "yesterday and again today at 6".
func (r *reader) givenAgain(s span) bool {
	if s.frame != fDrug || len(r.out) == 0 {
		return false
	}
	e := r.out[len(r.out)-1]
	if _, ok := drugOf(e); !ok {
		return false
	}
	day, minute, dated := r.when(s, lookBack)
	if !dated || day > r.today || day == e.On && (minute == nil || e.Minute != nil && *minute == *e.Minute) {
		return false
	}
	e.On, e.Minute = day, minute
	r.useAll(s)
	r.out = append(r.out, e)
	return true
}
