package reading

import (
	"strings"

	"troughbell/model"
)

// loadSaidFor is for how many days after a booked day a short word on loading
// still speaks of it.
const loadSaidFor = 14

const (
	loadWhom = `(?:them all|all of them|all of 'em|all the pigs|all pigs|all four|the whole lot|the lot|everyone|everybody|the pigs|pigs|them|'em|em|both|all)`
	loadAway = `(?:(?: in| off| over| there| down| up)? ?(?:to|at|with) (?:the )?(?:butcher|butchers|butcher's|butcher shop|processor|processors|locker|abattoir|slaughterhouse|plant)| in| off| over there)`
)

// What is said short on the day that was booked, where everyone knows who goes
// and where to.
var (
	loadNamed = newPattern(`^(?:(?:we|i|just|have|we've|i've|finally|ok|yes|yep|got) )*(?:took|dropped|drop|hauled|delivered|brought|drove|sent|loaded|ran) (?:off )?` + loadWhom + loadAway + `$`)
	loadShort = newPattern(`^(?:(?:we|i|just|have|we've|i've|finally|ok|yes|yep|got|they're|they are|pigs|the pigs|are|were) )*(?:` +
		`(?:hauled|delivered|dropped off|took off|sent off) ` + loadWhom + `(?: off| over)?` +
		`|loaded(?: up)?(?: ` + loadWhom + `)?(?: up)?(?: and (?:gone|off|away|hauled|delivered|on the road))?` +
		`|(?:all|everyone|everybody|both) (?:are |were )?loaded(?: up)?(?: and (?:gone|off|away|hauled|delivered|on the road))?` +
		`|` + loadWhom + ` loaded(?: up)?` +
		`|(?:they|they all|all|all of them|pigs|the pigs|everyone|both) (?:all )?went(?: in| off|` + loadAway + `)?` +
		`|(?:they're|they are|all|all of them are|pigs are|the pigs are|both are) (?:all )?(?:at|with) the (?:butcher|butchers|butcher's|processor|locker|abattoir)` +
		`|(?:the )?(?:butcher|processor|locker) (?:has|took|got|picked up|collected|came and got|came and took|came for) ` + loadWhom +
		`)$`)
	loadDay  = newPattern(`^(.*?)[, ]*\b(?:on )?((?:early )?this (?:morning|afternoon|evening)|today|tonight|yesterday(?: morning| evening| afternoon)?|last night|(?:last )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]* [0-9]{1,2}|the [0-9]{1,2}(?:st|nd|rd|th))$`)
	loadBare = newPattern(`^(?:we |i |just |all |both )*loaded(?: up)?$`)
	notGone  = newPattern(`^(?:no,? )?(?:they |pigs |the pigs )?(?:not yet|(?:did not|didn't|didnt|did n't|have not|haven't) (?:go|gone|went)(?: yet)?|still here|(?:they're|they are|are) still here|all still here|not gone(?: yet)?)$`)
)

// loaded reads a text that is nothing but the word that the pigs went to the
// butcher, on or about a day that was booked: "loaded all", "took them in this
// morning". Without a booked day only a word that names the butcher is taken, and
// asked about.
func (r *reader) loaded() (Reading, bool) {
	text, day := strings.TrimRight(r.plain, "! "), r.today
	dated := false
	if m := loadDay.groups(text); m != nil && m[1] != "" {
		if d, ok := r.dayIn(m[2]); ok && d <= r.today {
			text, day, dated = m[1], d, true
		}
	}
	asked, pending := r.askedGone()
	named := loadNamed.matches(text)
	if !named && !loadShort.matches(text) {
		if pending && notGone.matches(text) {
			return r.chosen(r.choiceOf(asked, choiceWentNot))
		}
		return Reading{}, false
	}
	if r.alive == 0 {
		return Reading{}, false
	}
	b, ok := r.bookedAbout(day)
	if !ok {
		switch {
		case named && !strings.Contains(text, "pigs"):
		case loadBare.matches(text), named, !r.grown():
			return Reading{}, false // the words of the butcher are read elsewhere
		}
		return r.just(r.whoWent(model.Gone{How: model.Butchered}, day)), true
	}
	if loadBare.matches(text) && !pending && r.today > b.Day+1 { // by now it may be anything that is loaded
		return Reading{}, false
	}
	if !dated && pending { // the question names the day
		day = b.Day
	}
	g, sure := r.c.Herd.GoneAsBooked(b)
	if !sure {
		return r.just(r.whoWent(g, day)), true
	}
	e := Entry{Act: Fact{g}, On: day, Dated: dated || day != r.today, To: len(r.text)}
	return Reading{Entries: []Entry{r.judgeDay(e)}, Answers: pending}, true
}

// grownDays is how long pigs are there at least before they may go to the butcher.
const grownDays = 60

// grown says that all the pigs have been there for long.
func (r *reader) grown() bool {
	for _, p := range r.pigs[:r.alive] {
		if r.today-p.Group.Arrived < grownDays {
			return false
		}
	}
	return true
}

// choiceWentNot is the answer that the pigs did not go: the choice of that code.
const choiceWentNot = "went_not"

// askedGone is the open question whether the pigs went on a booked day.
func (r *reader) askedGone() (Clarify, bool) {
	if r.c.Pending == nil {
		return Clarify{}, false
	}
	c := r.c.Pending.Clarify
	for _, ch := range c.Choices {
		if ch.Code == choiceWentNot {
			return c, true
		}
	}
	return c, false
}

func (r *reader) choiceOf(c Clarify, code string) Choice {
	for _, ch := range c.Choices {
		if ch.Code == code {
			return ch
		}
	}
	return Choice{}
}

// bookedAbout is the booked day next to the day of which the text speaks: the one
// after it, when pigs are loaded the evening before, itself, or one of the days before.
func (r *reader) bookedAbout(day model.Day) (model.Booked, bool) {
	var best model.Booked
	found := false
	for _, b := range r.c.Herd.Bookings {
		d := b.F.Day
		if d > day+1 || d < day-loadSaidFor || found && d < best.Day {
			continue
		}
		best, found = b.F, true
	}
	return best, found
}

// whoWent asks which pigs went: those that the appointment would take, or all.
func (r *reader) whoWent(g model.Gone, day model.Day) Clarify {
	draft := func(names []string) []Entry {
		v := g
		v.Animals, v.Count = names, 0
		return []Entry{{Act: Fact{v}, On: day, Dated: day != r.today, To: len(r.text)}}
	}
	c := Clarify{About: "gone", Code: "which_went", Want: "animals", Draft: draft(g.Animals)}
	if len(g.Animals) > 0 {
		c.Choices = append(c.Choices, Choice{Label: joinNames(g.Animals), Entries: draft(g.Animals)})
	}
	c.Choices = append(c.Choices, Choice{Code: "all_pigs", Entries: draft([]string{model.All})}, Choice{Code: "nothing"})
	return c
}

func joinNames(names []string) string {
	if n := len(names); n > 1 {
		return strings.Join(names[:n-1], ", ") + " and " + names[n-1]
	}
	return names[0]
}

// dayIn is the day that a few words of a text name, looking back.
func (r *reader) dayIn(words string) (model.Day, bool) {
	sub := newReader(Context{Now: r.c.Now, Herd: r.c.Herd}, words)
	defer sub.done()
	sub.tokenize()
	sub.build()
	for k := range sub.items {
		if it := &sub.items[k]; it.kind == itDay && !it.day.every {
			return it.day.on(r.today, lookBack, r.dayFirst)
		}
	}
	return 0, false
}
