package reading

import (
	"strconv"

	"troughbell/model"
)

var (
	shopAsked = newPattern(`^(?:please )?(?:(?:can you |could you )?(?:tell|nudge|text|remind|write|message|ping|warn)(?: to)?(?: me| us)? (?:about|of|on) |move |set )(?:the |my |our )?` +
		`(?:shopping|stock|stocks|feed shopping|what to buy|buying feed|supplies|shop run|shopping list)(?: nudges?| reminders?| messages?)?(?: the (?:evening|day|night) before)?(?: at| by| to| for),? ([0-9]{1,2})(?::([0-9]{2}))? ?(am|pm|p|a)?$`)
	shopUsual = newPattern(`^(?:please )?(?:tell|nudge|text|write|message|remind)(?: me| us)? (?:about|of|on) (?:the )?(?:shopping|stock|supplies) at the usual (?:hour|time)(?: again)?$`)
)

// shopHour reads a text that is nothing but the hour at which to tell, on the day
// before a round, what must be bought for it. An hour without am or pm is one of the
// afternoon, unless it is past seven, when shops open too.
func (r *reader) shopHour() (Reading, bool) {
	text := r.plain
	if shopUsual.matches(text) {
		return r.just(Fact{model.Setting{Key: model.SetShop}}), true
	}
	m := shopAsked.groups(text)
	if m == nil {
		return Reading{}, false
	}
	hour, _ := strconv.Atoi(m[1]) // one or two digits
	minute, _ := strconv.Atoi("0" + m[2])
	switch half := m[3]; {
	case half != "" && half[0] == 'p' && hour < 12, half == "" && hour <= 7:
		hour += 12
	case half != "" && half[0] == 'a' && hour == 12:
		hour = 0
	}
	if hour > 23 || minute > 59 {
		return Reading{}, false
	}
	return r.just(Fact{model.Setting{Key: model.SetShop, List: []string{model.FormatClock(hour*60 + minute)}}}), true
}
