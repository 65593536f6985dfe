package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sedge is an invented herd of two ages.
var sedge = []struct{ at, text string }{
	{"2026-05-02T12:00", "Herd Sedge, central time, US units. 4 pigs came Apr 4: Brick and Hank are barrows, Ivy and Dell gilts, born Feb 1, 50 lb. 2 more came today, Pip and Dill, both barrows, 40 lb, born Mar 10. feeder holds 400 lb, two water barrels 55 gal 2 nipples each. pens: apple 50x80 ft, pear 60x80 ft, in apple. wallow 6x8 ft. chores sat 7 am, target 265"},
	{"2026-07-11T08:00", "brick 150 lb, hank 155, ivy 148, dell 149, pip 95, dill 93"},
	{"2026-07-11T08:01", "feeder full, 250. barrels full"},
}

// TestRounds reads what is texted around a chore round, an alarm, an illness. A
// block is one talk; "LEFT" gives what is quoted back as not understood.
func TestRounds(t *testing.T) {
	for _, block := range strings.Split(strings.TrimSpace(rounds), "\n\n") {
		lines := strings.Split(block, "\n")
		t.Run(strings.TrimPrefix(lines[0], "# "), func(t *testing.T) {
			k := newTalk()
			for _, m := range sedge {
				got, err := k.say(m.at, m.text)
				require.NoError(t, err)
				require.Empty(t, got.Left, m.text)
			}
			k.before, k.pending = nil, nil
			for _, line := range lines[1:] {
				text, want, ok := strings.Cut(line, " => ")
				require.True(t, ok, line)
				want, left, _ := strings.Cut(want, " LEFT ")
				got, err := k.say("2026-07-18T08:00", text)
				require.NoError(t, err)
				require.Equal(t, strings.TrimSpace(want), brief(got.Entries, "2026-07-18"), text)
				require.Equal(t, left, strings.Join(got.Left, "|"), text)
			}
		})
	}
}

const rounds = `
# groups of pigs
wormed all but brick, fenbendazole, 6 days => worm animals=Hank+Ivy+Dell+Pip+Dill product=fenbendazole withdrawal_days=6
undo the worming => undo of=worm
moved the four big pigs to pear => move animals=Brick+Hank+Ivy+Dell pen=pear

# one weight that cannot be that of all
boys 210 => clarify about=weigh

# girth and length swapped
hank 48 39 => clarify about=weigh
37 girth 40 long => weigh animals=Hank girth_cm=93.98 length_cm=101.6

# a pig that is not of this herd
walter 36 girth => clarify about=weigh LEFT walter
PIGS OUT => alarm what=out
all 6 back in => alarm over=true what=out
hank => weigh animals=Hank girth_cm=91.44

# feed beside water
both barrels full, 165 full => water full=true; refill feed_kg=74.84 feeder=feeder full=true
feeder full, both barrels full => refill feeder=feeder full=true; water full=true
topped both barrels and the feeder => water full=true; refill feeder=feeder full=true
70 kg, barrels full => refill feed_kg=70 feeder=feeder; water full=true
barrel 1 is fine, nipple stuck on barrel 2 => note what=barrel 1 is fine, nipple stuck on barrel 2

# a pour into a feeder that cannot be empty
filled 390 full => clarify about=refill
nothing, that was a mistake => none

# money and purchases
spent 190 pigs, 510 feed, 96 straw => spend amount=190 currency=USD what=pigs; spend amount=510 currency=USD what=feed; spend amount=96 currency=USD what=straw
spent 27 wormer => spend amount=27 currency=USD what=wormer
new batch: 69 corn 28 soybean meal 3 mineral => recipe ingredients={"corn":31.3,"mineral premix":1.36,"soybean meal 48":12.7}
12 bags corn 50 lb at 9.50 each => stock amount=114 count=12 currency=USD feed_kg=272.16 ingredient=corn

# a treatment told bit by bit
hank got a shot => treat animals=Hank
oxytetracycline => treat animals=Hank product=oxytetracycline replaces=true
hank 28 days => treat animals=Hank product=oxytetracycline replaces=true withdrawal_days=28
vet came, ivy got penicillin 10 ml, 15 days => treat animals=Ivy product=penicillin withdrawal_days=15

# alarms and their ends
no water since yesterday => alarm what=no_water
water's back on => alarm over=true what=no_water
pig down => alarm what=down
she's up again => alarm over=true what=down
dill is out => alarm animals=Dill what=out
got dill back => alarm animals=Dill over=true what=out

# alarms while a question is open
gave penicillin => clarify about=treat
ivy down => alarm animals=Ivy what=down
dell out => alarm animals=Dell what=out
pigs out => alarm what=out
hank dead => gone animals=Hank how=died
ivy => treat animals=Ivy product=penicillin

# batches
mixed a new batch => mixed batches=1
a batch: 60 lb corn, 25 lb soy, 12 lb barley, 3 lb premix => recipe ingredients={"barley":5.44,"corn":27.22,"mineral premix":1.36,"soybean meal 48":11.34}

# words that carry no fact
fence 6.2 now, cleared the weeds => fence kv=6.2
high 52 low 39, rain all week => weather high_c=11.11 low_c=3.89
filled the wallow => wallow
all three barrels full => water full=true
rained an inch, pens muddy => weather rain_mm=25.4 LEFT pens muddy

# reminders and questions
call the vet at noon, remind me at 12 => remind what=call the vet when=2026-07-18T12:00
what if I feed them to 300 => ask assume={"target_kg":136.08} topic=butcher_date
when's dell 260? => ask animals=Dell target_kg=117.93 topic=target
`
