// Package health tells whether the bot is well: from the database and its lock
// alone, so that it can be asked from beside the bot, without a network.
package health

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/bot/telegram"
	"troughbell/store"
)

// Signs are the vital signs of a bot.
type Signs struct {
	Running bool   // a process serves the database
	Holder  string // what holds the database: "process 12, serve"; empty: nothing does

	Polled time.Time // when Telegram answered a poll last
	Sent   time.Time // when it took a message last
	Round  time.Time // when the herds were gone through last, to some ten minutes

	Inbox      int       // messages that wait to be handled
	InboxSince time.Time // since when the oldest of them does
	Outbox     int       // messages that wait to be sent
	Herds      int

	Bytes     int64 // of the database
	Free      uint64
	FreeKnown bool

	Backups bool // copies are kept
	Backup  store.Copy
	// NoBackup is since when none could be made, and why; zero while all is well.
	NoBackup time.Time
	WhyNone  store.ProblemCode
}

// Limits beyond which something is wrong.
const (
	pollLimit  = 5 * time.Minute
	roundLimit = 25 * time.Minute
	inboxLimit = 5 * time.Minute
	spaceLimit = 64 << 20 // bytes
)

// Of reads the signs of the bot that serves the database at path, from a store
// that has it open. keeps says whether copies are kept.
func Of(ctx context.Context, s *store.Store, path string, copies store.Copies, keeps bool) (v Signs, err error) {
	lock, held, err := store.Held(path)
	if err != nil {
		return v, err
	}
	v.Running = held && lock.Role == bot.Serving
	if held {
		v.Holder = lock.String()
	}
	err = s.Read(ctx, func(tx *store.Tx) error {
		var errs [4]error
		v.Polled, v.Sent, errs[0] = telegram.Pulse(tx)
		v.Round, errs[1] = bot.LastRound(tx)
		var b store.Backlog
		b, errs[2] = tx.Backlog()
		v.NoBackup, v.WhyNone, errs[3] = bot.NoBackup(tx)
		v.Inbox, v.InboxSince, v.Outbox, v.Herds = b.Incoming, b.Since, b.Outgoing, b.Herds
		return errors.Join(errs[:]...)
	})
	if err != nil {
		return v, err
	}
	if v.Bytes, v.Free, v.FreeKnown, err = store.Space(path); err != nil || !keeps {
		return v, err
	}
	v.Backups = true
	all, err := copies.List()
	if err == nil && len(all) > 0 {
		v.Backup = all[len(all)-1]
	}
	return v, err
}

// Ills lists what is wrong, each as a sentence that says what to do; none where
// all is well.
func (v Signs) Ills(now time.Time) []string {
	out := v.illsOfRunning(now)
	if v.FreeKnown && v.Free < spaceLimit {
		out = append(out, fmt.Sprintf("the disk is nearly full, %s left; make room", size(v.Free)))
	}
	switch {
	case !v.Backups || v.NoBackup.IsZero():
	case v.WhyNone == store.Damaged:
		out = append(out, "no backup could be made "+since(v.NoBackup, now)+": the database is damaged; keep the file, and put the latest backup in its place with troughbell restore")
	default:
		out = append(out, "no backup could be made "+since(v.NoBackup, now)+"; look into the log")
	}
	return out
}

func (v Signs) illsOfRunning(now time.Time) (out []string) {
	if !v.Running {
		if v.Holder != "" {
			return []string{"the bot does not run: the database is open in another troughbell (" + v.Holder + "); stop that one and start serve"}
		}
		return []string{"the bot does not run; start it with troughbell serve"}
	}
	old := func(t time.Time, limit time.Duration) bool { return now.Sub(t) > limit }
	if old(v.Polled, pollLimit) {
		out = append(out, "Telegram was reached "+ago(v.Polled, now)+"; check the network and the log")
	}
	if old(v.Round, roundLimit) {
		out = append(out, "the herds were gone through "+ago(v.Round, now)+"; look into the log and start the bot again")
	}
	if v.Inbox > 0 && old(v.InboxSince, inboxLimit) {
		out = append(out, fmt.Sprintf("messages wait to be handled, the oldest came %s; look into the log", ago(v.InboxSince, now)))
	}
	return out
}

// since says for how long something has lasted.
func since(t, now time.Time) string {
	return "for " + strings.TrimSuffix(ago(t, now), " ago")
}

// Page says the signs, one a line.
func (v Signs) Page(now time.Time) string {
	var b strings.Builder
	line := func(what, how string) { fmt.Fprintf(&b, "%s: %s\n", what, how) }
	holder := v.Holder
	if holder == "" {
		holder = "none"
	}
	line("open in", holder)
	line("polled", ago(v.Polled, now))
	line("sent", ago(v.Sent, now))
	line("round", ago(v.Round, now))
	line("waiting", fmt.Sprintf("%d in, %d out", v.Inbox, v.Outbox))
	disk := size(uint64(v.Bytes)) + " used"
	if v.FreeKnown {
		disk += ", " + size(v.Free) + " free"
	}
	line("disk", disk)
	switch {
	case !v.Backups:
		line("backup", "off")
	case v.Backup.Path == "":
		line("backup", "none yet")
	default:
		line("backup", v.Backup.On.String())
	}
	return b.String()
}

// ago says how long ago a moment was.
func ago(t, now time.Time) string {
	switch d := now.Sub(t); {
	case t.IsZero():
		return "never"
	case d < 0:
		return "at " + t.UTC().Format(time.RFC3339) + ", which is to come"
	case d < 2*time.Minute:
		return fmt.Sprintf("%d s ago", int(d.Seconds()))
	case d < 2*time.Hour:
		return fmt.Sprintf("%d min ago", int(d.Minutes()))
	case d < 48*time.Hour:
		return fmt.Sprintf("%d h ago", int(d.Hours()))
	default:
		return fmt.Sprintf("%d days ago", int(d.Hours()/24))
	}
}

// size says an amount of bytes.
func size(n uint64) string {
	switch {
	case n < 10_000:
		return fmt.Sprintf("%d B", n)
	case n < 10_000_000:
		return fmt.Sprintf("%d kB", n/1000)
	case n < 10_000_000_000:
		return fmt.Sprintf("%d MB", n/1_000_000)
	default:
		return fmt.Sprintf("%d GB", n/1_000_000_000)
	}
}
