package model

// WaterReturn says how to let pigs drink again after a dry spell. A full barrel
// after a long thirst can kill: water then goes to the brain.
type WaterReturn string

// The ways back to water, by how long they went without.
const (
	// ReturnFreely: open it and watch them.
	ReturnFreely WaterReturn = "freely"
	// ReturnSlowly: small drinks first, several short openings over hours.
	ReturnSlowly WaterReturn = "slowly"
	// ReturnByVet: call a vet before opening the water, small sips only.
	ReturnByVet WaterReturn = "vet_first"
)

// WaterReturnAfter is the way back to water after so many hours without (0 to
// 2000, else *OutOfRange); signs says that a pig wanders, is blind, presses its
// head, sits like a dog or has fits, or is off feed: then it is the vet first
// whatever the hours.
//
// Source: severe cases follow more than 24 hours without water, or fewer (Journal
// of Swine Health and Production 31(6), 2023; read); water goes back over many
// hours in small amounts (abstract on sodium ion toxicosis; read). The line of 12
// hours is judgement on the careful side.
func WaterReturnAfter(hours float64, signs bool) (WaterReturn, error) {
	const mostHours, slowFrom, vetFrom = 2000, 12, 24
	switch {
	case !(hours >= 0 && hours <= mostHours):
		return "", &OutOfRange{"hours", hours, 0, mostHours}
	case signs || hours > vetFrom:
		return ReturnByVet, nil
	case hours >= slowFrom:
		return ReturnSlowly, nil
	}
	return ReturnFreely, nil
}
