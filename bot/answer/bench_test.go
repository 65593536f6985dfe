package answer_test

import (
	"testing"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
)

// BenchmarkTo answers each topic of a herd whose figures are known already.
func BenchmarkTo(b *testing.B) {
	h := hot(orchard(&testing.T{})).herd()
	for topic := range keys {
		b.Run(topic, func(b *testing.B) {
			for b.Loop() {
				if a := answer.To(h, now, reading.Ask{Topic: topic}, nil); a.Text == "" {
					b.Fatal("no answer")
				}
			}
		})
	}
}
