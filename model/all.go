package model

// All is the name that stands for every pig of the herd.
const All = "all"

// Float points to a number: what was said, as against what was not.
func Float(v float64) *float64 { return &v }

// Int points to a whole number.
func Int(v int) *int { return &v }
