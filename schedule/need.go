package schedule

import (
	"strconv"
	"strings"
	"time"
)

// need is what a rule asks to be told. A need of a visit stands in the message
// of a chore day; one between visits is told at its Earliest, or as soon after
// as the quiet hours let it, and never after its Latest.
type need struct {
	Line
	// token names the topic and the period: it is told once. Needs between
	// visits have one always.
	token string
	// since is the start of the period of a need of a visit: it is not told again
	// when its topic was told since. Zero: it is told at every visit.
	since time.Time
	// quiet is for how long a Done on the topic silences it.
	quiet time.Duration
	// breaks says that it may break the quiet hours.
	breaks bool
	// edge is the moment at which a snooze on it ends at the latest; zero: none.
	edge time.Time
	// asked says that the person asked for it: it is not counted as a routine
	// message of the day.
	asked bool
	// exact says that the person asked for this very minute: it waits for nothing.
	exact bool
	// also has the tokens of needs that this one speaks for.
	also []string
	// buttons replaces the usual ones where it is not nil.
	buttons []Button
}

const day = 24 * time.Hour

// tokenGap parts the tokens within the key of a nudge.
const tokenGap = "|"

func token(parts ...any) string {
	var b strings.Builder
	for i, p := range parts {
		if i > 0 {
			b.WriteByte('@')
		}
		switch p := p.(type) {
		case string:
			b.WriteString(strings.ReplaceAll(p, tokenGap, "/"))
		case int:
			b.WriteString(strconv.Itoa(p))
		case time.Time:
			b.WriteString(strconv.FormatInt(p.Unix()/60, 36))
		case interface{ String() string }:
			b.WriteString(p.String())
		}
	}
	return b.String()
}

// The words of the contract for what a nudge is about.
const (
	aboutRefill     = "refill"
	aboutWater      = "water"
	aboutWallow     = "wallow"
	aboutWorm       = "worm"
	aboutMove       = "move"
	aboutWeigh      = "weigh"
	aboutBook       = "book"
	aboutHeat       = "heat"
	aboutCold       = "cold"
	aboutLevel      = "level"
	aboutRation     = "ration"
	aboutStock      = "stock"
	aboutCapacity   = "capacity"
	aboutCheck      = "check"
	aboutWithdrawal = "withdrawal"
	aboutAlarm      = "alarm"
	aboutCatchUp    = "catch_up"
	aboutOwn        = "own"
	aboutSeason     = "season"
)

// ranking is the order of lines in a message: what guards the pigs first, then
// feed, water, the shed, the growth, and what can wait.
var ranking = func() map[string]int {
	m := map[string]int{}
	for i, a := range []string{
		aboutCatchUp, aboutAlarm, aboutWithdrawal, aboutHeat, aboutCold, aboutRefill, aboutWater,
		aboutOwn, aboutStock, aboutWallow, aboutLevel, aboutWorm, aboutMove, aboutBook,
		aboutRation, aboutWeigh, aboutCapacity, aboutCheck, aboutSeason,
	} {
		m[a] = i
	}
	return m
}()

func graver(a, b Grade) bool { return weight(a) > weight(b) }

func weight(g Grade) int {
	switch g {
	case Danger:
		return 2
	case Welfare:
		return 1
	}
	return 0
}
