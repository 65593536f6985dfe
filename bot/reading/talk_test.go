package reading_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestTalk has short talks: each line is a text and what it must be read as; a
// question stays open until it is answered.
func TestTalk(t *testing.T) {
	for name, lines := range map[string]string{
		"another pig": `
dot 38 girth => weigh animals=Dot girth_cm=96.52
no, plum => weigh animals=Plum girth_cm=96.52 replaces=true`,
		"another number": `
dot 38x42 => weigh animals=Dot girth_cm=96.52 length_cm=106.68
37 not 38 => weigh animals=Dot girth_cm=93.98 length_cm=106.68 replaces=true`,
		"another day": `
north 150 full => refill feed_kg=68.04 feeder=north full=true
that was yesterday => refill date=2026-07-17 feed_kg=68.04 feeder=north full=true replaces=true`,
		"another hopper": `
north 150 full => refill feed_kg=68.04 feeder=north full=true
no the south one => refill feed_kg=68.04 feeder=south full=true replaces=true`,
		"unknown bag": `
put 4 buckets in north => clarify about=refill
25 => settings key=size value={"feed_kg":11.34,"name":"bucket"}; refill feed_kg=45.36 feeder=north`,
		"a wrong digit": `
dot 28 girth => clarify about=weigh
38 => weigh animals=Dot girth_cm=96.52`,
		"a wrong digit with a length": `
dot 28 x 43 => clarify about=weigh
38 => weigh animals=Dot girth_cm=96.52 length_cm=109.22`,
		"the likeliest first": `
dot 28 girth => clarify about=weigh
1 => weigh animals=Dot girth_cm=96.52`,
		"the question stays open": `
dot 28 girth => clarify about=weigh
fence 5.8 => fence kv=5.8
38 => weigh animals=Dot girth_cm=96.52`,
		"when it happened stays": `
yesterday put 4 buckets in north => clarify about=refill
25 lb => settings key=size value={"feed_kg":11.34,"name":"bucket"}; refill date=2026-07-17 feed_kg=45.36 feeder=north`,
		"which pig": `
gave penicillin at 5pm 21 days => clarify about=treat
moss => treat animals=Moss at=17:00 product=penicillin withdrawal_days=21`,
		"all of them": `
wormed => clarify about=worm
all => worm animals=all`,
		"died": `
lost one => clarify about=gone
died => gone count=1 how=died`,
		"out": `
lost moss => clarify about=gone
out => alarm animals=Moss what=out`,
		"which hopper": `
fed 150 => clarify about=refill
south => refill feed_kg=68.04 feeder=south`,
		"days of the label": `
moss penicillin 6pm => treat animals=Moss at=18:00 product=penicillin
21 days => treat animals=Moss at=18:00 product=penicillin replaces=true withdrawal_days=21`,
		"undo names what it undoes": `
fence 5.8 => fence kv=5.8
undo => undo of=fence`,
		"carry in one text": `
yesterday dot 38 girth, north 100 full => weigh animals=Dot date=2026-07-17 girth_cm=96.52; refill date=2026-07-17 feed_kg=45.36 feeder=north full=true`,
	} {
		t.Run(name, func(t *testing.T) {
			k := hollowTalk(t)
			for _, line := range strings.Split(strings.TrimSpace(lines), "\n") {
				text, want, ok := strings.Cut(line, " => ")
				require.True(t, ok, line)
				got, err := k.say("2026-07-18T18:30", text)
				require.NoError(t, err)
				require.Equal(t, strings.TrimSpace(want), brief(got.Entries, "2026-07-18"), text)
			}
		})
	}
}

// TestReply reads a correction against the message that it replies to, not
// against the latest.
func TestReply(t *testing.T) {
	k := hollowTalk(t)
	_, err := k.say("2026-07-18T18:30", "dot 38 girth")
	require.NoError(t, err)
	first := k.before
	_, err = k.say("2026-07-18T18:31", "moss 39 girth")
	require.NoError(t, err)
	c := k.context(first[0].At)
	c.ReplyTo = first
	got := reading.Read(c, "plum")
	require.Equal(t, "weigh animals=Plum girth_cm=96.52 replaces=true", brief(got.Entries, "2026-07-18"))
	require.Equal(t, first[0].ID, got.Entries[0].Replace)
}

// TestLeft quotes back what was not understood, as it stands.
func TestLeft(t *testing.T) {
	k := hollowTalk(t)
	got, err := k.say("2026-07-18T18:30", "dot 38 girth. Blorp the Fizzbuck 7")
	require.NoError(t, err)
	require.Equal(t, "weigh animals=Dot girth_cm=96.52", brief(got.Entries, "2026-07-18"))
	require.Len(t, got.Left, 1)
	require.Contains(t, got.Left[0], "Fizzbuck 7")
}

// saidAfter is how a text is read that follows another, of somebody who has no herd yet.
func saidAfter(t *testing.T, before, text string) reading.Reading {
	t.Helper()
	k := newTalk()
	_, err := k.say("2026-05-02T18:00", before)
	require.NoError(t, err)
	got, err := k.say("2026-05-02T18:05", text)
	require.NoError(t, err)
	return got
}
