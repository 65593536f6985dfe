package model

// THI is the temperature-humidity index, from air temperature (-60 to 60
// Celsius) and relative humidity (0 to 100 percent). Outside: *OutOfRange. It
// was made for warm weather; in the cold it is only a small number. It ignores
// sun and wind.
//
// Source: the form of the National Research Council 1971, from memory. It
// agrees with what was read of the printed livestock heat table of University of
// Missouri Extension G2099, and to a quarter of a point with the handbook form
// 0.8 T + RH (T - 14.4) + 46.4 over 24 to 38 Celsius.
func THI(tempC, rhPct float64) (float64, error) {
	if !(tempC >= -60 && tempC <= 60) {
		return 0, &OutOfRange{"temp_c", tempC, -60, 60}
	}
	if !(rhPct >= 0 && rhPct <= 100) {
		return 0, &OutOfRange{"rh_pct", rhPct, 0, 100}
	}
	return thi(tempC, rhPct), nil
}

func thi(tempC, rhPct float64) float64 {
	return 1.8*tempC + 32 - (0.55-0.0055*rhPct)*(1.8*tempC-26)
}

// THIReachedC is the air temperature in Celsius at which the index comes to a value
// (50 to 120) in air of a humidity (0 to 100 percent): else *OutOfRange. The form of
// [THI], turned round (computed).
func THIReachedC(index, rhPct float64) (float64, error) {
	const least, most = 50, 120
	switch {
	case !(index >= least && index <= most):
		return 0, &OutOfRange{"thi", index, least, most}
	case !(rhPct >= 0 && rhPct <= 100):
		return 0, &OutOfRange{"rh_pct", rhPct, 0, 100}
	}
	dry := 0.55 - 0.0055*rhPct
	return (index - 32 - 26*dry) / (1.8 * (1 - dry)), nil
}

// HeatClass is a class of a day's heat for pigs.
type HeatClass string

// The classes from HeatAlert up are the published ones of the livestock weather
// safety index (75, 79 and 84; hourly THI climatology for livestock producers,
// American Meteorological Society, 2002). HeatWatch is a plain temperature line
// below them: pigs slow down before the index says so.
const (
	HeatNormal    HeatClass = "normal"
	HeatWatch     HeatClass = "watch"
	HeatAlert     HeatClass = "alert"
	HeatDanger    HeatClass = "danger"
	HeatEmergency HeatClass = "emergency"
)

// The THI at which each published class begins.
const (
	AlertTHI     = 75.0
	DangerTHI    = 79.0
	EmergencyTHI = 84.0
)

// Plain temperature lines of HeatWatch, in Celsius, and the weight above which
// a pig counts as heavy. Group-kept pigs of 60 kg ate less above 22.9 to 25.5
// Celsius (conference abstract on humidity and rising temperatures); heavy pigs
// gain best near 16, light ones near 24 (American Society of Animal Science,
// 1949). The lines themselves are common practice, set between those.
const (
	WatchHeavyC = 24.0
	WatchAnyC   = 27.0
	HeavyPigKg  = 70.0
)

// ClassOfTHI is the published class of an index; below 75 it is HeatNormal. The
// index lies between -200 and 300, beyond which no air gives it: else
// *OutOfRange. Its source stands with the classes.
func ClassOfTHI(index float64) (HeatClass, error) {
	if !(index >= -200 && index <= 300) {
		return "", &OutOfRange{"thi", index, -200, 300}
	}
	return classOfTHI(index), nil
}

func classOfTHI(index float64) HeatClass {
	switch {
	case index >= EmergencyTHI:
		return HeatEmergency
	case index >= DangerTHI:
		return HeatDanger
	case index >= AlertTHI:
		return HeatAlert
	}
	return HeatNormal
}
