package model

import (
	"math"
	"sort"
	"strings"
	"time"
)

// Herd is what the records say, sorted into things and events. It is made by
// [Fold] and never changed afterwards.
type Herd struct {
	Name     string
	Zone     string // IANA name; empty until stated
	Units    string // US or Metric; empty until stated
	Currency string // ISO 4217; empty until stated
	TargetKg float64
	// TargetStated says that the person chose the target.
	TargetStated bool
	Chore        ChoreRhythm
	Quiet        QuietHours
	LevelMidweek bool                 // the person wants to be told to level the feed between two rounds
	DarkPictures bool                 // the person wants pictures light on dark
	Muted        map[string]bool      // topics of nudges the person stopped
	Unmuted      map[string]time.Time // when topics of nudges, or All, were last wanted again
	Sizes        map[string]float64   // kg that one bag, sack, bucket, scoop or batch holds
	Skipped      map[string]bool      // set-up questions passed over

	Groups  []*Group
	Animals []*Animal
	Feeders []*Feeder
	Barrels []*Barrel
	Pens    []*Pen
	Wallow  *Wallow

	Weighings   []Dated[Weigh]
	Refills     []Dated[Refill]
	FeedLevels  []Dated[FeedLevel]
	Stocks      []Dated[Stock]
	Mixes       []Dated[Mixed]
	Recipes     []Dated[Recipe]
	Waters      []Dated[Water]
	WallowFills []Dated[WallowFill]
	Worms       []Dated[Worm]
	Treatments  []Given
	Moves       []Moved
	Sicks       []Dated[Sick]
	Alarms      []Dated[Alarm]
	Fences      []Dated[Fence]
	Weathers    map[Day]Weather // as people told it; see WeatherOf
	Bookings    []Dated[Booked]
	Gones       []Dated[Gone]
	Aways       []Dated[AwayFrom]
	Expecteds   []Dated[Expected]
	Spends      []Dated[Spend]
	Notes       []Dated[Note]
	Reminds     []Dated[Remind]
	Dones       []Dated[Done]
	Snoozes     []Dated[Snooze]
	Tolds       []Dated[Told]
	Questions   []Dated[Question]
	Imports     []Dated[Import]

	// Place is roughly where the herd is; nil where that was not told, or was
	// taken back.
	Place *Place
	// ForecastAt is when the latest forecast was fetched.
	ForecastAt time.Time

	First, Last time.Time // moments of the earliest and the latest record
	latest      Record

	forecasts map[Day]Weather   // the latest word on each day
	highTold  map[Day]time.Time // when a person told the day's high on the day

	settled map[string]string // how each question was settled
	retired []retiredFeeder   // feeders taken away
	figures *figures          // computed once, on first use
	assumed *Herd             // the herd that this one is a what-if of
}

// ChoreRhythm is the days and the hour of the weekly round.
type ChoreRhythm struct {
	Days   []time.Weekday // in the order of the week, from Sunday; never empty
	Minute int            // after midnight
	Stated bool           // the person chose it
	// EveMinute is the minute after midnight of the day before a round at which the
	// round is told, where the person wants it told then; nil: at the round itself.
	EveMinute *int
	// ShopMinute is the minute after midnight of the day before a round at which it is
	// told what must be bought for it.
	ShopMinute int
	// Since is when the rhythm in force was last set, or the herd's first setting
	// was made: no chore moment before it was promised.
	Since time.Time
}

// UsualShopMinute is 5 pm: a feed shop is open still, and the way home leads past it
// (common practice, no source).
const UsualShopMinute = 17 * 60

// QuietHours is the span of the day in which only dangers are told: from From
// to To, both minutes after midnight, across midnight where From is the later.
type QuietHours struct {
	From, To int
}

// Holds reports whether the minute after midnight lies within the quiet hours.
func (q QuietHours) Holds(minute int) bool {
	if q.From == q.To {
		return false
	}
	if q.From < q.To {
		return minute >= q.From && minute < q.To
	}
	return minute >= q.From || minute < q.To
}

// Group is pigs of one age that came together.
type Group struct {
	Name     string // as the person calls it; may be empty
	Arrived  Day
	ArriveAt time.Time
	Born     *Day
	WeightKg *float64 // each, on arrival, where it was said
	Pigs     []*Animal
}

// Animal is one pig. Pigs without names have an empty Name; Number tells them
// apart.
type Animal struct {
	Number int // from 0, in the order of arrival
	Name   string
	Sex    Sex
	Group  *Group
	Gone   *Dated[Gone] // nil while it lives here
}

// Feeder is a feeder as set up.
type Feeder struct {
	Name       string
	CapacityKg *float64
	CapacityL  *float64
}

// retiredFeeder is a feeder that was taken away at a moment.
type retiredFeeder struct {
	Feeder
	at time.Time
}

// Barrel is a water barrel as set up.
type Barrel struct {
	Name      string
	CapacityL *float64
	Nipples   *int
}

// Pen is a pen as set up or moved into.
type Pen struct {
	Name   string
	AreaM2 *float64
	InUse  bool // said to be in use at set-up, before any move
	Soil   Soil // empty: not said
	Since  time.Time
}

// Wallow is the wallow as set up.
type Wallow struct {
	AreaM2 *float64
	DepthM *float64
}

// Given is a treatment with the pigs it covers: those alive at its moment.
type Given struct {
	Record
	Treatment
	Worm bool
	Pigs []*Animal
}

// Moved is a move with the pigs that moved.
type Moved struct {
	Record
	Pen  *Pen
	Pigs []*Animal
}

// Defaults that hold until the person says otherwise.
const (
	DefaultTargetKg  = 120.0 // about 265 lb, a common butcher weight
	defaultChoreHour = 7 * 60
)

func newHerd() *Herd {
	return &Herd{
		TargetKg:  DefaultTargetKg,
		Chore:     ChoreRhythm{Days: []time.Weekday{time.Saturday}, Minute: defaultChoreHour, ShopMinute: UsualShopMinute},
		Quiet:     QuietHours{From: 21 * 60, To: 6 * 60},
		Muted:     map[string]bool{},
		Unmuted:   map[string]time.Time{},
		Sizes:     map[string]float64{},
		Skipped:   map[string]bool{},
		Weathers:  map[Day]Weather{},
		forecasts: map[Day]Weather{},
		highTold:  map[Day]time.Time{},
		settled:   map[string]string{},
		figures:   &figures{},
	}
}

// Alive lists the pigs of the herd on the given day, in the order of arrival:
// those that have come and not gone before that day ends.
func (h *Herd) Alive(on Day) []*Animal {
	var out []*Animal
	for _, a := range h.Animals {
		if a.Group.Arrived <= on && (a.Gone == nil || a.Gone.On > on) {
			out = append(out, a)
		}
	}
	return out
}

// aliveAt lists the pigs alive at the moment t.
func (h *Herd) aliveAt(t time.Time) []*Animal {
	var out []*Animal
	for _, a := range h.Animals {
		if !a.Group.ArriveAt.After(t) && (a.Gone == nil || a.Gone.At.After(t)) {
			out = append(out, a)
		}
	}
	return out
}

// Animal finds a pig by its name, whatever the case; nil if there is none.
func (h *Herd) Animal(name string) *Animal {
	for i := len(h.Animals) - 1; i >= 0; i-- { // the latest of that name
		if a := h.Animals[i]; a.Name != "" && strings.EqualFold(a.Name, name) {
			return a
		}
	}
	return nil
}

// resolve finds the pigs that names speak of among those given. No names, or
// All, is all of them.
func resolve(names []string, among []*Animal) []*Animal {
	if len(names) == 0 || len(names) == 1 && names[0] == All {
		return among
	}
	var out []*Animal
	for _, a := range among {
		for _, n := range names {
			if a.Name != "" && strings.EqualFold(a.Name, n) {
				out = append(out, a)
				break
			}
		}
	}
	return out
}

// Recipe is the mix in use, or false if none was ever said.
func (h *Herd) Recipe() (Recipe, bool) {
	if len(h.Recipes) == 0 {
		return Recipe{}, false
	}
	return h.Recipes[len(h.Recipes)-1].F, true
}

// BatchKg is the weight in kilograms of one batch of the mix: the recipe's, or the size that
// the person gave for a batch.
func (h *Herd) BatchKg() (float64, bool) {
	if r, ok := h.Recipe(); ok {
		return r.BatchKg(), true
	}
	kg, ok := h.Sizes["batch"]
	return kg, ok
}

// Open lists the questions not yet settled, the oldest first.
func (h *Herd) Open() []Dated[Question] {
	var out []Dated[Question]
	for _, q := range h.Questions {
		if _, settled := h.settled[q.ID]; !settled {
			out = append(out, q)
		}
	}
	return out
}

// NextBooking is the earliest appointment with the butcher on or after the day.
func (h *Herd) NextBooking(from Day) (Booked, bool) {
	var best *Booked
	for i := range h.Bookings {
		b := &h.Bookings[i].F
		if b.Day >= from && (best == nil || b.Day < best.Day) {
			best = b
		}
	}
	if best == nil {
		return Booked{}, false
	}
	return *best, true
}

// Away reports whether the person is away on the day.
func (h *Herd) Away(on Day) bool {
	for _, a := range h.Aways {
		if a.F.From <= on && on <= a.F.To {
			return true
		}
	}
	return false
}

// NextChore is the first chore moment after t, in t's location.
func (h *Herd) NextChore(t time.Time) time.Time {
	for d := DayOf(t); ; d++ {
		for _, w := range h.Chore.Days {
			if at := d.At(h.Chore.Minute, t.Location()); d.Weekday() == w && at.After(t) {
				return at
			}
		}
	}
}

// NextRoundTold is the first moment after t at which a round is told, in t's
// location: its chore moment, or the hour of the evening before it where the person
// wants that.
func (h *Herd) NextRoundTold(t time.Time) time.Time {
	eve := h.Chore.EveMinute
	if eve == nil {
		return h.NextChore(t)
	}
	for d := DayOf(t); ; d++ {
		if at := d.At(*eve, t.Location()); h.IsChoreDay(d+1) && at.After(t) {
			return at
		}
	}
}

// IsChoreDay reports whether the round falls on the day.
func (h *Herd) IsChoreDay(d Day) bool {
	for _, w := range h.Chore.Days {
		if d.Weekday() == w {
			return true
		}
	}
	return false
}

// CurrentPen is the pen the pig is in: that of its latest move, else the one
// said to be in use, else nil.
func (h *Herd) CurrentPen(a *Animal) *Pen { return h.penOn(a, math.MaxInt32) }

func (h *Herd) addArrival(a Arrive, r Record) {
	g := &Group{Name: a.Group, Arrived: r.On, ArriveAt: r.At, Born: a.Born, WeightKg: a.WeightKg}
	for i := range a.Count {
		p := &Animal{Number: len(h.Animals), Group: g}
		if i < len(a.Animals) {
			p.Name = a.Animals[i]
		}
		if i < len(a.Sexes) {
			p.Sex = a.Sexes[i]
		}
		g.Pigs = append(g.Pigs, p)
		h.Animals = append(h.Animals, p)
	}
	h.Groups = append(h.Groups, g)
}

func (h *Herd) addGone(g Gone, r Record) {
	d := dated(g, r)
	h.Gones = append(h.Gones, d)
	among := h.aliveAt(r.At)
	if g.HangingKg != nil || g.PackagedKg != nil { // a word from the butcher on pigs already gone
		if gone := resolve(g.Animals, h.gone()); len(gone) > 0 && (len(g.Animals) > 0 && g.Animals[0] != All || len(among) == 0) {
			return
		}
	}
	pigs := resolve(g.Animals, among)
	if len(g.Animals) == 0 || g.Count > 0 && g.Count < len(pigs) && g.Animals[0] == All {
		pigs = unnamedFirst(among, g.Count)
	}
	for _, p := range pigs {
		p.Gone = &d
	}
}

func (h *Herd) gone() []*Animal {
	var out []*Animal
	for _, a := range h.Animals {
		if a.Gone != nil {
			out = append(out, a)
		}
	}
	return out
}

// unnamedFirst picks n of the pigs, those without names before the others.
func unnamedFirst(pigs []*Animal, n int) []*Animal {
	sorted := append([]*Animal(nil), pigs...)
	sort.SliceStable(sorted, func(i, j int) bool { return sorted[i].Name == "" && sorted[j].Name != "" })
	return sorted[:min(n, len(sorted))]
}

func (h *Herd) addTreatment(t Treatment, r Record) {
	_, worm := r.Fact.(Worm)
	h.Treatments = append(h.Treatments, Given{Record: r, Treatment: t, Worm: worm})
}

// coverTreatments finds the pigs of each treatment once all arrivals are known:
// those alive at its moment, or, where it was given before any of them came (by
// the seller, say), those that came later. A treatment never covers nobody for
// want of a date.
func (h *Herd) coverTreatments() {
	for i := range h.Treatments {
		g := &h.Treatments[i]
		if g.Pigs = resolve(g.Animals, h.aliveAt(g.At)); len(g.Pigs) > 0 {
			continue
		}
		g.Pigs = resolve(g.Animals, h.onDay(g.On))
	}
}

// onDay lists the pigs not gone before the day, come by then or later.
func (h *Herd) onDay(on Day) []*Animal {
	var out []*Animal
	for _, a := range h.Animals {
		if a.Gone == nil || a.Gone.On >= on {
			out = append(out, a)
		}
	}
	return out
}

func (h *Herd) addMove(m Move, r Record) {
	p := h.Pen(m.Pen)
	if p == nil {
		p = &Pen{Name: m.Pen}
		h.Pens = append(h.Pens, p)
	}
	h.Moves = append(h.Moves, Moved{Record: r, Pen: p, Pigs: resolve(m.Animals, h.aliveAt(r.At))})
}

func (h *Herd) addWeather(w Weather, r Record) {
	have := h.Weathers[r.On]
	have.take(w)
	h.Weathers[r.On] = have
	if w.HighC != nil && r.On == DayOf(r.At) {
		h.highTold[r.On] = r.At
	}
}

func (h *Herd) addBooking(b Booked, r Record) {
	kept := h.Bookings[:0]
	for _, old := range h.Bookings {
		if old.F.Day != b.Day && !(b.Cancelled && b.Day == 0) {
			kept = append(kept, old)
		}
	}
	h.Bookings = kept
	if !b.Cancelled {
		h.Bookings = append(h.Bookings, dated(b, r))
	}
}

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
