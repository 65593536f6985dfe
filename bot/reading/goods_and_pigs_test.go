package reading_test

import "testing"

// TestNewcomers reads pigs that came or went in words that could be of goods, and who
// of several is meant.
func TestNewcomers(t *testing.T) {
	readsRows(t, "burrow", "2026-08-12T09:20", `
got a third one today 55 lb, naming it Fig => arrive animals=Fig count=1 weight_kg=24.95
we have a new pig, Fig, 50 lb => arrive animals=Fig count=1 weight_kg=22.68
`)
	readsRows(t, "none", "2026-05-02T09:20", `
Dot gained 5 to 50 => none
`)
	readsRows(t, "orchard", "2026-07-08T09:20", `
everybody but otis to pear, his foot is sore => move animals=Hazel+Clover+Pepper+Fern+Juno+Brick pen=Pear; sick animals=Otis note=foot is sore
moved all except Hazel to Apple, she is lame => move animals=Clover+Otis+Pepper+Fern+Juno+Brick pen=Apple; sick animals=Hazel note=lame
moved all except Hazel and Otis to Apple, Fern is lame => move animals=Clover+Pepper+Fern+Juno+Brick pen=Apple; sick animals=Fern note=lame
`)
	readsRows(t, "flatrock", "2026-09-29T19:30", `
Today five pig go to butcher: 501, 502, 503, 504, 507. Truck cost 120 dollar. => gone animals=501+502+503+504+507 how=butchered; spend amount=120 currency=USD what=Truck
took five to the butcher today: 501, 502, 503, 504 and 507 => gone animals=501+502+503+504+507 how=butchered
took four to the butcher today: 501, 502, 503, 504 and 507 => clarify about=gone
Where we're they before Willow => ask topic=move
`)
}

// TestMixChanged reads changes of a mix that name only what changes.
func TestMixChanged(t *testing.T) {
	readsRows(t, "moorwiese", "2026-07-22T09:20", `
please change the recipe: peas 20 instead of 15 and wheat only 25 => recipe ingredients={"barley":50,"mineral premix":2.5,"peas":20,"wheat":25}
peas 20 instead of 15 => recipe ingredients={"barley":50,"mineral premix":2.5,"peas":20,"wheat":30}
bought 20 kg peas instead of 15 => none
`)
	readsRows(t, "sawbuck", "2026-10-02T09:20", `
change the mix to 45 peas => recipe ingredients={"barley":68.04,"mineral premix":3.63,"peas":20.41}
a batch is 160 barley, 45 peas, 8 mineral => recipe ingredients={"barley":72.57,"mineral premix":3.63,"peas":20.41}
`)
}

// TestDrugAsWritten reads products that are misspelt: none is corrected unasked, and no
// days are known but those told.
func TestDrugAsWritten(t *testing.T) {
	readsRows(t, "thistle", "2026-05-02T09:20", `
wormed all with fenbendasole 14 days => worm animals=all product=fenbendasole withdrawal_days=14
wormed all with fenbendazole 14 days => worm animals=all product=fenbendazole withdrawal_days=14
wormed all, levamizole => worm animals=all product=levamizole
Gus got penicilin this morning => treat animals=Gus product=penicilin
wormed all with Ivermectin, 18 days => worm animals=all product=ivermectin withdrawal_days=18
`)
}

// TestPouredOfBought reads goods of which something was poured at once.
func TestPouredOfBought(t *testing.T) {
	readsRows(t, "kiln", "2026-08-20T09:20", `
bought 8 bags, poured one in the feeder => stock count=8 feed_kg=181.44; refill feed_kg=22.68 feeder=feeder
10 bags delivered and I dumped one => stock count=10 feed_kg=226.8; refill feed_kg=22.68 feeder=feeder
bought 8 bags, poured one of them => stock count=8 feed_kg=181.44; refill feed_kg=22.68 feeder=feeder
bought 8 bags, poured one coffee => stock count=8 feed_kg=181.44
Delivery came, 6 bags of feed, I poured one already => stock count=6 feed_kg=136.08; refill feed_kg=22.68 feeder=feeder
`)
}
