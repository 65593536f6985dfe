package reading_test

import "testing"

// TestOverLines reads entries whose parts stand in lines or sentences of their own.
func TestOverLines(t *testing.T) {
	for _, c := range []struct{ herd, now, text, want string }{
		{"orchard", "2026-07-08T09:20", "crate 78 empty\ncrate + Clover 242\ncrate + Otis 250", "weigh animals=Clover weight_kg=74.39; weigh animals=Otis weight_kg=78.02"},
		{"thistle", "2026-05-01T11:00", "empty crate 31\nGus + crate 99\nPearl + crate 95", "weigh animals=Gus weight_kg=30.84; weigh animals=Pearl weight_kg=29.03"},
		{"thistle", "2026-05-01T11:00", "Crate and Socks together, ninety-four pounds; crate alone, thirty-one.", "weigh animals=Socks weight_kg=28.58"},
		{"thistle", "2026-05-01T11:00", "Gus 71. Socks and crate 94; crate alone 31", "weigh animals=Gus weight_kg=32.21; weigh animals=Socks weight_kg=28.58"},
		{"moorwiese", "2026-07-22T11:00", "box 22 empty\nEmil + box 105\nLotte + box 99", "weigh animals=Emil weight_kg=83; weigh animals=Lotte weight_kg=77"},
		{"kiln", "2026-08-20T09:20", "Crate and 206 together 250; crate alone 60", "weigh animals=206 weight_kg=86.18"},
		{"flatrock", "2026-09-25T09:20", "503 sick, not eating\n504 ditto", "sick animals=503+504 note=sick, not eating"},
		{"flatrock", "2026-09-25T09:20", "503 262 lb\n504 same\n505 ditto", "weigh animals=503 weight_kg=118.84; weigh animals=504 weight_kg=118.84; weigh animals=505 weight_kg=118.84"},
		{"orchard", "2026-07-08T09:20", "Hazel wormed with ivermectin, 18 days\nClover ditto", "worm animals=Hazel+Clover product=ivermectin withdrawal_days=18"},
		{"orchard", "2026-07-08T09:20", "shed 10 gal\nhill same\nblue ditto", "water barrel=shed litres=37.85; water barrel=hill litres=37.85; water barrel=blue litres=37.85"},
		{"orchard", "2026-07-08T09:20", "big hopper 2 bags\nsmall ditto", "refill feed_kg=45.36 feeder=big hopper; refill feed_kg=45.36 feeder=small hopper"},
		{"orchard", "2026-07-08T09:20", "what is the feed left?\nsmall ditto", "ask topic=feed_left"},
		{"ridge", "2026-08-06T18:40", "8/2 wormed\nfenbendazole\nall 12\n14 days", "worm animals=all date=2026-08-02 product=fenbendazole withdrawal_days=14"},
		{"thistle", "2026-05-01T11:00", "4/28 dewormed\nall five\nfenbendazole\n14 days withdrawal", "worm animals=all date=2026-04-28 product=fenbendazole withdrawal_days=14"},
		{"flatrock", "2026-09-25T09:20", "wormed today\nivermectin\n501 to 504\n35 days", "worm animals=501+502+503+504 product=ivermectin withdrawal_days=35"},
		{"orchard", "2026-07-08T09:20", "treated\nHazel\npenicillin\n10 days", "treat animals=Hazel product=penicillin withdrawal_days=10"},
		{"kiln", "2026-08-30T08:50", "201-205 all about 222\n206-209 about 208", "weigh animals=201+202+203+204+205 weight_kg=100.7; weigh animals=206+207+208+209 weight_kg=94.35"},
		{"kiln", "2026-08-30T08:50", "201 to 205 are about 206, 206 to 209 about 203 lb", "weigh animals=201+202+203+204+205 weight_kg=93.44; weigh animals=206+207+208+209 weight_kg=92.08"},
		{"kiln", "2026-08-30T08:50", "201-203 206", "none"},
	} {
		readsOne(t, c.herd, c.now, c.text, c.want)
	}
}
