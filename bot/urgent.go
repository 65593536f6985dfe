package bot

import (
	"slices"
	"strconv"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// The words that decide whether an emergency is meant.
var (
	pigWords   = wordSet("pig pigs hog hogs piglet piglets sow sows gilt gilts barrow barrows boar boars shoat shoats runt")
	pronouns   = wordSet("he she it they one ones him her them")
	otherWords = wordSet("i we wife husband kid kids son daughter boy boys mom mum dad mother father grandpa grandma neighbor neighbors neighbour neighbours " +
		"butcher dog dogs cat cats horse horses cow cows calf goat goats sheep chicken chickens hen hens truck tractor pump engine motor car fencer charger " +
		"feeder trough barrel gate door table chair bench scale post panel trailer shelter roof phone you people rats mice coyote bear deer fox")
	tells     = wordSet("say says said think thinks call called calls tell tells told text texted see saw find found notice noticed reckon reckons yells report reports guess believe feel fear worry")
	negators  = wordSet("no not never without none isnt arent wasnt werent didnt doesnt dont hasnt havent nothing neither nor zero aint")
	notDenied = wordSet("idea clue doubt sure good well right eating drinking moving getting standing himself herself only just know like")
	joints    = wordSet("and but because so then now while since")
	denials   = wordSet("none healed negative")
	// avoidWords make a sentence one on how to keep an emergency away, or on a
	// day to come.
	avoidWords = wordSet("prevent prevents preventing prevention avoid avoids avoiding vaccine vaccinate vaccinated vaccination vaccines remind reminder")
	longAgo    = wordSet("year years month months summer winter spring fall season batch time")
	contracted = map[string]string{
		"can": "cannot", "could": "couldnt", "will": "wont", "is": "isnt", "are": "arent", "has": "hasnt", "have": "havent", "did": "didnt",
	}
	airWords = wordSet("today tomorrow forecast hit high hi outside air weather humidity hits rh shade sun hot heat low week barrel water tank oven freezer")
)

func wordSet(words string) map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(words) {
		out[w] = true
	}
	return out
}

// urgent is the code of the card that a text asks for, or "". Names of the
// herd's pigs, in any case, stand for a pig, whatever else they mean.
func urgent(text string, names []string) string {
	best := len(urgentPhrases)
	card := ""
	for _, sentence := range urgentSentences(text) {
		words := asPigs(sentence.words, names)
		if elsewhen(words, sentence.asked) {
			continue
		}
		for _, clause := range clauses(words) {
			for i, w := range clause {
				for _, r := range urgentRules[w] {
					if r.rank < best && r.meant(clause, i, len(words)) {
						best, card = r.rank, r.card
					}
				}
			}
			if card == "" {
				card = feverCard(clause, len(words))
			}
		}
	}
	return card
}

// meant reports whether the phrase stands at i and speaks of a pig here and now.
func (r urgentRule) meant(clause []string, i, sentence int) bool {
	end := r.end(clause, i)
	if end < 0 || denied(clause, i, end) {
		return false
	}
	for _, w := range clause {
		if r.unless[w] {
			return false
		}
	}
	for k := i + 1; k < end-1; k++ { // "both kids have a fever"
		if otherWords[clause[k]] && !r.anyone {
			return false
		}
	}
	pig := false
	for k := i - 1; k >= 0; k-- {
		if w := clause[k]; tells[w] || pigWords[w] {
			pig = pigWords[w]
			break
		} else if otherWords[w] {
			return r.anyone
		}
	}
	if !r.pig || pig || sentence-(end-i) <= 1 {
		return true
	}
	for _, w := range clause {
		if pigWords[w] || pronouns[w] {
			return true
		}
	}
	return false
}

// denied reports whether the words before or behind a phrase take it back. A
// denial before it reaches to the next "and", and four words far.
func denied(clause []string, i, end int) bool {
	for k := i - 1; k >= 0 && k >= i-4; k-- {
		if joints[clause[k]] || pigWords[clause[k]] && k < i-1 {
			break
		}
		if negators[clause[k]] {
			return !notDenied[clause[k+1]]
		}
	}
	for k := end; k < len(clause) && k < end+3; k++ {
		if denials[clause[k]] || clause[k] == "gone" && k == len(clause)-1 {
			return true
		}
	}
	return false
}

// elsewhen reports whether a sentence asks about the past, tells of a long past,
// or is on how to keep something away.
func elsewhen(words []string, asked bool) bool {
	for k, w := range words {
		if avoidWords[w] {
			return true
		}
		if k > 0 && longAgo[w] && words[k-1] == "last" {
			return true
		}
		if w == "ago" && k > 0 && longAgo[words[k-1]] {
			return true
		}
		if asked && w == "ever" {
			return true
		}
	}
	if len(words) < 2 {
		return false
	}
	last := words[len(words)-1]
	switch words[0] {
	case "when":
		return words[1] == "did" || words[1] == "was" || words[1] == "were"
	case "how":
		return slices.Contains(words, "did") || slices.Contains(words, "ago")
	case "has", "have", "had", "did", "was", "were":
		return last == "before" || last == "last" || last == "already"
	}
	return false
}

// feverCard is the card for a body temperature of 104 to 110 F or 40 to 43.5 C.
// A fever begins at 104 F (from memory; a slaughter pig at rest has 39.3 C by the
// review in Acta Veterinaria Scandinavica, 2015). Where no pig is spoken of it
// may be the day's temperature: then the card says so.
func feverCard(clause []string, sentence int) string {
	for i, w := range clause {
		if w != "temp" && w != "temperature" && w != "fever" {
			continue
		}
		for k := i + 1; k < len(clause) && k <= i+3; k++ {
			n, err := strconv.ParseFloat(strings.TrimRight(clause[k], "cf"), 64)
			if err != nil || !(n >= 104 && n <= 110 || n >= 40 && n <= 43.5) {
				continue
			}
			pig := w == "fever"
			for _, o := range clause {
				if airWords[o] {
					return ""
				}
				pig = pig || pigWords[o] || pronouns[o] && o != "it" || o == "rectal" || o == "his"
			}
			if pig {
				return "vet_now"
			}
			if n >= 104 && sentence <= 4 {
				return "fever"
			}
		}
	}
	return ""
}

// besideAlarm is the cards that say what an alarm's own card does not: current
// in the animal, a poison, a disease that must be reported.
var besideAlarm = map[string]bool{"shock": true, "notifiable": true, "poison": true}

// alarmed reports whether an emergency is told.
func alarmed(entries []reading.Entry) bool {
	return slices.ContainsFunc(entries, func(e reading.Entry) bool {
		f, ok := e.Act.(reading.Fact)
		if !ok {
			return false
		}
		a, ok := f.Fact.(model.Alarm)
		return ok && !a.Over
	})
}

// urgentCard is the card that the message asks for, in words, or "". An alarm
// brings a card of its own; a reminder, a plan for a day to come or another
// herd's pig asks for none.
func (t *talk) urgentCard() string {
	var names []string
	for _, a := range t.s.Herd.Animals {
		if a.Name != "" {
			names = append(names, a.Name)
		}
	}
	foreign := t.onlyNone()
	for _, e := range t.r.Entries {
		switch a := e.Act.(type) {
		case reading.Fact:
			switch f := a.Fact.(type) {
			case model.Remind:
				return ""
			case model.Arrive:
				names = append(names, f.Animals...)
			}
		case reading.None:
			foreign = foreign && a.Reason == reading.NoneForeign
		case reading.Snooze, reading.Undo, reading.Help:
			return ""
		}
	}
	card := urgent(t.m.Text, names)
	if card == "" || foreign && card != "notifiable" || alarmed(t.r.Entries) && !besideAlarm[card] {
		return ""
	}
	return t.voice().Urgent(card)
}

// onlyNone reports whether the text was read as nothing to record or to answer.
func (t *talk) onlyNone() bool {
	for _, e := range t.r.Entries {
		if _, ok := e.Act.(reading.None); !ok {
			return false
		}
	}
	return true
}
