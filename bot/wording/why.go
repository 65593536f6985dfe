package wording

import (
	"strings"

	"troughbell/model"
)

// whyLines is how many lines an explanation has at most.
const whyLines = 3

// Why says reasons, at most three lines: one for each code, so that what holds
// for several feeders stands in one line.
func (v Voice) Why(rs []model.Reason) string {
	var codes []string
	said := map[string][]string{}
	for _, r := range rs {
		if _, there := said[r.Code]; !there {
			codes = append(codes, r.Code)
		}
		s := v.say(partReason, r.Code, Args{Names: r.Names, Days: []model.Day{r.On}, Q: r.Q})
		said[r.Code] = merge(said[r.Code], []string{s})
	}
	var lines []string
	for _, c := range codes[:min(len(codes), whyLines)] {
		lines = append(lines, strings.Join(said[c], " "))
	}
	return strings.Join(lines, "\n")
}
