package wording

import (
	"strings"

	"troughbell/model"
)

// whyLines is how many lines an explanation has at most.
const whyLines = 3

// Why says reasons, at most three lines, each once.
func (v Voice) Why(rs []model.Reason) string {
	var lines []string
	for _, r := range rs {
		s := v.say(partReason, r.Code, Args{Names: r.Names, Days: []model.Day{r.On}, Q: r.Q})
		lines = merge(lines, []string{s})
		if len(lines) == whyLines {
			break
		}
	}
	return strings.Join(lines, "\n")
}
