package reading

// animalWords says more of what is told of pigs: signs of illness, ways of getting
// out, and the small phrases that only look like either.
var animalWords = []entryWords{
	{sSick, `threw up, throwing up, throws up, vomit, vomits, was vomit, has vomited, puke, snotty nose, bloody nose, swelled, swelling, swole, swole up, drooling, head tilt, tilting, blind, shaking, trembling, tremors, twitching,
		wheezes, rubbing, bald spot, bald spots, losing hair, hair loss, warts, bumps, welts, blister, blisters, pink eye, red eye, discharge, bloat, bloated, straining, diamonds, purple ears, blue ears, off by himself,
		off by herself, off by itself, by himself, by herself, by itself, away from the others, lays around, laying around, laying there, lays there, holding up, holding up a leg, favors, favours, limpy, three legs, on three legs,
		doesn't get up to eat, not keeping up, can't keep up, losing weight, lost weight, lost condition, ribs showing, gash, scratched up, scratches, chewed up, chewed on, torn up, tore up, broken leg, hurt herself,
		hurt himself, got hurt, sprained, twisted, pneumonia, thumping, thumps, frothing, bleeds, heat stroke, heat stressed, overheating, no energy, not interested in food, left her feed, left his feed, leaving feed, mopey, moping, head down, not his usual self, not her usual self, under the weather, erysipelas rash, lice, ticks, maggots, flystrike, fly strike, prolapsed, bad eye, hives, under weather, not himself, not herself, not themselves, not itself`},
	{sOut, "came out of the pen, theyre all out, they're all out, they are all out, all of them are out, are all out, everybody is out, everyone is out, everybody's out, everyone's out, out and about, took off, ran off, wandered off, slipped out, squeezed out, dug out, jumped out, pushed through, got under the fence, under the wire, got through the fence, got past the fence, out in the yard, wandering around, at the neighbors, in the driveway"},
	{sPigs, "theyre all out, they're all out, they are all out, all of them are out, everybody is out, everyone is out, everybody's out, everyone's out"},
	{sDitto, "ditto, dito, same, the same, same for, same as, likewise, the same for, same with, same weight, the same weight"},
	{sGave, "vet came out, the vet came out, vet was out, the vet was out, the vet was here, vet was here, the vet stopped by, vet stopped by"},
	{sWithdraw, "bottle says, the bottle says, on the bottle, box says, the box says, on the box, package says, the package says, on the package, tag says, the tag says, label said, before slaughter, till slaughter, until slaughter, to slaughter wait, no slaughter, wait time, waiting time, slaughter wait, clearance, meat hold, days hold, on label"},
	{sTreat, "sprayed for lice, dusted for lice, sprayed for mange, dusted for mange, sprayed for mites"},
	{sButcher, "talked to the butcher, spoke to the butcher, spoke with the butcher, talked with the butcher, called the butcher, told the butcher, heard from the butcher, said to the butcher, asked the butcher, texted the butcher, emailed the butcher, from the butcher, with the butcher, butcher called, the butcher called, butcher said, the butcher said, butcher says, the butcher says"},
	{sBook, "termin, termin bei"},
	{sHelp, "how do i tell, how do i report, how do i add, how do i write, how do i say, how do i put in, how do i note, how do i send, how can i log, how can i record, how can i tell you, how should i log, how to log, how to record, how to enter, how to report, how do i change, how do i correct, how do i fix, how do i delete, how do i undo, how do you log"},
	{sAskSure, "anything i need, anything i should, anything due, anything coming, anything else due, anything to do, is anything, is there anything, how many more, how much longer, who's the, who is the, whos the, which pig is, which ones are"},
	{sMute, "don't bug me, dont bug me, quit bugging me, stop bugging me, don't pester me, don't message me about, stop messaging me about, don't text me about, stop texting me about, don't tell me about, stop telling me about, no more nudges about, no more messages about, no more reminders about, don't nudge me, stop reminding me about"},
	{sFiller, `bit me, bit my, bites me, nipped me, nipped my, poor thing, poor girl, poor guy, poor boy, poor fella, poor old, poor baby, came out, come out, comes out, coming out, went out, go out, going out,
		headed out, head out, out there, figured out, find out, found out, check out, checked out, worn out, hang out, hanging out, worked out, works out, work out, point out, out back, freaked out, freaking out,
		passing out, stepped out, drove out, came by, swung by, out to say, looked out, look out for, watch out, out for a, out to the barn, out to feed, out to check, hold still, stand still, holding still, standing still`},
}

// plainAnimal is more plain English, close to words of the trade in spelling.
const plainAnimal = `otter otters peppa hazard hazards stole stolen coast coasts heading headed cousins trailers rattled battled snorted snoring adorable hawk stray moving mopping coping hoping training flavors flavor flavour breeds breed smelling spelling smelled spelled dwelling sharing robbing rubbish wilting titling tracking shocking staking stalking baking faking waking lumpy bumpy grumpy dampen blond blonde bling drooping scratchy hitched lunched trucks tacks stocks wants warms swore swim stale`
