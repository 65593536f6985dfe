package reading

// askedSign says which things meeting in a question make it one of a topic: all of
// all, one of each of some, none of without.
type askedSign struct {
	topic   string
	weight  float32
	all     asked
	some    []asked
	without []asked
}

// topicHelp stands for a question of how to write to the bot, which is no topic.
const topicHelp = "help"

func sets(is ...asked) []asked { return is }

// askedSigns speak beside the phrases of topicWords. A sign is as strong as it is
// narrow.
var askedSigns = []askedSign{
	{"feed_left", 4, qFeed | qLast, nil, sets(qUntil|qNumber, qPast, qPen, qMoney, qHold)},
	{"feed_left", 4, qFeed, sets(qHowLong, qWhen), sets(qPast, qMoney, qDrug, qHowMuch, qNumber)},
	{"feed_left", 6, qEat | qHowLong, sets(qLast), sets(qDrug, qMeat, qWater, qHowMuch|qUntil, qNumber)},
	{"feed_left", 5, qVessel | qFeed, sets(qWhen), sets(qHowMuch, qPast)},
	{"feed_left", 4, qLast | qHowLong, nil, sets(qWater, qPigs, qWallow, qPen, qNumber, qHeat, qMoney, qDrug, qPast, qStay, qMeat, qWeight, qWorm)},
	{"feed_need", 7, qHowMuch | qUntil, sets(qEnd|qNumber|qDay, qEnd, qNumber, qDay), sets(qMoney, qMeat, qWater, qPast, qDrug, qWhich, qWeight, qHowLong)},
	{"feed_need", 6, qVessel | qHowMuch, sets(qEat, qUntil), sets(qMoney, qHold, qPast, qWater, qHowLong)},
	{"feed_need", 5, qFeed | qHowMuch, sets(qEat, qBuy, qEnd), sets(qMoney, qPast, qHold, qWater, qCount, qTell)},
	{"feed_need", 5, qFeed | qNumber | qBuy, nil, sets(qMoney, qPast, qHold, qWater, qHowLong, qTell, qEnough)},
	{"feed_left", 8, qFeed | qHold | qDay, nil, sets(qPast, qWater, qHowMuch)},
	{"water_left", 8, qWater | qHold | qDay, nil, sets(qPast, qFeed, qHowMuch)},
	{"feed_need", 5, qFeed | qUntil | qEnd, nil, sets(qMoney, qHold, qPast, qHowLong, qDrug, qWhen, qLast, qMay, qMeat, qHeat, qWater)},
	{"worming", 6, qWorm | qBuy, nil, sets(qPast, qMoney, qTell, qClear)},
	{"feed_need", 6, qVessel | qUntil | qEnd, nil, sets(qMoney, qHold, qPast, qHowLong, qDrug, qWhen)},
	{"feed_need", 6, qVessel | qBuy, sets(qUntil, qEnd), sets(qMoney, qPast, qHold)},
	{"water_left", 5, qWater, sets(qLast, qHowLong, qEnough), sets(qPast, qHold|qUnit, qCount, qTell, qThing|qGet)},
	{"butcher_date", 5, qWhen | qNumber, nil, sets(qNamed, qFeed, qWater, qMoney, qPast, qHeat, qDrug, qVessel)},
	{"butcher_date", 6, qHowLong | qPigs | qEnd, nil, sets(qClear, qFeed, qWater, qMoney, qPast, qDrug, qVessel, qEat, qMeat, qWorm, qHowMuch, qTell, qStay)},
	{"butcher_date", 7, qWhen | qMeat, sets(qUse), sets(qAgain, qDrug, qMay, qHowMuch)},
	{"butcher_date", 3, qPigs | qWhen, nil, sets(qFeed, qWater, qMoney, qPast, qHeat, qDrug, qVessel, qMove, qPen, qWorm, qWeight, qGrow, qWallow, qStay, qMay|qMeat, qTell)},
	{"weight", 7, qWhich | qOver, sets(qNumber), sets(qMoney, qFeed, qWater, qVessel, qHeat)},
	{"weight", 6, qHowMuch | qUnit | qPigs, nil, sets(qFeed, qWater, qVessel, qEat, qMoney, qMeat, qUse, qUntil, qBuy, qGrow, qHold, qEnd, qPast, qMix, qLast, qWhich, qThing)},
	{"weight", 6, qUnit | qGuess, nil, sets(qFeed, qWater, qVessel, qEat, qMoney, qMeat, qBuy, qHold, qMix)},
	{"weight", 5, qWeight | qGuess, nil, sets(qWhen|qNumber, qMoney, qMeat, qBuy, qVessel)},
	{"growth", 5, qGrow, sets(qPigs), sets(qMoney, qFeed, qWater, qDrug, qMeat, qHowMuch|qUntil, qEnd, qWeight, qPast, qWhen, qTell)},
	{"growth", 4, qGrow, nil, sets(qMoney, qFeed, qWater, qDrug, qMeat, qEnd, qWeight, qPast, qWhen, qYou, qHowLong, qDo)},
	{"ration_check", 6, qMix | qRight, nil, sets(qHowMuch|qBuy, qMoney, qPast, qHowLong, qWhen, qVessel, qTell)},
	{"cost", 6, qMoney | qHowMuch, nil, sets(qTell)},
	{"cost", 5, qMoney, sets(qAny, qWhich), sets(qTell)},
	{"move", 5, qPen, sets(qMove, qStay), sets(qPast, qHowBig, qTell)},
	{"move", 6, qStay, sets(qHowLong, qPigs), sets(qPast, qDrug, qFeed, qWater, qRest)},
	{"wallow", 3, qWallow, sets(qBuy, qMay, qRight, qWhen), sets(qPast, qHowBig)},
	{"heat", 7, qHeat | qBad, nil, sets(qPast, qMoney)},
	{"heat", 7, qComing | qNumber | qBad, nil, sets(qMoney, qFeed, qWater, qPigs|qWeight)},
	{"yield", 6, qMeat, sets(qHowMuch, qGuess, qWeight), sets(qMay, qAgain, qWhen, qMoney)},
	{"plan", 9, qThing | qHowMuch, sets(qCount, qBuy, qGet), sets(qPast, qLast, qWhen, qHold)},
	{"plan", 8, qGet | qSpring, sets(qAny, qHowMuch, qBuy), sets(qPast, qMoney)},
	{"plan", 7, qGet | qCount, sets(qAny|qBuy, qHowMuch|qBuy), sets(qPast, qMoney, qOver)},
	{"plan", 9, qHowBig | qCount, sets(qPen), sets(qHold, qPast)},
	{"today", 6, qAny | qDo, sets(qMore), sets(qPast|qDeed, qLast, qWorm, qYou|qFigure, qTell, qMix, qGet)},
	{"today", 8, qDo, sets(qRest), sets(qFeed, qWater, qTell, qEnd|qWhen)},
	{"today", 8, qRest, sets(qMay, qDo, qMore), sets(qPast, qTell)},
	{"withdrawal", 7, qDrug | qClear, nil, sets(qPast, qTell)},
	{"withdrawal", 6, qDrug | qUse, nil, sets(qPast, qTell, qMoney, qBuy|qFeed, qBuy|qWorm)},
	{"withdrawal", 7, qUse | qMay | qMeat, sets(qAgain, qWhen, qHowLong), sets(qEnough, qMoney, qTell)},
	{"withdrawal", 8, qClear | qPigs, sets(qAgain), sets(qNumber, qFeed, qWater, qMoney, qPen, qPast, qTell)},
	{"history", 8, qPast | qDeed, sets(qWho, qRecall, qWhen, qAgain, qDay), sets(qMoney, qEnough, qGoal, qUntil|qNumber, qTell|qHow)},
	{"history", 8, qPast | qRecall, sets(qAny, qHowMuch, qWhen), sets(qGoal, qHold, qTell|qHow, qWhy)},
	{"history", 14, qForget | qDeed, nil, sets(qTell | qHow)},
	{"history", 14, qWho | qDeed | qPast, nil, sets(qMoney|qUntil, qEnough)},
	{"history", 7, qRecall | qDeed, sets(qPast, qWhen), sets(qGoal, qTell|qHow)},
	{"history", 7, qPast | qWeight | qDay, nil, sets(qGoal, qTell)},
	{"target", 9, qGoal | qAny, sets(qPast, qYou), sets(qFeed, qWater, qWhen, qUse)},
	{"why", 9, qHow | qYou | qFigure, nil, sets(qWeight, qTell|qHow, qMoney, qGrow, qHowMuch)},
	{"why", 10, qWhy | qYou, nil, sets(qMoney)},
	{topicHelp, 12, qTell | qHow, nil, sets(qPast, qHowMuch, qMoney)},
	{topicHelp, 10, qTell | qAny, sets(qYou, qMay), sets(qPast, qHowMuch, qHowLong, qDo|qMore, qMoney, qDeed)},
	{topicHelp, 9, qTell | qMay, nil, sets(qPast, qHowMuch, qHowLong, qMoney, qDeed, qNumber)},
	{"sizes", 7, qHowBig, sets(qPen, qWallow, qFeed, qWater, qVessel), sets(qCount, qBuy, qPigs|qWeight)},
	{"sizes", 10, qHowMuch | qHold, sets(qFeed|qUnit, qWater|qUnit, qVessel), sets(qPast, qUntil, qDay, qEat, qLast)},
	{"sizes", 9, qFeed | qEnough, sets(qCount, qNumber), sets(qHowLong, qLast, qUntil, qVessel, qDay, qEat)},
}

// holds says that a sign shows in what a question speaks of.
func (x *askedSign) holds(is asked) bool {
	if is&x.all != x.all {
		return false
	}
	for _, bar := range x.without {
		if is&bar == bar {
			return false
		}
	}
	for _, one := range x.some {
		if is&one == one {
			return true
		}
	}
	return len(x.some) == 0
}

// signVotes adds what the signs say.
func (r *reader) signVotes(s span, scores map[string]float32) {
	is := r.askedOf(s)
	for n := range askedSigns {
		if x := &askedSigns[n]; x.holds(is) {
			scores[x.topic] += x.weight
		}
	}
}
