package reading

import (
	"slices"
	"strings"
	"sync"
	"time"

	"troughbell/model"
)

func weekdayOf(a int) time.Weekday { return time.Weekday(a) }

// idleRun says that nothing was made of items[i:j] and that they say something.
func (r *reader) idleRun(i, j int) bool {
	words := 0
	for k := i; k < j; k++ {
		if !r.idleAt(k) {
			return false
		}
		if r.items[k].kind == itWord {
			words++
		}
	}
	return words > 1
}

// notesWanted are texts of nothing but the word: they ask what was noted.
var notesWanted = split("notes, my notes, our notes, the notes, all notes, notes for next year, my notes for next year, next year notes, notes next year, notes so far")

// fillNote keeps words as they stand.
func (r *reader) fillNote(s span) {
	from := s.i
	for k := s.i; k < s.j && (r.items[k].is(sNote) || r.items[k].is(sFiller) && !r.items[k].is(sNot)) && k < s.i+5; k++ {
		if r.items[k].is(sNote) {
			from = k + 1
		}
	}
	if from > s.i && r.items[from-1].s == "next year" && r.onlyThought(s) {
		r.idleSpan(s) // "perhaps we take next year four pigs"
		return
	}
	if from > s.i && r.items[from-1].s == "next year" || from >= s.j {
		from = s.i // "next year two barrels": all of it is the note
		if r.items[from].s == "note" || r.items[from].s == "note:" {
			from++
		}
	}
	for k := s.i; k < s.j; k++ {
		r.items[k].used = true
	}
	what := strings.Trim(r.quote(from, s.j), " ,.;:-")
	if from > s.i {
		for _, lead := range noteLeads { // "make a note that otis likes the hose"
			if len(what) > len(lead) && strings.EqualFold(what[:len(lead)], lead) {
				what = strings.TrimLeft(what[len(lead):], " ,.;:-")
			}
		}
	}
	if slices.Contains(notesWanted, strings.ToLower(strings.Trim(r.quote(s.i, s.j), " ?.!"))) {
		r.emit(Ask{Topic: "history", About: "note"}, s)
		return
	}
	if what == "" {
		r.clarify(Clarify{About: "note", Code: "note_what", Want: "what", Draft: []Entry{r.draft(Fact{model.Note{}}, s)}}, s)
		return
	}
	r.emit(Fact{model.Note{What: what}}, s)
}

// noteLeads may stand between the wish for a note and what is to be noted.
var noteLeads = []string{"would you", "will you", "could you", "please", "pls", "for me", "that "}

// aboutWords name the topics of nudges, for "done", "snooze" and "mute".
var aboutWords = []struct{ about, words string }{
	{"refill", "feed, feeder, hopper, refill, filling, fill, feeding, hoppers, feeders, refills, grain"},
	{"water", "water, barrel, barrels, watering, tank, tanks, waters"},
	{"wallow", "wallow, mud, wallows"},
	{"worm", "worm, worming, wormer, deworming, wormings, wormed"},
	{"move", "move, moving, pen, pens, rotation, moves, moved"},
	{"weigh", "weigh, weighing, tape, taping, weights, weight, girth, weigh in, weighed, taped, weighings"},
	{"book", "butcher, booking, book, slot, bookings, slaughter"},
	{"heat", "heat, hot, hot weather"},
	{"cold", "cold, frost, freeze"},
	{"ration", "ration, mix, recipe, mixing"},
	{"stock", "stock, shed, buying, shopping, supplies"},
	{"withdrawal", "withdrawal"},
	{"own", "reminder, reminders"},
}

// aboutOf is the topic of nudges that a word names, "" if it names none.
func aboutOf(word string) string { return aboutByWord()[word] }

// Topics are the topics of nudges that the words of a text name, in their order.
func Topics(text string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(strings.ToLower(text), func(c rune) bool { return c < 'a' || c > 'z' }) {
		if about := aboutOf(w); about != "" && !slices.Contains(out, about) {
			out = append(out, about)
		}
	}
	return out
}

var aboutByWord = sync.OnceValue(func() map[string]string {
	m := map[string]string{}
	for _, a := range aboutWords {
		for _, w := range split(a.words) {
			m[w] = a.about
		}
	}
	return m
})

func (r *reader) aboutIn(s span) []string {
	var out []string
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if about := aboutOf(it.s); about != "" {
			it.used = true
			if !slices.Contains(out, about) {
				out = append(out, about)
			}
		}
	}
	return out
}

// fillDone reads "done", with what was done where it is named.
func (r *reader) fillDone(s span) {
	r.useAll(s)
	r.emit(Done{About: r.aboutIn(s)}, s)
}

// fillSnooze reads a wish to hear of something later, or no more.
func (r *reader) fillSnooze(s span) {
	z := Snooze{About: r.aboutIn(s)}
	if len(z.About) > 1 { // "the worming reminder" is the one about worming
		z.About = slices.DeleteFunc(z.About, func(a string) bool { return a == "own" })
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sStop):
			z.Stop = true
		case it.s == "next chore day" || it.s == "on chore day":
			z.NextChore = true
		case it.qty(hours):
			z.Hours = int(it.si() + 0.5)
		case it.qty(days):
			d := r.today + model.Day(it.si())
			z.Until = &d
		case it.kind == itDay:
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok && d > r.today {
				z.Until = &d
			}
		case it.is(sSnooze) && strings.Contains(it.s, "tomorrow"), it.s == "tmrw":
			d := r.today + 1
			z.Until = &d
		case it.s == "next week":
			d := r.today + 7
			z.Until = &d
		}
	}
	if z.Hours == 0 && z.Until == nil && !z.NextChore && !z.Stop {
		z.Hours = r.hoursBehind(s.j)
	}
	r.useAll(s)
	r.emit(z, s)
}

func (r *reader) useAll(s span) {
	for k := s.i; k < s.j; k++ {
		r.items[k].used = true
	}
}

// undoWords are what an undo can name, by the intent.
var undoWords = []struct{ of, words string }{
	{"weigh", "weight, weighing, weigh, girth, tape, measurement"},
	{"refill", "refill, fill, feed, pour, feeding, filling, hopper, feeder"},
	{"water", "water, barrel, watering"},
	{"wallow", "wallow"},
	{"worm", "worming, worm, wormer, wormed"},
	{"treat", "treatment, shot, injection, dose"},
	{"move", "move"},
	{"sick", "sick, limping"},
	{"fence", "fence"},
	{"weather", "weather, temperature"},
	{"spend", "spend, spending, expense, cost"},
	{"stock", "stock, purchase"},
	{"gone", "death, sale"},
	{"booked", "booking, butcher, appointment"},
	{"away", "away, vacation"},
	{"note", "note"},
	{"remind", "reminder"},
	{"mixed", "mix, batch"},
	{"arrive", "arrival"},
	{"recipe", "recipe"},
	{"import", "import, upload"},
}

func (r *reader) fillUndo(s span) {
	u := Undo{}
	for k := s.i; k < s.j && u.Of == ""; k++ {
		for _, w := range undoWords {
			for _, x := range split(w.words) {
				if r.items[k].s == x && !(r.items[k].is(sUndo) && len(r.items[k].s) > 12) {
					u.Of = w.of
				}
			}
		}
	}
	u.Bare = u.Of == ""
	for k := 0; k < len(r.c.Before) && u.Of == ""; k++ {
		if _, ok := r.c.Before[k].Entry.Act.(Fact); ok {
			u.Of = r.c.Before[k].Entry.Act.Intent()
		}
	}
	r.useAll(s)
	r.emit(u, s)
}

func (r *reader) fillHelp(s span) {
	h := Help{}
	if a := r.aboutIn(s); len(a) > 0 {
		h.About = a[0]
	}
	for k := s.i; k < s.j; k++ {
		if helpTopics[r.items[k].s] {
			h.About = r.items[k].s
		}
	}
	r.useAll(s)
	r.emit(h, s)
}

// helpTopics are what help can be asked about by words that no record bears.
var helpTopics = map[string]bool{
	"settings": true, "setup": true, "set-up": true, "set up": true, "nudges": true, "reminders": true, "money": true, "health": true, "alarm": true, "emergency": true,
	"emergencies": true, "butcher": true, "plan": true, "sizes": true, "quiet": true, "today": true, "mix": true, "pens": true, "weather": true, "commands": true, "start": true, "people": true, "privacy": true, "pictures": true,
	"files": true, "import": true, "export": true, "report": true,
}

// helpOn says that the text asks for help on a topic and nothing else.
func (r *reader) helpOn() bool {
	n := len(r.items)
	if n < 2 || n > 3 || !r.items[0].is(sHelp) || n == 3 && !r.items[1].isAny(setOf(sFiller, sAbout, sOn)) {
		return false
	}
	word := r.items[n-1].s
	for _, a := range aboutWords {
		if saysAny(" "+word+" ", phrasesOf(a.words)) { // a question of help is rare
			return true
		}
	}
	return helpTopics[word]
}

// wishes maps words to what is to be done.
var wishes = []struct{ what, words string }{
	{"export", "export, export my data, csv, download, download my data, dump, my data"},
	{"invite", "invite, invite someone, invite my wife, invite code, add user, add a user"},
	{"privacy", "privacy, who sees this, what do you store"},
	{"forget me", "forget me, delete my data, delete everything"},
	{"start", "start, /start, begin, setup, set up, set-up, restart"},
	{"skip", "skip, skip this, skip it, pass"},
	{"cancel", "cancel"},
	{"backup", "backup, restore"},
	{"settings", "settings, language"},
	{"picture", "picture, chart, graph, plot"},
	{"sitter", "sitter, sitter sheet"},
}

func (r *reader) fillDo(s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sDo) {
			continue
		}
		for _, w := range wishes {
			for _, x := range split(w.words) {
				if it.s == x {
					if (w.what == "skip" || w.what == "cancel") && (k > 0 || s.j-s.i > 3 || s.j < len(r.items)) {
						continue // "if i skip the 25th"
					}
					r.useAll(s)
					r.emit(Do{What: w.what, Arg: strings.TrimSpace(r.quote(k+1, s.j))}, s)
					return
				}
			}
		}
	}
	r.idleSpan(s)
}

// onlyThought says that the sentence of a span says "perhaps" before it names the year
// to come, so that nobody asks to keep it.
func (r *reader) onlyThought(s span) bool {
	return saysAny(r.said(span{0, r.sentenceStart(s.i), s.j}), perhapsWords) && r.sentenceStart(s.i) < s.i
}

var perhapsWords = phrasesOf("perhaps, maybe, might, we take, we'll take, not sure, thinking of, thinking about, hoping, wish")
