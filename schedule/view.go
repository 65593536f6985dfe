package schedule

import (
	"strings"
	"time"

	"troughbell/model"
)

// view is a herd as it is looked at on one local day. What is due on the day is
// a function of it alone: figures are taken at the start of the day, or at the
// latest fact of the day, never at the moment of asking, so that asking more
// often changes nothing.
type view struct {
	h     *model.Herd
	f     figures
	tolds []model.Dated[model.Told] // what was told, the latest last
	loc   *time.Location
	day   model.Day
	start time.Time // of the day
	end   time.Time // start of the next day
	fact  time.Time // latest fact of the day; zero: none
	at    time.Time // moment of the figures: start, or fact
	visit time.Time // chore moment of the day; zero: none, or the person is away
	next  time.Time // visit after visit, or after at where there is none
	prev  time.Time // latest chore moment before the day
	pigs  []*model.Animal

	late   bool                 // asked of a nudge under way: welfare is told late rather than never
	keys   map[string]time.Time // when each token was told last
	items  []item               // what is told between visits, once looked
	looked bool
}

func newView(h *model.Herd, f figures, tolds []model.Dated[model.Told], now time.Time) *view {
	return viewOn(h, f, tolds, model.DayOf(now), now.Location())
}

func viewOn(h *model.Herd, f figures, tolds []model.Dated[model.Told], d model.Day, loc *time.Location) *view {
	v := &view{h: h, f: f, tolds: tolds, loc: loc, day: d, start: d.At(0, loc), end: (d + 1).At(0, loc)}
	v.pigs = h.Alive(d)
	if last := lastFact(h); last.After(v.start) && last.Before(v.end) {
		v.fact = last
	}
	v.at = v.start
	if v.fact.After(v.at) {
		v.at = v.fact
	}
	from := v.at
	if h.IsChoreDay(d) && !h.Away(d) {
		v.visit = d.At(h.Chore.Minute, loc)
		from = v.visit
	}
	v.next = v.nextVisit(from)
	v.prev = v.prevChore()
	return v
}

// longestAway bounds the search for the next visit.
const longestAway = 400

// nextVisit is the first chore moment after t on which the person is there.
func (v *view) nextVisit(t time.Time) time.Time {
	c := v.h.NextChore(t.In(v.loc))
	for i := 0; i < longestAway && v.h.Away(model.DayOf(c)); i++ {
		c = v.h.NextChore(c)
	}
	return c
}

// prevChore is the latest chore moment before the day.
func (v *view) prevChore() time.Time {
	for d := v.day - 1; ; d-- {
		if v.h.IsChoreDay(d) {
			return d.At(v.h.Chore.Minute, v.loc)
		}
	}
}

// visitAt is the moment for which a visit of the day is planned: a fact logged
// after the chore hour counts.
func (v *view) visitAt() time.Time {
	if v.fact.After(v.visit) {
		return v.fact
	}
	return v.visit
}

// lastFact is the moment of the latest record that changes a figure.
func lastFact(h *model.Herd) time.Time {
	var t time.Time
	late := func(at time.Time) {
		if at.After(t) {
			t = at
		}
	}
	latest(h.Weighings, late)
	latest(h.Refills, late)
	latest(h.FeedLevels, late)
	latest(h.Stocks, late)
	latest(h.Mixes, late)
	latest(h.Recipes, late)
	latest(h.Waters, late)
	latest(h.WallowFills, late)
	latest(h.Sicks, late)
	latest(h.Alarms, late)
	latest(h.Fences, late)
	latest(h.Bookings, late)
	latest(h.Gones, late)
	latest(h.Aways, late)
	for _, g := range h.Groups {
		late(g.ArriveAt)
	}
	if n := len(h.Treatments); n > 0 {
		late(h.Treatments[n-1].At)
	}
	if n := len(h.Moves); n > 0 {
		late(h.Moves[n-1].At)
	}
	return t
}

// lastWord is the moment of the latest record that a person made.
func lastWord(h *model.Herd) time.Time {
	t := lastFact(h)
	late := func(at time.Time) {
		if at.After(t) {
			t = at
		}
	}
	latest(h.Notes, late)
	latest(h.Spends, late)
	latest(h.Reminds, late)
	latest(h.Dones, late)
	latest(h.Snoozes, late)
	return t
}

func latest[F model.Fact](s []model.Dated[F], f func(time.Time)) {
	if len(s) > 0 {
		f(s[len(s)-1].At) // records are folded in the order of their moments
	}
}

// toldAt gives when a need of this token went out last; false if it never did.
func (v *view) toldAt(tok string) (time.Time, bool) {
	if v.keys == nil {
		v.keys = map[string]time.Time{}
		for _, t := range v.tolds {
			for _, k := range strings.Split(t.F.Key, tokenGap) {
				v.keys[k] = t.At
			}
		}
	}
	at, ok := v.keys[tok]
	return at, ok
}

// told reports whether a need of this token went out.
func (v *view) told(tok string) bool {
	_, ok := v.toldAt(tok)
	return ok
}

// toldTopic counts the nudges on a topic since a moment, and gives the latest.
func (v *view) toldTopic(topic string, since time.Time) (n int, last time.Time) {
	for i := len(v.tolds) - 1; i >= 0; i-- {
		t := v.tolds[i]
		if t.At.Before(since) {
			break
		}
		for _, x := range t.F.Topics {
			if x == topic {
				if n == 0 {
					last = t.At
				}
				n++
				break
			}
		}
	}
	return n, last
}

// names gives the names of pigs; empty where they are all the living ones or
// have no names.
func (v *view) names(pigs []*model.Animal) []string {
	if len(pigs) == 0 || len(pigs) == len(v.pigs) {
		return nil
	}
	return named(pigs)
}

func named(pigs []*model.Animal) []string {
	var out []string
	for _, p := range pigs {
		if p.Name != "" {
			out = append(out, p.Name)
		}
	}
	return out
}
