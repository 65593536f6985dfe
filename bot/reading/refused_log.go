package reading

// What is told with the wish that it be not written down: "Tote: not filled. Don't log
// it", "no need to log this but the creek barrel leaks".

// notToLog are the words of such a wish.
var notToLog = phrasesOf(`don't log, dont log, do not log, don't record, dont record, do not record, don't write it down, dont write it down, don't write that down, dont write that down, don't write this down, dont write this down,
	don't note, dont note, do not note, don't save, dont save, don't enter, dont enter, don't put it down, dont put it down, don't put that down, dont put that down, don't put that in, dont put that in, don't put this in,
	don't count that, dont count that, don't count it, dont count it, no need to log, no need to record, no need to write, no need to note, no need to save, needn't log, not for the log, not for the record, not for the book, not for the books, off the record, nothing to log, nothing to record, nothing to write down, keep it off the books, leave that out of the log, leave it out of the log`)

// refusedLog leaves out the sentences that are not to be written down, and says whether
// nothing else is told.
func (r *reader) refusedLog() (Reading, bool) {
	refused := false
	for k := 0; k < len(r.items); {
		end := r.sentenceEnd(k)
		if s := (span{0, k, end}); !r.items[k].quest && saysAny(r.said(s), notToLog) {
			from := k
			if r.onlyTalk(k, end) && end-k <= wishWords && saysFirst(r.said(s), refusers...) {
				for from > 0 {
					from = r.sentenceStart(from - 1)
					if !r.onlyTalk(from, r.sentenceEnd(from)) {
						break
					}
				}
			}
			for n := from; n < end; n++ {
				r.blank(n)
				r.items[n].s = ""
			}
			refused = true
		}
		k = end
	}
	if !refused {
		return Reading{}, false
	}
	for k := range r.items {
		if r.items[k].s != "" {
			return Reading{}, false
		}
	}
	return r.just(None{Reason: NoneNegation}), true
}

// wishWords is how many words a sentence has at most that is but such a wish, and
// refusers are what it begins with.
const wishWords = 9

var refusers = split("don't, dont, do not, please don't, please dont, pls dont, no need, so don't, so dont, but don't, but dont, and don't, not for, off the, nothing to, keep it, leave")
