package wording

import (
	"fmt"
	"strings"

	"troughbell/bot/reading"
)

// maxChoices is how many buttons a question has at most.
const maxChoices = 4

// Question says a Clarify, with the labels of its choices, each different from
// the others. Where the question has no sentence of its own the choices stand
// in it.
func (v Voice) Question(c reading.Clarify) (text string, labels []string) {
	for _, choice := range c.Choices {
		labels = append(labels, v.choiceLabel(c, choice))
	}
	apart(labels)
	a := Args{Names: c.Names, Q: c.Q}
	if len(c.Draft) > 0 && c.Draft[0].On != 0 {
		a.Days = append(a.Days, c.Draft[0].On)
	}
	if _, ok := questionSentences[c.Code]; ok {
		return v.say(partQuestion, c.Code, a), labels
	}
	if len(labels) > 0 {
		return "Which is right: " + Join(labels, "or") + "?", labels
	}
	return fmt.Sprintf("I am not sure about the %s. Say it once more, as in: %s", About(c.About), v.Example(c.About)), nil
}

func (v Voice) choiceLabel(c reading.Clarify, choice reading.Choice) string {
	if choice.Label != "" {
		return choice.Label
	}
	if _, ok := choicePhrases[choice.Code]; ok {
		return v.phrase(partChoice, choice.Code, Args{Names: c.Names, Q: choice.Q})
	}
	if len(choice.Q) > 0 {
		return v.Quantity(choice.Q[0], styleExact)
	}
	if len(choice.Entries) == 0 {
		return "neither"
	}
	said := make([]string, 0, len(choice.Entries))
	for _, e := range choice.Entries {
		if s := v.Echo(e); s != "" {
			said = append(said, s)
		}
	}
	return capital(strings.Join(said, "; "))
}

// apart makes labels differ, so that a tap means one thing.
func apart(labels []string) {
	seen := map[string]int{}
	for i, l := range labels {
		key := strings.ToLower(l)
		if seen[key]++; seen[key] > 1 {
			labels[i] = fmt.Sprintf("%s (%d)", l, seen[key])
		}
	}
}
