package answer

import (
	"slices"
	"strconv"
	"time"

	"troughbell/bot/picture"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// FindSeasons finds the seasons that words name, as in [reading.Ask]: of a year those
// that began in it, or ended in it. They are the ones that are over by today; where
// none is, running says that one of that name goes on.
func FindSeasons(h *model.Herd, name string, today model.Day) (over []model.Season, running bool) {
	if name == reading.LastSeason {
		for _, s := range h.Seasons() {
			if s.Over(today) {
				over = []model.Season{s}
			}
		}
		return over, false
	}
	year, err := strconv.Atoi(name)
	if err != nil {
		return nil, false
	}
	for _, s := range h.SeasonsOf(year) {
		switch {
		case s.Over(today):
			over = append(over, s)
		case s.From <= today:
			running = true
		}
	}
	return over, running && len(over) == 0
}

// NoSeason says that no season of the name asked for is over, and which are.
func NoSeason(h *model.Herd, now time.Time) string {
	v := wording.Voice{Herd: h, Now: now}
	var args wording.Args
	for _, s := range h.Seasons() {
		if s.Over(model.DayOf(now)) {
			args.Names = append(args.Names, v.SeasonDays(s))
		}
	}
	if len(args.Names) == 0 {
		return v.Say("no_season_over", args)
	}
	return v.Say("no_such_season", args)
}

// ofSeason answers a question about a season that is over.
func (a asked) ofSeason() Answer {
	over, running := FindSeasons(a.h, a.Season, a.today)
	if running {
		a.Season = ""
		return To(a.h, a.now, a.Ask, a.last)
	}
	if len(over) == 0 {
		return Answer{Text: NoSeason(a.h, a.now)}
	}
	s := over[len(over)-1]
	a.over = &s
	until := min(s.PaidTo, a.today)
	if a.Topic == "cost" {
		a.now, a.today = until.At(24*60-1, a.now.Location()), until
		out := cost(a)
		if a.Picture {
			out = a.draw(out)
		}
		return out
	}
	a.today = s.To
	d, err := a.seasonPicture()
	if err != nil {
		return a.missing(err)
	}
	return Answer{
		Picture: d,
		Text:    a.v.Caption("season_over", wording.Args{Names: []string{a.v.SeasonDays(s)}, Q: []model.Quantity{wording.N(len(s.Pigs))}}) + ".",
	}
}

// seasonPicture draws how the pigs of a season grew, or its calendar.
func (a asked) seasonPicture() (picture.Drawing, error) {
	if pictures[a.Topic] != nil && a.Topic != "growth" && a.Topic != "weight" {
		return picture.Calendar{From: a.over.From, To: a.over.To, Today: a.over.To + 1, Events: a.happened(a.over.From)}, nil
	}
	g := picture.Growth{TargetKg: a.h.TargetKg, Today: a.over.To, From: a.over.From, To: a.over.To, Over: true}
	goes := map[*model.Animal]model.Day{}
	var pigs []*model.Animal
	for _, p := range a.over.Pigs {
		if len(a.Animals) > 0 && !slices.Contains(a.Animals, p.Name) {
			continue
		}
		pigs = append(pigs, p)
		if p.Gone != nil {
			goes[p] = p.Gone.On
		}
	}
	if len(pigs) == 0 {
		return nil, &model.Missing{What: "pigs"}
	}
	return a.growthOf(g, pigs, goes)
}
