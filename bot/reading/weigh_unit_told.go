package reading

import "strings"

// unitTold takes the unit that is told of the scale for that of the weights behind it:
// "borrowed a scale, it only does kilos: Waffles 35.5, Socks 32".
func (r *reader) unitTold() {
	for k := range r.items {
		it := &r.items[k]
		u := weightUnit[it.s]
		if u == "" || it.kind != itWord || it.quest || k == 0 || k+1 >= len(r.items) || r.items[k+1].gap < gapComma || r.items[k+1].pig < 0 {
			continue
		}
		if s := r.said(span{0, r.sentenceStart(k), k}); strings.Contains(s, " scale ") || strings.Contains(s, " scales ") {
			r.carry[mass] = mustUnit(u)
		}
	}
}

var weightUnit = map[string]string{"kilos": "kg", "kilo": "kg", "kg": "kg", "kgs": "kg", "kilograms": "kg", "pounds": "lb", "lbs": "lb", "lb": "lb"}
