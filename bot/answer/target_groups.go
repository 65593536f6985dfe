package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// living lists the groups that have living pigs, in the order of
// TargetFigure.Groups.
func (a asked) living() []*model.Group {
	alive := map[*model.Group]bool{}
	for _, p := range a.h.Alive(a.today) {
		alive[p.Group] = true
	}
	var out []*model.Group
	for _, g := range a.h.Groups {
		if alive[g] {
			out = append(out, g)
		}
	}
	return out
}

func (a asked) groupData(f model.TargetFigure) []any {
	var out []any
	for i, g := range a.living() {
		d := a.targetData(f.Groups[i])
		d["group"] = g.Name
		d["arrived"] = g.Arrived.String()
		names := []string{}
		for _, p := range g.Pigs {
			if p.Gone == nil && p.Name != "" {
				names = append(names, p.Name)
			}
		}
		d["names"] = names
		out = append(out, d)
	}
	return out
}

// groupLine says the day of each group, in the order of arrival.
func (a asked) groupLine(f model.TargetFigure) string {
	var parts []string
	for i, g := range a.living() {
		name := g.Name
		if name == "" {
			name = a.say("group_since", wording.Args{Days: []model.Day{g.Arrived}})
		}
		parts = append(parts, a.say("group_day", wording.Args{Names: []string{name}, Days: dayArgs(f.Groups[i].Days)}))
	}
	return strings.Join(parts, " ")
}
