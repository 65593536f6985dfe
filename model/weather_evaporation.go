package model

import "math"

// MaxLatitudeDeg bounds the latitudes of the solar geometry: nearer the poles
// the sun stays up or down for days.
const MaxLatitudeDeg = 66.0

// ExtraterrestrialRadiation is the sun's radiation above the air on a level
// square metre, in MJ a day, at a latitude (degrees, north positive, within
// MaxLatitudeDeg) on a day of the year (1 to 366). Outside: *OutOfRange.
//
// Source: FAO Irrigation and Drainage Paper 56, equations 21 to 25, from
// memory; its worked example is reproduced.
func ExtraterrestrialRadiation(latitudeDeg float64, yearDay int) (float64, error) {
	if !(math.Abs(latitudeDeg) <= MaxLatitudeDeg) {
		return 0, &OutOfRange{"latitude_deg", latitudeDeg, -MaxLatitudeDeg, MaxLatitudeDeg}
	}
	if yearDay < 1 || yearDay > 366 {
		return 0, &OutOfRange{"year_day", float64(yearDay), 1, 366}
	}
	return extraterrestrialRadiation(latitudeDeg, yearDay), nil
}

func extraterrestrialRadiation(latitudeDeg float64, yearDay int) float64 {
	const solarConstant = 0.0820 // MJ/m2/min
	lat := latitudeDeg * math.Pi / 180
	turn := 2 * math.Pi / 365 * float64(yearDay)
	nearness := 1 + 0.033*math.Cos(turn)
	declination := 0.409 * math.Sin(turn-1.39)
	sunset := math.Acos(-math.Tan(lat) * math.Tan(declination))
	return 24 * 60 / math.Pi * solarConstant * nearness *
		(sunset*math.Sin(lat)*math.Sin(declination) + math.Cos(lat)*math.Cos(declination)*math.Sin(sunset))
}

// ReferenceEvapotranspiration is the water a well-watered short grass gives off,
// in mm a day, from the day's low and high (-60 to 60 Celsius, low no more than
// high) and the radiation above the air in MJ/m2/day (0 to 50). Outside:
// *OutOfRange. It leaves out wind and humidity.
//
// Source: the Hargreaves equation as in FAO Irrigation and Drainage Paper 56,
// equation 52 (constants read in an open library that cites it); 0.408 turns
// MJ/m2 into mm and must not be left out.
func ReferenceEvapotranspiration(lowC, highC, radiationMJM2D float64) (float64, error) {
	switch {
	case !(highC >= -60 && highC <= 60):
		return 0, &OutOfRange{"high_c", highC, -60, 60}
	case !(lowC >= -60 && lowC <= highC):
		return 0, &OutOfRange{"low_c", lowC, -60, highC}
	case !(radiationMJM2D >= 0 && radiationMJM2D <= 50):
		return 0, &OutOfRange{"radiation_mj_m2_d", radiationMJM2D, 0, 50}
	}
	return referenceEvapotranspiration(lowC, highC, radiationMJM2D), nil
}

func referenceEvapotranspiration(lowC, highC, radiationMJM2D float64) float64 {
	mean := (lowC + highC) / 2
	return max(0, 0.0023*(mean+17.8)*math.Sqrt(highC-lowC)*0.408*radiationMJM2D)
}

// openWater is evaporation from shallow open water over that of grass: FAO
// Irrigation and Drainage Paper 56, from memory.
const openWater = 1.05

// evaporationMMD is what open water in the sun loses on the day.
func (h *Herd) evaporationMMD(on Day) float64 {
	air := h.Air(on)
	return openWater * referenceEvapotranspiration(air.LowC, air.HighC,
		extraterrestrialRadiation(h.latitudeDeg(), on.yearDay()))
}
