package reading

import (
	"strconv"
	"strings"

	"troughbell/model"
)

// earliestSeason is the first year that counts as one.
const earliestSeason = 2000

// Words around the name of a season.
var (
	lastWords   = setOfWords(split("last, previous, past, prior"))
	seasonNouns = setOfWords(split("season, season's, seasons, year, year's, years, batch, batch's"))
	ofSeasons   = setOfWords(split("of, in, for, from, the, our, my"))
)

// takeSeason takes the name of a season out of words: "last season", "season 2025",
// "last year's". named says that a word says that it is one, as against a bare year.
func takeSeason(words []string, today model.Day) (rest []string, season string, named bool) {
	thisYear, _, _ := today.Date()
	for i, w := range words {
		w = strings.TrimRight(w, ".?!,:;")
		bare := strings.TrimSuffix(w, "'s")
		from, to := i, i+1
		switch {
		case isSeason(bare, thisYear):
			season = bare
			if i > 0 && seasonNouns[words[i-1]] {
				from, named = i-1, true
			} else if to < len(words) && seasonNouns[words[to]] {
				to, named = i+2, true
			}
		case lastWords[w] && to < len(words) && seasonNouns[strings.TrimRight(words[to], ".?!,:;")]:
			season, named = LastSeason, true
			if strings.HasPrefix(words[to], "year") {
				season = strconv.Itoa(thisYear - 1)
			}
			to = i + 2
		default:
			continue
		}
		for from > 0 && ofSeasons[words[from-1]] {
			from--
		}
		return append(append([]string(nil), words[:from]...), words[to:]...), season, named
	}
	return words, "", false
}

// seasonHint says that a text may name a season.
func seasonHint(text string) bool {
	for w := range lastWords {
		if strings.Contains(text, w) {
			return true
		}
	}
	return strings.Contains(text, "20")
}

// isSeason says that a word is a year of which there may be a season.
func isSeason(word string, thisYear int) bool {
	if len(word) != 4 || !isDigit(word[0]) { // most words are none, and an error costs more than to look
		return false
	}
	year, err := strconv.Atoi(word)
	return err == nil && year >= earliestSeason && year <= thisYear
}

// ofSeason is what else a text says that asks for a season that is over; "" only
// beside a word that says that a season is meant. The answer is a report unless a
// topic stands there.
var ofSeason = map[string]string{
	"": "", "report": "", "season report": "", "report please": "", "send report": "", "send me report": "", "send": "", "send me": "",
	"show me": "", "show": "", "how did go": "", "how did it go": "", "how did we do": "", "how did they do": "", "how did pigs do": "",
	"how did pigs go": "", "how was": "", "how was it": "", "how were pigs": "", "how did things go": "", "summary": "", "what happened": "",
	"how did": "", "so how did go": "", "how'd go": "", "how'd we do": "", "overview": "", "look back at": "", "numbers": "", "results": "",
	"cost": "cost", "costs": "cost", "what did cost": "cost", "what did it cost": "cost", "how much did cost": "cost", "how much did it cost": "cost",
	"what did pigs cost": "cost", "what did we spend": "cost", "how much did we spend": "cost", "spending": "cost", "money": "cost",
	"what did we pay": "cost", "what did they cost": "cost",
	"growth": "growth", "how did they grow": "growth", "how did pigs grow": "growth", "weights": "growth", "calendar": "today",
}

// seasonAsked reads a text that is nothing but a question about a season that is
// over. Pictures of one are read with the others.
func (r *reader) seasonAsked() (Reading, bool) {
	const longest = 80
	if len(r.text) > longest || !seasonHint(r.plain) {
		return Reading{}, false
	}
	text := strings.ReplaceAll(strings.ToLower(r.text), "’", "'")
	words, season, named := takeSeason(strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune(" ,.!?:;/\t\n", c) }), r.today)
	if season == "" {
		return Reading{}, false
	}
	kept := words[:0:0]
	for _, w := range words {
		if w != "the" && w != "our" && w != "my" {
			kept = append(kept, w)
		}
	}
	rest := strings.Join(kept, " ")
	topic, ok := ofSeason[rest]
	if !ok || rest == "" && !named || r.onLabel() {
		return Reading{}, false
	}
	if topic == "" {
		return r.just(Do{What: "report", Arg: season}), true
	}
	return r.just(Ask{Topic: topic, Season: season, Picture: topic != "cost"}), true
}
