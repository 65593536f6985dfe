package reading_test

import (
	"encoding/json"
	"fmt"
	"sort"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/slots"
)

// hollow is an invented herd, as set up in its own words.
var hollow = []struct{ at, text string }{
	{"2026-04-18T09:00", "herd is called Fernhollow, central time, US units"},
	{"2026-04-18T09:01", "4 pigs here today, 48 lb: Dot and Plum are gilts, Moss and Bram are barrows, born Feb 20"},
	{"2026-04-18T09:02", "two hoppers 300 lb each called north and south"},
	{"2026-04-18T09:03", "three water barrels: barrel 1 55 gal 2 nipples, barrel 2 55 gal 2 nipples, blue tank 40 gal 1 nipple"},
	{"2026-04-18T09:04", "pens: oak 50x80 ft in use, creek 60x80 ft, hill 40x100 ft"},
	{"2026-04-18T09:05", "wallow 6x8 ft 6 in deep, target 265, chores sat 7am"},
	{"2026-04-18T09:06", "mix is 74 corn 23 soy 3 mineral. a bag is 50 lb"},
	{"2026-06-20T09:00", "dot 143, plum 140, moss 150, bram 155"},
	{"2026-07-04T09:00", "north 150 full, south 140 full, all barrels full"},
	{"2026-07-04T09:01", "dot 165 lb, plum 160, moss 172, bram 178"},
}

func hollowTalk(t testing.TB) *talk {
	k := newTalk()
	for _, m := range hollow {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	k.before, k.pending = nil, nil
	return k
}

// brief writes entries in one line each: the intent, then the slots by name.
// The date is left out where it is today's.
func brief(es []reading.Entry, today string) string {
	var lines []string
	for _, e := range es {
		s := slots.Of(e)
		keys := make([]string, 0, len(s))
		for k := range s {
			if k != "intent" && k != "reason" && (k != "date" || s[k] != today) {
				keys = append(keys, k)
			}
		}
		sort.Strings(keys)
		line := fmt.Sprint(s["intent"])
		for _, k := range keys {
			v := s[k]
			switch x := v.(type) {
			case []string:
				v = strings.Join(x, "+")
			case map[string]any:
				b, err := json.Marshal(x)
				if err != nil {
					return err.Error()
				}
				v = string(b)
			}
			line += fmt.Sprintf(" %s=%v", k, v)
		}
		lines = append(lines, line)
	}
	return strings.Join(lines, "; ")
}

// TestTexts reads texts from the pen on Saturday, 18 July 2026 at 18:30.
func TestTexts(t *testing.T) {
	k := hollowTalk(t)
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-18T18:30", k.loc)
	require.NoError(t, err)
	for _, row := range strings.Split(strings.TrimSpace(texts), "\n") {
		if row == "" || row[0] == '#' {
			continue
		}
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		t.Run(text, func(t *testing.T) {
			c := k.context(now)
			c.Pending = nil
			got := reading.Read(c, strings.ReplaceAll(text, `\n`, "\n"))
			require.Equal(t, strings.TrimSpace(want), brief(got.Entries, "2026-07-18"))
		})
	}
}

const texts = `
# Weighings
Dot 38 girth => weigh animals=Dot girth_cm=96.52
38x42 dot => weigh animals=Dot girth_cm=96.52 length_cm=106.68
girth 38 length 42 Dot => weigh animals=Dot girth_cm=96.52 length_cm=106.68
D 181, B 190, P 177 => weigh animals=Dot weight_kg=82.1; weigh animals=Bram weight_kg=86.18; weigh animals=Plum weight_kg=80.29
dot & moss 180 n 185 => weigh animals=Dot weight_kg=81.65; weigh animals=Moss weight_kg=83.91
gilts all taped 38 sunday => weigh animals=Dot+Plum date=2026-07-12 girth_cm=96.52
moss in crate 240, crate 55 => weigh animals=Moss weight_kg=83.91
moss up 4 to 187 => weigh animals=Moss weight_kg=84.82
all about 185 => weigh animals=all weight_kg=83.91
bram 88 kg => weigh animals=Bram weight_kg=88
dot 82 kg, plum 80 => weigh animals=Dot weight_kg=82; weigh animals=Plum weight_kg=80
dot 28 girth => clarify about=weigh
dot 12 stone => none
moss one eighty five => weigh animals=Moss weight_kg=83.91
everyone but bram 38 girth => weigh animals=Dot+Plum+Moss girth_cm=96.52
# Feed
north 150 full => refill feed_kg=68.04 feeder=north full=true
filled both => refill feeder=north full=true; refill feeder=south full=true
north 150 south 135 => refill feed_kg=68.04 feeder=north; refill feed_kg=61.23 feeder=south
north took 3 bags to fill => refill feed_kg=68.04 feeder=north full=true
south half left => feed_level feeder=south fraction=0.5
2 days left in north => feed_level days=2 feeder=north
put two and a half bags in the south hopper => refill feed_kg=56.7 feeder=south
filled the north hopper to the lid, 4 buckets => clarify about=refill
north 900 lb => clarify about=refill
fed 150 => clarify about=refill
bought 10 bags soy 185 => stock amount=185 count=10 feed_kg=226.8 ingredient=soybean meal 48
bought 10 bags, poured 3 of them in north => stock count=10 feed_kg=226.8; refill feed_kg=68.04 feeder=north
mixed 2 => mixed batches=2
mix is 75 corn 22 soy 3 mineral => recipe ingredients={"corn":34.02,"mineral premix":1.36,"soybean meal 48":9.98}
# Water
watered both barrels => water full=true
barrel 2 dry => water barrel=barrel 2 fraction=0 seen=true
filled the blue tank 30 gal => water barrel=blue tank litres=113.56
barrels 1 and 2 full => water barrel=barrel 1 full=true; water barrel=barrel 2 full=true
hosed the wallow 30 min => wallow minutes=30
wallow 40 gal => wallow litres=151.42
# Drugs
wormed all, 18 days => worm animals=all withdrawal_days=18
ivermectin injection all pigs 18 d wd => worm animals=all product=ivermectin withdrawal_days=18
gave moss penicillin at 6pm, vet says 21 days => treat animals=Moss at=18:00 product=penicillin withdrawal_days=21
gave mosss penicillin 21 days => clarify about=treat
wormed => clarify about=worm
# Health and danger
bram limping back left => sick animals=Bram note=limping back left
PIGS OUT => alarm what=out
pig down => alarm what=down
moss is down => alarm animals=Moss what=down
no water => alarm what=no_water
the neighbor's pigs are out => none
fence 5.8 => fence kv=5.8
fence 5800 => fence kv=5.8
electric fence 5.8 => fence kv=5.8
all bit moss moved too hill => move animals=Dot+Plum+Bram pen=hill
# Land
moved all to creek => move pen=creek
moved dot and plum to the hill pen yesterday => move animals=Dot+Plum date=2026-07-17 pen=hill
# Weather
94 today => weather high_c=34.44
36 C => weather high_c=36
94/71 => weather high_c=34.44 low_c=21.67
high 95 low 72 humidity 60 => weather high_c=35 low_c=22.22 rh_pct=60
# Money
spent 61 straw => spend amount=61 currency=USD what=straw
$45 fencing => spend amount=45 currency=USD what=fencing
# Coming and going
sold plum 300 => gone amount=300 animals=Plum how=sold
lost one => clarify about=gone
found dot dead this morning => gone animals=Dot how=died
hung 199 190 183 => gone animals=all hanging_kg=259.45 how=butchered
butcher sep 1 4 pigs => booked count=4 date=2026-09-01
butcher sep 1 at 7am => booked at=07:00 date=2026-09-01
away jul 24 to aug 3 => away from=2026-07-24 to=2026-08-03
away july 24-27 => away from=2026-07-24 to=2026-07-27
remind me to check the wire friday 6pm => remind what=check the wire when=2026-07-24T18:00
note: second barrel next yr => note what=second barrel next yr
# Time
last saturday dot 38 girth => weigh animals=Dot date=2026-07-11 girth_cm=96.52
sat dot 38 girth => weigh animals=Dot girth_cm=96.52
dot 38 girth on the 5th => weigh animals=Dot date=2026-07-05 girth_cm=96.52
7/5 dot 37 girth => weigh animals=Dot date=2026-07-05 girth_cm=93.98
5.7. dot 75 kg => weigh animals=Dot date=2026-07-05 weight_kg=75
810 filled north 145 => refill at=08:10 feed_kg=65.77 feeder=north
last night north 100 => refill date=2026-07-17 feed_kg=45.36 feeder=north
3 days ago moved to hill => move date=2026-07-15 pen=hill
dot 200 lb tomorrow => none
dot 38 girth on jul 25 => none
dot 48 lb on jan 5 => none
# Questions
how long till butcher? => ask topic=butcher_date
what does moss weigh => ask animals=Moss topic=weight
how much feed is left => ask topic=feed_left
how much feed do i need till sep 1 => ask on=2026-09-01 topic=feed_need
will the water last => ask topic=water_left
is the mix ok? => ask topic=ration_check
what did they cost so far => ask topic=cost
when do i worm next => ask topic=worming
when should i move them => ask topic=move
what's due => ask topic=today
why? => ask topic=why
is bram clear of withdrawal => ask animals=Bram topic=withdrawal
how much meat will i get => ask topic=yield
is it too hot for them today? => ask topic=heat
what if i had two more pigs => ask assume={"count_delta":2} topic=feed_need
days to 265 => ask target_kg=120.2 topic=butcher_date
how big is a bag => ask topic=sizes
# Not recorded
didn't fill the north hopper => none
will worm them all tomorrow => none
thinking of moving them to hill => none
my neighbor's pig weighs 300 lb => none
thanks => none
no, just kidding around today => none
# Talk
undo => undo
help => help
done => done
90 tomorrow => none
stop this => snooze until=stop
export => help about=export
# Several facts
180 north full water both fence 5.8 dot limping => refill feed_kg=81.65 feeder=north full=true; water full=true; fence kv=5.8; sick animals=Dot note=limping
dot 38x43, moss 39x44\nbarrel 1 full => weigh animals=Dot girth_cm=96.52 length_cm=109.22; weigh animals=Moss girth_cm=99.06 length_cm=111.76; water barrel=barrel 1 full=true
`
