package reading

import (
	"strconv"

	"troughbell/model"
)

// eveHour is the hour of the evening before chores where none is told.
const eveHour = 19

var (
	eveAsked = newPattern(`^(?:please )?(?:(?:can you |could you )?(?:tell|nudge|text|remind|write|message|ping|warn|send)(?: it| them| the nudge| the list| the chore list)?(?: to)?(?: me| us)?|nudges?|(?:the )?(?:chore )?list|chore nudges?)` +
		`(?: about)?(?: it| chores| the chores| the round)?(?: on)? (?:the )?(?:evening|night|eve) before` +
		`(?: (?:the )?(?:chores?|chore days?|rounds?|it|already))?(?: instead)?(?:,? (?:at )?([0-9]{1,2})(?::([0-9]{2}))? ?(am|pm|p|a)?)?(?: instead| please)?$`)
	eveOff = newPattern(`^(?:please )?(?:not (?:the )?evening before(?: any ?more)?|no more evening before|no evening before|stop the evening before|` +
		`(?:tell|nudge|text|remind|write|message)(?: to)?(?: me| us)? on (?:the )?(?:chore day|day)(?: itself)?(?: again)?|nudges? on (?:the )?(?:chore day|day)(?: itself)?(?: again)?)(?: please)?$`)
)

// eveningBefore reads a text that is nothing but the wish to be told of the round
// on the evening before it, or no longer.
func (r *reader) eveningBefore() (Reading, bool) {
	text := r.plain
	if eveOff.matches(text) {
		return r.just(Fact{model.Setting{Key: model.SetEve}}), true
	}
	m := eveAsked.groups(text)
	if m == nil {
		return Reading{}, false
	}
	hour, minute := eveHour, 0
	if m[1] != "" {
		hour, _ = strconv.Atoi(m[1]) // one or two digits
		minute, _ = strconv.Atoi("0" + m[2])
		if hour < 12 && m[3] != "am" && m[3] != "a" { // an evening's hour
			hour += 12
		}
	}
	if hour < 12 || hour > 23 || minute > 59 {
		return Reading{}, false
	}
	return r.just(Fact{model.Setting{Key: model.SetEve, List: []string{model.FormatClock(hour*60 + minute)}}}), true
}
