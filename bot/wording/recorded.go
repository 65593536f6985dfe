package wording

import (
	"slices"
	"strings"

	"troughbell/bot/reading"
)

// recordedLines is how many lines an acknowledgement has at most; cards for
// emergencies stand below them.
const recordedLines = 4

// Recorded acknowledges entries that were recorded, with their effects: one
// line for each fact, up to four; beyond that facts of one kind share a line,
// and nothing is left out. What is dangerous comes first, as a card of several
// lines.
func (v Voice) Recorded(es []reading.Entry, effects []Effect) string {
	var lines []ackLine
	var dangers []card
	for i, e := range es {
		said := v.Echo(e)
		if said == "" {
			continue
		}
		if e.Replace != "" {
			said = "corrected: " + said
		}
		line := ackLine{kind: e.Act.Intent(), said: said}
		for _, x := range effects {
			if x.Entry == i {
				line.effects = append(line.effects, v.effect(x))
			}
		}
		todo, ok := line.danger()
		if !ok {
			lines = append(lines, line)
			continue
		}
		if n := slices.IndexFunc(dangers, func(c card) bool { return c.todo == todo }); n >= 0 {
			dangers[n].said += ", " + said
			continue
		}
		dangers = append(dangers, card{said, todo})
	}
	var out []string
	for _, c := range dangers {
		out = append(out, danger+" "+capital(c.said)+". "+c.todo)
	}
	for _, l := range fold(lines) {
		out = append(out, l.String())
	}
	return strings.Join(out, "\n")
}

// card is what was recorded of an emergency, and what to do. What has the same
// advice shares a card.
type card struct{ said, todo string }

// effect says one effect.
func (v Voice) effect(x Effect) string {
	a := With(x.Names, x.On, x.At, x.Q)
	a.Days = append(a.Days, x.Window.Low, x.Window.Mid, x.Window.High)
	return v.say(partEffect, x.Code, a)
}

// ackLine is what one line of an acknowledgement says.
type ackLine struct {
	kind    string
	said    string
	effects []string
}

func (l ackLine) String() string {
	s := capital(l.said)
	sep := " "
	if !strings.HasSuffix(s, ".") && !strings.HasSuffix(s, "?") {
		s += "."
	}
	if len(l.effects) == 0 {
		return s
	}
	if strings.Contains(l.effects[0], "\n") {
		sep = "\n"
	}
	return s + sep + strings.Join(l.effects, " ")
}

// inline is what a line says as a part of another: effects of a pig's weight
// stand beside it.
func (l ackLine) inline() ackLine {
	if l.kind != "weigh" || len(l.effects) == 0 {
		return l
	}
	beside := make([]string, len(l.effects))
	for i, s := range l.effects {
		s, _, _ = strings.Cut(strings.TrimSuffix(s, "."), " (") // the range stands where there is room
		beside[i] = strings.ToLower(s[:1]) + s[1:]
	}
	l.said += " (" + strings.Join(beside, ", ") + ")"
	l.effects = nil
	return l
}

// danger gives what to do where an effect of the line is a card for an emergency.
func (l ackLine) danger() (todo string, ok bool) {
	for _, s := range l.effects {
		if todo, ok := strings.CutPrefix(s, danger+" "); ok && strings.Contains(s, "\n") {
			return todo, true
		}
	}
	return "", false
}

// fold brings lines down to the number that fits: first those of one kind share
// a line, then what is left over shares the last.
func fold(lines []ackLine) []ackLine {
	if len(lines) <= recordedLines {
		return lines
	}
	var byKind []ackLine
	at := map[string]int{}
	for _, l := range lines {
		l = l.inline()
		i, ok := at[l.kind]
		if !ok {
			at[l.kind] = len(byKind)
			byKind = append(byKind, l)
			continue
		}
		byKind[i].said += "; " + l.said
		byKind[i].effects = merge(byKind[i].effects, l.effects)
	}
	for len(byKind) > recordedLines {
		last := len(byKind) - 1
		a, b := byKind[last-1], byKind[last]
		byKind = append(byKind[:last-1], ackLine{
			kind: a.kind, said: a.said + "; " + b.said, effects: merge(a.effects, b.effects),
		})
	}
	return byKind
}

// merge adds what is not there yet: several pours say once how long feed lasts.
func merge(have, more []string) []string {
	for _, m := range more {
		seen := false
		for _, h := range have {
			seen = seen || h == m
		}
		if !seen {
			have = append(have, m)
		}
	}
	return have
}
