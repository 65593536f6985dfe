package reading

import (
	"strings"
	"sync"
)

// dailyWords are the words of the pen that are said every day, as against the many
// that are understood but seldom said. A slip more often hides one of them.
const dailyWords = `
	pig pigs gilt gilts barrow barrows boar sow all both everybody number
	girth long length taped weigh weighed weighs weight scale tape lbs pounds kilos kg
	feed feeder feeders hopper hoppers trough fill filled full empty half quarter third left poured took bag bags sack sacks bucket buckets scoops batch batches
	water watered waterer barrel barrels drum drums tank tanks tote topped gallon gallons gal liters litres dry wallow
	wormed treated gave shot penicillin ivermectin fenbendazole withdrawal days
	moved move pen pens paddock pasture fence
	sick limping lame coughing cough sneezing scouring scours bleeding vomiting lethargic panting wheezing swollen eating feed
	out loose down dead died road back
	high low humidity degrees hot rain
	mixed mix corn soy barley oats wheat peas bran rice mineral minerals premix meal straw hay bought
	sold butcher butchered booked hung spent paid cost
	target chores chore remind note undo done help
	when what how much big write today morning breakfast last`

// isDaily says of a word whether it is one of them.
var isDaily = sync.OnceValue(func() map[string]bool {
	return setOfWords(strings.Fields(dailyWords))
})
