package reading

import (
	"strings"

	"troughbell/model"
)

// Words of a text that asks for a picture. A text is one if nothing else is in it
// but these and the herd's own names: "took a picture of dot" tells something.
var (
	pictureWords = setOfWords(split("picture, pictures, pic, pics, chart, charts, graph, graphs, plot, plots, diagram, curve, curves, drawing, /picture"))
	// Shown words ask for a picture of a course without a word for it.
	showWords   = setOfWords(split("show, draw, see, display"))
	besideWords = setOfWords(split(`me, us, make, give, send, get, can, could, you, we, i, please, pls, plz, want, would, like, i'd, id, let,
		let's, lets, day, days, a, an, the, my, our, of, for, with, in, on, as, to, and, over, time, how, all, now, again, them, they, it, its, is, are, one, new, look, at,
		have, need, latest, current, so, far, thanks, mode, version, colours, colors, background, pigs, pig, hogs, herd, till, until, each, every`))
	darkWords  = setOfWords(split("dark, black, night"))
	lightWords = setOfWords(split("light, white, bright"))
)

// drawnTopics says by which words a picture's topic is known, the first that is
// there; the words alone that are a topic to look at come with "show".
var drawnTopics = []struct {
	topic string
	shown bool // "show" with it is enough
	words map[string]bool
}{
	{"cost", false, setOfWords(split("cost, costs, costing, money, spending, spendings, spent, expenses, bills, price"))},
	{"heat", false, setOfWords(split("heat, hot, weather, temperature, temperatures, thi, highs, index"))},
	{"water_left", false, setOfWords(split("water, waters, barrel, barrels, drinkers, tank, tanks"))},
	{"feed_left", false, setOfWords(split("feed, feeder, feeders, hopper, hoppers, food, grain, level, levels, feeding, refills, pours"))},
	{"today", true, setOfWords(split("calendar, season, year, schedule, weeks, dates, timeline, overview, month, months"))},
	{"growth", true, setOfWords(split("growth, growing, grow, gain, gains"))},
	{"growth", false, setOfWords(split("weight, weights, weighing, weighings, size, butcher, finish, target"))},
}

// drawnOfSeasons are the topics of pictures of a season that is over.
var drawnOfSeasons = map[string]bool{"growth": true, "today": true, "cost": true}

// notDrawn follow a calendar that is a file for another program.
var notDrawn = setOfWords(split("file, files, export, ical, ics, icalendar, link, subscribe"))

// pictureStyles are texts that say how pictures are to look from now on.
var pictureStyles = map[string]string{
	"dark pictures": model.DarkPictures, "pictures dark": model.DarkPictures, "dark charts": model.DarkPictures, "dark mode": model.DarkPictures,
	"always dark pictures": model.DarkPictures, "make pictures dark": model.DarkPictures, "make the pictures dark": model.DarkPictures,
	"light pictures": model.LightPictures, "pictures light": model.LightPictures, "light charts": model.LightPictures, "light mode": model.LightPictures,
	"always light pictures": model.LightPictures, "make pictures light": model.LightPictures, "make the pictures light": model.LightPictures,
}

// pictureHints are parts of the words without which no text asks for a picture.
var pictureHints = []string{"pic", "chart", "graph", "plot", "diagram", "curve", "draw", "show", "see", "display", "calendar", "dark m", "light m"}

// pictured reads a text that is nothing but the wish for a picture.
func (r *reader) pictured() (Reading, bool) {
	if !r.mayBePictured() {
		return Reading{}, false
	}
	if style, ok := pictureStyles[r.plain]; ok {
		return r.just(Fact{model.Setting{Key: model.SetPictures, Text: style}}), true
	}
	a := Ask{Picture: true}
	inWords, season, _ := takeSeason(strings.Fields(r.plain), r.today)
	a.Season = season
	rest := r.withoutNames(&a, strings.Join(inWords, " "))
	words := strings.FieldsFunc(rest, func(c rune) bool { return strings.ContainsRune(" ,.!?:;-\t\n", c) })
	if len(words) == 0 && len(a.Animals) == 0 || len(words) > 14 {
		return Reading{}, false
	}
	picture, show, level := false, false, ""
	topics := map[int]bool{}
	for _, w := range words {
		w = strings.TrimSuffix(strings.TrimSuffix(w, "'s"), "'")
		known := false
		for i, t := range drawnTopics {
			if t.words[w] {
				topics[i], known = true, true
			}
		}
		switch {
		case w == namedFeeder || w == namedBarrel:
			level = w
		case pictureWords[w]:
			picture = true
		case showWords[w]:
			show = true
		case darkWords[w]:
			a.Dark = true
		case lightWords[w]:
			a.Light = true
		case notDrawn[w], !known && !besideWords[w]:
			return Reading{}, false
		}
	}
	switch level {
	case namedFeeder:
		a.Topic = "feed_left"
	case namedBarrel:
		a.Topic = "water_left"
	}
	shown := false
	for i, t := range drawnTopics {
		if topics[i] {
			if a.Topic == "" {
				a.Topic = t.topic
			}
			shown = shown || t.shown
		}
	}
	calendar := len(words) == 1 && words[0] == "calendar" || len(words) == 2 && (words[0] == "the" || words[0] == "season") && words[1] == "calendar"
	if !picture && !(show && shown) && !calendar {
		return Reading{}, false
	}
	if len(a.Animals) > 0 && a.Topic != "cost" {
		a.Topic = "growth"
	}
	switch {
	case a.Topic != "":
	case a.Season != "":
		a.Topic = "growth"
	default:
		a.Topic = r.lastDrawn()
	}
	if a.Season != "" && !drawnOfSeasons[a.Topic] {
		return Reading{}, false
	}
	return r.just(a), true
}

// mayBePictured tells most texts from those that may ask for a picture, soon.
func (r *reader) mayBePictured() bool {
	const longest = 120
	if len(r.text) > longest {
		return false
	}
	text := strings.ToLower(r.text)
	for _, h := range pictureHints {
		if strings.Contains(text, h) {
			return true
		}
	}
	return false
}

// lastDrawn is the topic of a picture that names none: of what was asked last,
// where that can be drawn, else growth.
func (r *reader) lastDrawn() string {
	if r.c.LastAsked != nil {
		for _, t := range drawnTopics {
			if t.topic == r.c.LastAsked.Topic {
				return t.topic
			}
		}
	}
	return "growth"
}

// Stand for names of the herd's own in a text.
const (
	namedFeeder = "\x01feeder"
	namedBarrel = "\x01barrel"
)

// withoutNames takes the herd's own names out of a text: those of pigs go to the
// question.
func (r *reader) withoutNames(a *Ask, text string) string {
	if r.c.Herd == nil {
		return text
	}
	text = " " + text + " "
	take := func(name, by string) bool {
		name = plain(name)
		if name == "" {
			return false
		}
		for _, after := range []string{" ", "'s ", ", ", "? ", ". "} {
			if before, behind, ok := strings.Cut(text, " "+name+after); ok {
				text = before + " " + by + " " + behind
				return true
			}
		}
		return false
	}
	pigs := r.c.Herd.Alive(r.today)
	if a.Season != "" {
		pigs = r.c.Herd.Animals
	}
	for _, p := range pigs {
		if take(p.Name, "") {
			a.Animals = append(a.Animals, p.Name)
		}
	}
	for _, f := range r.c.Herd.Feeders {
		take(f.Name, namedFeeder)
	}
	for _, b := range r.c.Herd.Barrels {
		take(b.Name, namedBarrel)
	}
	return text
}
