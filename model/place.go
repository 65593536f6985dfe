package model

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Place is roughly where the herd is, in degrees, north and east positive, to a
// tenth of a degree: some 10 km, all that a forecast needs and all that is kept.
type Place struct{ LatDeg, LonDeg float64 }

var errPlace = errors.New("a place is a latitude from -90 to 90 and a longitude from -180 to 180, as in 44.3, -89.9")

// CoarsePlace rounds a position to what is kept of it.
func CoarsePlace(latDeg, lonDeg float64) (Place, error) {
	// Written so that NaN fails too.
	if !(math.Abs(latDeg) <= 90 && math.Abs(lonDeg) <= 180) {
		return Place{}, errPlace
	}
	tenth := func(x float64) float64 { return math.Round(x*10) / 10 }
	return Place{LatDeg: tenth(latDeg), LonDeg: tenth(lonDeg)}, nil
}

// String writes the place as "44.3,-89.9", the form that ParsePlace reads.
func (p Place) String() string { return fmt.Sprintf("%.1f,%.1f", p.LatDeg, p.LonDeg) }

// ParsePlace reads what String wrote.
func ParsePlace(s string) (Place, error) {
	a, b, ok := strings.Cut(s, ",")
	lat, err1 := strconv.ParseFloat(a, 64)
	lon, err2 := strconv.ParseFloat(b, 64)
	if !ok || err1 != nil || err2 != nil {
		return Place{}, errPlace
	}
	return CoarsePlace(lat, lon)
}
