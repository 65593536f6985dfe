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
feed is 16% protein => none
gave them 12 eggs => none
fed 40 apples => none
fed none today => none
resume water => none
fence me => none
`
