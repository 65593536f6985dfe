package reading

import (
	"slices"

	"troughbell/model"
)

// namedOfSex is an arrival of which some pigs get their names, who are told apart by their
// sex: "the boy is Duke", and later "girls are Maple, Hazel and Fern". Those with names
// come first.
func namedOfSex(a model.Arrive, n naming) (model.Arrive, bool) {
	had := len(a.Animals)
	if len(n.names) == 0 || len(n.sexes) != len(n.names) || len(a.Sexes) != a.Count || had+len(n.names) > a.Count {
		return a, false
	}
	sexes, rest := slices.Clone(a.Sexes[:had]), slices.Clone(a.Sexes[had:])
	for k, name := range n.names {
		at := slices.IndexFunc(rest, func(s model.Sex) bool { return s == n.sexes[k] })
		if at < 0 || slices.Contains(a.Animals, name) {
			return a, false
		}
		sexes, rest = append(sexes, rest[at]), slices.Delete(rest, at, at+1)
	}
	a.Animals = append(slices.Clone(a.Animals), n.names...)
	a.Sexes = append(sexes, rest...)
	return a, true
}
