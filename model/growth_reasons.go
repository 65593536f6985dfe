package model

import "slices"

// The codes that figures of weight and of target days give as reasons:
//
//	last_weighed     Names: how ("scale", "tape", "eye", "hanging"); On; Q: kg as read, days ago
//	weighings_count  Q: how many readings the pigs asked about have
//	never_weighed    Names: pigs that were never weighed; the herd's mean stands for them
//	arrival_guess    On: arrival; Q: kg each as said then
//	age_guess        On: day of birth; Q: age in days
//	herd_speed       Q: percent of the published table's growth, percent SD
//	table_gain       Q: kg a day that the published table gives at this weight
//	tape_bias        Q: percent that the herd's tape reads high (minus: low) at that weight, percent SD
//	sick_slow        Names: pigs; On: since; counted as half growth while sick
//	heat_slow        On: the day asked about; Q: hot days known of the month before it, kg that each pig is taken to have lost by them
//	reading_doubted  Names: pigs; On; Q: kg as read; hardly counted
//	growth_stall     Names: pigs; On: the weighing before; Q: kg gained since, kg expected, half the 80 % range of that, days
//	stall_tape       Q: kg that one tape reading errs by, one SD
//	past_table       Q: kg from which the table is extrapolated
//
// and for when to weigh:
//
//	weigh_none       nothing was weighed yet
//	weigh_wide       On: target day; Q: days that it is uncertain either way
//	weigh_near       On: target day or appointment; Q: days until then
//	weigh_check      On: the last weighing on a scale; Q: kg then: the tape was not held against it since
const (
	ReasonLastWeighed    = "last_weighed"
	ReasonWeighingsCount = "weighings_count"
	ReasonNeverWeighed   = "never_weighed"
	ReasonArrivalGuess   = "arrival_guess"
	ReasonAgeGuess       = "age_guess"
	ReasonHerdSpeed      = "herd_speed"
	ReasonTableGain      = "table_gain"
	ReasonTapeBias       = "tape_bias"
	ReasonSickSlow       = "sick_slow"
	ReasonHeatSlow       = "heat_slow"
	ReasonReadingDoubted = "reading_doubted"
	ReasonPastTable      = "past_table"
	ReasonGrowthStall    = "growth_stall"
	ReasonStallTape      = "stall_tape"
	ReasonWeighNone      = "weigh_none"
	ReasonWeighWide      = "weigh_wide"
	ReasonWeighNear      = "weigh_near"
	ReasonWeighCheck     = "weigh_check"
)

// tableEndKg is where the published classes end.
const tableEndKg = 135.0

// reasons says what the weights of pigs on a day rest on; s is where they stand.
func (f *growthFit) reasons(pigs []*growthPig, on Day, s growthState) []Reason {
	var out []Reason
	var last *growthReading
	var never []string
	tapes, count := 0, 0
	see := func(r *growthReading) {
		count++
		if r.by == ByTape {
			tapes++
		}
		if r.day <= float64(on) && (last == nil || r.day >= last.day) {
			last = r
		}
	}
	for _, p := range pigs {
		for i := range p.readings {
			see(&p.readings[i])
		}
	}
	means := 0
	for i := range f.means.readings {
		for _, j := range f.means.readings[i].pigs {
			if slices.ContainsFunc(pigs, func(p *growthPig) bool { return p.animal.Number == j }) {
				see(&f.means.readings[i])
				means++
				break
			}
		}
	}
	for _, p := range pigs {
		if len(p.readings) == 0 && means == 0 && p.animal.Name != "" {
			never = append(never, p.animal.Name)
		}
	}
	if last != nil {
		out = append(out, last.reason(on),
			Reason{Code: ReasonWeighingsCount, Q: []Quantity{{float64(count), Count}}})
	}
	if len(never) > 0 && f.weighed {
		out = append(out, Reason{Code: ReasonNeverWeighed, Names: never})
	}
	out = append(out, f.startReasons(pigs, on, last)...)
	out = append(out, f.pathReasons(pigs, on, s)...)
	if tapes > 0 {
		bias, sd := f.bias(readingErrors[ByTape], s.at(0))
		out = append(out, Reason{Code: ReasonTapeBias, Q: []Quantity{{100 * bias, Percent}, {100 * sd, Percent}}})
	}
	return out
}

// reason says that a pig was last weighed so.
func (r *growthReading) reason(on Day) Reason {
	return Reason{Code: ReasonLastWeighed, Names: []string{r.by}, On: Day(r.day), Q: []Quantity{
		{r.kg, Kilograms}, {float64(on) - r.day, Days},
	}}
}

// startReasons says what is known of the start, where nothing was weighed.
func (f *growthFit) startReasons(pigs []*growthPig, on Day, last *growthReading) []Reason {
	if last != nil || !f.groups[pigs[0].group].guessed {
		return nil
	}
	g := pigs[0].animal.Group
	if g.WeightKg != nil {
		return []Reason{{Code: ReasonArrivalGuess, On: g.Arrived, Q: []Quantity{{*g.WeightKg, Kilograms}}}}
	}
	return []Reason{{Code: ReasonAgeGuess, On: *g.Born, Q: []Quantity{{float64(on - *g.Born), Days}}}}
}

// pathReasons says how pigs grow: the herd's speed, the table, sickness and
// readings that were doubted.
func (f *growthFit) pathReasons(pigs []*growthPig, on Day, s growthState) []Reason {
	speed, sd := f.speed(pigs[0].group)
	gain := 0.0
	for i, day := range s.days {
		_, g := tableWeight(day)
		gain += s.kinds[i].n * g / float64(len(pigs))
	}
	out := []Reason{
		{Code: ReasonHerdSpeed, Q: []Quantity{{100 * speed, Percent}, {100 * sd, Percent}}},
		{Code: ReasonTableGain, Q: []Quantity{{gain, KilogramsPerDay}}},
	}
	out = append(out, f.heatReason(pigs, on, gain)...)
	for _, p := range pigs {
		for _, sp := range p.spells {
			if sp.from <= float64(on) && sp.to+14 >= float64(on) {
				out = append(out, Reason{Code: ReasonSickSlow, Names: p.animal.names(), On: Day(sp.from)})
			}
		}
		for _, r := range p.readings {
			if r.wrong > 0.5 {
				out = append(out, Reason{
					Code: ReasonReadingDoubted, Names: p.animal.names(),
					On: Day(r.day), Q: []Quantity{{r.kg, Kilograms}},
				})
			}
		}
	}
	if s.at(0) > tableEndKg {
		out = append(out, Reason{Code: ReasonPastTable, Q: []Quantity{{tableEndKg, Kilograms}}})
	}
	return out
}

// names is the pig's name as reasons take it, none where it has none.
func (a *Animal) names() []string {
	if a.Name == "" {
		return nil
	}
	return []string{a.Name}
}
