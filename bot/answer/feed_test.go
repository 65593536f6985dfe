package answer_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestFeedLeft(t *testing.T) {
	h := orchard(t).herd()
	f, err := h.FeedLeft(now)
	require.NoError(t, err)
	a := ask(h, reading.Ask{Topic: "feed_left"})
	data := through(t, a.Data)
	require.InDelta(t, f.FeedKg.Mid, data["feed_kg"], 0.0051)
	require.InDelta(t, f.UseKgD.Mid, data["use_kg_d"], 0.0051)
	require.InDelta(t, f.Days, data["days"], 0.0051)
	require.InDelta(t, f.LowDays, data["low_days"], 0.0051)
	require.Equal(t, f.Empty.In(chicago).Format(time.RFC3339), data["empty"])
	require.Len(t, data["feeders"], 2)
	for _, key := range []string{"feed_kg", "use_kg_d", "days", "low_days", "empty"} {
		require.Contains(t, data["feeders"].(map[string]any)["north"], key)
	}
	require.Equal(t, "2026-07-18", data["lasts_until"])
	require.Equal(t, true, data["lasts"])
	require.Regexp(t, `^Feed lasts past Sat Jul 18: safe to .+, likely to .+\.\nnorth \d+ lb, safe to .+; south \d+ lb, safe to .+\.$`, a.Text)

	skip := ask(h, reading.Ask{Topic: "feed_left", Assume: &model.Assumption{SkipDays: 7}})
	require.Equal(t, "2026-07-25", skip.Data["lasts_until"])
	require.Equal(t, false, skip.Data["lasts"])
	require.Contains(t, skip.Text, "Feed does not last to Sat Jul 25")

	more := ask(h, reading.Ask{Topic: "feed_left", Assume: &model.Assumption{CountDelta: 2}})
	require.Greater(t, more.Data["use_kg_d"], a.Data["use_kg_d"])
	require.Contains(t, more.Text, "With 2 pigs more: Feed ")

	on := day("2026-07-14")
	require.Contains(t, ask(h, reading.Ask{Topic: "feed_left", On: &on}).Text, "Feed lasts past Tue Jul 14")

	// Nobody looked for two weeks: it may be out, and the reply says who says so.
	require.Regexp(t, `^Feed (may be|is) out`, ask(nursery(t).herd(), reading.Ask{Topic: "feed_left"}).Text)
}

func TestFeedNeed(t *testing.T) {
	h := orchard(t).herd()
	a := ask(h, reading.Ask{Topic: "feed_need"})
	on := day("2026-08-01")
	part := ask(h, reading.Ask{Topic: "feed_need", On: &on})
	require.Less(t, part.Data["feed_kg"], a.Data["feed_kg"])
	require.Equal(t, "2026-08-01", part.Data["until"])
	require.InDelta(t, part.Data["feed_kg"].(float64)/(100*lb), part.Data["batches"], 0.02)
	require.Regexp(t, `^About [\d,]+ lb feed to Sat Aug 1 \([\d,]+–[\d,]+\), \d+ batches\.`, part.Text)
	require.Regexp(t, `^About [\d,]+ lb feed to 265 lb about `, a.Text)
}
