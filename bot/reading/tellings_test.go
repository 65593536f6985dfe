package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestTellings reads spills, rain and protein, and what only sounds like them.
func TestTellings(t *testing.T) {
	k := newTalk()
	for _, m := range sedge {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	_, err := k.say("2026-07-11T08:02", "batch is 74 corn 23 soybean meal 3 mineral, a bag is 50 lb")
	require.NoError(t, err)
	for _, row := range strings.Split(strings.TrimSpace(tellings), "\n") {
		if row == "" || row[0] == '#' {
			continue
		}
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		t.Run(text, func(t *testing.T) {
			k.before, k.pending = nil, nil
			herd := k.herd
			got, err := k.say("2026-07-18T08:00", text)
			k.herd = herd
			require.NoError(t, err)
			require.Equal(t, strings.TrimSpace(want), brief(got.Entries, "2026-07-18"))
		})
	}
}

const tellings = `
# spills
hopper tipped, lost about 40 lb => feed_level feeder=feeder spilled=true spilled_kg=18.14
they spilled a bag => feed_level feeder=feeder spilled=true spilled_kg=22.68
they spilled half a bag of feed => feed_level feeder=feeder spilled=true spilled_kg=11.34
raccoons got into the feeder => feed_level feeder=feeder spilled=true
coons got in the feed again, maybe 20 lb gone => feed_level feeder=feeder spilled=true spilled_kg=9.07
feeder got knocked over last night and lost 60 lb => feed_level date=2026-07-17 feeder=feeder spilled=true spilled_kg=27.22
hopper tipped, lost about 40 lb, refilled 150 full => feed_level feeder=feeder spilled=true spilled_kg=18.14; refill feed_kg=68.04 feeder=feeder full=true
rats ate 10 lb of feed => feed_level feeder=feeder spilled=true spilled_kg=4.54

# what sounds like them
tipped 50 lb in the feeder => refill feed_kg=22.68 feeder=feeder
nothing spilled => none
did they spill the feed? => ask topic=feed_left
the dog got out => none

# rain
1 inch of rain => weather rain_mm=25.4
we had 1.2 inches of rain last night, thank goodness => weather date=2026-07-17 rain_mm=30.48
rained all night => weather rained=true
it poured all night => weather rained=true
an inch and a half of rain => weather rain_mm=38.1
half an inch of rain yesterday => weather date=2026-07-17 rain_mm=12.7
rained 3/4 inch => weather rain_mm=19.05
rain .8" => weather rain_mm=20.32
20 mm => weather rain_mm=20
rain gauge 15 mm => weather rain_mm=15
94 today, half an inch of rain => weather high_c=34.44; weather rain_mm=12.7
rain tomorrow => none
if it rains I'll move them => none
forecast says an inch of rain => none
hank 40 in girth => weigh animals=Hank girth_cm=101.6

# thirst
no water since 6 am => alarm what=no_water
no water since yesterday => alarm what=no_water
no water for 30 hours => alarm what=no_water
no water => alarm what=no_water

# soil
soil is clay => settings key=pen value={"name":"apple","soil":"clay"}; settings key=pen value={"name":"pear","soil":"clay"}
pear is sandy => settings key=pen value={"name":"pear","soil":"sand"}
the ground in apple is heavy clay => settings key=pen value={"name":"apple","soil":"clay"}
bought sand for the pen $40 => spend amount=40 currency=USD what=sand pen

# protein
tag says 16% protein => recipe ingredients={"corn":33.57,"mineral premix":1.36,"soybean meal 48":10.43} protein_pct=16
the bag is 16 percent => recipe ingredients={"corn":33.57,"mineral premix":1.36,"soybean meal 48":10.43} protein_pct=16
mix tests 15.5 => recipe ingredients={"corn":33.57,"mineral premix":1.36,"soybean meal 48":10.43} protein_pct=15.5
soybean meal tag says 46% protein => recipe ingredients={"corn":33.57,"mineral premix":1.36,"soybean meal 48":10.43} tag_protein_pct=map[soybean meal 48:46]
the tag says 44 percent => recipe ingredients={"corn":33.57,"mineral premix":1.36,"soybean meal 48":10.43} tag_protein_pct=map[soybean meal 48:44]
mix is 70 corn 27 soybean meal 3 mineral; soybean meal tag says 46% protein => recipe ingredients={"corn":31.75,"mineral premix":1.36,"soybean meal 48":12.25} tag_protein_pct=map[soybean meal 48:46]
feeder 16 percent => feed_level feeder=feeder fraction=0.16
humidity 60% => weather rh_pct=60
need 16% protein => none
peas tag says 22% protein => none
`

func TestTheTagOfBoughtFeedIsItsMix(t *testing.T) {
	k := newTalk()
	for _, m := range sedge {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	k.before, k.pending = nil, nil
	got, err := k.say("2026-07-18T08:00", "tag says 16% protein")
	require.NoError(t, err)
	require.Equal(t, `recipe ingredients={"complete feed":22.68} tag_protein_pct=map[complete feed:16]`, brief(got.Entries, "2026-07-18"))
}

func TestASpillAsksWhichHopper(t *testing.T) {
	k := hollowTalk(t)
	got, err := k.say("2026-07-18T18:30", "raccoons got into the feed")
	require.NoError(t, err)
	require.Equal(t, "clarify about=feed_level", brief(got.Entries, "2026-07-18"))
	got, err = k.say("2026-07-18T18:31", "south")
	require.NoError(t, err)
	require.Equal(t, "feed_level feeder=south spilled=true", brief(got.Entries, "2026-07-18"))
}
