package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// alder is an invented herd of young pigs, with one feeder.
var alder = []struct{ at, text string }{
	{"2026-07-11T09:00", "herd is called Alder, central time, US units"},
	{"2026-07-11T09:01", "4 pigs here today, 40 lb, 8 weeks old: Fern, Reed, Tansy and Wick"},
	{"2026-07-11T09:02", "feeder holds 300 lb, two water barrels 55 gal 2 nipples each, a bag is 50 lb"},
	{"2026-07-11T09:03", "feeder full, 290. barrels full"},
}

// TestGuesses reads texts whose plain reading would rest on a guess: departures
// that cannot be, feed that is none, a booking put right. A block is one talk.
func TestGuesses(t *testing.T) { guessTalks(t, guesses) }

func guessTalks(t *testing.T, talks string) {
	for _, block := range strings.Split(strings.TrimSpace(talks), "\n\n") {
		lines := strings.Split(block, "\n")
		t.Run(strings.TrimPrefix(lines[0], "# "), func(t *testing.T) {
			k := newTalk()
			for _, m := range alder {
				_, err := k.say(m.at, m.text)
				require.NoError(t, err)
			}
			k.before, k.pending = nil, nil
			for _, line := range lines[1:] {
				text, want, ok := strings.Cut(line, " => ")
				require.True(t, ok, line)
				got, err := k.say("2026-07-18T08:00", text)
				require.NoError(t, err)
				assert.Equal(t, strings.TrimSpace(want), brief(got.Entries, "2026-07-18"), text)
			}
		})
	}
}

const guesses = `
# two weighings told the wrong way round change their pigs
fern 25 girth, reed 26 girth => weigh animals=Fern girth_cm=63.5; weigh animals=Reed girth_cm=66.04
swapped fern and reed, sorry => weigh animals=Fern girth_cm=66.04 replaces=true; weigh animals=Reed girth_cm=63.5 replaces=true
mixed up tansy and wick => none

# a pig that was down and stands
wick is down => alarm animals=Wick what=down
wick up and eating => alarm animals=Wick over=true what=down

# to skip a day is not to skip a question
will the feed last if i skip saturday => ask assume={"skip_days":7} topic=feed_left

# what leads up to a day is no sign of illness
fern limping since yesterday => sick animals=Fern date=2026-07-17 note=limping

# a booking put right stays near its day
butcher sep 20, 4 pigs => booked count=4 date=2026-09-20
actually the 21st => booked count=4 date=2026-09-21 replaces=true

# a booking put right by its weekday
butcher sep 20, 4 pigs => booked count=4 date=2026-09-20
no, the 28th at 7am => booked at=07:00 count=4 date=2026-09-28 replaces=true

# a booking put right to another month
butcher sep 20, 4 pigs => booked count=4 date=2026-09-20
actually oct 3 => booked count=4 date=2026-10-03 replaces=true

# hanging weight above what lives
hanging weight 180 each => clarify about=gone
nothing => none

# hanging weights above what lives, named
fern hung 180, reed hung 190 => clarify about=gone

# hanging weights above what lives, in a list
hung 199 190 183 188 => clarify about=gone

# more gone than there are
sold fern => gone animals=Fern how=sold
5 pigs sold => clarify about=gone
4 pigs died => clarify about=gone
sold reed and tansy => gone animals=Reed+Tansy how=sold
2 pigs sold => clarify about=gone
2 pigs went to the butcher => clarify about=gone

# no death
one of the pigs ate a dead rat => none
found a dead rat in the feeder => none

# sold to a neighbour
sold 2 pigs to a neighbour for 160 => clarify about=gone

# sold one to a neighbour
sold fern to the neighbor for 160 => gone amount=160 animals=Fern how=sold

# all sold to a neighbour
sold all 4 pigs to my neighbour for 640 => gone amount=640 count=4 how=sold

# a death taken back
fern died => gone animals=Fern how=died
no it's alive => undo of=gone

# a death taken back by name
fern died => gone animals=Fern how=died
no, she's alive => undo of=gone

# one dead, not said which
one died => clarify about=gone
no it's alive => none

# gone to the butcher
butcher took 2 pigs => clarify about=gone

# the butcher took one by name
the butcher took fern => gone animals=Fern how=butchered

# booked
2 pigs to the butcher oct 10 => booked count=2 date=2026-10-10

# no feed
bought 20 bags of grower pellets at 12.50 each => stock amount=250 count=20 feed_kg=453.59
feed is 16% protein => recipe ingredients={"complete feed":22.68} tag_protein_pct=map[complete feed:16]
gave them 12 eggs => none
fed 40 apples => none
fed none today => none
resume water => none
fence me => none

# more that is no feed
feed is 14 percent protein => recipe ingredients={"complete feed":22.68} tag_protein_pct=map[complete feed:14]
crude protein 16% => recipe ingredients={"complete feed":22.68} tag_protein_pct=map[complete feed:16]
fed 12 melons => none
put 2 watermelons in the feeder => none
poured none today => none
resume feeding => none
bought 20 bags of grower pellets for 250 => stock amount=250 count=20 feed_kg=453.59
bought 4 bags at 14 each, poured 2 => stock amount=56 count=4 feed_kg=90.72; refill feed_kg=45.36 feeder=feeder
feeder is 16% full => feed_level feeder=feeder fraction=0.16

# one sold, not said which
sold one pig for 80 => clarify about=gone

# a hanging weight that may be
fern hung 30 => gone animals=Fern hanging_kg=13.61 how=butchered

# a total that may be
hanging weight 120 total => gone animals=all hanging_kg=54.43 how=butchered

# a total that cannot be
total hanging weight 500 => clarify about=gone

# collected
the butcher picked up 4 pigs today => gone count=4 how=butchered

# still to come
fern and reed to the butcher oct 10 => booked count=2 date=2026-10-10
butcher takes 4 pigs oct 11 => booked count=4 date=2026-10-11

# the month before is over
butcher jul 31, 4 pigs => booked count=4 date=2026-07-31
actually the 3rd => booked count=4 date=2026-08-03 replaces=true
make that friday => booked count=4 date=2026-07-31 replaces=true

# put off by a word
butcher sep 20, 4 pigs => booked count=4 date=2026-09-20
moved to the 25th => booked count=4 date=2026-09-25 replaces=true

# alive, but not one that died
fern died => gone animals=Fern how=died
dot is alive => none
oops fern isn't dead => undo of=gone

# taken to the butcher
took 4 pigs to butcher => gone count=4 how=butchered

# taken, more than there are
took 5 pigs to butcher => clarify about=gone

# taken, not said which
butcher took them => clarify about=gone

# taken by the feeder
took 150 to fill => refill feed_kg=68.04 feeder=feeder full=true
the gilts took 3 bags => refill feed_kg=68.04 feeder=feeder

# eggs by the dozen
fed 2 dozen eggs => none

# bought and filled
bought 3 bags at 15 each and filled the feeder => stock amount=45 count=3 feed_kg=68.04; refill feeder=feeder full=true

# the butcher was here
butcher came today, took 4 => gone count=4 how=butchered
`
