package model

import "errors"

// Heat is how a day bears on the pigs.
type Heat struct {
	THI       float64
	Class     HeatClass
	HighC     float64
	RhPct     float64
	RhAssumed bool
	Reasons   []Reason
}

// Heat gives the heat class of the day at its high for the pigs that are there.
// Missing "temperature" where no high was told or forecast for the day.
func (h *Herd) Heat(on Day) (Heat, error) {
	air := h.Air(on)
	if !air.HighTold {
		return Heat{}, &Missing{What: "temperature"}
	}
	if air.Forecast {
		return h.heat(on, air, HeatHighForecast)
	}
	return h.heat(on, air, HeatHighTold)
}

// HeatAt is Heat of a day at a high that somebody only supposes (-40 to 60 Celsius; else
// *OutOfRange), in air as humid as is told or assumed for the day.
func (h *Herd) HeatAt(on Day, highC float64) (Heat, error) {
	if !(highC >= -40 && highC <= 60) {
		return Heat{}, &OutOfRange{"high_c", highC, -40, 60}
	}
	air := h.Air(on)
	air.HighC = highC
	return h.heat(on, air, HeatHighSupposed)
}

// heat is that of a day in this air, whose high is known as the reason code says.
func (h *Herd) heat(on Day, air DayAir, known string) (Heat, error) {
	f := Heat{
		THI: thi(air.HighC, air.RhPct), HighC: air.HighC, RhPct: air.RhPct,
		RhAssumed: air.RhAssumed,
	}
	f.Class = classOfTHI(f.THI)
	f.Reasons = append(f.Reasons, Reason{Code: known, On: on, Q: []Quantity{{air.HighC, Celsius}}})
	heaviest, weighed, err := h.heaviestKg(on)
	if err != nil {
		return Heat{}, err
	}
	switch {
	case air.HighC >= WatchAnyC && f.Class == HeatNormal:
		f.Class = HeatWatch
		f.Reasons = append(f.Reasons, Reason{Code: HeatPlainLine, Q: []Quantity{{WatchAnyC, Celsius}}})
	case air.HighC >= WatchHeavyC && f.Class == HeatNormal && weighed && heaviest > HeavyPigKg:
		f.Class = HeatWatch
		f.Reasons = append(f.Reasons, Reason{Code: HeatHeavyPigs, Q: []Quantity{{heaviest, Kilograms}, {WatchHeavyC, Celsius}}})
	case air.HighC >= WatchHeavyC && f.Class == HeatNormal && !weighed && len(h.Alive(on)) > 0:
		// A weight nobody told may be a heavy one.
		f.Class = HeatWatch
		f.Reasons = append(f.Reasons, Reason{Code: HeatWeightUnknown, Q: []Quantity{{WatchHeavyC, Celsius}}})
	}
	rh := HeatHumidity
	if air.RhAssumed {
		rh = HeatHumidityAssumed
	}
	f.Reasons = append(f.Reasons,
		Reason{Code: rh, Q: []Quantity{{air.RhPct, Percent}}},
		Reason{Code: HeatIndex, Q: []Quantity{{f.THI, Count}}})
	return f, nil
}

// heaviestKg is the median weight of the heaviest pig on the day; not known
// where there is no pig or no weight.
func (h *Herd) heaviestKg(on Day) (float64, bool, error) {
	pigs := h.Alive(on)
	if len(pigs) == 0 {
		return 0, false, nil
	}
	weights, err := h.medianWeights(pigs, on)
	var missing *Missing
	if errors.As(err, &missing) {
		return 0, false, nil
	}
	if err != nil {
		return 0, false, err
	}
	heaviest := 0.0
	for _, w := range weights {
		heaviest = max(heaviest, w.kg)
	}
	return heaviest, heaviest > 0, nil
}
