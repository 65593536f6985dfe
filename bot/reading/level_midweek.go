package reading

import "troughbell/model"

// levelOn and levelOff are texts that ask for a word on levelling the feed
// between two rounds, and that take it back.
var (
	levelOn = setOfWords(split(`level the feed midweek, level the feeder midweek, level feed midweek, level feeder midweek, level midweek,
		remind me to level the feed midweek, remind me to level the feeder midweek, remind me to level midweek,
		remind us to level the feeder midweek, remind me midweek to level the feeder, remind me midweek to level the feed,
		remind me to level the feeder between chore days, remind me to level the feed between chore days, midweek level reminder`))
	levelOff = setOfWords(split(`no levelling midweek, no leveling midweek, stop levelling midweek, stop leveling midweek, no level midweek,
		no midweek level reminder, stop the midweek level reminder, don't remind me to level midweek, level midweek off, no more levelling midweek`))
)

// levelMidweek reads a text that is nothing but that wish.
func (r *reader) levelMidweek() (Reading, bool) {
	switch text := r.plain; {
	case levelOn[text]:
		return r.just(Fact{model.Setting{Key: model.SetLevel, Text: model.LevelMidweek}}), true
	case levelOff[text]:
		return r.just(Fact{model.Setting{Key: model.SetLevel}}), true
	}
	return Reading{}, false
}
