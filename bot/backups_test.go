package bot_test

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/health"
	"troughbell/store"
)

// barn is a store with a season in it, whose owner runs the server, and its
// backups.
type barn struct {
	t       *testing.T
	zone    *time.Location
	path    string
	store   *store.Store
	herd    store.HerdID
	backups *bot.Backups
	copies  store.Copies
	log     *bytes.Buffer
	now     time.Time
}

func newBarn(t *testing.T, now string) *barn {
	t.Helper()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	b := &barn{t: t, zone: zone, log: &bytes.Buffer{}}
	b.now, err = time.ParseInLocation("2006-01-02 15:04", now, zone)
	require.NoError(t, err)
	b.path = filepath.Join(t.TempDir(), "herd.db")
	b.store, err = store.Open(t.Context(), b.path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, b.store.Close()) })
	require.NoError(t, b.store.Write(t.Context(), func(tx *store.Tx) error {
		if b.herd, err = tx.CreateHerd("", zone.String(), b.now); err != nil {
			return err
		}
		ann, err := tx.CreatePerson("Ann")
		if err != nil {
			return err
		}
		if err := tx.SetOperator(ann); err != nil {
			return err
		}
		if err := tx.Join(b.herd, ann, store.Owner); err != nil {
			return err
		}
		c, err := tx.ChatOf("telegram", "101", false)
		if err != nil {
			return err
		}
		c.Herd, c.Person = b.herd, ann
		if err := tx.SaveChat(c); err != nil {
			return err
		}
		return keepSeason(tx, b.herd, b.now, zone)
	}))
	b.copies, err = store.CopiesOf(b.path, "")
	require.NoError(t, err)
	b.restart()
	return b
}

// restart has the program forget what it holds in memory.
func (b *barn) restart() {
	b.backups = &bot.Backups{
		Store: b.store, Copies: b.copies, Zone: time.UTC, Log: slog.New(slog.NewTextHandler(b.log, nil)),
	}
}

// live lets time pass with a beat every ten minutes, and says when copies were
// made.
func (b *barn) live(span time.Duration) (made []string) {
	b.t.Helper()
	for end := b.now.Add(span); b.now.Before(end); b.now = b.now.Add(10 * time.Minute) {
		before := b.days()
		require.NoError(b.t, b.backups.Beat(b.t.Context(), b.now.UTC()))
		if after := b.days(); strings.Join(after, "") != strings.Join(before, "") {
			made = append(made, b.now.Format("2006-01-02 15:04"))
		}
	}
	return made
}

func (b *barn) days() (out []string) {
	b.t.Helper()
	all, err := b.copies.List()
	require.NoError(b.t, err)
	for _, k := range all {
		out = append(out, k.On.String())
	}
	return out
}

// notices is what the operator was told.
func (b *barn) notices() (out []string) {
	b.t.Helper()
	require.NoError(b.t, b.store.Read(context.Background(), func(tx *store.Tx) error {
		for id := int64(1); ; id++ {
			o, ok, err := tx.OutgoingByID(id)
			if err != nil || !ok {
				return err
			}
			require.Equal(b.t, "notice", o.Kind)
			require.True(b.t, o.Quiet)
			out = append(out, o.Text)
		}
	}))
	return out
}

// A copy is made at once where the last is older than a night, and then each
// night at a quiet hour of the herd's zone, not of the server's.
func TestBackupsEachNight(t *testing.T) {
	b := newBarn(t, "2026-06-06 10:00")
	require.Equal(t, []string{"2026-06-06 10:00", "2026-06-07 03:20", "2026-06-08 03:20", "2026-06-09 03:20"}, b.live(3*24*time.Hour))
	b.restart()
	require.Empty(t, b.live(time.Hour), "the last is of this night")
	b.now = b.now.Add(30 * time.Hour) // the program was off
	b.restart()
	require.Equal(t, []string{"2026-06-10 17:00"}, b.live(10*time.Hour))
	require.Empty(t, b.notices())
	require.Empty(t, b.log.String())
}

// A clock that runs ahead for a while, or starts in the past, stops no backups
// and costs none that is good.
func TestBackupsWhenTheClockJumps(t *testing.T) {
	b := newBarn(t, "2026-06-06 10:00")
	b.live(10 * 24 * time.Hour)
	good := b.days()
	require.Len(t, good, 8) // a week, and a Sunday before it
	right := b.now
	for _, years := range []int{10, -50} {
		b.now = right.AddDate(years, 0, 0)
		require.Len(t, b.live(9*24*time.Hour), 10)
		require.Contains(t, b.days(), good[len(good)-1])
		b.now = right
	}
	require.Equal(t, "2026-06-17 03:20", b.live(24 * time.Hour)[0])
	require.Subset(t, b.days(), []string{"2026-06-07", "2026-06-14", "2026-06-16", "2026-06-17"})
}

// A backup that fails is logged once and told to the operator once, however
// often it is tried, and again when it fails anew.
func TestBackupsThatFail(t *testing.T) {
	b := newBarn(t, "2026-06-06 10:00")
	b.live(24 * time.Hour)
	for round := 1; round <= 2; round++ {
		aside := b.copies.Folder() + "-aside"
		require.NoError(t, os.Rename(b.copies.Folder(), aside))
		require.NoError(t, os.WriteFile(b.copies.Folder(), nil, 0o600)) // no folder can be made there
		require.NoError(t, b.backups.Beat(t.Context(), b.now.AddDate(0, 0, 1)))
		for range 40 {
			b.now = b.now.Add(time.Hour)
			require.NoError(t, b.backups.Beat(t.Context(), b.now.AddDate(0, 0, 1)))
		}
		b.restart() // the operator knows still
		require.NoError(t, b.backups.Beat(t.Context(), b.now.AddDate(0, 0, 1)))
		require.Len(t, b.notices(), round)
		require.Equal(t, 2*round, strings.Count(b.log.String(), "no backup could be made"), "once for each run of the program")
		require.NoError(t, os.Remove(b.copies.Folder()))
		require.NoError(t, os.Rename(aside, b.copies.Folder()))
		b.now = b.now.AddDate(0, 0, 1)
		require.Len(t, b.live(2*time.Hour), 1)
		require.Equal(t, round, strings.Count(b.log.String(), "backups work again"))
	}
	require.Contains(t, b.notices()[0], "No backup could be made.")
	require.Contains(t, b.notices()[0], b.copies.Folder())
}

// A nightly copy that meets damage in the file is no copy; who runs the server is
// told of it once, health says it, and what can still be read and written is.
func TestBackupFindsDamage(t *testing.T) {
	b := newBarn(t, "2026-06-06 10:00")
	require.NoError(t, b.store.Close())
	spoilTable(t, b.path, "tide")
	var err error
	b.store, err = store.Open(t.Context(), b.path, store.Options{Ephemeral: true}) // which looks for no damage
	require.NoError(t, err)
	b.restart()
	require.Empty(t, b.live(26*time.Hour))
	require.Empty(t, b.days())
	require.Len(t, b.notices(), 1)
	require.Contains(t, b.notices()[0], "is damaged; keep it")
	require.Equal(t, 1, strings.Count(b.log.String(), "no backup could be made"))
	var v health.Signs
	v, err = health.Of(t.Context(), b.store, b.path, b.copies, true)
	require.NoError(t, err)
	v.Running, v.Polled, v.Round = true, b.now, b.now
	require.Len(t, v.Ills(b.now), 1)
	require.Contains(t, v.Ills(b.now)[0], "the database is damaged")
	require.NoError(t, b.store.Write(t.Context(), func(tx *store.Tx) error {
		return keepSeason(tx, b.herd, b.now, b.zone)
	}))
}

// spoilTable writes over the first page of a table.
func spoilTable(t *testing.T, path, table string) {
	t.Helper()
	db, err := sql.Open("sqlite", path)
	require.NoError(t, err)
	var page, size int64
	require.NoError(t, db.QueryRowContext(t.Context(), "SELECT rootpage, (SELECT page_size FROM pragma_page_size) FROM sqlite_schema WHERE name = ?", table).Scan(&page, &size))
	require.NoError(t, db.Close())
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	require.NoError(t, err)
	_, err = f.WriteAt([]byte(strings.Repeat("a mouse was here ", 8)), (page-1)*size)
	require.NoError(t, errors.Join(err, f.Close()))
}

// The first standing message of a month says how old the newest copy is, any
// other says nothing of it, and a herd whose owner does not run the server is
// sent to who does.
func TestAgeOfTheBackupIsTold(t *testing.T) {
	b := newBarn(t, "2026-06-06 07:00") // a Saturday
	desk := bot.NewDesk()
	desk.KeepBackups(b.backups)
	standing := func() (said []string) {
		t.Helper()
		require.NoError(t, b.store.Write(t.Context(), func(tx *store.Tx) error {
			pushes, err := desk.Look(tx, b.herd, b.now, time.Time{})
			for _, p := range pushes {
				if p.Nudge.Standing {
					said = append(said, p.Text[strings.LastIndex(p.Text, "\n")+1:])
				}
			}
			return err
		}))
		require.Len(t, said, 1, b.now)
		return said
	}
	require.Equal(t, []string{"No backup yet: see the log."}, standing())
	b.now = b.now.AddDate(0, 0, 7)
	require.NotContains(t, standing()[0], "ackup")
	for b.now.Month() == time.June {
		b.now = b.now.AddDate(0, 0, 7)
	}
	require.Equal(t, "2026-07-04", b.now.Format(time.DateOnly))
	require.NoError(t, b.backups.Beat(t.Context(), b.now))
	require.Equal(t, []string{"Backup: last night."}, standing())
	b.now = b.now.AddDate(0, 0, 28)
	require.Equal(t, []string{"No backup since Sat Jul 4: see the log."}, standing())
	require.NoError(t, b.backups.Beat(t.Context(), b.now.AddDate(0, 1, 3)))
	b.now = b.now.AddDate(0, 0, 35)
	require.Equal(t, []string{"Backup: yesterday."}, standing())
}
