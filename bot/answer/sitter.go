package answer

import (
	"errors"
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// SitterSheet is what to hand to whoever looks after the herd while the person is
// away: when to come at the latest and what to fill, what to look at, and what
// not to do. It stands by itself, so that it can be passed on as it is.
func SitterSheet(h *model.Herd, now time.Time) string {
	v := wording.Voice{Herd: h, Now: now}
	today := model.DayOf(now)
	pigs := h.Alive(today)
	if len(pigs) == 0 {
		return v.Say("sitter_no_pigs", wording.Args{})
	}
	away, ok := nextAway(h, today)
	if !ok {
		return v.Say("sitter_when", wording.Args{})
	}
	from := away.From.At(h.Chore.Minute, now.Location())
	if from.Before(now) {
		from = now
	}
	until := (away.To + 1).At(0, now.Location())
	lines := []string{v.Say("sitter_head", wording.Args{Days: []model.Day{away.From, away.To}, Q: []model.Quantity{wording.N(len(pigs))}})}
	lines = append(lines, sitterVisits(v, h, from, until)...)
	lines = append(lines, v.Say("sitter_look", wording.Args{Q: []model.Quantity{wording.N(len(pigs))}}))
	if names := notClear(v, h, until); len(names) > 0 {
		lines = append(lines, v.Say("sitter_not_clear", wording.Args{Names: names}))
	}
	return strings.Join(append(lines, v.Say("sitter_danger", wording.Args{})), "\n")
}

// nextAway is the span that the person is away or will be next.
func nextAway(h *model.Herd, today model.Day) (next model.AwayFrom, ok bool) {
	for _, a := range h.Aways {
		if a.F.To >= today && (!ok || a.F.From < next.From) {
			next, ok = a.F, true
		}
	}
	return next, ok
}

func sitterVisits(v wording.Voice, h *model.Herd, from, until time.Time) []string {
	visits, err := h.SupplyVisits(from, until)
	var lacks *model.Missing
	switch {
	case errors.As(err, &lacks):
		return []string{v.Say("sitter_unknown", wording.Args{})}
	case err != nil:
		return []string{v.Missing(err, "feed_left")}
	case len(visits) == 0:
		return []string{v.Say("sitter_none", wording.Args{})}
	}
	if daily(visits, until) {
		return []string{v.Say("sitter_daily", visitArgs(visits[0]))}
	}
	lines := make([]string, len(visits))
	for i, x := range visits {
		code := "sitter_visit"
		if i == 0 && x.At.Equal(from) {
			code = "sitter_before"
		}
		lines[i] = v.Say(code, visitArgs(x))
	}
	return lines
}

// daily reports whether the visits come to one each day.
func daily(visits []model.SupplyVisit, until time.Time) bool {
	n := len(visits)
	return n > 2 && visits[n-1].At.Sub(visits[0].At) < time.Duration(n)*24*time.Hour
}

func visitArgs(x model.SupplyVisit) wording.Args {
	return wording.Args{
		Days: []model.Day{model.DayOf(x.At)}, Moments: []time.Time{x.At},
		Q: []model.Quantity{wording.Kg(x.FeedKg), wording.L(x.Litres)},
	}
}

// notClear names the pigs that a withdrawal keeps from slaughter beyond the
// moment.
func notClear(v wording.Voice, h *model.Herd, at time.Time) []string {
	var names []string
	for _, p := range h.Withdrawal(at) {
		if p.IsClear(at) {
			continue
		}
		if p.Animal.Name == "" {
			return []string{v.Say("sitter_some", wording.Args{})}
		}
		names = append(names, p.Animal.Name)
	}
	return names
}
