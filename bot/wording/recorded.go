package wording

import (
	"fmt"
	"strings"

	"troughbell/bot/reading"
)

// recordedLines is how many lines an acknowledgement has at most; cards for
// emergencies stand below them.
const recordedLines = 4

// Recorded acknowledges entries that were recorded, with their effects: one
// line for each fact, up to four; beyond that facts of one kind share a line,
// and nothing is left out.
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
		line := ackLine{kind: e.Act.Intent(), said: capital(said)}
		for _, x := range effects {
			if x.Entry != i {
				continue
			}
			s := v.say(partEffect, x.Code, With(x.Names, x.On, x.At, x.Q))
			if strings.Contains(s, "\n") {
				cards = append(cards, s)
				continue
			}
			line.effects = append(line.effects, s)
		}
		lines = append(lines, line)
	}
	out := make([]string, 0, recordedLines+len(cards))
	out = append(out, cards...)
	for _, l := range fold(lines) {
		out = append(out, l.String())
	}
	return strings.Join(out, "\n")
}

// ackLine is what one line of an acknowledgement says.
type ackLine struct {
	kind    string
	said    string
	effects []string
}

func (l ackLine) String() string {
	s := l.said
	sep := ". "
	if strings.HasSuffix(s, ".") || strings.HasSuffix(s, "?") {
		sep = " "
	}
	if len(l.effects) == 0 {
		return s + strings.TrimSpace(sep)
	}
	return s + sep + strings.Join(l.effects, " ")
}

// fold brings lines down to the number that fits: first neighbours of one kind
// share a line, then all of one kind, then what is left over shares the last.
func fold(lines []ackLine) []ackLine {
	if len(lines) <= recordedLines {
		return lines
	}
	var byKind []ackLine
	at := map[string]int{}
	for _, l := range lines {
		i, ok := at[l.kind]
		if !ok {
			at[l.kind] = len(byKind)
			byKind = append(byKind, l)
			continue
		}
		byKind[i].said += "; " + lower(l.said)
		byKind[i].effects = merge(byKind[i].effects, l.effects)
	}
	for len(byKind) > recordedLines {
		last := len(byKind) - 1
		a, b := byKind[last-1], byKind[last]
		byKind = append(byKind[:last-1], ackLine{
			kind: a.kind, said: fmt.Sprintf("%s; %s", a.said, lower(b.said)), effects: merge(a.effects, b.effects),
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

// lower takes back the capital that capital gave to a phrase of ours; a name of
// the person's own keeps it.
func lower(s string) string {
	word, _, _ := strings.Cut(s, " ")
	if ourVerbs[strings.ToLower(word)] {
		return strings.ToLower(word) + s[len(word):]
	}
	return s
}

var ourVerbs = map[string]bool{
	"fed": true, "water": true, "wallow": true, "wormed": true, "treated": true, "moved": true,
	"mixed": true, "mix": true, "bought": true, "spent": true, "fence": true, "high": true,
	"low": true, "feeder": true, "pen": true, "target": true, "chores": true, "nudges": true,
	"herd": true, "time": true, "metric": true, "a": true, "note": true, "all": true,
	"butcher": true, "remind": true, "away": true, "corrected:": true, "received": true,
}
