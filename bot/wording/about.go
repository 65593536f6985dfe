package wording

import "strings"

// aboutWords has the words for what a nudge, a question or a record is about.
var aboutWords = map[string]string{
	"refill": "feed", "feed_level": "feed level", "water": "water", "wallow": "wallow",
	"worm": "worming", "treat": "treatment", "move": "pen move", "weigh": "weighing",
	"book": "butcher booking", "booked": "butcher booking", "heat": "heat", "cold": "cold",
	"level": "levelling feed", "ration": "ration", "stock": "stock", "mixed": "mixing",
	"capacity": "feeder size", "check": "check", "withdrawal": "withdrawal",
	"alarm": "alarm", "catch_up": "catching up", "own": "own reminder", "season": "season",
	"gone": "pig gone", "arrive": "arrival", "spend": "spending", "fence": "fence",
	"weather": "weather", "recipe": "mix", "sick": "sick pig", "away": "being away", "expected": "pigs to come",
	"note": "note", "remind": "reminder", "settings": "setting", "setup": "set-up",
	"import": "import",
}

// kindNouns has the nouns for a kind of record that one asks the history of, where
// they are not those of aboutWords.
var kindNouns = map[string]string{
	"sick": "sickness", "refill": "filling", "water": "filling of water", "wallow": "filling of the wallow", "stock": "purchase",
	"spend": "spending", "gone": "loss or sale", "fence": "fence reading", "move": "move",
}

// KindNoun is the noun for a kind of record in a sentence on what is not there.
func KindNoun(kind string) string {
	if w, ok := kindNouns[kind]; ok {
		return w
	}
	return About(kind)
}

// About is the word for a topic of nudges or a kind of record; what stands
// behind a colon in it ("water:blue") is named too.
func About(topic string) string {
	head, thing, _ := strings.Cut(topic, ":")
	w, ok := aboutWords[head]
	if !ok {
		w = strings.ReplaceAll(head, "_", " ")
	}
	if thing != "" {
		w += " " + thing
	}
	return w
}
