package bot

import (
	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/store"
)

// forbidden says which right is missing for a person to record a fact; empty if
// none is. A helper logs the round; drugs, deaths, sales, money, bookings and
// the set-up are the family's. An alarm is anyone's.
func forbidden(m store.Member, f model.Fact) string {
	if m.Role != store.Helper {
		return ""
	}
	switch f.(type) {
	case model.Worm, model.Treat:
		return "drugs"
	case model.Gone:
		return "gone"
	case model.Spend:
		return "money"
	case model.Booked, model.Setting, model.Arrive, model.Recipe:
		return "setup"
	}
	return ""
}

// tellsMoney reports whether the answer to a question tells what was paid, which a
// helper does not see: costs, the plan with its prices, and the journal where it
// is not of one kind of record without money.
func tellsMoney(a reading.Ask) bool {
	switch a.Topic {
	case "cost":
		return true
	case "plan":
		return a.About == ""
	case "history":
		switch a.About {
		case "", "spend", "stock", "gone":
			return true
		}
	}
	return false
}
