package wording

import (
	"strings"

	"troughbell/model"
)

// whyLines is how many lines an explanation has at most.
const whyLines = 3

// minor reasons are told only where there is room.
var minor = map[string]bool{
	"weighings_count": true, "water_heat_guessed": true, "feed_capacity": true,
}

// Why says reasons, at most three lines: one for each code, so that what holds
// for several feeders stands in one line, the minor ones last.
func (v Voice) Why(rs []model.Reason) string {
	var codes, last []string
	said := map[string][]string{}
	for _, r := range rs {
		if _, there := said[r.Code]; !there {
			if minor[r.Code] {
				last = append(last, r.Code)
			} else {
				codes = append(codes, r.Code)
			}
		}
		s := v.say(partReason, r.Code, Args{Names: r.Names, Days: []model.Day{r.On}, Q: r.Q})
		said[r.Code] = merge(said[r.Code], []string{s})
	}
	codes = append(codes, last...)
	var lines []string
	for _, c := range codes[:min(len(codes), whyLines)] {
		lines = append(lines, strings.Join(said[c], " "))
	}
	return strings.Join(lines, "\n")
}
