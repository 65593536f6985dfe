package wording

import (
	"fmt"
	"math"
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Question says a Clarify, with the labels of its choices, each different from
// the others. Where the question has no sentence of its own the choices stand
// in it.
func (v Voice) Question(c reading.Clarify) (text string, labels []string) {
	for _, choice := range c.Choices {
		labels = append(labels, v.choiceLabel(c, choice))
	}
	apart(labels)
	a := Args{Q: c.Q}
	for _, name := range c.Names {
		a.Names = append(a.Names, plainly(name))
	}
	if len(c.Draft) > 0 && c.Draft[0].On != 0 {
		a.Days = append(a.Days, c.Draft[0].On)
	}
	if c.Code == "implausible_weight" {
		a.Q = v.implausible(c)
	}
	for _, code := range []string{c.About + "_" + c.Code, c.Code} {
		if _, ok := questionSentences[code]; ok {
			return v.say(partQuestion, code, a), labels
		}
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

// implausible gives what was said, the weight that it would mean, the weight
// that the records lead to expect, and the length that was said with a girth, as
// far as each is known.
func (v Voice) implausible(c reading.Clarify) []model.Quantity {
	unknown := model.Quantity{Value: math.NaN()}
	q := []model.Quantity{unknown, unknown, unknown, unknown}
	if len(c.Q) > 0 {
		q[0] = c.Q[0]
	}
	if len(c.Q) > 1 {
		q[3] = c.Q[1]
	}
	if len(c.Draft) == 0 || v.Herd == nil {
		return q
	}
	f, ok := c.Draft[0].Act.(reading.Fact)
	if !ok {
		return q
	}
	w, ok := f.Fact.(model.Weigh)
	if !ok {
		return q
	}
	if est, ok := weightOf(w); ok && w.GirthCm > 0 {
		q[1] = Kg(est.Mean)
	}
	if m, err := v.Herd.MeanWeight(v.pigsNamed(w.Animals), c.Draft[0].On); err == nil {
		q[2] = Kg(m.WeightKg.Mid)
	}
	return q
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
