package wording

import (
	"strings"
	"time"

	"troughbell/model"
)

// First says what to text once the herd is set up.
func (v Voice) First() string {
	return v.say(partSetup, "first", Args{Names: []string{v.fillExample()}})
}

func (v Voice) fillExample() string {
	fill := v.examplesOf("feed")[0]
	if v.Herd != nil && len(v.Herd.Barrels) > 0 {
		fill += ", " + v.examplesOf("water")[0]
	}
	return fill
}

// firstWeek is what to look at and to text in the week in which pigs came, day by
// day, in the herd's own names.
func (v Voice) firstWeek() string {
	first := v.today()
	if v.Herd != nil && len(v.Herd.Animals) > 0 {
		if came := v.Herd.Animals[len(v.Herd.Animals)-1].Group.Arrived; came <= first {
			first = came
		}
	}
	lines := []string{v.say(partSetup, "week_head", Args{})}
	for _, l := range []struct {
		code    string
		after   model.Day
		example string
	}{
		{"week_fill", 0, v.fillExample()},
		{"week_look", 1, v.ownName() + offFeed},
		{"week_level", 2, v.examplesOf("feed")[1]},
		{"week_weigh", 3, v.examplesOf("weigh")[0]},
		{"week_book", 4, v.examplesOf("butcher")[1]},
	} {
		lines = append(lines, "  "+v.say(partSetup, l.code, Args{Days: []model.Day{first + l.after}, Names: []string{l.example}}))
	}
	if v.Herd != nil {
		lines = append(lines, "  "+v.say(partSetup, "week_round", Args{Moments: []time.Time{v.Herd.NextChore(v.Now)}}))
	}
	return strings.Join(lines, "\n")
}

// offFeed tells of a pig that does not eat.
const offFeed = " off feed"
