package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A text that puts something right finds the record that it means among the last ones.
func TestAmends(t *testing.T) {
	for _, c := range []struct{ herd, now, texts, want string }{
		{"garth", "2026-08-03T12:00", "blue 5 83|blue 4 i mean, 83 is right", "weigh animals=Blue 4 replaces=true weight_kg=83"},
		{"garth", "2026-08-03T12:00", "red 15 89|98 i maen, fat thumbs", "weigh animals=Red 15 replaces=true weight_kg=98"},
		{"garth", "2026-08-03T12:00", "twa bags in the hopper|fence 5|it wis three bags, no twa", "refill feed_kg=75 feeder=hopper replaces=true"},
		{"garth", "2026-08-03T12:00", "blue 5 83|red 5 i mean", "none"},
		{"garth", "2026-08-03T12:00", "red 15, no red 16, 94", "weigh animals=Red 16 weight_kg=94"},
		{"orchard", "2026-07-06T12:00", "brick 75|fence 5.2|all barrels full|oops that was juno not brick", "weigh animals=Juno replaces=true weight_kg=34.02"},
		{"orchard", "2026-07-06T12:00", "brick 75|fence 5.2|all barrels full|the 75 was juno", "weigh animals=Juno replaces=true weight_kg=34.02"},
		{"orchard", "2026-07-06T12:00", "brick 75|fence 5.2|clover 170|change the 75 to 71", "weigh animals=Brick replaces=true weight_kg=32.21"},
		{"orchard", "2026-07-06T12:00", "brick 75|fence 5.2|clover 170|that brick weight was 71", "weigh animals=Brick replaces=true weight_kg=32.21"},
		{"orchard", "2026-07-06T12:00", "brick 75|juno was 75", "weigh animals=Juno weight_kg=34.02"},
		{"orchard", "2026-07-06T12:00", "brick 75|no rain today. juno 66", "weigh animals=Juno weight_kg=29.94"},
		{"orchard", "2026-07-06T12:00", "fern limping|fence 5.2|it was juno that was limping, not fern", "sick animals=Juno note=limping replaces=true"},
		{"orchard", "2026-07-06T12:00", "2 bags in the big hopper|fern 70|small hopper i meant", "refill feed_kg=45.36 feeder=small hopper replaces=true"},
		{"orchard", "2026-07-06T12:00", "2 bags in the big hopper|fern 70|no 3 bags", "refill feed_kg=68.04 feeder=big hopper replaces=true"},
		{"orchard", "2026-07-06T12:00", "2 bags in the big hopper|sorry, 1 bag in the small hopper too", "refill feed_kg=22.68 feeder=small hopper"},
		{"orchard", "2026-07-06T12:00", "shed barrel full|no, hill is empty", "water barrel=hill fraction=0 seen=true"},
		{"orchard", "2026-07-06T12:00", "fence 5.2|fern 70|fence was 5.7 i mean", "fence kv=5.7 replaces=true"},
		{"orchard", "2026-07-06T12:00", "moved them to pear|fern 70|its apple they're in, not pear", "move pen=Apple replaces=true"},
		{"orchard", "2026-07-06T12:00", "moved them to pear|fence 5|moved them on saturday i mean", "move date=2026-07-04 pen=Pear replaces=true"},
		{"orchard", "2026-07-06T12:00", "spent 40 on straw|brick 75|straw was 44 i mean", "spend amount=44 currency=USD replaces=true what=straw"},
		{"orchard", "2026-07-06T12:00", "clover wormed with ivermectin|fence 5|fenbendazole not ivermectin", "worm animals=Clover product=fenbendazole replaces=true"},
		{"orchard", "2026-07-11T09:00", "fence 5.2|nah didnt fill anything today", "none"},
		{"orchard", "2026-07-11T09:00", "fence 5.2|forgot fence. 5.4", "fence kv=5.4"},
		{"bramble", "2026-06-06T10:40", "fence 5.2|nudge at 6 not 7", "settings key=hour value=06:00"},
		{"ridge", "2026-08-02T10:40", "fence 5.2|should be good for 3 more days of feed in there", "feed_level days=3 feeder=feeder"},
		{"sawbuck", "2026-10-06T12:00", "moved to north|south. i meant south", "move pen=South replaces=true"},
		{"kiln", "2026-08-30T10:10", "203 219, 207 201|fence 5|207 was 210 not 201. 203 stands.", "weigh animals=207 replaces=true weight_kg=95.25"},
		{"lambak", "2026-05-04T06:50", "tala 38 bituin 36.5|that was yesterday po, i forgot to send", "weigh animals=Tala date=2026-05-03 replaces=true weight_kg=38; weigh animals=Bituin date=2026-05-03 replaces=true weight_kg=36.5"},
		{"lambak", "2026-05-04T06:50", "1 sack in the feeder|tala 38|the feed was yesterday", "refill date=2026-05-03 feed_kg=50 feeder=feeder replaces=true"},
		{"bramble", "2026-06-06T10:40", "Winnie 98|green barrel full|I am afraid I gave you Winnie's name in error; it was Pearl.", "weigh animals=Pearl replaces=true weight_kg=44.45"},
		{"bramble", "2026-06-13T08:31", "pearl 103|sorry that was gus. havent done pearl", "weigh animals=Gus replaces=true weight_kg=46.72"},
		{"garth", "2026-07-26T09:31", "red 15 91 kg this morning|sorry that was 16", "weigh animals=Red 16 replaces=true weight_kg=91"},
		{"orchard", "2026-07-06T12:00", "filled big hopper 150 lb, full|wasnt full tho more like 3/4", "refill feed_kg=68.04 feeder=big hopper fraction=0.75 replaces=true"},
		{"pinfold", "2026-08-29T17:20", "3 is 222|4 not 3", "weigh animals=4 replaces=true weight_kg=100.7"},
		{"pinfold", "2026-08-29T17:20", "I poured three bags into the feeder.|I was mistaken; it was two bags.", "refill feed_kg=45.36 feeder=feeder replaces=true"},
	} {
		k := play(t, c.herd)
		texts := strings.Split(c.texts, "|")
		for n, text := range texts {
			got, err := k.say(c.now, text)
			require.NoError(t, err)
			if n == len(texts)-1 {
				require.Equal(t, c.want, brief(got.Entries, c.now[:10]), c.texts)
			}
		}
	}
}

// Where a text may put two records right, or one in two ways, it is asked which.
func TestAmendsAsk(t *testing.T) {
	for _, c := range []struct {
		herd, now, before, text, code string
		choices                       int
	}{
		{"lambak", "2026-05-04T06:50", "tala 38 bituin 36.5", "ulan i meant", "which_animal", 2},
		{"kiln", "2026-08-29T09:05", "204 weighs 206", "207, thumb slipped", "tag_or_weight", 2},
	} {
		k := play(t, c.herd)
		_, err := k.say(c.now, c.before)
		require.NoError(t, err)
		_, err = k.say(c.now, c.text)
		require.NoError(t, err)
		require.NotNil(t, k.pending, c.text)
		require.Equal(t, c.code, k.pending.Clarify.Code, c.text)
		require.Len(t, k.pending.Clarify.Choices, c.choices)
		for _, choice := range k.pending.Clarify.Choices {
			require.NotEmpty(t, choice.Entries[0].Replace)
		}
	}
}
