package reading

// saidWords are turns of everyday talk, apart from the words of the trade.
var saidWords = []entryWords{
	{sFiller, `im dead, i'm dead, i am dead, dead tired, dead on my feet, killing me, kills me, killed me, dying out here, dying in this heat, right away, straight away, took right to it,
		took to it, gave away, throw away, threw away, put away, far away, a mile away, about to die, almost died laughing, died laughing, half dead, scared to death, bored to death, to death, dead batteries, dead battery,
		sick of it, sick of this, sick and tired, sick of mud, sick of the rain, worried sick`},
	{sPlan, `dreaming about, dreaming of, keep dreaming, daydreaming, daydreaming about, in a perfect world, would be nice, it would be nice, be nice to, to-do, todo, to do list, chores for tomorrow, list for tomorrow, plan for`},
	{sWeather, "cooled off to, cooled down to, cooled to, warmed up to, warmed to, heated up to, cooled off, cooled down, warmed up"},
}
