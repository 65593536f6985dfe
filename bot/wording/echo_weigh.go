package wording

import "troughbell/model"

func (v Voice) echoWeigh(w model.Weigh) string {
	s := who(w.Animals)
	if w.GirthCm > 0 {
		s += " girth " + v.cm(w.GirthCm)
		if w.LengthCm > 0 {
			s += " length " + v.cm(w.LengthCm)
		}
		return s
	}
	if w.By == model.ByEye {
		s += " about"
	}
	s += " " + v.kg(w.WeightKg)
	if len(w.Animals) > 1 {
		s += " each"
	}
	return s
}
