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
