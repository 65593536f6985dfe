package schedule

import "troughbell/model"

// levelMidweek asks to level the feed on the evening half way between two rounds,
// where the person wants it and nothing was poured since the round.
func (v *view) levelMidweek() []need {
	if !v.h.LevelMidweek || len(v.h.Feeders) == 0 {
		return nil
	}
	from := model.DayOf(v.prev)
	d := from + (model.DayOf(v.h.NextChore(v.prev).In(v.loc))-from)/2
	l := Line{
		About: aboutLevel, Topic: "level:midweek", Grade: Routine, Code: CodeLevelMidweek,
		Earliest: v.evening(d), Latest: v.evening(d).Add(day),
	}
	for _, f := range v.h.Feeders {
		if !v.pouredSince(f, (from+1).At(0, v.loc)) {
			l.Names = append(l.Names, f.Name)
		}
	}
	if d == from || len(l.Names) == 0 {
		return nil
	}
	return []need{{Line: l, token: token("level:midweek", d), quiet: 2 * day}}
}
