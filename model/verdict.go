package model

// verdict is what was answered to a question about what did not fit in a record:
// LeftOut, AsUsual, or another word of how the question was settled; empty where
// none was asked or answered.
func (h *Herd) verdict(record string) string {
	for i := len(h.Questions) - 1; i >= 0; i-- {
		if q := h.Questions[i]; q.F.Of != "" && q.F.Of == record {
			return h.settled[q.ID]
		}
	}
	return ""
}
