package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// A note ends before a reminder, a reminder before a note or a setting; what is to be put
// down is recorded where it tells records alone; and hours and absences in other words.
func TestWishesBesideEachOther(t *testing.T) {
	for _, c := range []struct{ herd, now, text, want string }{
		{"bramble", "2026-06-11T07:58", "note the gate needs oil, and remind me friday to buy some", "note what=the gate needs oil; remind what=buy some when=2026-06-12"},
		{"bramble", "2026-06-11T07:58", "note: ditch pen floods. remind me tomorrow to dig a drain", "note what=ditch pen floods; remind what=dig a drain when=2026-06-12"},
		{"burrow", "2026-08-27T19:15", "remind me monday to get straw and target is 260 now", "remind what=get straw when=2026-08-31; settings key=target_kg value=117.93"},
		{"burrow", "2026-08-27T19:15", "remind me monday to get straw, also chore day is sunday from now on", "remind what=get straw when=2026-08-31; settings key=chore_days value=sun"},
		{"thistle", "2026-05-03T12:00", "Please put down that Gus weighs 71 pounds, and that the fence reads 5.2.", "weigh animals=Gus weight_kg=32.21; fence kv=5.2"},
		{"thistle", "2026-05-03T12:00", "put down that the gate hinge is loose", "note what=the gate hinge is loose"},
		{"moorwiese", "2026-07-13T21:40", "Please write me at 7 in the morning and not at 8", "settings key=hour value=07:00"},
		{"moorwiese", "2026-07-13T21:40", "remind me of chores at 6 am from now on", "settings key=hour value=06:00"},
		{"ridge", "2026-07-28T11:00", "I should be obliged if you would not disturb me between nine at night and six in the morning.", "settings key=quiet value=21:00+06:00"},
		{"ridge", "2026-07-28T11:00", "don't bother me after 9 or before 6", "settings key=quiet value=21:00+06:00"},
		{"bantay", "2026-05-09T13:00", "I am in Manila for medical 12 to 15 May, nobody here", "away from=2026-05-12 to=2026-05-15"},
		{"bantay", "2026-05-11T12:10", "We go to Cebu on May 20 until 23", "away from=2026-05-20 to=2026-05-23"},
		{"garth", "2026-07-23T14:50", "off to Edinburgh fri to mon", "away from=2026-07-24 to=2026-07-27"},
	} {
		got, err := play(t, c.herd).say(c.now, c.text)
		require.NoError(t, err)
		require.Equal(t, c.want, brief(got.Entries, c.now[:10]), c.text)
	}
}
