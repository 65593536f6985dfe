package reading_test

import "testing"

// TestTwoThings reads texts that tell of two containers at once, or of what was not
// filled, or of what the filling was of.
func TestTwoThings(t *testing.T) {
	readsRows(t, "orchard", "2026-07-08T09:20", `
big hopper half, 1 bag into the little one => feed_level feeder=big hopper fraction=0.5; refill feed_kg=22.68 feeder=small hopper
small one is a third, 2 bags in the big one => feed_level feeder=small hopper fraction=0.33; refill feed_kg=45.36 feeder=big hopper
1 bag in the small one, big one is still half => refill feed_kg=22.68 feeder=small hopper; feed_level feeder=big hopper fraction=0.5
small hopper 1 bag, not full. big one 2/3, left alone => refill feed_kg=22.68 feeder=small hopper; feed_level feeder=big hopper fraction=0.67
big 120 lid => refill feed_kg=54.43 feeder=big hopper full=true
small 60 to the lid => refill feed_kg=27.22 feeder=small hopper full=true
put 3 bags in the big one, which filled it => refill feed_kg=68.04 feeder=big hopper full=true
wallow was low, topped it up => wallow
wallow low, shed barrel full => note what=wallow low; water barrel=shed full=true
topped off the small hopper and there is half a bag left over => refill feeder=small hopper full=true; stock count=0.5 feed_kg=11.34
put 20 gal in hill before going to bed => water barrel=hill litres=75.71
`)
	readsRows(t, "sawbuck", "2026-10-02T09:20", `
red feeder two thirds, one bag in the gray one => feed_level feeder=red feeder fraction=0.67; refill feed_kg=22.68 feeder=gray feeder
gray about a quarter left, so 2 bags into it => feed_level feeder=gray feeder fraction=0.25; refill feed_kg=45.36 feeder=gray feeder
wallow half dry. filled it with the hose 20 min => wallow minutes=20
wallow looked low this evening and I topped it off with 30 gallons => wallow litres=113.56
wallow is fine, red feeder was low, filled it => refill feeder=red feeder full=true
the willow pen is muddy => none
`)
	readsRows(t, "bantay", "2026-05-03T07:10", `
feeder 1 sack + half => refill feed_kg=75 feeder=feeder
feeder 1 + 1/2 sack => refill feed_kg=75 feeder=feeder
60 l into front drum b4 bed => water barrel=front drum litres=60
`)
	readsRows(t, "kiln", "2026-08-20T09:20", `
Nine bags went into the feeder on Tuesday, which did not fill it. => refill date=2026-08-18 feed_kg=204.12 feeder=feeder
4 bags in the feeder an it's still no full => refill feed_kg=90.72 feeder=feeder
2 bags and half full => refill feed_kg=45.36 feeder=feeder fraction=0.5
filled the lawnmower => none
topped the willow => wallow
fed em yesterday => clarify about=refill
fed 3 bags => refill feed_kg=68.04 feeder=feeder
`)
	readsRows(t, "lambak", "2026-05-07T17:55", `
drum: 120 L. tank: nothing yet. feeder: 3 pails => water barrel=drum litres=120; refill feed_kg=24 feeder=feeder
`)
}
