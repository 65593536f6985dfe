package reading_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// readsRows holds rows "text => entries" against what a herd of the corpora reads
// them as; "first >> text" says a text before.
func readsRows(t *testing.T, herd, now, rows string) {
	base := play(t, herd)
	at, err := time.ParseInLocation("2006-01-02T15:04", now, base.loc)
	require.NoError(t, err)
	for _, row := range strings.Split(strings.TrimSpace(rows), "\n") {
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		k := &talk{loc: base.loc, records: base.records[:len(base.records):len(base.records)], herd: base.herd}
		said := strings.Split(text, " >> ")
		for _, s := range said[:len(said)-1] {
			_, err := k.say(now, s)
			require.NoError(t, err)
		}
		got, err := k.sayAt(at, said[len(said)-1])
		require.NoError(t, err)
		require.Equal(t, want, brief(got.Entries, now[:10]), text)
	}
}

// TestSameBreath reads texts that take back what they have just said.
func TestSameBreath(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
hazel 198, wait no that was with the crate door open, 196 => weigh animals=Hazel weight_kg=88.9
fern 34 girth lol jk 33 => weigh animals=Fern girth_cm=83.82
shed full hill full no wait hill is half => water barrel=shed full=true; water barrel=hill fraction=0.5 seen=true
otis two ten oh actually clover two ten => weigh animals=Clover weight_kg=95.25
otis 201 no otis 207 => weigh animals=Otis weight_kg=93.89
150 in the small hopper, no the big one => refill feed_kg=68.04 feeder=big hopper
clover 205 no wait that was pepper => weigh animals=Pepper weight_kg=92.99
moved them to pear, no cherry => move pen=Cherry
hosed wallow 20 min. actually 25 => wallow minutes=25
hazel 201 clover 199, no, 197, otis 205 => weigh animals=Hazel weight_kg=91.17; weigh animals=Clover weight_kg=89.36; weigh animals=Otis weight_kg=92.99
bought 10 bags of corn 95 dollars, sorry 105 => stock amount=105 count=10 currency=USD feed_kg=226.8 ingredient=corn
filled shed barrel yesterday, no, Thursday => water barrel=shed date=2026-07-23 full=true
shed barrel full, no leaks => water barrel=shed full=true
`)
}

// TestTurn reads texts that only meant or denied something before they tell what
// was done.
func TestTurn(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
we should have fed them 160 but only had 120 so that's what went in the big one => refill feed_kg=54.43 feeder=big hopper
nearly forgot to fill the small hopper, did it just now, 70 => refill feed_kg=31.75 feeder=small hopper
didnt fill big, small 65 full => refill feed_kg=29.48 feeder=small hopper full=true
forgot to say, thursday I put 60 in the small one => refill date=2026-07-23 feed_kg=27.22 feeder=small hopper
the small one I'll do tomorrow, big got 150 => refill feed_kg=68.04 feeder=big hopper
I was going to tape Otis but he ran off, Hazel is 41 girth => weigh animals=Hazel girth_cm=104.14
it was supposed to rain but it hit 95 instead => weather high_c=35
will fill the small hopper tomorrow, 70 lb => none
didn't fill the barrels, will do it at 5 => none
haven't wormed anyone, will do when they are 150 lb => none
`)
}

// TestDaysSpread reads texts whose days hold for more than the words beside them.
func TestDaysSpread(t *testing.T) {
	readsRows(t, "burrow", "2026-08-15T09:20", `
filled the wallow and barrel last night, hopper this morning with 62 => wallow date=2026-08-14; water barrel=barrel date=2026-08-14 full=true; refill feed_kg=28.12 feeder=hopper
barrel full and hopper 60 yesterday => water barrel=barrel date=2026-08-14 full=true; refill date=2026-08-14 feed_kg=27.22 feeder=hopper
thursday did hopper 40 and the barrel => refill date=2026-08-13 feed_kg=18.14 feeder=hopper; water barrel=barrel date=2026-08-13 full=true
tue 90 thu 93, barrel full => weather date=2026-08-11 high_c=32.22; weather date=2026-08-13 high_c=33.89; water barrel=barrel full=true
tue thru thu hosed 20 each day => wallow date=2026-08-11 minutes=20; wallow date=2026-08-12 minutes=20; wallow date=2026-08-13 minutes=20
monday it was ninety one tuesday ninety three and wednesday eighty eight => weather date=2026-08-10 high_c=32.78; weather date=2026-08-11 high_c=33.89; weather date=2026-08-12 high_c=31.11
gave moss penicillin at five thirty label says 7 days => treat animals=Moss at=05:30 product=penicillin withdrawal_days=7
gave moss penicillin yesterday evening at quarter past six ten days withdrawal => treat animals=Moss at=18:15 date=2026-08-14 product=penicillin withdrawal_days=10
`)
}

// TestNumbersLeft asks about numbers that nothing was made of beside a record.
func TestNumbersLeft(t *testing.T) {
	readsRows(t, "ridge", "2026-08-02T17:40", `
6 hung 1020 total => clarify about=gone
two of the barrows are coughing => sick animals=all note=coughing
moved the whole crew to pen 3 this morning, took all of five minutes => move pen=pen 3
`)
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
fence 5.4. the hopper 31 or so was it => fence kv=5.4; clarify about=refill
fence 5.4. Blorp the Fizzbuck 7 => fence kv=5.4
wormed the four big pigs with ivermectin eighteen days => worm animals=Hazel+Clover+Otis+Pepper product=ivermectin withdrawal_days=18
`)
}

// TestHeardWrong reads what a phone hears or puts in place of other words, and
// what is written short.
func TestHeardWrong(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
i put to buckets in the small hopper just now => refill feed_kg=22.68 feeder=small hopper
Big hoper too bags, shed bare empty => refill feed_kg=45.36 feeder=big hopper; water barrel=shed fraction=0 seen=true
bought for bags of corn => stock count=4 feed_kg=90.72 ingredient=corn
Quite hours from 10 pm to 5 am please => settings key=quiet value=22:00+05:00
blew barrel half, hill barrel fool => water barrel=blue fraction=0.5 seen=true; water barrel=hill full=true
big hopper fill 150 => refill feed_kg=68.04 feeder=big hopper
moved al but juno to paer => move animals=Hazel+Clover+Otis+Pepper+Fern+Brick pen=Pear
hazels wait will be what on the first of september => ask animals=Hazel on=2026-09-01 topic=weight
shd full hll full => water barrel=shed full=true; water barrel=hill full=true
the old one is full => clarify about=refill
did you fill the big hopper => ask topic=feed_left
`)
}

// TestHeadGoverns reads texts whose head says that nothing of theirs is recorded.
func TestHeadGoverns(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
next week I mix 3 batches => none
tomorrow I fill the hopper, today no => none
my cousin in Ohio lost 40 pigs to fever => none
the pigs of our neighbor is sick, 4 died already => none
if the price goes to two dollars a pound we would sell otis => none
my neighbor came by and we weighed otis 204 => weigh animals=Otis weight_kg=92.53
wife says shed barrel empty => water barrel=shed fraction=0 seen=true
neighbor says the shed barrel looks empty => none
no pigs out today => none
pigs out, no one around => alarm what=out
`)
}

// TestPutRight reads texts that put an earlier record right.
func TestPutRight(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
otis 241 >> scrap that, otis was 241 no 214 sorry => weigh animals=Otis replaces=true weight_kg=97.07
pepper 38.5 girth >> 39.5 sorry => weigh animals=Pepper girth_cm=100.33 replaces=true
hazel 40 girth >> make it 41 => weigh animals=Hazel girth_cm=104.14 replaces=true
big hopper 75 >> not the big one, the small => refill feed_kg=34.02 feeder=small hopper replaces=true
otis 201 >> oh wait, that was Pepper I weighed, not Otis => weigh animals=Pepper replaces=true weight_kg=91.17
big hopper 3 bags >> 4 not 3 => refill feed_kg=90.72 feeder=big hopper replaces=true
brick penicillin, 10 days >> should have said, that was at 6:45 this morning => treat animals=Brick at=06:45 product=penicillin replaces=true withdrawal_days=10
otis 201 >> clover 205 => weigh animals=Clover weight_kg=92.99
hazel 198 >> cancel the last entry => undo of=weigh
`)
	readsRows(t, "ridge", "2026-08-02T17:40", `
420 full >> yesterday => refill date=2026-08-01 feed_kg=190.51 feeder=feeder full=true replaces=true
sold 2 pigs for 500 >> 3 pigs, not 2 => gone amount=500 animals=all count=3 how=sold replaces=true
350 not 300 => none
put 300 in the feeder >> 350 not 300 => refill feed_kg=158.76 feeder=feeder replaces=true
`)
}

// TestOtherUses reads words of the trade in their everyday use, names that say
// nothing alone, and letters for things.
func TestOtherUses(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
moved the hoppers up the hill => clarify about=water
two inches of rain so no hosing => none
gave the babies their wormer, fenbendazole, took 6 days off the box => worm animals=Fern+Juno+Brick product=fenbendazole withdrawal_days=6
barrels: s full h 1/2 b empty => water barrel=shed full=true; water barrel=hill fraction=0.5 seen=true; water barrel=blue fraction=0 seen=true
feed: b 150 s 70 => refill feed_kg=68.04 feeder=big hopper; refill feed_kg=31.75 feeder=small hopper
shed => clarify about=water
water shed, hill. fence 5.3 => water barrel=shed full=true; water barrel=hill full=true; fence kv=5.3
lost track of the tape, fence 5.4 => fence kv=5.4
`)
}

// TestOnlyMentioned reads things, counts and deeds that are but mentioned.
func TestOnlyMentioned(t *testing.T) {
	readsRows(t, "ridge", "2026-08-02T17:40", `
water e+w full => water barrel=East full=true; water barrel=West full=true
we put nine bags in yesterday not eight => refill date=2026-08-01 feed_kg=204.12 feeder=feeder
wormed all 12 ivermectin 18 days => worm animals=all product=ivermectin withdrawal_days=18
its been 4 days since i filled the feeder => none
put 400 in, the feed guy says 16 percent is fine => refill feed_kg=181.44 feeder=feeder
`)
	readsRows(t, "sawbuck", "2026-10-03T10:00", `
fence 3.8 by the creek, found a branch on it => fence kv=3.8
40 gallons in the gate barrel => water barrel=gate litres=151.42
moved them past the gate to willow => move pen=Willow
`)
}

// TestManners reads amounts, times and names in the manner of other countries, houses
// and trades.
func TestManners(t *testing.T) {
	readsRows(t, "pinfold", "2026-09-02T17:30", `
1-4: 226 221 238 214 => weigh animals=1 weight_kg=102.51; weigh animals=2 weight_kg=100.24; weigh animals=3 weight_kg=107.95; weigh animals=4 weight_kg=97.07
4 gained 25 lb to 215 => weigh animals=4 weight_kg=97.52
2 put on 12 lbs, now 238 => weigh animals=2 weight_kg=107.95
`)
	readsRows(t, "burrow", "2026-08-22T09:20", `
barrel stood at five eighths => water barrel=barrel fraction=0.63 seen=true
hopper at three eighths => feed_level feeder=hopper fraction=0.38
hopper has maybe a day left => feed_level days=1 feeder=hopper
two bags in, hopper right up => refill feed_kg=36.29 feeder=hopper full=true
80 lb in the hopper, couldnt fit any more => refill feed_kg=36.29 feeder=hopper full=true
moved to Fern Gully 0900 => move at=09:00 pen=Fern Gully
butcher oct 23 at half seven in the morning, both pigs => booked at=07:30 count=2 date=2026-10-23
hopper's half full, the kids looked => feed_level feeder=hopper fraction=0.5
wormed moss with ivermectin, says 18 days before slaughter => worm animals=Moss product=ivermectin withdrawal_days=18
`)
	readsRows(t, "moorwiese", "2026-07-30T12:00", `
Emil breast circumference 108, length 118 => weigh animals=Emil girth_cm=108 length_cm=118
slaughterer comes 12.10. at 6:30 for all three => booked at=06:30 count=3 date=2026-10-12
the butcher is booked for the fourteenth => booked date=2026-08-14
`)
}

// TestUnitsOfTheText: the unit that a text begins with holds for its bare numbers.
func TestUnitsOfTheText(t *testing.T) {
	readsRows(t, "flatrock", "2026-09-20T13:00", `
new mix per batch: corn 75 kg, soybean meal 13.5, mineral 2.3 => recipe ingredients={"corn":75,"mineral premix":2.3,"soybean meal 48":13.5}
upper tank 250 litres, lower 180 => water barrel=upper litres=250; water barrel=lower litres=180
upper tank 60 gal, lower 40 => water barrel=upper litres=227.12; water barrel=lower litres=151.42
`)
}

// TestWishes reads wishes in other words: to be reminded, and to be left alone.
func TestWishes(t *testing.T) {
	readsRows(t, "moorwiese", "2026-07-20T20:45", `
can you remember me on thursday 19:30 that I must order straw => remind what=I must order straw when=2026-07-23T19:30
could you nudge me tomorrow to buy salt => remind what=buy salt when=2026-07-21
dont bug me for like 3 hours => snooze hours=3
leave me alone for two hours => snooze hours=2
not now, ask me in an hour => snooze hours=1
Emil with the cage 84.5, cage only 11.5 => weigh animals=Emil weight_kg=73
`)
	readsRows(t, "pinfold", "2026-08-26T00:25", `
all 4 around 220 => weigh animals=all weight_kg=99.79
my brother filled the feeder, 100 lb => refill feed_kg=45.36 feeder=feeder
`)
}

// TestEachItsOwn: what ails two pigs is told of each; what something is called is a name,
// whatever else the word means.
func TestEachItsOwn(t *testing.T) {
	readsRows(t, "orchard", "2026-07-13T17:30", `
hazel has a cough and otis keeps scratching her ears => sick animals=Hazel note=cough; sick animals=Otis note=keeps scratching her ears
new feeder called Shed, 200 lb => settings key=feeder value={"capacity_kg":90.72,"name":"Shed"}
`)
	readsRows(t, "moorwiese", "2026-07-24T18:40", `
We have fenced a new pen, it is called Pond, 450 m2 => settings key=pen value={"area_m2":450,"name":"Pond"}
`)
}

// TestSeveral: what is told of several is not told of one, and what is but thought of or
// still to come is not recorded.
func TestSeveral(t *testing.T) {
	readsRows(t, "thistle", "2026-05-03T08:10", `
gus and pearl have scours, gave them penicillin 10 days => sick animals=Gus+Pearl note=scours; treat animals=Gus+Pearl product=penicillin withdrawal_days=10
`)
	readsRows(t, "orchard", "2026-07-13T08:00", `
hazel 180, moved them to Pear => weigh animals=Hazel weight_kg=81.65; move pen=Pear
we might switch to thursdays for chores, haven't decided => none
we might switch to sundays for chores, not sure yet => none
ordered 20 bags of corn, should be here monday => none
`)
}

// TestWallowLow: a wallow that is told to be low was not topped up.
func TestWallowLow(t *testing.T) {
	readsRows(t, "orchard", "2026-07-05T08:22", `
wallow looks low => note what=wallow looks low
the wallow is getting low => note what=the wallow is getting low
wallow was low, hosed it 20 minutes => wallow minutes=20
wallow topped up => wallow
`)
}

// readsOne holds a text of several lines against what a herd of the corpora reads it as.
func readsOne(t *testing.T, herd, now, text, want string) {
	k := play(t, herd)
	at, err := time.ParseInLocation("2006-01-02T15:04", now, k.loc)
	require.NoError(t, err)
	got, err := k.sayAt(at, text)
	require.NoError(t, err)
	require.Equal(t, want, brief(got.Entries, now[:10]), text)
}
