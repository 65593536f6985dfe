package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What was put on or lost is no weight where the weight stands beside it.
func TestGains(t *testing.T) {
	for _, c := range []struct{ herd, now, text, want string }{
		{"pinfold", "2026-08-22T10:00", "3 lost 5 lb, down to 220", "weigh animals=3 weight_kg=99.79"},
		{"pinfold", "2026-08-22T10:00", "4 is down 4 to 186", "weigh animals=4 weight_kg=84.37"},
		{"orchard", "2026-07-06T12:00", "clover down 4 to 170", "weigh animals=Clover weight_kg=77.11"},
		{"orchard", "2026-07-06T12:00", "pepper 3 lb heavier, 150", "weigh animals=Pepper weight_kg=68.04"},
		{"orchard", "2026-07-06T12:00", "pepper 150, that's 3 more than last time", "weigh animals=Pepper weight_kg=68.04"},
		{"orchard", "2026-07-06T12:00", "fern 73, up from 64", "weigh animals=Fern weight_kg=33.11"},
		{"orchard", "2026-07-06T12:00", "fern went from 64 to 73 lb", "weigh animals=Fern weight_kg=33.11"},
		{"orchard", "2026-07-06T12:00", "otis up 12", "clarify about=weigh"},
		{"orchard", "2026-07-06T12:00", "hazel 150 not eating", "weigh animals=Hazel weight_kg=68.04; sick animals=Hazel note=not eating"},
		{"kiln", "2026-08-28T17:40", "206 up 22 to 206", "weigh animals=206 weight_kg=93.44"},
		{"kiln", "2026-08-28T17:40", "205 gained 21 and is 206", "weigh animals=205 weight_kg=93.44"},
		{"kiln", "2026-08-28T17:40", "207 dwn 2 to 187 not eating", "weigh animals=207 weight_kg=84.82; sick animals=207 note=not eating"},
		{"kiln", "2026-08-30T08:50", "206-209 about 208", "weigh animals=206+207+208+209 weight_kg=94.35"},
		{"kiln", "2026-08-29T09:25", "205 212\n207 ditto", "weigh animals=205 weight_kg=96.16; weigh animals=207 weight_kg=96.16"},
		{"burrow", "2026-08-22T09:10", "plum is a hundred and sixty eight and moss is eleven less", "weigh animals=Plum weight_kg=76.2; weigh animals=Moss weight_kg=71.21"},
		{"burrow", "2026-08-22T09:10", "plum 168, moss 5 lb heavier", "weigh animals=Plum weight_kg=76.2; weigh animals=Moss weight_kg=78.47"},
		{"burrow", "2026-08-14T19:10", "Plum up 8 kg to 70.5, Moss 67 flat", "weigh animals=Plum weight_kg=70.5; weigh animals=Moss weight_kg=67"},
		{"pinfold", "2026-08-22T09:00", "number four did not gain a thing, still one ninety", "weigh animals=4 weight_kg=86.18"},
		{"bantay", "2026-05-08T17:45", "everyone about 75 except Kidlat, he is 80", "weigh animals=Tala+Bituin+Ulan+Amihan weight_kg=75; weigh animals=Kidlat weight_kg=80"},
		{"garth", "2026-07-31T21:40", "did the reds before dark. 93 the lot of them", "weigh animals=Red 14+Red 15+Red 16 weight_kg=93"},
		{"garth", "2026-08-01T12:00", "blue 3 doon 2 tae 74", "weigh animals=Blue 3 weight_kg=74"},
	} {
		got, err := play(t, c.herd).say(c.now, c.text)
		require.NoError(t, err)
		have := brief(got.Entries, c.now[:10])
		if at := strings.Index(have, " choices="); at >= 0 {
			have = have[:at]
		}
		require.Equal(t, c.want, have, c.text)
	}
}
