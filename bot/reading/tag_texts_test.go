package reading_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/bot/reading"
	"troughbell/model"
)

// TestTagHerdsAreSetUp plays the set-ups of herds that are named by numbers: every
// pig has its name, its sex and its weighings.
func TestTagHerdsAreSetUp(t *testing.T) {
	for _, row := range []struct {
		herd, names, sexes string
		each               float64
		weighings          int
	}{
		{"flatrock", "501 502 503 504 505 506 507 508 509", "bbbbbgggg", 52 * 0.45359237, 18},
		{"sawbuck", "411 412 413 414 415 416 417 418 419", "bbbbbgggg", 50 * 0.45359237, 9},
		{"pinfold", "1 2 3 4", "ggbb", 52 * 0.45359237, 4},
		{"kiln", "201 202 203 204 205 206 207 208 209", "bbbbbgggg", 52 * 0.45359237, 9},
		{"garth", "Red 14,Red 15,Red 16,Blue 3,Blue 4,Blue 5", "bbbggg", 25, 6},
	} {
		h := play(t, row.herd).herd
		split := " "
		if strings.Contains(row.names, ",") {
			split = ","
		}
		require.Len(t, h.Groups, 1, row.herd)
		require.InDelta(t, row.each, *h.Groups[0].WeightKg, 1e-9, row.herd)
		require.NotNil(t, h.Groups[0].Born, row.herd)
		names, sexes := "", ""
		for _, a := range h.Animals {
			names += split + a.Name
			sexes += string(a.Sex)[:1]
		}
		require.Equal(t, row.names, names[1:], row.herd)
		require.Equal(t, row.sexes, sexes, row.herd)
		require.Len(t, h.Weighings, row.weighings, row.herd)
		for _, w := range h.Weighings {
			require.Len(t, w.F.Animals, 1, row.herd)
			require.NotEqual(t, model.All, w.F.Animals[0], row.herd)
		}
	}
}

// TestTagsAtArrival reads the ways in which numbers are given to pigs as names,
// and lists of numbers that are none.
func TestTagsAtArrival(t *testing.T) {
	readsRows(t, "none", "2026-05-02T18:30", `
3 pigs came, tags 411 412 413, 50 lb each => arrive animals=411+412+413 count=3 weight_kg=22.68
got 3 pigs, ear tags 411, 412 and 413 => arrive animals=411+412+413 count=3
two pigs came, #7 and #12, 48 lb each => arrive animals=7+12 count=2 weight_kg=21.77
4 pigs came today: 1, 2, 3 and 4, 45 lb each => arrive animals=1+2+3+4 count=4 weight_kg=20.41
5 pigs came, tags 411 to 415, 411-413 are gilts, 50 lb each => arrive animals=411+412+413+414+415 count=5 sexes=gilt+gilt+gilt weight_kg=22.68
5 pigs came, tags 411,412,413,414,415, 50 lb each => arrive animals=411+412+413+414+415 count=5 weight_kg=22.68
2 pigs came, red 14 and blue 3, 50 lb each => arrive animals=Red 14+Blue 3 count=2 weight_kg=22.68
3 pigs came, tags 7, 12 and 19, 7 48 lb, 12 52 lb, 19 50 lb => arrive animals=7+12+19 count=3; weigh animals=7 weight_kg=21.77; weigh animals=12 weight_kg=23.59; weigh animals=19 weight_kg=22.68
3 pigs came today, 48 lb each => arrive count=3 weight_kg=21.77
3 pigs came on May 1, 2026, 50 lb => arrive count=3 date=2026-05-01 weight_kg=22.68
`)
}

// TestTags reads texts of herds named by numbers. Where the number could as well
// count pigs, weigh them or name none of them, it is asked about.
func TestTags(t *testing.T) {
	readsRows(t, "flatrock", "2026-09-26T18:30", `
501 271 502 264 => weigh animals=501 weight_kg=122.92; weigh animals=502 weight_kg=119.75
501 weighs 271 lb => weigh animals=501 weight_kg=122.92
501's 271 now => weigh animals=501 weight_kg=122.92
#504 girth 44 => weigh animals=504 girth_cm=111.76
504 41x46 => weigh animals=504 girth_cm=104.14 length_cm=116.84
five oh four is two sixty => weigh animals=504 weight_kg=117.93
barrows averaged 262 => weigh animals=501+502+503+504+505 weight_kg=118.84
wormed 501-505 with ivermectin, 18 days => worm animals=501+502+503+504+505 product=ivermectin withdrawal_days=18
501,502,503 wormed ivermectin 18 days => worm animals=501+502+503 product=ivermectin withdrawal_days=18
wormed all but 503, fenbendazole 14 days => worm animals=501+502+504+505+506+507+508+509 product=fenbendazole withdrawal_days=14
sold 508 for 300 => gone amount=300 animals=508 how=sold
sold 508 and 509 for 520 both => gone amount=520 animals=508+509 how=sold
501 off feed => sick animals=501 note=off feed
501/502 limping => sick animals=501+502 note=limping
tag 505 died => gone animals=505 how=died
502 out => alarm animals=502 what=out
moved 501 to 505 to Willow => move animals=501+502+503+504+505 pen=Willow
503 lb in the north feeder => clarify about=refill
fed 501 => clarify about=refill
sold 520 for 300 => clarify about=gone
moved 520 to Willow => clarify about=move
520 limping => clarify about=sick
wormed 501 and 520, ivermectin 18 days => clarify about=worm
520 and 501 wormed, ivermectin 18 days => clarify about=worm
501 hung 196, 520 hung 205 => clarify about=gone
how much does 520 weigh? => clarify about=ask
520 255 => clarify about=weigh
501 27 => clarify about=weigh
note: 504 bites => note what=504 bites
remind me to check 503 on friday => remind what=check 503 when=2026-10-02
paid 501 for feed => spend amount=501 currency=USD what=feed
`)
	readsRows(t, "pinfold", "2026-08-22T18:30", `
1 214, 2 207 => weigh animals=1 weight_kg=97.07; weigh animals=2 weight_kg=93.89
1: 214 lb, 2: 207 lb => weigh animals=1 weight_kg=97.07; weigh animals=2 weight_kg=93.89
#2 41 46, #3 43 47 => weigh animals=2 girth_cm=104.14 length_cm=116.84; weigh animals=3 girth_cm=109.22 length_cm=119.38
3 is limping => sick animals=3 note=limping
3 limping => clarify about=sick
1 and 3 off feed => sick animals=1+3 note=off feed
pig 2 has a cough => sick animals=2 note=cough
wormed 1, 3 and 4 with fenbendazole 14 days => worm animals=1+3+4 product=fenbendazole withdrawal_days=14
wormed 3 with fenbendazole 14 days => clarify about=worm
gave 2 penicillin 10 days => clarify about=treat
sold 3 for 300 => clarify about=gone
sold 7 for 300 => clarify about=gone
tag 7 limping => clarify about=sick
moved 2 to Hill => clarify about=move
moved 1 and 2 to Hill => move animals=1+2 pen=Hill
moved all 4 to Hill => move pen=Hill
barrel 2 full => water barrel=barrel 2 full=true
2 bags in the feeder => refill feed_kg=45.36 feeder=feeder
fence 4 => fence kv=4
3 out => alarm what=out
`)
	readsRows(t, "garth", "2026-07-25T18:30", `
red 14 88 => weigh animals=Red 14 weight_kg=88
red 14 limping => sick animals=Red 14 note=limping
wormed blue 3 and blue 4 with ivermectin, 28 days => worm animals=Blue 3+Blue 4 product=ivermectin withdrawal_days=28
`)
}

// TestTagsThatAreWeights reads a herd in which a number can be a pig and a weight.
func TestTagsThatAreWeights(t *testing.T) {
	readsRows(t, "kiln", "2026-08-18T18:30", `
201 205 => clarify about=weigh
201 203 202 204 => clarify about=weigh
201 205, 202 197 => weigh animals=201 weight_kg=92.99; weigh animals=202 weight_kg=89.36
201 weighs 205 => weigh animals=201 weight_kg=92.99
203: 208, 204: 203 => weigh animals=203 weight_kg=94.35; weigh animals=204 weight_kg=92.08
weighed 203 at 209 => weigh animals=203 weight_kg=94.8
201 205 lb => weigh animals=201 weight_kg=92.99
203 girth 41 => weigh animals=203 girth_cm=104.14
201 - 205 wormed ivermectin 18 days => worm animals=201+202+203+204+205 product=ivermectin withdrawal_days=18
205 lb in the feeder => refill feed_kg=92.99 feeder=feeder
`)
	k := play(t, "kiln")
	_, err := k.say("2026-08-18T18:30", "201 205")
	require.NoError(t, err)
	require.Equal(t, "tag_or_weight", k.pending.Clarify.Code)
	require.Len(t, k.pending.Clarify.Choices, 2)
	require.Equal(t, "weigh animals=201 weight_kg=92.99", brief(k.pending.Clarify.Choices[0].Entries, "2026-08-18"))
	require.Equal(t, "weigh animals=205 weight_kg=91.17", brief(k.pending.Clarify.Choices[1].Entries, "2026-08-18"))
}

// TestNoTagIsTakenForAWeight: in a list of pigs and what they weigh, however it is
// written, a pig never gets another number than its own, and no pig gets a tag as
// its weight. What is not sure is asked.
func TestNoTagIsTakenForAWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first := rapid.SampledFrom([]int{1, 11, 38, 95, 150, 185, 196, 201, 214, 411, 1201}).Draw(t, "first tag")
		n := rapid.IntRange(2, 6).Draw(t, "pigs")
		k := newTalk()
		for _, text := range []string{
			"our herd is Test, America/Chicago, US units",
			fmt.Sprintf("%d pigs came today, tags %d to %d, 52 lb each, born March 5", n, first, first+n-1),
		} {
			_, err := k.say("2026-05-02T11:00", text)
			require.NoError(t, err)
		}
		require.Len(t, k.herd.Animals, n)
		k.pending, k.before = nil, nil
		pair := rapid.SampledFrom([]string{"%d %d", "%d: %d", "%d weighs %d", "%d is %d", "%d at %d", "%d = %d", "#%d %d"}).Draw(t, "pair")
		join := rapid.SampledFrom([]string{", ", "\n", "; ", " and ", ". "}).Draw(t, "join")
		order := rapid.Permutation(numbersFrom(first, n)).Draw(t, "order")
		order = order[:rapid.IntRange(1, n).Draw(t, "weighed")]
		want := map[string]float64{}
		var parts []string
		for _, tag := range order {
			lb := rapid.IntRange(175, 225).Draw(t, "lb")
			want[fmt.Sprint(tag)] = float64(lb) * 0.45359237
			parts = append(parts, fmt.Sprintf(pair, tag, lb))
		}
		text := strings.Join(parts, join)
		got := reading.Read(k.context(time.Date(2026, 8, 15, 18, 30, 0, 0, k.loc)), text)
		recorded, asked := 0, false
		for _, e := range got.Entries {
			switch a := e.Act.(type) {
			case reading.Clarify:
				asked = true
			case reading.None:
			case reading.Fact:
				w, ok := a.Fact.(model.Weigh)
				require.True(t, ok, "%q: %#v", text, a.Fact)
				require.Len(t, w.Animals, 1, text)
				require.Contains(t, want, w.Animals[0], text)
				require.InDelta(t, want[w.Animals[0]], w.WeightKg, 1e-9, "%q: pig %s", text, w.Animals[0])
				recorded++
			default:
				require.Fail(t, "no weighing", "%q: %#v", text, a)
			}
		}
		require.True(t, asked || recorded == len(want), "%q: %d of %d recorded and nothing asked", text, recorded, len(want))
	})
}

func numbersFrom(first, n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = first + i
	}
	return out
}
