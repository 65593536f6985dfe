package wording

import (
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
	var cards []string
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
		if card, ok := line.card(); ok {
			cards = append(cards, card)
			continue
		}
		lines = append(lines, line)
	}
	for _, l := range fold(lines) {
		cards = append(cards, l.String())
	}
	return strings.Join(cards, "\n")
}

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

// card gives a line whose effect is a card for an emergency: the sign, what was
// recorded, then what to do.
func (l ackLine) card() (string, bool) {
	for _, s := range l.effects {
		if todo, ok := strings.CutPrefix(s, danger+" "); ok && strings.Contains(s, "\n") {
			return danger + " " + capital(l.said) + ". " + todo, true
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
