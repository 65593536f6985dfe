package reading

import (
	_ "embed"
	"math"
	"strconv"
	"strings"
	"sync"
)

// How people put their words together when they text from the pen: which words follow
// which, counted over the labelled texts that the reading may be tuned to. It tells
// which of the words one slip away was meant.

//go:embed usage.txt
var usageText string

// usage counts words and pairs of words. A number counts as usageNumber, what is no
// word of the vocabulary as usageOther, the edge of a sentence as usageEdge.
type usage struct {
	one   map[string]float64
	two   map[string]float64 // the words joined by a blank
	total float64
}

const (
	usageNumber = "0"
	usageOther  = "?"
	usageEdge   = "."
)

var usages = sync.OnceValue(func() *usage {
	u := &usage{one: map[string]float64{}, two: map[string]float64{}}
	for line := range strings.Lines(usageText) {
		line = strings.TrimSpace(line)
		at := strings.LastIndexByte(line, ' ')
		if at < 0 {
			continue
		}
		n, err := strconv.ParseFloat(line[at+1:], 64)
		if err != nil {
			panic("usage.txt: " + line) // the file is part of the program
		}
		if key := line[:at]; strings.Contains(key, " ") {
			u.two[key] = n
		} else {
			u.one[key] = n
			u.total += n
		}
	}
	return u
})

// after is how unlikely a word is behind another, in nats.
func (u *usage) after(before, w string) float64 {
	alone := (u.one[w] + 0.5) / (u.total + 0.5*float64(len(u.one)))
	n := u.one[before]
	if n == 0 {
		return -math.Log(alone)
	}
	trust := n / (n + 4) // of few pairs little is known
	return -math.Log(trust*u.two[before+" "+w]/n + (1-trust)*alone + 0.1*alone)
}

// usageWord is what a token counts as.
func usageWord(t *token) string {
	switch {
	case t.kind == tokWord:
		if known := usages().one[t.s] > 0; known {
			return t.s
		}
		return usageOther
	case t.kind == tokBreak, t.kind == tokMark && (t.s == "." || t.s == "," || t.s == ";" || t.s == ":" || t.s == "!" || t.s == "?" || t.s == "-"):
		return usageEdge
	case t.kind == tokMark:
		return usageOther
	}
	return usageNumber
}
