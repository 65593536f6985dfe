package bot

import (
	"slices"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// longPast is from how many days ago an arrival is doubtful that no word says is
// past, where no pigs are known: "4 pigs come may 2", texted in November, looks
// ahead.
const longPast = 60

// pastWords say that pigs are there.
var pastWords = []string{
	"came", "arrived", "got", "bought", "picked", "brought", "have", "has", "had", "are here", "since", "were", "was", "ago", "last", "started", "born",
}

// looksAhead has pigs that are still to come planned for, as a newcomer means it,
// instead of recording that they came.
func (t *talk) looksAhead() {
	today := model.DayOf(t.now)
	if len(t.s.Herd.Animals) > 0 || saysPast(t.m.Text) {
		return
	}
	for i, e := range t.r.Entries {
		f, ok := e.Act.(reading.Fact)
		if !ok {
			continue
		}
		a, ok := f.Fact.(model.Arrive)
		if !ok || today-e.On < longPast {
			continue
		}
		_, month, day := e.On.Date()
		y, _, _ := today.Date()
		on := model.DateDay(y, month, day)
		if on < today {
			on = model.DateDay(y+1, month, day)
		}
		t.r.Entries[i] = reading.Entry{On: today, Act: reading.Ask{Topic: "plan", Count: a.Count, WeightKg: a.WeightKg, On: &on}}
	}
}

func saysPast(text string) bool {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !(r >= 'a' && r <= 'z' || r == '\'') })
	said := " " + strings.Join(words, " ") + " "
	return slices.ContainsFunc(pastWords, func(w string) bool { return strings.Contains(said, " "+w+" ") })
}
