package answer

import "troughbell/model"

// targetOf is when the mean of the pigs reaches the target: a pig's, a group's
// or the herd's own figure where it is one of those, else a search by day.
func (a asked) targetOf(pigs []*model.Animal, target float64, f model.TargetFigure) (model.TargetDay, error) {
	if len(pigs) == 1 {
		if t, ok := f.Animals[pigs[0]]; ok {
			return t, nil
		}
	}
	if len(pigs) == len(a.h.Alive(a.today)) {
		return f.Herd, nil
	}
	return a.searchTarget(pigs, target)
}

// farthest is how far ahead a target is looked for, in days.
const farthest = 500

// searchTarget finds the first days on which high edge, middle and low edge of
// the pigs' mean weight reach the target.
func (a asked) searchTarget(pigs []*model.Animal, target float64) (model.TargetDay, error) {
	var t model.TargetDay
	for d := a.today; d <= a.today+farthest; d++ {
		w, err := a.h.MeanWeight(pigs, d)
		if err != nil {
			return t, err
		}
		if t.Days.Low == 0 && w.WeightKg.High >= target {
			t.Days.Low = d
		}
		if t.Days.Mid == 0 && w.WeightKg.Mid >= target {
			t.Days.Mid = d
		}
		if w.WeightKg.Low >= target {
			t.Days.High = d
			break
		}
	}
	for _, d := range []*model.Day{&t.Days.Low, &t.Days.Mid, &t.Days.High} {
		if *d == 0 {
			*d = a.today + farthest
		}
	}
	t.Already = t.Days.Mid == a.today
	return t, nil
}
