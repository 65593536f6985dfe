package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSetUpTexts has people set up invented herds in their own words and order.
// Each block is one herd: lines of what is said, "|" before the text, then what
// it must be read as, one entry a line.
func TestSetUpTexts(t *testing.T) {
	for _, block := range strings.Split(strings.TrimSpace(setUps), "\n\n") {
		lines := strings.Split(block, "\n")
		t.Run(strings.TrimPrefix(lines[0], "# "), func(t *testing.T) {
			k := newTalk()
			for n := 1; n < len(lines); {
				text, ok := strings.CutPrefix(lines[n], "| ")
				require.True(t, ok, lines[n])
				var want []string
				for n++; n < len(lines) && !strings.HasPrefix(lines[n], "| "); n++ {
					want = append(want, strings.TrimSpace(lines[n]))
				}
				got, err := k.say("2026-05-20T12:00", strings.ReplaceAll(text, `\n`, "\n"))
				require.NoError(t, err)
				require.Equal(t, want, strings.Split(brief(got.Entries, "2026-05-20"), "; "), text)
				require.Empty(t, got.Left, text)
			}
		})
	}
}

const setUps = `
# the weight of each pig before a feeder
| 3 pigs, Fern, Bo and Tess, 55 lb each, hopper 250 lb
  arrive animals=Fern+Bo+Tess count=3 weight_kg=24.95
  settings key=feeder value={"capacity_kg":113.4,"name":"hopper"}

# a name before its word, behind another thing
| two barrels oak and shed 55 gal, red hopper 300 lb and gray 200 lb
  settings key=barrel value={"capacity_l":208.2,"name":"oak"}
  settings key=barrel value={"capacity_l":208.2,"name":"shed"}
  settings key=feeder value={"capacity_kg":136.08,"name":"red hopper"}
  settings key=feeder value={"capacity_kg":90.72,"name":"gray"}

# all in one text, a pig named like a month
| Herd is Larch Hollow, mountain time, US units.\nJune, Olga and Bert came April 25 at 50 lb, born Feb 21. June and Olga are gilts, Bert is a barrow.\nTwo more came today, Pip and Dill, 42 lb each.\nBig feeder holds 300 lb, little feeder holds 120 lb.\nTwo water barrels, 55 gal with 2 nipples each, called east and west.\nPens: Knoll 90x100 ft, Swale 80x120 ft, they are in Knoll.\nWallow is 6 by 8 ft, half a foot deep.\nTarget 260 lb. Chore day Sunday at 8 am. Quiet from 9 pm to 6 am.\nA batch is 75 lb corn, 22 lb soybean meal and 3 lb mineral.
  settings key=herd value=Larch Hollow
  settings key=zone value=America/Denver
  settings key=units value=us
  arrive animals=June+Olga+Bert born=2026-02-21 count=3 date=2026-04-25 sexes=gilt+gilt+barrow weight_kg=22.68
  arrive animals=Pip+Dill count=2 weight_kg=19.05
  settings key=feeder value={"capacity_kg":136.08,"name":"Big feeder"}
  settings key=feeder value={"capacity_kg":54.43,"name":"little feeder"}
  settings key=barrel value={"capacity_l":208.2,"name":"east","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"west","nipples":2}
  settings key=pen value={"area_m2":836.13,"in_use":true,"name":"Knoll"}
  settings key=pen value={"area_m2":891.87,"name":"Swale"}
  settings key=wallow value={"area_m2":4.46,"depth_m":0.15}
  settings key=target_kg value=117.93
  settings key=chore_days value=sun
  settings key=hour value=08:00
  settings key=quiet value=21:00+06:00
  recipe ingredients={"corn":34.02,"mineral premix":1.36,"soybean meal 48":9.98}

# metric in one text
| We have 3 weaners since March 14, 8 weeks old, about 20 kg: Liesl, Franz and Berta. Franz is a castrate, the other two are females. Herd Kapellenhof, Vienna, metric. Feeder takes 150 kg. One water tank 1000 l, 2 nipples. Pens Obergarten 300 m2 and Untergarten 250 m2, they're in Untergarten. Target 115 kg, chores every sunday 9 am.
  arrive animals=Liesl+Franz+Berta born=2026-01-17 count=3 date=2026-03-14 sexes=gilt+barrow+gilt weight_kg=20
  settings key=herd value=Kapellenhof
  settings key=zone value=Europe/Vienna
  settings key=units value=metric
  settings key=feeder value={"capacity_kg":150,"name":"feeder"}
  settings key=barrel value={"capacity_l":1000,"name":"tank","nipples":2}
  settings key=pen value={"area_m2":300,"name":"Obergarten"}
  settings key=pen value={"area_m2":250,"in_use":true,"name":"Untergarten"}
  settings key=target_kg value=115
  settings key=chore_days value=sun
  settings key=hour value=09:00

# pigs without names, feeder in bags
| we're in Ohio. 6 pigs came yesterday, 55 lb, 3 barrows and 3 gilts, 9 weeks old
  settings key=zone value=America/New_York
  arrive born=2026-03-17 count=6 date=2026-05-19 sexes=barrow+barrow+barrow+gilt+gilt+gilt weight_kg=24.95
| feeder holds 8 bags, bags are 50 lb
  settings key=feeder value={"capacity_kg":181.44,"name":"feeder"}
  settings key=size value={"feed_kg":22.68,"name":"bag"}
| 2 drums of water, 55 gallons, one nipple each
  settings key=barrel value={"capacity_l":208.2,"name":"drum 1","nipples":1}
  settings key=barrel value={"capacity_l":208.2,"name":"drum 2","nipples":1}
| pen 1 is half an acre, pen 2 a quarter acre, they start in pen 1
  settings key=pen value={"area_m2":2023.43,"in_use":true,"name":"pen 1"}
  settings key=pen value={"area_m2":1011.71,"name":"pen 2"}
| chores wed and sat 6:30 am
  settings key=chore_days value=wed+sat
  settings key=hour value=06:30
| target 280
  settings key=target_kg value=127.01

# two groups on separate lines
| name of the herd: Thistle Patch\ntimezone America/Los_Angeles\nus units\n5 pigs arrived May 9: 3 barrows 2 gilts, born Mar 10, 52 lb\n2 more pigs arrived May 16, both gilts, born Apr 4, 40 lb\nfeeders: north 250 lb, south 200 lb\nwater barrels: blue 55 gal 2 nipples, green 30 gal 1 nipple\npens: upper 60x120 ft, lower 80x100 ft (in use)\nwallow 8x10 ft, 8 in deep\ntarget 260\nchores: saturday and wednesday 7:30 am\nquiet 10pm-6am\nmix: 70 corn, 27 soybean meal, 3 mineral
  settings key=herd value=Thistle Patch
  settings key=zone value=America/Los_Angeles
  settings key=units value=us
  arrive born=2026-03-10 count=5 date=2026-05-09 sexes=barrow+barrow+barrow+gilt+gilt weight_kg=23.59
  arrive born=2026-04-04 count=2 date=2026-05-16 sexes=gilt+gilt weight_kg=18.14
  settings key=feeder value={"capacity_kg":113.4,"name":"north"}
  settings key=feeder value={"capacity_kg":90.72,"name":"south"}
  settings key=barrel value={"capacity_l":208.2,"name":"blue","nipples":2}
  settings key=barrel value={"capacity_l":113.56,"name":"green","nipples":1}
  settings key=pen value={"area_m2":668.9,"name":"upper"}
  settings key=pen value={"area_m2":743.22,"in_use":true,"name":"lower"}
  settings key=wallow value={"area_m2":7.43,"depth_m":0.2}
  settings key=target_kg value=117.93
  settings key=chore_days value=sat+wed
  settings key=hour value=07:30
  settings key=quiet value=22:00+06:00
  recipe ingredients={"corn":31.75,"mineral premix":1.36,"soybean meal 48":12.25}

# evenings, in sentences
| got 2 piglets today, about 30 pounds each, names Hamlet and Ophelia
  arrive animals=Hamlet+Ophelia count=2 weight_kg=13.61
| I do chores on sundays at 5 in the evening
  settings key=chore_days value=sun
  settings key=hour value=17:00
| I have a 100 gallon tank with two nipples and a feeder that holds 400 pounds
  settings key=barrel value={"capacity_l":378.54,"name":"tank","nipples":2}
  settings key=feeder value={"capacity_kg":181.44,"name":"feeder"}
| we are in Vermont
  settings key=zone value=America/New_York
| the pen is 40 by 60 feet
  settings key=pen value={"area_m2":222.97,"name":"pen"}
| butcher weight is 250
  settings key=target_kg value=113.4

# sexes told later, lettered paddocks
| The herd is called Marsh End, Europe/London time, metric. 4 weaners arrived on 4 April at 9 weeks, 22 kg each. Names: Sage, Onion, Apple and Crackling.
  settings key=herd value=Marsh End
  settings key=zone value=Europe/London
  settings key=units value=metric
  arrive animals=Sage+Onion+Apple+Crackling born=2026-01-31 count=4 date=2026-04-04 weight_kg=22
| Hopper holds 200 kg
  settings key=feeder value={"capacity_kg":200,"name":"hopper"}
| Sage and Apple are boars, the rest gilts
  arrive animals=Sage+Onion+Apple+Crackling born=2026-01-31 count=4 date=2026-04-04 replaces=true sexes=boar+gilt+boar+gilt weight_kg=22
| paddocks: A, B, C and D each 50 x 100 m, currently in A
  settings key=pen value={"area_m2":5000,"in_use":true,"name":"paddock A"}
  settings key=pen value={"area_m2":5000,"name":"paddock B"}
  settings key=pen value={"area_m2":5000,"name":"paddock C"}
  settings key=pen value={"area_m2":5000,"name":"paddock D"}

# an offset and few words
| UTC-5, pounds, herd Briar Run
  settings key=zone value=Etc/GMT+5
  settings key=units value=us
  settings key=herd value=Briar Run
| 10 feeder pigs came in on the 3rd averaging 48 pounds
  arrive count=10 date=2026-05-03 weight_kg=21.77
| self feeder is 1200 lb, nipple barrel 275 gal with 4 nipples
  settings key=feeder value={"capacity_kg":544.31,"name":"feeder"}
  settings key=barrel value={"capacity_l":1040.99,"name":"barrel","nipples":4}
| chore day tuesday at 06:00
  settings key=chore_days value=tue
  settings key=hour value=06:00

# a whole and its parts
| I keep 7 pigs near Lancaster, Pennsylvania. Four barrows (Ike, Abe, Teddy, Cal) came April 2 at 60 lb, three gilts (Dolly, Loretta, Patsy) came April 30 at 45 lb.
  settings key=zone value=America/New_York
  arrive animals=Ike+Abe+Teddy+Cal count=4 date=2026-04-02 sexes=barrow+barrow+barrow+barrow weight_kg=27.22
  arrive animals=Dolly+Loretta+Patsy count=3 date=2026-04-30 sexes=gilt+gilt+gilt weight_kg=20.41
| Water is in two 55 gallon barrels, 2 nipples per barrel. We finish at 270 pounds.
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 1","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 2","nipples":2}
  settings key=target_kg value=122.47
| Mix: corn 65%, soybean meal 32%, mineral 3%. A batch is 200 lb.
  recipe ingredients={"corn":58.97,"mineral premix":2.72,"soybean meal 48":29.03}

# as short as can be
| herd: Quince. central. 4 pigs 48lb born feb 14 came apr 11. feeder 250. barrel 55 gal 2 nipples. pen 100x100. target 265. sat 7am
  settings key=herd value=Quince
  settings key=zone value=America/Chicago
  arrive born=2026-02-14 count=4 date=2026-04-11 weight_kg=21.77
  settings key=feeder value={"capacity_kg":113.4,"name":"feeder"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel","nipples":2}
  settings key=pen value={"area_m2":929.03,"name":"pen"}
  settings key=target_kg value=120.2
  settings key=chore_days value=sat
  settings key=hour value=07:00

# numbered pens, lettered barrels
| 3 gilts 1 barrow, 50 lb, here since april 25
  arrive count=4 date=2026-04-25 sexes=gilt+gilt+gilt+barrow weight_kg=22.68
| it's 8:05 am here
  settings key=zone value=America/New_York
| two hoppers 300 lb each called left and right
  settings key=feeder value={"capacity_kg":136.08,"name":"left"}
  settings key=feeder value={"capacity_kg":136.08,"name":"right"}
| three barrels 55 gal: a, b and c
  settings key=barrel value={"capacity_l":208.2,"name":"barrel a"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel b"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel c"}
| pens: 1 (0.25 acre), 2 (0.25 acre), 3 (0.5 acre). in 2
  settings key=pen value={"area_m2":1011.71,"name":"pen 1"}
  settings key=pen value={"area_m2":1011.71,"in_use":true,"name":"pen 2"}
  settings key=pen value={"area_m2":2023.43,"name":"pen 3"}

# sentences in pieces
| Pigs, five of them, picked up Sunday. 40-45 lb. Born around Mar 25. Two gilts and three barrows.
  arrive born=2026-03-25 count=5 date=2026-05-17 sexes=gilt+gilt+barrow+barrow+barrow weight_kg=19.28
| I'm in Missouri, USA.
  settings key=zone value=America/Chicago
| Field is 1 acre split in 4 paddocks.
  settings key=pen value={"area_m2":1011.71,"name":"field 1"}
  settings key=pen value={"area_m2":1011.71,"name":"field 2"}
  settings key=pen value={"area_m2":1011.71,"name":"field 3"}
  settings key=pen value={"area_m2":1011.71,"name":"field 4"}
| Want them at 285.
  settings key=target_kg value=129.27
| I only go out Saturday mornings, 8 o'clock
  settings key=chore_days value=sat
  settings key=hour value=08:00
| don't text me between 9pm and 7am
  settings key=quiet value=21:00+07:00

# sexes in a row
| 4 pigs, Dot Moss Fig and Pearl, barrow gilt gilt barrow, born 2/20, came 4/18 at 45 lb\nfeeder 300 lb\n2 water barrels 55 gal 2 nipples each\npen 50x100\ntarget 260\nsat 7 am\ncentral time
  arrive animals=Dot+Moss+Fig+Pearl born=2026-02-20 count=4 date=2026-04-18 sexes=barrow+gilt+gilt+barrow weight_kg=20.41
  settings key=feeder value={"capacity_kg":136.08,"name":"feeder"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 1","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 2","nipples":2}
  settings key=pen value={"area_m2":464.52,"name":"pen"}
  settings key=target_kg value=117.93
  settings key=chore_days value=sat
  settings key=hour value=07:00
  settings key=zone value=America/Chicago

# kitchen names, sacks and feet
| we named the farm pigs Bacon, Ham and Sausage. they arrived last saturday weighing 35 pounds each and they are 7 weeks old
  arrive animals=Bacon+Ham+Sausage born=2026-03-28 count=3 date=2026-05-16 weight_kg=15.88
| one water barrel, 30 gallons, called old blue
  settings key=barrel value={"capacity_l":113.56,"name":"old blue"}
| call the feeder Big Bertha, it takes 6 sacks of 50 lb
  settings key=feeder value={"capacity_kg":136.08,"name":"Big Bertha"}
| wallow about 10 ft by 6 ft and a foot deep
  settings key=wallow value={"area_m2":5.57,"depth_m":0.3}
| chores on Wednesdays and Saturdays around 6:30 in the morning
  settings key=chore_days value=wed+sat
  settings key=hour value=06:30

# groups in brackets
| pigs: 2 on april 1 (60 lb, barrows) and 3 on may 2 (40 lb, gilts)
  arrive count=2 date=2026-04-01 sexes=barrow+barrow weight_kg=27.22
  arrive count=3 date=2026-05-02 sexes=gilt+gilt+gilt weight_kg=18.14
| hopper holds about 140 litres
  settings key=feeder value={"capacity_l":140,"name":"hopper"}

# each pig its own weight
| I've got three gilts called Ruby, Pearl and Opal, 62 days old, they came on 9 May weighing 19.5, 21 and 20 kg
  arrive animals=Ruby+Pearl+Opal born=2026-03-08 count=3 date=2026-05-09 sexes=gilt+gilt+gilt
  weigh animals=Ruby date=2026-05-09 weight_kg=19.5
  weigh animals=Pearl date=2026-05-09 weight_kg=21
  weigh animals=Opal date=2026-05-09 weight_kg=20
| Time zone is Pacific/Auckland, metric units, NZD
  settings key=zone value=Pacific/Auckland
  settings key=units value=metric
  settings key=currency value=NZD
| feeder 100 kg; drum 200 L, 2 nipples; paddock 20 m x 30 m
  settings key=feeder value={"capacity_kg":100,"name":"feeder"}
  settings key=barrel value={"capacity_l":200,"name":"drum","nipples":2}
  settings key=pen value={"area_m2":600,"name":"paddock"}

# each name its weight
| 4 pigs, Hank, Ivy, Dell and Roan. hank 205 lb, ivy 195, dell 180, roan 200
  arrive animals=Hank+Ivy+Dell+Roan count=4
  weigh animals=Hank weight_kg=92.99
  weigh animals=Ivy weight_kg=88.45
  weigh animals=Dell weight_kg=81.65
  weigh animals=Roan weight_kg=90.72

# a list of semicolons
| herd Lone Oak; zone America/New_York; units us; pigs 8 came 5/2, 4 gilts 4 barrows, 50 lb, born 2/28; feeder A 600 lb; feeder B 600 lb; barrel 1 275 gal 4 nipples; pens P1 0.5 acre, P2 0.5 acre, P3 0.5 acre, in P1; target 275; chores sat+wed 6am; mix 68 corn 29 soy 3 mineral
  settings key=herd value=Lone Oak
  settings key=zone value=America/New_York
  settings key=units value=us
  arrive born=2026-02-28 count=8 date=2026-05-02 sexes=gilt+gilt+gilt+gilt+barrow+barrow+barrow+barrow weight_kg=22.68
  settings key=feeder value={"capacity_kg":272.16,"name":"feeder A"}
  settings key=feeder value={"capacity_kg":272.16,"name":"feeder B"}
  settings key=barrel value={"capacity_l":1040.99,"name":"barrel 1","nipples":4}
  settings key=pen value={"area_m2":2023.43,"in_use":true,"name":"P1"}
  settings key=pen value={"area_m2":2023.43,"name":"P2"}
  settings key=pen value={"area_m2":2023.43,"name":"P3"}
  settings key=target_kg value=124.74
  settings key=chore_days value=sat+wed
  settings key=hour value=06:00
  recipe ingredients={"corn":30.84,"mineral premix":1.36,"soybean meal 48":13.15}

# counts before sizes
| 5 pigs here since 4/25 at 52 lb: Moe, Larry, Curly, Ethel (gilt) and Lucy (gilt), the rest barrows
  arrive animals=Moe+Larry+Curly+Ethel+Lucy count=5 date=2026-04-25 sexes=barrow+barrow+barrow+gilt+gilt weight_kg=23.59
| feeders: 2 at 200 lb
  settings key=feeder value={"capacity_kg":90.72,"name":"feeder 1"}
  settings key=feeder value={"capacity_kg":90.72,"name":"feeder 2"}
| barrels: 3 at 55 gal with 2 nipples
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 1","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 2","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 3","nipples":2}
| chore days tue, thu & sat at 5:45 pm
  settings key=chore_days value=tue+thu+sat
  settings key=hour value=17:45
| mix per 100 lb: 72 corn, 25 soybean meal, 3 mineral
  recipe ingredients={"corn":32.66,"mineral premix":1.36,"soybean meal 48":11.34}
| Boise, Idaho
  settings key=zone value=America/Boise

# a second arrival of pigs with names that are words
| 4 pigs came April 18: Olive, Rufus, Nettle and Gus, about 45 lb each. Olive and Nettle are gilts, Rufus and Gus barrows
  arrive animals=Olive+Rufus+Nettle+Gus count=4 date=2026-04-18 sexes=gilt+barrow+gilt+barrow weight_kg=20.41
| 3 more pigs came: Wren, Cricket and Poppy, 44 lb each, born Mar 24. Wren and Poppy gilts, Cricket a barrow
  arrive animals=Wren+Cricket+Poppy born=2026-03-24 count=3 sexes=gilt+barrow+gilt weight_kg=19.96

# changes later
| 4 pigs 48 lb
  arrive count=4 weight_kg=21.77
| change the target to 280
  settings key=target_kg value=127.01
| new barrel: creek 40 gal 1 nipple
  settings key=barrel value={"capacity_l":151.42,"name":"creek","nipples":1}
| rename the herd to Ash Hollow
  settings key=herd value=Ash Hollow
| a bag is 50 lb, a bucket is 25 lb
  settings key=size value={"feed_kg":22.68,"name":"bag"}
  settings key=size value={"feed_kg":11.34,"name":"bucket"}
| new batch: 69 corn 28 soybean meal 3 mineral
  recipe ingredients={"corn":31.3,"mineral premix":1.36,"soybean meal 48":12.7}

# acres, waterers and a name of two words
| we have 6 hogs, 3 boys 3 girls, got them march 28 at around 50 lbs, born mid january
  arrive born=2026-01-15 count=6 date=2026-03-28 sexes=barrow+barrow+barrow+gilt+gilt+gilt weight_kg=22.68
| our place is called Stony Run, near Asheville NC
  settings key=herd value=Stony Run
  settings key=zone value=America/New_York
| feeder: 400lb, waterers: two 55 gallon barrels w/ 2 nipples
  settings key=feeder value={"capacity_kg":181.44,"name":"feeder"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 1","nipples":2}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 2","nipples":2}
| pasture 1 is 0.3 acres, pasture 2 is 0.3 acres, pasture 3 is 0.4 acres, they're on pasture 1
  settings key=pen value={"area_m2":1214.06,"in_use":true,"name":"pasture 1"}
  settings key=pen value={"area_m2":1214.06,"name":"pasture 2"}
  settings key=pen value={"area_m2":1618.74,"name":"pasture 3"}
| chores are on Saturdays, remind me at 7
  settings key=chore_days value=sat
  settings key=hour value=07:00

# a line with labels
| Name: Elder Grove\nLocation: Oregon\nPigs: 3 (Tulip, Fern, Hazel), gilts, 14 weeks old, 85 lb\nArrived: April 12\nFeeder: 250 lb\nWater: 2 x 55 gal, 1 nipple each\nPens: Front 40x60, Back 40x60, Side 30x80\nIn: Front\nTarget: 260 lb\nChores: Saturday 8am
  settings key=herd value=Elder Grove
  settings key=zone value=America/Los_Angeles
  arrive animals=Tulip+Fern+Hazel born=2026-01-04 count=3 date=2026-04-12 sexes=gilt+gilt+gilt weight_kg=38.56
  settings key=feeder value={"capacity_kg":113.4,"name":"feeder"}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 1","nipples":1}
  settings key=barrel value={"capacity_l":208.2,"name":"barrel 2","nipples":1}
  settings key=pen value={"area_m2":222.97,"in_use":true,"name":"Front"}
  settings key=pen value={"area_m2":222.97,"name":"Back"}
  settings key=pen value={"area_m2":222.97,"name":"Side"}
  settings key=target_kg value=117.93
  settings key=chore_days value=sat
  settings key=hour value=08:00
`
