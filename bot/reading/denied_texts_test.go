package reading_test

import "testing"

// TestNotDone reads texts that name what was not done, was only wished for, or is
// somebody else's: they record nothing of it.
func TestNotDone(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
none of the barrels filled today => none
they want 22 a bag for soybean meal now, passed on it => none
passed on the mineral but got 4 bags corn for 44 => stock amount=44 count=4 feed_kg=90.72 ingredient=corn
bought 2 bags corn at 11, didn't get any mineral, too dear => stock amount=22 count=2 feed_kg=45.36 ingredient=corn
this week: wormed all pigs, moved them to Pear => worm animals=all; move pen=Pear
no water from us today => none
no feed from my side this morning => none
hill barrel half, left alone => water barrel=hill fraction=0.5 seen=true
`)
	readsRows(t, "flatrock", "2026-09-22T20:30", `
if only 508 weighed 250 by now => none
upper left alone, lower left alone => none
gilts stay put in Barn => none
gilts staying in Barn, barrows moved to Creek => move animals=501+502+503+504+505 pen=Creek
the pigs are staying in Willow now => move pen=Willow
next up: treat 505, move gilts to Creek => none
wish we were done with 503 => none
nothing left in upper => water barrel=upper fraction=0 seen=true
503 is dead set on escaping => none
`)
	readsRows(t, "kiln", "2026-08-30T09:20", `
chores left: fill tank, 2 bags feed, weigh 207 => none
203 weighed in dead on 210 => weigh animals=203 weight_kg=95.25
204 is dead even with 206 at 212 => weigh animals=204+206 weight_kg=96.16
found 203 dead first thing today => gone animals=203 how=died
straw was 9 a bale, didn't get any => none
the fence charger was dead on arrival, sent it back => none
the vet wants 85 a visit so we did not call => none
`)
	readsRows(t, "ridge", "2026-08-02T18:45", `
no pigs sold yet => none
had we moved them to pen 3 they would have had shade => none
The Millers up the road lost four to the heat, 104 in their shed => none
sold 2 pigs to the Millers for 500 => gone amount=500 count=2 how=sold
no pigs sick, put 300 in => refill feed_kg=136.08 feeder=feeder
`)
	readsRows(t, "bantay", "2026-05-03T11:30", `
Mang Tonyo's pigs got out again, 3 of them on the road, not ours => none
corn is 1400 a sack at the mill, too much, I not buy => none
`)
}

// TestSlipsAlone reads texts in which only a slip of the pen would name goods.
func TestSlipsAlone(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
hazel 197 >> sry 187 => weigh animals=Hazel replaces=true weight_kg=84.82
soz 40 => none
`)
}

// TestSomeOfAKind reads texts that count some pigs of a kind: never all of them.
func TestSomeOfAKind(t *testing.T) {
	readsRows(t, "ridge", "2026-08-11T13:00", `
Sold two of the gilts to my cousin Ray this morning, 260 apiece => gone amount=520 count=2 how=sold
three of the barrows butchered yesterday => gone count=3 date=2026-08-10 how=butchered
7 barrows sold for 1900 => gone amount=1900 count=7 how=sold
two gilts died => gone count=2 how=died
wormed 2 gilts => clarify about=worm
`)
	readsRows(t, "flatrock", "2026-09-22T20:30", `
sold 2 of the gilts => clarify about=gone
moved two of the gilts to Creek => clarify about=move
4 gilts to Creek => move animals=506+507+508+509 pen=Creek
sold the little runt pig today => clarify about=gone
hung 198 => clarify about=gone
`)
	readsRows(t, "pinfold", "2026-09-01T18:00", `
3 & 4 to hill => move animals=3+4 pen=Hill
1+2 into hill => move animals=1+2 pen=Hill
moved 3 pigs to hill => clarify about=move
butcher booked sept 14, both barrows => booked count=2 date=2026-09-14
4 more bags. 9pm last night => clarify about=refill
`)
	readsRows(t, "lambak", "2026-05-03T06:35", `
Girls all about 37, boys 39 except Munti 33 => weigh animals=Tala+Bituin+Amihan weight_kg=37; weigh animals=Ulan+Dagat weight_kg=39; weigh animals=Munti weight_kg=33
Munti got out, headed for the river => alarm animals=Munti what=out
`)
}

// TestOwnEvidence reads texts beside whose words nothing speaks for a record.
func TestOwnEvidence(t *testing.T) {
	readsRows(t, "orchard-july", "2026-07-25T07:20", `
blue barrel was nice => clarify about=water
hill barrel is down to a third, filled shed => water barrel=hill fraction=0.33 seen=true; water barrel=shed full=true
The blue barrel's only got about a quarter left in it though => water barrel=blue fraction=0.25 seen=true
Brick finally stood still on the platform, 91 pounds the little porker => weigh animals=Brick weight_kg=41.28
Brick helped me pour 60 pounds => clarify about=weigh
Otis is scouring since last night, loose and yellow => sick animals=Otis date=2026-07-24 note=scouring since last night, loose and yellow
all eat good => none
wormed the gilts mon or tues => clarify about=worm
Made plum jam all afternoon, eleven jars => none
I sell Otis maybe if somebody pay 400 dollar => none
the boy behind the counter loaded it himself => none
gotta call the butcher sept 7 => none
fence 6.1, up from 4 => fence kv=6.1
`)
	readsRows(t, "kiln", "2026-08-30T09:20", `
feeder was at a quarter, then 4 bags in => feed_level feeder=feeder fraction=0.25; refill feed_kg=90.72 feeder=feeder
203 sold Sat. $410. => gone amount=410 animals=203 currency=USD date=2026-08-29 how=sold
`)
	readsRows(t, "burrow", "2026-08-22T18:15", `
plum is one seventy moss is one sixty one and the hopper is about half => weigh animals=Plum weight_kg=77.11; weigh animals=Moss weight_kg=73.03; feed_level feeder=hopper fraction=0.5
the electrician was out about the charger, 7.2 on the wire => fence kv=7.2
`)
}
