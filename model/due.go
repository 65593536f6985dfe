package model

// Due is a task with the day it falls due; a day gone by says that it is
// overdue since then.
type Due struct {
	On      Day
	Pigs    []*Animal
	Pen     *Pen
	Blocked bool // not to be done: it could not be clear in time
	Reasons []Reason
}
