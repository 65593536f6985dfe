package reading_test

import (
	"strings"
	"testing"
	"time"

	"troughbell/bot/reading"
)

// BenchmarkRead reads texts of several lengths. Wanted on a modest machine: the
// median text under 150 µs and 64 KiB, 4,096 characters under 5 ms.
func BenchmarkRead(b *testing.B) {
	k := play(b, "orchard")
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-11T18:30", k.loc)
	if err != nil {
		b.Fatal(err)
	}
	c := k.context(now)
	long := strings.Repeat("filled the big hopper 160, blue barrel full, Hazel 38x42, fence 5.8, and it rained a bit. ", 60)[:4096]
	for _, t := range []struct{ name, text string }{
		{"short", "hazel 38 girth"},
		{"median", "big 160 full, small 80 full, water all, fence 5.6"},
		{"setup", "our herd is Orchard, central time, US units. 4 pigs came today, Hazel, Clover, Otis and Pepper, about 45 lb each, born Feb 12. Two feeders: big hopper holds 300 lb, small hopper holds 150 lb"},
		{"question", "how much feed do I need until the butcher?"},
		{"long", long},
		{"noise", strings.Repeat("lorem 12 ipsum dolor 4 sit amet ", 140)[:4096]},
	} {
		b.Run(t.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				reading.Read(c, t.text)
			}
		})
	}
}
