package bot

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"strconv"
	"strings"
	"sync"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Backups has a copy of the database made each night, and knows how old the
// newest one is.
type Backups struct {
	Store  *store.Store
	Copies store.Copies
	Zone   *time.Location // of the nights while no herd has a zone of its own
	Log    *slog.Logger

	mu      sync.Mutex
	again   time.Time // after a failure: no sooner
	failing bool
	why     store.ProblemCode // of the failure that the log has; empty: some other
}

// backupRetry is how long after a failed copy the next is tried.
const backupRetry = time.Hour

// valueNoBackup is the name of the value that says since when no copy could be
// made, in Unix seconds, and the code of what the operator was told as the cause,
// if it has one; empty while all is well.
const valueNoBackup = "backup.failing"

// NoBackup is since when no copy of the database could be made, and the code of
// the cause, empty where it has none; zero while all is well.
func NoBackup(tx *store.Tx) (since time.Time, why store.ProblemCode, err error) {
	v, err := tx.Value(valueNoBackup)
	if err != nil || v == "" {
		return time.Time{}, "", err
	}
	at, code, _ := strings.Cut(v, " ")
	n, err := strconv.ParseInt(at, 10, 64)
	if err != nil {
		return time.Time{}, "", fmt.Errorf("since when no backup could be made: %w", err)
	}
	return time.Unix(n, 0), store.ProblemCode(code), nil
}

// Beat makes the night's copy where it is missing: at the quiet hour, or at once
// where the program was off then. It is the minute's work; see
// [schedule.Dispatcher.Also].
func (b *Backups) Beat(ctx context.Context, now time.Time) error {
	zone, err := b.zone(ctx)
	if err != nil {
		return err
	}
	now = now.In(zone)
	if b.waits(now) {
		return nil
	}
	newest, ok, err := b.newest(model.DayOf(now))
	if err == nil && ok && newest.On >= schedule.NightOf(now) {
		return nil
	}
	if err == nil {
		_, err = b.Copies.Make(ctx, b.Store, now)
	}
	switch {
	case ctx.Err() != nil:
		return ctx.Err() // the program ends; nothing is wrong with the disk
	case err != nil:
		return b.failed(ctx, err, now)
	}
	return errors.Join(b.worked(ctx), b.Copies.Prune(model.DayOf(now)))
}

// zone is where it is night: that of the first herd, whose owner runs the server.
func (b *Backups) zone(ctx context.Context) (*time.Location, error) {
	zone := b.Zone
	err := b.Store.Read(ctx, func(tx *store.Tx) error {
		row, ok, err := tx.FirstHerd()
		if err != nil || !ok {
			return err
		}
		zone, err = store.Zone(row.Zone)
		return err
	})
	if err != nil {
		return nil, fmt.Errorf("zone of the nightly backup: %w", err)
	}
	return zone, nil
}

// newest is the newest copy of a day that has come; a clock that was ahead may
// have left others.
func (b *Backups) newest(today model.Day) (c store.Copy, ok bool, err error) {
	all, err := b.Copies.List()
	for _, k := range all {
		if k.On <= today {
			c, ok = k, true
		}
	}
	return c, ok, err
}

// waits reports whether a copy failed a short while ago. A clock that was set
// back makes no long wait of it.
func (b *Backups) waits(now time.Time) bool {
	b.mu.Lock()
	defer b.mu.Unlock()
	left := b.again.Sub(now)
	return left > 0 && left <= backupRetry
}

// failed logs a failure and tells the operator of it, both once until a copy
// works again or fails for another cause: a disk that was full may turn out to be
// damaged. One that is full may not take the word to the operator; the next try
// takes it along.
func (b *Backups) failed(ctx context.Context, cause error, now time.Time) error {
	var code store.ProblemCode
	sentence := ""
	if p := (*store.Problem)(nil); errors.As(cause, &p) {
		code, sentence = p.Code, p.Sentence
	}
	b.mu.Lock()
	first := !b.failing || b.why != code
	b.failing, b.why, b.again = true, code, now.Add(backupRetry)
	b.mu.Unlock()
	if first {
		b.Log.Error("no backup could be made; trying again each hour", "err", cause)
	}
	err := b.Store.Write(ctx, func(tx *store.Tx) error {
		since, told, err := NoBackup(tx)
		if err != nil || !since.IsZero() && told == code {
			return err
		}
		if since.IsZero() {
			since = now
		}
		return errors.Join(b.tellOperator(tx, sentence, now), tx.SetValue(valueNoBackup, fmt.Sprintf("%d %s", since.Unix(), code)))
	})
	if err != nil && first {
		return fmt.Errorf("tell the operator that no backup could be made: %w", err)
	}
	return nil
}

func (b *Backups) tellOperator(tx *store.Tx, why string, now time.Time) error {
	chats, err := tx.OperatorChats()
	if err != nil {
		return err
	}
	for _, c := range chats {
		_, err := tx.Queue(&store.Outgoing{
			Key: fmt.Sprintf("backup:%d:%d", c.ID, now.Unix()), Herd: c.Herd, Chat: c.ID, Kind: "notice",
			Text: wording.BackupFails(why), Quiet: true, // it is night
		})
		if err != nil {
			return err
		}
	}
	return nil
}

// worked notes that a copy was made.
func (b *Backups) worked(ctx context.Context) error {
	b.mu.Lock()
	was := b.failing
	b.failing, b.why, b.again = false, "", time.Time{}
	b.mu.Unlock()
	if was {
		b.Log.Info("backups work again")
	}
	return b.Store.Write(ctx, func(tx *store.Tx) error {
		since, err := tx.Value(valueNoBackup)
		if err != nil || since == "" {
			return err
		}
		return tx.SetValue(valueNoBackup, "")
	})
}

// KeepBackups has the desk say once a month how old the newest copy is.
func (d *Desk) KeepBackups(b *Backups) { d.backups = b }

// backupLine is the line on the newest copy that goes with the first standing
// message of a month; empty in any other, and where no copies are kept.
func (d *Desk) backupLine(tx *store.Tx, s *State, v wording.Voice) (string, error) {
	if d.backups == nil || !firstOfMonth(s.Herd, v.Now) {
		return "", nil
	}
	today := model.DayOf(v.Now)
	// The copy is named for the day where the first herd is; that may be a day ahead.
	newest, _, err := d.backups.newest(today + 1)
	if err != nil { // the log has it from the night's try
		newest = store.Copy{}
	}
	ms, err := tx.Members(s.Row.ID)
	if err != nil {
		return "", err
	}
	operated := false
	for _, m := range ms {
		operated = operated || m.Operator
	}
	return v.Backup(newest.On, operated), nil
}

// firstOfMonth reports whether the herd was told no standing message yet in the
// month of now.
func firstOfMonth(h *model.Herd, now time.Time) bool {
	year, month, _ := model.DayOf(now).Date()
	for _, t := range h.Tolds {
		if y, m, _ := t.On.Date(); t.F.Standing && y == year && m == month {
			return false
		}
	}
	return true
}
