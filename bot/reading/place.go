package reading

import (
	"math"
	"strconv"
	"strings"

	"troughbell/model"
)

// placeHeads begin a text that says where the herd is by its degrees.
var placeHeads = split("location, our location, my location, the location, place, our place, position, coordinates, we are at, we're at, forecast for, weather for, forecast at")

// placeOff are texts that take the place back, and with it the forecast.
var placeOff = setOfWords(split(`location off, forecast off, weather off, forecasts off, weather forecast off, no forecast, no forecasts,
	stop the forecast, stop the forecasts, stop the weather, stop the weather forecast, forget where we are,
	forget my location, forget our location, forget the location, delete my location, delete our location`))

func setOfWords(ws []string) map[string]bool {
	m := map[string]bool{}
	for _, w := range ws {
		m[w] = true
	}
	return m
}

// place reads a text that is nothing but where the herd is, in degrees: "location
// 44.31, -89.95", "place 44.3 N 89.9 W". Only a tenth of a degree is kept.
func (r *reader) place() (Reading, bool) {
	text := r.plain
	if placeOff[text] {
		return r.just(Fact{model.Setting{Key: model.SetPlace}}), true
	}
	for _, head := range placeHeads {
		rest, ok := strings.CutPrefix(text, head)
		if !ok || rest == "" || !strings.ContainsRune(" :", rune(rest[0])) {
			continue
		}
		if p, ok := degrees(strings.TrimLeft(rest, " :")); ok {
			return r.just(Fact{model.Setting{Key: model.SetPlace, Text: p.String()}}), true
		}
	}
	return Reading{}, false
}

// degrees reads a latitude and a longitude. A letter of the compass stands for a
// sign; whole numbers without one are no place, they are too rough.
func degrees(s string) (model.Place, bool) {
	for _, w := range []string{"°", "º", "degrees", "deg", ","} {
		s = strings.ReplaceAll(s, w, " ")
	}
	var v []float64
	signs := ""
	for _, f := range strings.Fields(s) {
		letter := ""
		if last := f[len(f)-1:]; strings.Contains("nsew", last) {
			letter, f = last, f[:len(f)-1]
		}
		if f != "" {
			x, err := strconv.ParseFloat(f, 64)
			if err != nil || len(v) == 2 || math.IsNaN(x) {
				return model.Place{}, false
			}
			v = append(v, x)
		}
		if letter != "" {
			if len(signs) != len(v)-1 {
				return model.Place{}, false
			}
			signs += letter
		}
	}
	if len(v) != 2 {
		return model.Place{}, false
	}
	if signs != "" {
		if len(signs) != 2 || v[0] < 0 || v[1] < 0 || !strings.Contains("ns", signs[:1]) || !strings.Contains("ew", signs[1:]) {
			return model.Place{}, false
		}
		if signs[0] == 's' {
			v[0] = -v[0]
		}
		if signs[1] == 'w' {
			v[1] = -v[1]
		}
	} else if !strings.Contains(s, ".") {
		return model.Place{}, false
	}
	p, err := model.CoarsePlace(v[0], v[1])
	return p, err == nil
}
