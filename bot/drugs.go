package bot

import (
	"slices"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// A drug that was texted and not understood must not end in "clear": where a
// text speaks of giving one and no treatment came of it, a question is left
// open, and while it is open no pig is clear.

// drugGiven are the words for giving, drugNouns the words and drugEndings the
// ends of words that make what was given a drug.
var (
	drugGiven = []string{
		"gave", "given", "got", "gets", "injected", "injecting", "jabbed", "dosed", "treated", "vaccinated",
		"drenched", "shot", "administered", "had", "put",
	}
	drugNouns = []string{
		"ml", "cc", "mg", "injection", "injections", "jab", "jabs", "antibiotic", "antibiotics", "withdrawal",
		"vaccine", "wormer", "dewormer", "painkiller", "painkillers", "penicillin", "steroid", "injected", "jabbed",
		"dosed", "vaccinated", "medicine", "meds", "medication", "drug", "shots", "syringe",
	}
	// drugHanded are the words of drugGiven that speak of an animal and of no shop.
	drugHanded = []string{
		"gave", "given", "injected", "injecting", "jabbed", "dosed", "treated", "vaccinated", "drenched", "administered",
	}
	vetWords    = []string{"vet", "vets", "vet's", "veterinarian", "doctor", "doc"}
	spanWords   = []string{"day", "days", "withdrawal", "withhold"}
	drugEndings = []string{"cillin", "mycin", "micin", "cycline", "mectin", "dazole", "oxacin", "xicam", "profen", "sulfa", "misole"}
	// undrugged are words of a text that tells nothing done: denied, planned,
	// asked, or another's animals.
	undrugged = []string{
		"not", "didn't", "didnt", "no", "never", "don't", "dont", "won't", "wont", "will", "should", "could", "would", "might", "if", "tomorrow", "plan",
		"planning", "can", "does", "do", "what", "when", "how", "why", "which", "neighbor", "neighbour", "neighbor's", "neighbour's", "remind", "note",
	}
)

// drugUnclear reports whether the text speaks of a drug given and the reading
// made neither a treatment nor a question of it.
func drugUnclear(text string, r reading.Reading) bool {
	bought := false
	for _, e := range r.Entries {
		switch a := e.Act.(type) {
		case reading.Fact:
			switch a.Kind() {
			case "worm", "treat", "note", "remind":
				return false
			case "spend", "stock": // of a shop, or of the vet's bill
				bought = true
			}
		case reading.Clarify:
			if a.About == "worm" || a.About == "treat" {
				return false
			}
		case reading.Ask, reading.Help, reading.Do, reading.Undo:
			return false
		}
	}
	words := strings.FieldsFunc(strings.ToLower(text), func(c rune) bool {
		return !(c >= 'a' && c <= 'z' || c == '\'')
	})
	has := func(any []string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(any, w) })
	}
	drug := has(drugNouns) || slices.ContainsFunc(words, func(w string) bool {
		return slices.ContainsFunc(drugEndings, func(end string) bool { return len(w) > len(end) && strings.HasSuffix(w, end) })
	})
	given := has(drugGiven) && !bought || has(drugHanded)
	// What the vet gave with so many days to wait is a drug, whatever its name.
	drug = drug || has(vetWords) && has(drugHanded) && has(spanWords)
	return drug && given && !has(undrugged) && !strings.Contains(text, "?")
}

// guardDrugs adds the question to a reading that lost a drug.
func (t *talk) guardDrugs() {
	if t.r.Answers || !drugUnclear(t.m.Text, t.r) {
		return
	}
	kept := t.r.Entries[:0]
	for _, e := range t.r.Entries {
		if n, ok := e.Act.(reading.None); !ok || n.Reason != reading.NoneUnknown {
			kept = append(kept, e)
		}
	}
	on := model.DayOf(t.now)
	t.r.Left = nil
	t.r.Entries = append(kept, reading.Entry{On: on, To: len(t.m.Text), Act: reading.Clarify{
		About: "treat", Code: "drug_unclear",
		Choices: []reading.Choice{{Code: "not_drug", Entries: []reading.Entry{{Act: reading.None{Reason: "kept"}, On: on}}}},
	}})
}

// settleDrugs takes a treatment as the answer to this person's question on a
// drug not understood of the day before at most.
func (t *talk) settleDrugs() error {
	for _, q := range t.s.Herd.Open() {
		_, by := t.s.origin(q.ID)
		if q.F.Code == "drug_unclear" && by == t.m.From.Person && t.now.Sub(q.At) <= questionStands {
			if err := t.append(t.note(model.Settled{Question: q.ID, How: "answered"})); err != nil {
				return err
			}
		}
	}
	return nil
}
