package model

// WeightFromGirth is a pig's live weight from its heart girth alone.
func WeightFromGirth(girthCm float64) (Estimate, error) { panic("tape") }

// WeightFromTape is a pig's live weight from heart girth and length.
func WeightFromTape(girthCm, lengthCm float64) (Estimate, error) { panic("tape") }
