package model

import (
	"math"
	"time"
)

// wallDays counts days, with their parts, by the wall clock.
func wallDays(t time.Time) float64 {
	return float64(DayOf(t)) + (float64(MinuteOf(t))+float64(t.Second())/60)/1440
}

// wallTime is the moment of a count of days by the wall clock in loc.
func wallTime(x float64, loc *time.Location) time.Time {
	d := Day(math.Floor(x))
	return d.At(min(int((x-float64(d))*1440+1e-6), 1439), loc)
}
