package wording_test

import (
	"testing"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
)

// BenchmarkRecorded acknowledges a weekly round of four facts, effects included,
// of a herd whose figures are known already.
func BenchmarkRecorded(b *testing.B) {
	h := season(&testing.T{}).herd()
	v := wording.Voice{Herd: h, Now: now}
	es := []reading.Entry{
		entry(model.Refill{Feeder: "north", FeedKg: model.Float(100 * lb), Full: true}),
		entry(model.Water{Full: true}),
		entry(model.Fence{Kv: 5.8}),
		entry(model.Weigh{Animals: []string{"Fern"}, GirthCm: 38 * in}),
	}
	for b.Loop() {
		if v.Recorded(es, v.Effects(h, es)) == "" {
			b.Fatal("nothing said")
		}
	}
}

// BenchmarkNudge says a standing message of six lines.
func BenchmarkNudge(b *testing.B) {
	v := us(&testing.T{})
	n := schedule.Nudge{Standing: true}
	for _, row := range lines[:6] {
		n.Lines = append(n.Lines, row.line)
	}
	for b.Loop() {
		if text, _ := v.Nudge(n); text == "" {
			b.Fatal("nothing said")
		}
	}
}
