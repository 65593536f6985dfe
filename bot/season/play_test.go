package season

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/replay"
	"troughbell/model"
	"troughbell/store"
)

// stage is where keeper and program meet: the log that the program reads is
// written by the keeper line by line, and what the program says goes to the
// keeper. A line is asked for only after all that the one before led to was told.
type stage struct {
	k      *keeper
	buf    []byte
	page   replay.Writer // where a season is shown; nil: nowhere
	log    io.Writer     // where what the keeper texts is kept as a timed log
	pushes []bot.Push
	failed []string
}

// Read implements io.Reader: one line of the log at a time.
func (s *stage) Read(p []byte) (int, error) {
	if len(s.buf) == 0 {
		l, ok := s.k.next()
		if !ok {
			return 0, io.EOF
		}
		s.buf = []byte(l + "\n")
		if s.log != nil {
			if _, err := s.log.Write(s.buf); err != nil {
				return 0, err
			}
		}
	}
	n := copy(p, s.buf)
	s.buf = s.buf[n:]
	return n, nil
}

// Text implements replay.Writer.
func (s *stage) Text(at time.Time, who, text string, h *model.Herd) error {
	if s.page != nil {
		return s.page.Text(at, who, text, h)
	}
	return nil
}

// Reply implements replay.Writer.
func (s *stage) Reply(at time.Time, r bot.Reply, h *model.Herd) error {
	s.k.hear(at, r)
	if s.page != nil {
		return s.page.Reply(at, r, h)
	}
	return nil
}

// Nudge implements replay.Writer.
func (s *stage) Nudge(p bot.Push, h *model.Herd) error {
	s.pushes = append(s.pushes, p)
	s.k.inbox = append(s.k.inbox, p)
	if s.page != nil {
		return s.page.Nudge(p, h)
	}
	return nil
}

// Failed implements replay.Writer.
func (s *stage) Failed(number int, err error) error {
	s.failed = append(s.failed, fmt.Sprintf("line %d: %v", number, err))
	return nil
}

// Ready implements replay.Writer.
func (s *stage) Ready(at time.Time) error {
	if s.page != nil {
		return s.page.Ready(at)
	}
	return nil
}

// hear takes an answer of the program: the day the herd is ready, or a question.
func (k *keeper) hear(at time.Time, r bot.Reply) {
	if len(r.Questions) > 0 {
		k.pending = &r
	}
	d := k.farm.day(at)
	for ahead, g := range k.guesses {
		if g.made != d || g.known {
			continue
		}
		for _, data := range r.Answers {
			text, ok := data["date"].(string)
			if day, err := model.ParseDay(text); ok && err == nil {
				k.guesses[ahead] = guess{made: d, day: day, known: true}
			}
		}
	}
}

// shownTo is where the conversation of a season is written when the variable
// names a directory.
const shownTo = "TROUGHBELL_SEASONS"

// playSeason plays a season of the number and gives what came of it.
func playSeason(t testing.TB, number int, recs []grown) *result {
	t.Helper()
	ctx := context.Background()
	s := drawSeason(number, recs)
	st, err := store.Open(ctx, filepath.Join(t.TempDir(), "herd.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	defer func() { require.NoError(t, st.Close()) }()
	var herd store.HerdID
	require.NoError(t, st.Write(ctx, func(tx *store.Tx) error {
		herd, err = tx.CreateHerd("", s.farm.loc.String(), time.Unix(0, 0))
		return err
	}))
	on := &stage{k: s.keeper}
	if dir := os.Getenv(shownTo); dir != "" {
		f, err := os.Create(filepath.Join(dir, fmt.Sprintf("season-%02d.txt", number)))
		require.NoError(t, err)
		defer func() { require.NoError(t, f.Close()) }()
		on.page = replay.NewPage(f)
		l, err := os.Create(filepath.Join(dir, fmt.Sprintf("season-%02d.log", number)))
		require.NoError(t, err)
		defer func() { require.NoError(t, l.Close()) }()
		on.log = l
		defer func() {
			for _, d := range []*dryness{&s.farm.feed, &s.farm.water} {
				for _, span := range d.spans {
					_, err := fmt.Fprintf(f, "# dry %s\n", span)
					require.NoError(t, err)
				}
			}
		}()
	}
	s.keeper.sky = func(at time.Time, days []model.ForecastDay) {
		require.NoError(t, st.Write(ctx, func(tx *store.Tx) error { return keepForecast(tx, herd, at.In(s.farm.loc), days) }))
	}
	p, err := replay.New(ctx, st, herd, s.farm.loc, on)
	require.NoError(t, err)
	require.NoError(t, p.Play(ctx, on), "season %d", number)
	require.Empty(t, on.failed, "season %d", number)
	return tally(s, on.pushes)
}

// keepForecast records a forecast as the fetcher of forecasts does.
func keepForecast(tx *store.Tx, herd store.HerdID, at time.Time, days []model.ForecastDay) error {
	e := store.Envelope{
		Herd: herd, On: model.DayOf(at), At: at, SaidAt: at, Zone: at.Location().String(), Judged: "certain",
		Fact: model.Forecast{Days: days},
	}
	if err := tx.Append(&e); err != nil {
		return err
	}
	return tx.SetLookAgain(herd, at)
}
