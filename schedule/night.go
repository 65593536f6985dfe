package schedule

import (
	"time"

	"troughbell/model"
)

// nightMinute is the minute of the day at which the night's work is done: when
// nobody texts, and after the hours that clocks are changed in.
const nightMinute = 3*60 + 20

// NightOf is the day whose night's work has come, by the clock and zone of now.
func NightOf(now time.Time) model.Day {
	today := model.DayOf(now)
	if now.Before(today.At(nightMinute, now.Location())) {
		return today - 1
	}
	return today
}
