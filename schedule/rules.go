package schedule

// rule is one topic of nudges: what it wants told at a visit, and what it wants
// told between visits. Either may be nil. It is asked only while there are pigs,
// unless idle is set; and while the person writes, unless always is set: then what it
// wants told between visits is told after a long silence too.
type rule struct {
	visit   func(v *view) []need
	between func(v *view) []need
	idle    bool
	always  bool
}

// rules has one line for each topic of nudges.
var rules = []rule{
	{between: alarmBetween, visit: alarmVisit},
	{between: withdrawalBetween, visit: withdrawalVisit, always: true},
	{between: heatBetween, visit: heatVisit},
	{between: coldBetween},
	{between: refillBetween, visit: refillVisit},
	{between: waterBetween, visit: waterVisit},
	{between: wallowBetween, visit: wallowVisit},
	{between: levelBetween, visit: levelVisit},
	{visit: wormVisit},
	{visit: moveVisit},
	{visit: weighVisit},
	{between: bookBetween, visit: bookVisit, always: true},
	{visit: rationVisit},
	{between: stockBetween, visit: stockVisit},
	{visit: capacityVisit},
	{between: checkBetween, visit: checkVisit},
	{between: goneBetween, always: true},
	{between: oddBetween},
	{between: ownBetween, idle: true, always: true},
	{between: seasonBetween, idle: true, always: true},
	{between: orderBetween, idle: true, always: true},
	{between: readyBetween, idle: true, always: true},
}
