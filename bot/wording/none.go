package wording

import (
	"strings"

	"troughbell/bot/reading"
)

// None says why nothing was recorded, and what to do.
func (v Voice) None(n reading.None, text string) string {
	code := n.Reason
	if code == reading.NoneUnit {
		if stones, ok := stonesIn(text); ok {
			return v.say(partNone, "stones", Args{Q: numbers(stones, stones*lbPerStone, stones*lbPerStone*kgPerLb)})
		}
	}
	if code == reading.NonePlan && (v.Herd == nil || len(v.Herd.Animals) == 0) { // a newcomer who plans a season
		code = "plan_season"
	}
	if _, ok := noneSentences[code]; !ok {
		code = reading.NoneUnknown
	}
	return v.say(partNone, code, Args{Names: []string{v.ownName(), v.ownFeeder()}})
}

// Left quotes what was not understood.
func (v Voice) Left(parts []string) string {
	var quoted []string
	for _, p := range parts {
		if p = strings.Join(strings.Fields(p), " "); p != "" {
			quoted = append(quoted, `"`+shorten(p, 60)+`"`)
		}
	}
	if len(quoted) == 0 {
		return ""
	}
	if len(quoted) > 4 {
		quoted = append(quoted[:3], "and more")
	}
	return "Not understood: " + strings.Join(quoted, ", ") + "."
}

// shorten cuts a text to so many characters at the most.
func shorten(s string, most int) string {
	r := []rune(s)
	if len(r) <= most {
		return s
	}
	return strings.TrimSpace(string(r[:most-3])) + "..."
}
