package reading_test

import "testing"

// TestStuff reads texts on feed, water, goods, money and weather of the herd of
// TestGuesses, by what once went wrong with their kind. A block is one talk.
func TestStuff(t *testing.T) { guessTalks(t, stuff) }

const stuff = `
# so many vessels of a weight
put in 2 bags of 60 => refill feed_kg=54.43 feeder=feeder
3 buckets at 22 lb in the feeder => refill feed_kg=29.94 feeder=feeder
feeder holds 6 sacks of 60 lb => settings key=feeder value={"capacity_kg":163.29,"name":"feeder"}

# a price by the bag, by the weight, or in all
bought 20 bags corn at 9.50 => stock amount=190 count=20 feed_kg=453.59 ingredient=corn
10 bags corn @ 9.50 => stock amount=95 count=10 feed_kg=226.8 ingredient=corn
bought 8 bags of grower, $15.99 a bag => stock amount=127.92 count=8 currency=USD feed_kg=181.44
bought 2 tons corn at 210 a ton => stock amount=420 feed_kg=1814.37 ingredient=corn
500 lb corn at 18 cents a pound => stock amount=90 feed_kg=226.8 ingredient=corn
ten bags soybean meal at twenty one fifty each => stock amount=215 count=10 feed_kg=226.8 ingredient=soybean meal 48
20 bags corn 190 => stock amount=190 count=20 feed_kg=453.59 ingredient=corn
2 bags mineral 56 => stock amount=56 count=2 feed_kg=45.36 ingredient=mineral premix

# what is used up, and what is left of it
out of soy => stock feed_kg=0 ingredient=soybean meal 48
the corn is gone => stock feed_kg=0 ingredient=corn
no mineral left => stock feed_kg=0 ingredient=mineral premix
down to 2 bags of mineral => stock count=2 feed_kg=45.36 ingredient=mineral premix
counted 7 bags corn and 3 soy in the shed => stock count=7 feed_kg=158.76 ingredient=corn; stock count=3 feed_kg=68.04 ingredient=soybean meal 48
corn is almost gone => none

# goods and their sundries
spent 35 on straw and 18 on clips => spend amount=35 currency=USD what=straw; spend amount=18 currency=USD what=clips
receipt: corn 60, straw 8.50 => spend amount=60 currency=USD what=corn; spend amount=8.5 currency=USD what=straw
church ladies raised 240 dollars for the roof => none
heard at the auction: straw 8 a bale => none

# more bags behind bags
put 2 bags in the feeder and one more => refill feed_kg=68.04 feeder=feeder
put too bags in the feeder => refill feed_kg=45.36 feeder=feeder
dumped the last bag in => refill feed_kg=22.68 feeder=feeder

# a few pounds or bags
put in 4 => clarify about=refill

# as many bags, said
put in 3 bags => refill feed_kg=68.04 feeder=feeder

# what went out of a feeder
threw out 20 lb of moldy feed => feed_level feeder=feeder spilled=true spilled_kg=9.07

# a level before, a level after, a level alone
feeder was about a quarter full, put 3 bags in => feed_level feeder=feeder fraction=0.25; refill feed_kg=68.04 feeder=feeder
put 100 in the feeder, so it is three quarters now => refill feed_kg=45.36 feeder=feeder fraction=0.75
feeder half full, added nothing => feed_level feeder=feeder fraction=0.5
both barrels down about a third, topped them => water full=true
feed is low => clarify about=feed_level

# days of feed told
feed left 3 days => feed_level days=3 feeder=feeder
feeder 3 bags, did not look how full => refill feed_kg=68.04 feeder=feeder

# highs and lows by their words
high 75 low 60 humidity 50% => weather high_c=23.89 low_c=15.56 rh_pct=50
75 high 60 low => weather high_c=23.89 low_c=15.56
88 and humid, 80 percent => weather high_c=31.11 rh_pct=80
it got down to 58 last night => weather date=2026-07-17 low_c=14.44
upper 90s all week => none
supposed to be 101 on tuesday => none

# what a fence reads now
fence was down to 1.2, pulled the grass, now 5.9 => fence kv=5.9
fence tester says 4800 => fence kv=4.8
no juice on the wire => alarm what=fence

# the wallow by its deed
in the wallow I put water 15 minutes => wallow minutes=15
filled it 20 minutes with the hose => wallow minutes=20
one more text about that wallow => none

# wishes to be spared
stop pinging me about the wallow => settings key=mute value=wallow
no more worming reminders => settings key=mute value=worm
`
