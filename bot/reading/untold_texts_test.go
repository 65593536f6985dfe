package reading_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestUntold reads texts that look like facts and are none, beside those that are.
func TestUntold(t *testing.T) { guessTalks(t, untold) }

const untold = `
# what lies elsewhere is in no feeder
never got round to the feeder today. 2 bags still sitting in the truck => none
no time for the wallow today => none
got 3 bags, still in the truck => stock count=3 feed_kg=68.04

# what a thing is full of
barrel 1 full of leaves => none
feeder full of wasps => none
barrel 1 full of water => water barrel=barrel 1 full=true
barrel 1 is full of fresh water now => water barrel=barrel 1 full=true
wallow full of water => wallow
feeder full of water => none
feeder full of feed => refill feeder=feeder full=true

# which of several levels is whose must be told
barrels at 1/2 and 1/4 => clarify about=water
barrel 1 and barrel 2 half and empty => water barrel=barrel 1 fraction=0.5 seen=true; water barrel=barrel 2 fraction=0 seen=true

# an hour is no degrees
was 96 here at 3 => weather high_c=35.56
95 at 3 and 71 at 5 am => weather high_c=35 low_c=21.67

# the tester is the fence's
tester says 4.4 at the far corner => fence kv=4.4

# what was left was poured
put what was left of the bag in the feeder, about 20 lb => refill feed_kg=9.07 feeder=feeder

# parts that were mended say nothing of how many there are
replaced 2 nipples on barrel 1 => none

# what nearly happened
fern nearly got out, gate was open => none
pigs almost got out => none

# others' pigs, and what others say of the weather
next door got 8 weaners off the mart at 70 each => none
they are saying ninety eight and sticky for tomorrow => none
100 percent done with this heat => none

# not decided
we think to change the mix to 80 corn and 20 soy, not decided => none

# a sign that is gone
fern is limping => sick animals=Fern note=limping
no sign of lameness in fern any more => sick animals=Fern well=true
reed no longer eats => sick animals=Reed note=no longer eats
`

// TestFirstSteps reads what newcomers say before there are any pigs.
func TestFirstSteps(t *testing.T) {
	for text, want := range map[string]string{
		"got 3 weaners today, Bess, Nip and Tuck, 9 weeks, about 22 kg":           "arrive animals=Bess+Nip+Tuck born=2026-02-28 count=3 weight_kg=22",
		"two gilts and a barrow came, 50 lb each":                                 "arrive count=3 sexes=gilt+gilt+barrow weight_kg=22.68",
		"Hi there! We are Larkfield, near Leeds":                                  "settings key=herd value=Larkfield; settings key=zone value=Europe/London",
		"hi, this is Anna from Brook Hill, 3 pigs coming in May":                  "none",
		"Bess 24.5, Nip 23, Tuck 22":                                              "clarify about=arrive",
		"4 pigs came, Mint, Rye, Sorrel and a boar called Dock":                   "arrive animals=Mint+Rye+Sorrel+Dock count=4 sexes=+++boar",
		"sunday 8am, it's 06:59 there":                                            "settings key=chore_days value=sun; settings key=hour value=08:00; settings key=zone value=America/Halifax",
		"Tuck is limping a bit":                                                   "none",
		"we are Mike and Ann":                                                     "none",
		"wormed them today, ivermectin 18 days":                                   "none",
		"3 pigs came today, Ham, Egg and Jam, Ham 40 lb, Egg 42 lb and Jam 44 lb": "arrive animals=Ham+Egg+Jam count=3; weigh animals=Ham weight_kg=18.14; weigh animals=Egg weight_kg=19.05; weigh animals=Jam weight_kg=19.96",
	} {
		got, err := newTalk().say("2026-05-02T10:00", text)
		require.NoError(t, err)
		assert.Equal(t, want, brief(got.Entries, "2026-05-02"), text)
	}
}

// TestGotAndWould reads who got what, and what would follow from what.
func TestGotAndWould(t *testing.T) { guessTalks(t, gotAndWould) }

const gotAndWould = `
# pigs buy nothing
the pigs got 2 bags => refill feed_kg=45.36 feeder=feeder
fern got a bag at 15 dollars => stock amount=15 count=1 currency=USD feed_kg=22.68

# what something does to something else is asked of that
what would 2 more pigs do to the feed => ask assume={"count_delta":2} topic=feed_left
away next wknd => away from=2026-07-25 to=2026-07-26
`

// TestButOne reads moves of all but some, the ones left out behind the pen.
func TestButOne(t *testing.T) { guessTalks(t, butOne) }

const butOne = `
# the one behind but stays
pens Oak 40x60 ft and Ash 40x60 ft, they are in Oak => settings key=pen value={"area_m2":222.97,"in_use":true,"name":"Oak"}; settings key=pen value={"area_m2":222.97,"name":"Ash"}
moved all to Ash but Fern => move animals=Reed+Tansy+Wick pen=Ash
all in Oak now except Fern and Reed => move animals=Tansy+Wick pen=Oak
`
