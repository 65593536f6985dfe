package reading_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestAnimalTexts reads what is told of pigs in ways that look like something else,
// on Saturday, 18 July 2026 at 18:30.
func TestAnimalTexts(t *testing.T) {
	k := hollowTalk(t)
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-18T18:30", k.loc)
	require.NoError(t, err)
	for _, row := range strings.Split(strings.TrimSpace(animalTexts), "\n") {
		if row[0] == '#' {
			continue
		}
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		t.Run(text, func(t *testing.T) {
			c := k.context(now)
			c.Pending = nil
			require.Equal(t, strings.TrimSpace(want), brief(reading.Read(c, text).Entries, "2026-07-18"))
		})
	}
}

const animalTexts = `
# The temperature of a pig is neither weather nor a weight.
moss has a temp of 105 => sick animals=Moss note=temp of 105
temp 105 dot => sick animals=Dot note=temp 105
it was 98 degrees, moss was panting => weather high_c=36.67; sick animals=Moss note=panting
# What ails a pig, and what does not.
bram walks not good => sick animals=Bram note=walks not good
moss stepped on my foot and it hurts => none
nobody limping today => none
moss better => none
the vet came out for bram, gave him penicillin, 10 days => treat animals=Bram product=penicillin withdrawal_days=10
# Weights told again, compared, bent and bounded.
dot 180, plum ditto => weigh animals=Dot weight_kg=81.65; weigh animals=Plum weight_kg=81.65
bram 190 (up 9 from last week) => weigh animals=Bram weight_kg=86.18
moss has put on 12 and is now at 190 => weigh animals=Moss weight_kg=86.18
Pluma 180 lbs => weigh animals=Plum weight_kg=81.65
plus 190 lbs => none
all between 180 and 190 => weigh animals=all weight_kg=83.91
one of the pigs weighs 184 => clarify about=weigh
wow 95 likes on the pig photo => none
# A course of days is no withdrawal.
put moss on penicillin for 5 days => treat animals=Moss product=penicillin
gave one of the gilts penicillin, 10 days => clarify about=treat
wormed dot and plum with fenbendazole but not the rest, 6 days => worm animals=Dot+Plum product=fenbendazole withdrawal_days=6
# Leaving.
sold dot and plum for 300 each => gone amount=600 animals=Dot+Plum how=sold
sold half of moss => clarify about=gone
hauled the hose around all afternoon => none
got the weights back, dot 130 and plum 128 hanging => gone animals=Dot hanging_kg=58.97 how=butchered; gone animals=Plum hanging_kg=58.06 how=butchered
my cousin lost 40 pigs to swine fever => none
no pigs out => none
# Pens.
pigs out of oak into creek => move pen=creek
dot and plum are in creek now => move animals=Dot+Plum pen=creek
shade cloth up in creek => none
# Questions.
is 95 too hot for pigs => ask topic=heat
what if i had 3 pigs => ask assume={"count_delta":-1} topic=feed_need
feed till wednesday? => ask on=2026-07-22 topic=feed_left
how much feed for 2 weeks => ask on=2026-08-01 topic=feed_need
moss weight sep 1 => ask animals=Moss on=2026-09-01 topic=weight
`
