package reading

import (
	"troughbell/model"
)

var daily = newPattern(`^(?:(?:our |my |the |we do )?(?:chores?|chore days?|rounds?)(?: is| are)?:? (?:daily|every day|everyday|each day)|every day is (?:a )?chore day|we do (?:the )?chores (?:daily|every day))(?: now| from now on)?$`)

// choresDaily reads a text that says nothing but that chores are done every day.
func (r *reader) choresDaily() (Reading, bool) {
	if !daily.matches(r.plain) {
		return Reading{}, false
	}
	return r.just(Fact{model.Setting{Key: model.SetChore, List: []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"}}}), true
}
