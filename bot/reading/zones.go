package reading

import (
	"strings"
	"time"
)

// zoneCanon marks an item that names a zone; its canonical name stands in s.
const zoneCanon = "zone"

func addZones(l *lexicon) {
	add := func(place, zone string) {
		if _, taken := l.zones[place]; !taken {
			l.zones[place] = zone
			for _, w := range strings.FieldsFunc(place, func(c rune) bool { return c == ' ' || c == '/' || c == '_' }) {
				l.placeWord[w] = true
			}
			l.zoneLen = max(l.zoneLen, strings.Count(place, " ")+1)
		}
	}
	for _, z := range zonePlaces {
		for _, p := range split(z.places) {
			add(p, z.zone)
		}
	}
	for _, z := range strings.Fields(zoneNames) {
		add(strings.ToLower(z), z)
		town := z[strings.LastIndexByte(z, '/')+1:]
		add(strings.ToLower(strings.ReplaceAll(town, "_", " ")), z)
	}
}

// zoneAt finds a zone, state, town or country at token i, the longest name
// first, and says how many tokens it took.
func (r *reader) zoneAt(i int) (zone string, n int) {
	if r.toks[i].kind != tokWord {
		return "", 0
	}
	var store [64]byte
	key := store[:0]
	for k := i; k < len(r.toks) && k < i+8; k++ {
		t := &r.toks[k]
		switch {
		case t.kind == tokWord:
			if k > i && len(key) > 0 && key[len(key)-1] != '/' && key[len(key)-1] != '_' {
				key = append(key, ' ')
			}
			key = append(key, t.s...)
		case t.kind == tokMark && !t.spaced && (t.s == "/" || t.s == "_") && k > i:
			key = append(key, t.s...)
			continue
		case t.kind == tokMark && t.s == "." && !t.spaced && len(r.toks[k-1].s) <= 2:
			continue
		default:
			return zone, n
		}
		if z, ok := r.lex.zones[string(key)]; ok {
			zone, n = z, k+1-i
		}
	}
	return zone, n
}

// zoneForClock guesses the zone in which the wall clock shows the minute at the
// moment now: the likeliest one first, for people of the given units.
func zoneForClock(now time.Time, minute int, units string) []string {
	utc := now.UTC()
	offset := (minute - (utc.Hour()*60 + utc.Minute()) + 2*1440) % 1440
	if offset > 13*60 {
		offset -= 1440
	}
	offset = (offset+1440+7)/15*15 - 1440 // a typed time is minutes off
	var own, other []string
	for _, z := range clockZones {
		if zoneOffset(z.standard, z.summer, utc) != offset {
			continue
		}
		if z.units == units {
			own = append(own, z.zone)
		} else {
			other = append(other, z.zone)
		}
	}
	return append(own, other...)
}

// zoneOffset is the minutes east of Greenwich at a moment, by the rules for
// daylight time in force since 2007 (United States) and 1996 (European Union).
func zoneOffset(standard int, rule string, utc time.Time) int {
	y := utc.Year()
	nth := func(month time.Month, n int) int { // the day of the month of the n-th Sunday, the last for 0
		if n == 0 {
			last := time.Date(y, month+1, 0, 0, 0, 0, 0, time.UTC)
			return last.Day() - int(last.Weekday())
		}
		first := time.Date(y, month, 1, 0, 0, 0, 0, time.UTC)
		return 1 + (7-int(first.Weekday()))%7 + 7*(n-1)
	}
	between := func(from, to time.Time) bool { return !utc.Before(from) && utc.Before(to) }
	local := func(month time.Month, day, hour, offset int) time.Time {
		return time.Date(y, month, day, hour, -offset, 0, 0, time.UTC)
	}
	switch rule {
	case "us":
		if between(local(3, nth(3, 2), 2, standard), local(11, nth(11, 1), 1, standard)) {
			return standard + 60
		}
	case "eu":
		if between(local(3, nth(3, 0), 1, 0), local(10, nth(10, 0), 1, 0)) {
			return standard + 60
		}
	case "nz":
		if !between(local(4, nth(4, 1), 2, standard), local(9, nth(9, 0), 2, standard)) {
			return standard + 60
		}
	}
	return standard
}
