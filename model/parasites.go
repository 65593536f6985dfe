package model

// Parasite is a worm of pigs.
type Parasite string

// The worms that matter on pasture.
const (
	LargeRoundworm Parasite = "ascaris_suum"
	Whipworm       Parasite = "trichuris_suis"
	NodularWorm    Parasite = "oesophagostomum"
)

// ParasiteFacts is what is published of a worm.
type ParasiteFacts struct {
	Name Parasite
	// PrepatentLowDays to PrepatentHighDays: from a swallowed egg to the first eggs
	// in the dung.
	PrepatentLowDays, PrepatentHighDays int
	// DevelopsFromC is the mean temperature in Celsius below which eggs on the
	// ground do not ripen.
	DevelopsFromC float64
	// RipensDays is the fewest days above it until they can infect.
	RipensDays int
	// SurvivesYears is how long the hardiest last in the ground; most die in the
	// first summer.
	SurvivesYears float64
	Source        string
	Status        Status
}

var parasites = []ParasiteFacts{
	{
		LargeRoundworm, 42, 56, 14.5, 21, 9,
		"Ascaris: The Neglected Parasite, 2013, for 42 days; Parasites and Vectors 9:80, 2016, for 14.5 °C and 9 years; three weeks to ripen from a student note", FromSource,
	},
	{
		Whipworm, 41, 49, 16, 70, 11,
		"Parasitology 1973 for 41 to 47 days; Merck Veterinary Manual 2012 for 6 to 7 and for 10 to 12 weeks and 11 years; Research in Veterinary Science 26, 1979, for 16 °C", FromSource,
	},
	{
		NodularWorm, 17, 21, 10, 7, 1,
		"Parasitology, about 1980, for 10 °C and a year on pasture; prepatent period and the week to ripen from memory", FromMemory,
	},
}

// Parasites lists the worms with what is published of them.
func Parasites() []ParasiteFacts { return append([]ParasiteFacts(nil), parasites...) }

// Ripens gives the first day on which eggs that came to the ground on a day can
// infect: after RipensDays with a mean temperature (meanC, Celsius) of at least
// DevelopsFromC. Cold days only stop the clock. false where that is not within
// two years, or a day has no temperature.
func (p ParasiteFacts) Ripens(shed Day, meanC func(Day) float64) (Day, bool) {
	const horizon = 2 * 365
	warm := 0
	for d := shed; d < shed+horizon; d++ {
		c := meanC(d)
		if c != c { // not a number
			return 0, false
		}
		if c >= p.DevelopsFromC {
			if warm++; warm >= p.RipensDays {
				return d, true
			}
		}
	}
	return 0, false
}

// PenWorms is what is to be expected of roundworm eggs in a pen.
type PenWorms struct {
	Pen *Pen
	// Since is the first day pigs stood there: the earliest that eggs came down.
	Since Day
	// LastUse is the last day pigs stood there.
	LastUse Day
	// InfectiveFrom is the earliest day on which its eggs can infect; Ripe says
	// whether that lies on or before the day asked about.
	InfectiveFrom Day
	Ripe          bool
	// CleanBy is until when the hardiest eggs may last after LastUse.
	CleanBy Day
	Reasons []Reason
}

// PenWorms gives for each pen that pigs stood in what is to be expected of eggs
// of the large roundworm in its ground, in the order set up: whether the herd
// has any shows only in a dung test. The weather is that told, else the season's
// normal. A rest of weeks is for the grass, never for the worms. *Missing "pigs"
// or "pen".
func (h *Herd) PenWorms(today Day) ([]PenWorms, error) {
	if len(h.Animals) == 0 {
		return nil, &Missing{What: "pigs"}
	}
	worm := parasites[0]
	var out []PenWorms
	for _, p := range h.Pens {
		first, last, used := h.penSpan(p, today)
		if !used {
			continue
		}
		w := PenWorms{Pen: p, Since: first, LastUse: last, CleanBy: last + Day(worm.SurvivesYears*365)}
		ripe, ok := worm.Ripens(first, func(d Day) float64 { return h.Air(d).MeanC() })
		if ok {
			w.InfectiveFrom, w.Ripe = ripe, ripe <= today
		}
		if w.Ripe || ok {
			w.Reasons = append(w.Reasons, Reason{Code: ReasonWormSoil, Names: []string{p.Name}, On: ripe})
		} else {
			w.Reasons = append(w.Reasons, Reason{Code: ReasonWormSoilCold, Names: []string{p.Name}})
		}
		w.Reasons = append(w.Reasons, Reason{Code: ReasonWormSurvival, Q: []Quantity{{worm.SurvivesYears, Count}}})
		out = append(out, w)
	}
	if len(out) == 0 {
		return nil, &Missing{What: "pen"}
	}
	return out, nil
}

// penSpan is the first and the last day up to today on which a pig stood in the
// pen; false where none did.
func (h *Herd) penSpan(p *Pen, today Day) (first, last Day, used bool) {
	last, used = h.leftOn(p, today)
	if !used {
		return 0, 0, false
	}
	for d := h.Animals[0].Group.Arrived; d <= last; d++ {
		for _, a := range h.Alive(d) {
			if h.penOn(a, d) == p {
				return d, last, true
			}
		}
	}
	return last, last, true
}
