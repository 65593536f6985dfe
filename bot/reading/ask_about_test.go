package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestAskAbout reads what a question is about within its topic. A row is the text,
// then the topic, what it is about ("-": nothing of its own) and what else it gives.
func TestAskAbout(t *testing.T) {
	k := newTalk()
	for _, m := range sedge {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	for _, row := range strings.Split(strings.TrimSpace(asksAbout), "\n") {
		if row == "" || row[0] == '#' {
			continue
		}
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		t.Run(text, func(t *testing.T) {
			k.before, k.pending = nil, nil
			got, err := k.say("2026-07-18T08:00", text)
			require.NoError(t, err)
			require.Len(t, got.Entries, 1)
			a, ok := got.Entries[0].Act.(reading.Ask)
			require.True(t, ok, "%#v", got.Entries[0].Act)
			about := a.About
			if about == "" {
				about = "-"
			}
			said := a.Topic + " " + about
			if len(a.Animals) > 0 {
				said += " " + strings.Join(a.Animals, "+")
			}
			if a.On != nil {
				said += " on " + a.On.String()
			}
			require.Equal(t, want, said)
		})
	}
}

const asksAbout = `
what do I do in the heat => heat heat_care
how do i keep them cool when its hot => heat heat_care
when is it too hot for pigs => heat heat_line
is it too hot? => heat -
is it too hot today => heat -
is it too cold => heat cold
frost tonight? => heat cold on 2026-07-18
how cold can pigs take => heat cold
how much water do they need => water_left water_need
how much water for 4 pigs a day => water_left water_need
how much water is left => water_left -
how long will the water last => water_left -
flow 1 qt in 40 s => water_left flow
nipple runs 2 cups a minute => water_left flow
what flow should the nipples have => water_left flow
can i feed kitchen scraps => ration_check scraps
how much space do i need for 3 pigs => plan space
what fence do i need => plan fence
how many strands of wire do i need => plan fence
what was the last fence reading => history fence
how much straw => plan straw
how many pigs can i keep on my ground => plan ground
how many pigs per acre => plan ground
how many pigs do i have => sizes -
how many pigs on this feeder => plan feeder
is the feeder wide enough => plan feeder
when should i book the butcher => butcher_date booking
when are they ready for the butcher => butcher_date -
how big should they be for butcher => target size
what does a pig cost => cost pig_cost
what can i pay for a weaner that sells for $900 => cost pig_worth
what price do i need to break even => cost break_even
what did the feed cost so far => cost -
how many batches per bag => sizes sacks
whole sacks => sizes sacks
how much feed will 6 pigs eat => feed_need -
how much feed will 9 pigs eat => plan eaten
how much feed for 2 weeks => feed_need - on 2026-08-01
how much feed for the next 10 days => feed_need - on 2026-07-28
what is due saturday => today - on 2026-07-25
when was the last worming => history worm
when did i last worm => history worm
when did we last weigh ivy => history weigh Ivy
has ivy had a fit before? => history sick Ivy
when did it rain last => history weather
`

// A drinker's flow is told in any of the ways people time it.
func TestFlowTold(t *testing.T) {
	const pint = 3.785411784 / 8
	for text, want := range map[string]float64{
		"flow 1 qt in 40 s": 2 * pint / 40 * 60, "nipple a pint in 30 seconds": pint * 2, "nipple 0.6 l/min": 0.6,
		"drinker half a litre in 45 s": 0.5 / 45 * 60, "nipple runs 2 cups a minute": pint,
	} {
		k := newTalk()
		got, err := k.say("2026-07-18T08:00", text)
		require.NoError(t, err)
		a, ok := got.Entries[0].Act.(reading.Ask)
		require.True(t, ok, "%s: %#v", text, got.Entries[0].Act)
		require.NotNil(t, a.FlowLMin, text)
		require.InDelta(t, want, *a.FlowLMin, 1e-9, text)
	}
}

func TestHelpOnATopicRecordsNothing(t *testing.T) {
	k := newTalk()
	for _, m := range sedge {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	for text, about := range map[string]string{
		"help settings": "settings", "help water": "water", "help feed": "refill", "help nudges": "nudges", "help butcher": "butcher", "help pens": "pens", "help emergencies": "emergencies", "help with money": "money",
	} {
		got, err := k.say("2026-07-18T08:00", text)
		require.NoError(t, err)
		require.Equal(t, "help about="+about, brief(got.Entries, "2026-07-18"), text)
	}
	got, err := k.say("2026-07-18T08:00", "help pigs out")
	require.NoError(t, err)
	require.Equal(t, "alarm what=out", brief(got.Entries, "2026-07-18"))
}
