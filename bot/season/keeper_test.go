package season

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/model"
)

// keeper is a person who texts what they do and does what the nudges say.
type keeper struct {
	habits
	rng   *rand.Rand
	farm  *farm
	shape shape
	slot  model.Day // the day the butcher has for them

	inbox   []bot.Push // nudges not yet acted on
	tasks   []task
	visits  []time.Time // chore moments at which the keeper is free to work
	stops   []stop
	lines   []line // to be texted, in order
	texted  int    // lines texted
	booked  bool
	gone    bool
	checked bool // the tape was held against a scale
	told    map[int]bool
	fills   fills
	asks    map[int]int // day of the season to days ahead of the truth
	guesses map[int]guess
	pending *bot.Reply
	doubted int
	sky     func(at time.Time, days []model.ForecastDay)
	forgot  map[string]string // what was done and not texted, by "refill" or "water"
	pen     int
}

// habits tell keepers apart.
type habits struct {
	lazy   bool    // late, forgetful
	brim   bool    // fills feeders to the brim whatever was said
	scale  bool    // has a scale
	checks bool    // holds the tape against a scale once, and when asked to
	us     bool    // pounds, gallons, inches
	talks  bool    // tells of hot days
	shares bool    // shared the place, so that a forecast comes in
	shed   bool    // mixes from a shed it tells of
	pens   bool    // has pens to move to
	wallow bool    // has a wallow
	scoop  float64 // what really goes in, of what is said
	chores []time.Weekday
	hour   int
}

// fills counts the days on which feed or water was filled, and what was poured.
type fills struct {
	feed, water map[int]bool
}

// guess is what the program said of the day the herd is ready.
type guess struct {
	made  int // day of the season
	day   model.Day
	known bool
}

// task is something a nudge asked for, to be done at a stop of the day.
type task struct {
	what string // of the nudge's "about"
	code string
	from model.Day // not before
	at   time.Time
	line nudgeLine
}

// nudgeLine is what a task needs of its line.
type nudgeLine struct {
	names []string
	q     []float64
	look  bool // it asks how full it is
}

// line is one text.
type line struct {
	at   time.Time
	text string
	do   func() // what the keeper does just before
}

// stop is a moment at which the keeper looks at the phone and can act.
type stop struct {
	at    time.Time
	chore bool
	sky   bool // nobody looks at anything: the program gets a forecast
}

const (
	lateChance   = 0.12 // a lazy keeper's chore day is put off until the evening or later
	laterChance  = 0.5  // a nudge is acted on an evening later
	forgetChance = 0.08 // what was done is not texted
	pourSD       = 0.03 // a pour, about what is said of it
	looksChance  = 0.8  // how full it is is texted where it was asked
	lazyLooks    = 0.4
	tellsDry     = 0.9 // that all barrels were empty is texted
	tellsOneDry  = 0.7 // that one was
)

// feedOffHours is for how long before slaughter the pigs get no feed: 12 to 18
// are usual (common practice).
const feedOffHours = 16

// goMinute is when they are taken to the butcher, in minutes after midnight.
const goMinute = 9 * 60

// plan lays out the stops of the season: the chore moment, two hours after the
// message, each evening, and the hour at which the pigs go.
func (k *keeper) plan() {
	going := k.slot.At(goMinute, k.farm.loc)
	k.farm.feedOff = going.Add(-feedOffHours * time.Hour)
	for d := 1; d < k.farm.herd.days; d++ {
		day := k.farm.herd.from + model.Day(d)
		if day == k.slot {
			k.stops = append(k.stops, stop{at: going}, stop{at: day.At(19*60+40, k.farm.loc)})
			continue
		}
		for _, w := range k.chores {
			if day.Weekday() == w {
				at := day.At(k.hour*60+130, k.farm.loc)
				k.stops = append(k.stops, stop{at: at, chore: true})
				k.visits = append(k.visits, at)
			}
		}
		if k.shares {
			k.stops = append(k.stops, stop{at: day.At(17*60, k.farm.loc), sky: true})
		}
		k.stops = append(k.stops, stop{at: day.At(19*60+40, k.farm.loc)})
	}
}

// next gives the next line of the log, or false at the end of the season. The
// tick of a stop comes first, so that the nudges up to it have arrived.
func (k *keeper) next() (string, bool) {
	k.answerDoubt()
	if len(k.lines) > 0 {
		l := k.lines[0]
		k.lines = k.lines[1:]
		k.farm.liveTo(l.at)
		if l.do != nil {
			l.do()
		}
		return stamp(l.at.In(k.farm.loc)) + " | " + l.text, true
	}
	if k.texted > 0 && k.texted%2 == 1 { // the tick is through
		k.texted++
		s := k.stops[0]
		k.stops = k.stops[1:]
		k.farm.liveTo(s.at)
		if s.sky {
			k.foresee(s)
		} else {
			k.act(s)
		}
		return k.next()
	}
	if len(k.stops) == 0 || k.over() {
		return "", false
	}
	k.texted++
	return stamp(k.stops[0].at.In(k.farm.loc)) + " |", true
}

// over reports whether the season has been over for a few days.
func (k *keeper) over() bool {
	return k.gone && k.farm.day(k.stops[0].at) > int(k.slot-k.farm.herd.from)+3
}

func stamp(t time.Time) string { return t.Format("2006-01-02 15:04") }

// say puts a text behind those waiting, a few minutes after the one before.
func (k *keeper) say(s stop, do func(), format string, args ...any) {
	at := s.at.Add(time.Minute)
	if n := len(k.lines); n > 0 {
		at = k.lines[n-1].at.Add(time.Duration(1+k.rng.IntN(4)) * time.Minute)
	}
	k.lines = append(k.lines, line{at, fmt.Sprintf(format, args...), do})
}

// act is what the keeper does at a stop.
func (k *keeper) act(s stop) {
	d := k.farm.day(s.at)
	today := k.farm.herd.from + model.Day(d)
	if k.gone {
		k.inbox = nil
		return
	}
	k.read(s, today)
	if today >= k.slot {
		if !k.farm.gone {
			k.farm.gone = true
			if k.lazy { // tells it in the evening
				return
			}
		}
		k.gone = true
		k.say(s, nil, "all %d pigs went to the butcher", len(k.farm.herd.alive(d)))
		return
	}
	k.tell(s, d)
	if s.chore {
		k.find(s)
	}
	k.work(s, today)
	if ahead, ok := k.asks[d]; ok && !s.chore {
		k.guesses[ahead] = guess{made: d}
		k.say(s, nil, "how long till butcher?")
	}
}

// read turns the nudges that came into tasks.
func (k *keeper) read(s stop, today model.Day) {
	for _, p := range k.inbox {
		from := today
		if k.lazy {
			switch {
			case p.Nudge.Standing && k.rng.Float64() < lateChance:
				from = today + model.Day(k.rng.IntN(2))
			case !p.Nudge.Standing && k.rng.Float64() < laterChance:
				from = today + 1
			}
		}
		for _, l := range p.Nudge.Lines {
			t := task{what: l.About, code: l.Code, from: from, at: p.At, line: nudgeLine{names: l.Names, look: l.Look}}
			if from > today { // put off until an evening
				t.at = from.At(12*60, k.farm.loc)
			}
			for _, q := range l.Q {
				t.line.q = append(t.line.q, q.Value)
			}
			k.tasks = append(k.tasks, t)
		}
	}
	k.inbox = nil
}

// work does the tasks whose time has come.
func (k *keeper) work(s stop, today model.Day) {
	var later []task
	done := map[string]bool{}
	for _, t := range k.tasks {
		if t.from > today || t.at.After(s.at) {
			later = append(later, t)
			continue
		}
		if key := t.what + strings.Join(t.line.names, "|"); !done[key] {
			done[key] = true
			k.do(s, t)
		}
	}
	k.tasks = later
}

// looks reports whether the keeper texts how full things are before filling.
func (k *keeper) looks(t task) bool {
	if k.lazy {
		return t.line.look && k.rng.Float64() < lazyLooks
	}
	return t.line.look && k.rng.Float64() < looksChance
}

// do does what a line of a nudge asks for.
func (k *keeper) do(s stop, t task) {
	switch t.what {
	case "refill":
		k.refill(s, t)
	case "water":
		k.fillWater(s, t)
	case "alarm":
	case "weigh":
		switch t.code {
		case "weigh_due":
			k.weigh(s, !k.checked)
		case "weigh_check":
			k.weigh(s, true)
		}
	case "worm":
		if t.code == "worm_due" {
			k.say(s, nil, "wormed all with fenbendazole, label says 6 days")
		}
	case "move":
		if t.code == "move_due" {
			k.move(s)
		}
	case "book":
		if t.code == "book_by" {
			k.book(s)
		}
	case "stock":
		k.buy(s, t)
	case "wallow":
		k.say(s, nil, "wallow topped up")
	case "level":
		k.say(s, nil, "done")
	case "check":
		k.check(s, t)
	}
}
