package main

import (
	"bytes"
	"context"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/answer"
	"troughbell/bot/picture"
	"troughbell/bot/reading"
	"troughbell/bot/replay"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// herdKeeper keeps the herd as the last line left it.
type herdKeeper struct{ herd *model.Herd }

func (k *herdKeeper) Text(time.Time, string, string, *model.Herd) error { return nil }
func (k *herdKeeper) Reply(_ time.Time, _ bot.Reply, h *model.Herd) error {
	k.herd = h
	return nil
}
func (k *herdKeeper) Nudge(bot.Push, *model.Herd) error { return nil }
func (k *herdKeeper) Failed(_ int, e error) error       { return e }
func (k *herdKeeper) Ready(time.Time) error             { return nil }

// played gives the herd of a timed log as it is after its last line before until.
func played(t testing.TB, log []byte, zone, until string) *model.Herd {
	t.Helper()
	ctx := context.Background()
	loc, err := time.LoadLocation(zone)
	require.NoError(t, err)
	st, err := store.Open(ctx, filepath.Join(t.TempDir(), "herd.db"), store.Options{})
	require.NoError(t, err)
	defer func() { require.NoError(t, st.Close()) }()
	var id store.HerdID
	require.NoError(t, st.Write(ctx, func(tx *store.Tx) error {
		var err error
		id, err = tx.CreateHerd("", zone, time.Unix(0, 0))
		return err
	}))
	k := &herdKeeper{}
	p, err := replay.New(ctx, st, id, loc, k)
	require.NoError(t, err)
	var lines []string
	for _, l := range strings.Split(string(log), "\n") {
		if l >= until && strings.HasPrefix(l, "20") {
			break
		}
		lines = append(lines, l)
	}
	require.NoError(t, p.Play(ctx, strings.NewReader(strings.Join(lines, "\n"))))
	require.NotNil(t, k.herd)
	return k.herd
}

// pictured asks for a picture of a herd.
func pictured(t testing.TB, h *model.Herd, at, topic string, pigs ...string) (answer.Answer, wording.Voice) {
	t.Helper()
	loc, err := time.LoadLocation(h.Zone)
	require.NoError(t, err)
	now, err := time.ParseInLocation("2006-01-02 15:04", at, loc)
	require.NoError(t, err)
	a := answer.To(h, now, reading.Ask{Topic: topic, Animals: pigs, Picture: true}, nil)
	require.NotNil(t, a.Picture, "%s: %s", topic, a.Text)
	return a, wording.Voice{Herd: h, Now: now}
}

// mostBytes is the most that a picture may take: a phone loads it at once in a pen
// with little signal.
const mostBytes = 150 << 10

// TestPictures holds the pictures of two invented herds to what was drawn when
// they were last looked at: as marks, and as files to look at.
func TestPictures(t *testing.T) {
	twenty, err := os.ReadFile(filepath.Join("..", "..", "testdata", "pictures", "twenty.log"))
	require.NoError(t, err)
	orchard := played(t, demoSeason, demoZone, "2026-07-15 07")
	many := played(t, twenty, "Europe/Vienna", "2026-06-08 11")
	for _, c := range []struct {
		file  string
		herd  *model.Herd
		at    string
		topic string
		pigs  []string
		dark  bool
	}{
		{"growth", orchard, "2026-07-15 07:00", "growth", nil, false},
		{"growth-dark", orchard, "2026-07-15 07:00", "growth", nil, true},
		{"growth-one", orchard, "2026-07-15 07:00", "growth", []string{"Olive"}, false},
		{"growth-twenty", many, "2026-06-08 11:00", "growth", nil, false},
		{"feed", orchard, "2026-07-15 07:00", "feed_left", nil, false},
		{"feed-dark", orchard, "2026-07-15 07:00", "feed_left", nil, true},
		{"feed-metric", many, "2026-06-08 11:00", "feed_left", nil, false},
		{"water", orchard, "2026-07-15 07:00", "water_left", nil, false},
		{"heat", many, "2026-06-08 11:00", "heat", nil, false},
		{"heat-dark", orchard, "2026-07-15 07:00", "heat", nil, true},
		{"calendar", orchard, "2026-07-15 07:00", "today", nil, false},
		{"calendar-dark", orchard, "2026-07-15 07:00", "today", nil, true},
		{"cost", orchard, "2026-07-15 07:00", "cost", nil, false},
		{"cost-dark", many, "2026-06-08 11:00", "cost", nil, true},
	} {
		t.Run(c.file, func(t *testing.T) {
			a, v := pictured(t, c.herd, c.at, c.topic, c.pigs...)
			style := picture.Style{Dark: c.dark}
			marks := picture.Marks(a.Picture, v, style)
			b, err := picture.PNG(a.Picture, v, style)
			require.NoError(t, err)
			require.LessOrEqual(t, len(b), mostBytes)
			cfg, err := png.DecodeConfig(bytes.NewReader(b))
			require.NoError(t, err)
			require.Equal(t, picture.Width, cfg.Width)
			require.NotContains(t, a.Text, "\n", "one line of words beside a picture")

			dir := filepath.Join("..", "..", "testdata", "pictures")
			golden := filepath.Join(dir, c.file+".marks")
			if *update {
				require.NoError(t, os.WriteFile(golden, []byte(marks), 0o644))
				require.NoError(t, os.WriteFile(filepath.Join(dir, c.file+".png"), b, 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			require.Equal(t, string(want), marks, "go test ./cmd/troughbell -run TestPictures -update, then look at the files")
			looked, err := os.ReadFile(filepath.Join(dir, c.file+".png"))
			require.NoError(t, err)
			require.InDelta(t, len(looked), len(b), float64(len(looked))/20, "size of the file")
		})
	}
}

// A feeder at its cautious edge is not called safe: it may be out.
func TestPictureAtTheEdge(t *testing.T) {
	log := "2026-05-02 09:04 | 3 pigs came today, 40 lb each. feeder 200 lb\n2026-05-30 18:00 | filled feeder 95 lb, full\n"
	h := played(t, []byte(log), "America/New_York", "2026-06-01")
	zone, err := time.LoadLocation(h.Zone)
	require.NoError(t, err)
	left, err := h.FeedLeft(h.Last)
	require.NoError(t, err)
	edge := h.Last.Add(time.Duration(left.Feeders[0].EdgeDays * 24 * float64(time.Hour)))
	for _, c := range []struct {
		after time.Duration
		want  string
	}{{-24 * time.Hour, "safe to"}, {time.Hour, "may be out already"}} {
		at := edge.Add(c.after).In(zone)
		a, v := pictured(t, h, at.Format("2006-01-02 15:04"), "feed_left")
		require.Contains(t, picture.Marks(a.Picture, v, picture.Style{}), c.want)
	}
}

// BenchmarkPicture draws each kind of picture. Wanted: each under 200 ms.
func BenchmarkPicture(b *testing.B) {
	orchard := played(b, demoSeason, demoZone, "2026-07-15 07")
	for _, topic := range []string{"growth", "feed_left", "water_left", "heat", "today", "cost"} {
		a, v := pictured(b, orchard, "2026-07-15 07:00", topic)
		b.Run(topic, func(b *testing.B) {
			for b.Loop() {
				if _, err := picture.PNG(a.Picture, v, picture.Style{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
