package reading

import "strings"

// muteOpeners begin a wish to hear no more of something.
var muteOpeners = map[string]bool{
	"stop": true, "quit": true, "don't": true, "dont": true, "no": true, "enough": true, "mute": true, "cease": true, "drop": true, "never": true, "lose": true, "skip": true,
	"disable": true, "unsubscribe": true, "shut": true, "leave": true, "kill": true, "cut": true, "lay": true,
}

// muteVerbs are beginnings of words for what troughbell does unasked.
var muteVerbs = []string{"ping", "text", "tell", "remind", "bug", "nag", "ask", "messag", "nudg", "notif", "alert", "bother", "writ", "send", "pester", "warn", "up about", "with the"}

// mutes says that the sentence from item k on is a wish to hear no more about a
// topic: "stop pinging me about the wallow", "no more worming reminders".
func (r *reader) mutes(k int) bool {
	end := r.sentenceEnd(k)
	if r.items[k].quest || end-k > 12 {
		return false
	}
	from, to := r.tokenRange(span{fMute, k, end})
	if w := r.toks[from].s; from+1 < to && (w == "please" || w == "ok" || w == "can" || w == "pls") {
		from++
	}
	if from == to || !muteOpeners[r.toks[from].s] || len(r.aboutNamed(span{fMute, k, end})) == 0 {
		return false
	}
	said := strings.ToLower(r.quote(k, end))
	for _, v := range muteVerbs {
		if strings.Contains(said, " "+v) && r.amountless(k, end) {
			return true
		}
	}
	return false
}

// aboutNamed are the topics that the words of a span name, none of them taken.
func (r *reader) aboutNamed(s span) []string {
	var out []string
	for k := s.i; k < s.j; k++ {
		if about := aboutOf(r.items[k].s); about != "" && about != "own" {
			out = append(out, about)
		}
	}
	return out
}
