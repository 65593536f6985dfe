package reading_test

import "testing"

// TestAddedThings reads texts by which a running herd gets one more feeder, barrel or
// pen, and others that only sound so.
func TestAddedThings(t *testing.T) {
	readsRows(t, "orchard", "2026-07-08T09:20", `
added a barrel called Porch, 40 gal, 1 nipple => settings key=barrel value={"capacity_l":151.42,"name":"Porch","nipples":1}
put a third feeder by the gate, holds 300 lb, call it Gate => settings key=feeder value={"capacity_kg":136.08,"name":"Gate"}
There is a new trough at the bottom of the orchard; it takes 60 lb and we have called it Bottom. => settings key=feeder value={"capacity_kg":27.22,"name":"Bottom"}
another barrel went in by the road, 40 gallons, one nipple. Call it Road. => settings key=barrel value={"capacity_l":151.42,"name":"Road","nipples":1}
put in another water barrel 30 gal single nipple by the gate => settings key=barrel value={"capacity_l":113.56,"name":"gate","nipples":1}
got another feeder for 80 dollars, it holds 200 lb and we call it Porch => spend amount=80 currency=USD what=feeder; settings key=feeder value={"capacity_kg":90.72,"name":"Porch"}
set up a 4th barrel, blue, 35 gal 1 nipple => settings key=barrel value={"capacity_l":132.49,"name":"barrel 4","nipples":1}
fenced a new pen, Plum, 80x120 ft => settings key=pen value={"area_m2":891.87,"name":"Plum"}
new pen plum 50x70 => settings key=pen value={"area_m2":325.16,"name":"plum"}
filled a new barrel, 40 gal => clarify about=water
we should get another barrel, 55 gal 2 nipples => none
neighbor put in a second feeder, 300 lb => none
`)
	readsRows(t, "bantay", "2026-05-03T09:20", `
I bought one more drum, 150 liters, one nipple, name is side drum => settings key=barrel value={"capacity_l":150,"name":"side drum","nipples":1}
poured water into a new drum, 40 liters => clarify about=water
may bagong drum, 100 liters, one nipple, we call it Pula => settings key=barrel value={"capacity_l":100,"name":"Pula","nipples":1}
`)
	readsRows(t, "kiln", "2026-08-20T09:20", `
added 40 gal to the tank => water barrel=tank litres=151.42
Added new feeder. Name: Barn. Capacity: 250 lb. => settings key=feeder value={"capacity_kg":113.4,"name":"Barn"}
added a water tank called Back, 100 gal => settings key=barrel value={"capacity_l":378.54,"name":"Back"}
`)
}
