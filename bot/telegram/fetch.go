package telegram

import (
	"context"
	"errors"
	"time"

	"troughbell/bot"
	"troughbell/bot/document"
	"troughbell/store"
)

// fetchTries is how often a file is asked for before its sender is told that it does
// not come.
const fetchTries = 6

// fetch gets the files that messages wait for, one after another and outside of every
// transaction, and has each message handled with its file. Until then the message
// stays in the inbox: an end in between loses nothing.
func (b *Bot) fetch(ctx, calls context.Context) {
	f := fetching{bot: b, tries: map[int64]int{}, from: map[int64]time.Time{}}
	for ctx.Err() == nil {
		wait, err := f.round(ctx, calls)
		switch {
		case err != nil:
			wait = f.trouble().failed(err)
		case wait == 0:
			f.trouble().passed()
			select {
			case <-ctx.Done():
			case <-b.files:
			}
			continue
		}
		sleep(ctx, wait)
	}
}

// fetching is what is known of the files under way; after an end it begins anew.
type fetching struct {
	bot   *Bot
	tries map[int64]int       // by the row of the inbox
	from  map[int64]time.Time // when it may be asked for again
	fails trouble
}

func (f *fetching) trouble() *trouble {
	f.fails.bot, f.fails.what = f.bot, "fetching a file"
	return &f.fails
}

// round goes once through the messages that wait and says how long to wait for the
// next of them; 0 where none does.
func (f *fetching) round(ctx, calls context.Context) (time.Duration, error) {
	var wait time.Duration
	for after := int64(0); ctx.Err() == nil; {
		in, ok, err := f.next(ctx, after)
		if err != nil || !ok {
			return wait, err
		}
		after = in.ID
		rest := f.from[in.ID].Sub(f.bot.Now())
		if rest <= 0 {
			if rest, err = f.one(calls, in); err != nil {
				return 0, err
			}
		}
		if rest > 0 && (wait == 0 || rest < wait) {
			wait = rest
		}
	}
	return wait, nil
}

func (f *fetching) next(ctx context.Context, after int64) (in store.Incoming, ok bool, err error) {
	err = f.bot.Store.Read(ctx, func(tx *store.Tx) error {
		in, ok, err = tx.NextAwaiting(after)
		return err
	})
	return in, ok, err
}

// one fetches the file of a message and has it handled; where that is to be tried
// again it says when.
func (f *fetching) one(calls context.Context, in store.Incoming) (time.Duration, error) {
	u, _, err := readUpdate(in.Raw)
	if err != nil {
		return 0, f.bot.Store.Write(context.WithoutCancel(calls), func(tx *store.Tx) error { return tx.SetAside(in, err.Error()) })
	}
	up := bot.Upload{Name: u.file.name}
	up.Bytes, err = f.bot.client.download(calls, u.file.id, document.MaxIntake)
	switch {
	case err != nil && fateOf(err) == oversized:
		up.Fault = bot.FileTooLarge
	case calls.Err() != nil: // the bot ends; the message waits for the next start
		return time.Second, nil
	case err != nil:
		if rest, again := f.again(in.ID, err); again {
			return rest, nil
		}
		f.bot.Log.Warn("a file could not be fetched", "message", in.Key, "err", err)
		up.Fault = bot.FileUnreachable
	case up.Bytes == nil:
		up.Fault = bot.FileTooLarge
	}
	if err := f.bot.answerWith(in, up); err != nil {
		return 0, err
	}
	delete(f.tries, in.ID)
	delete(f.from, in.ID)
	return 0, nil
}

// fateOf is what became of a call that failed.
func fateOf(err error) outcome {
	var call *callError
	if errors.As(err, &call) {
		return call.what
	}
	return passing
}

// again reports whether a file is worth another try, and when.
func (f *fetching) again(row int64, err error) (time.Duration, bool) {
	switch fateOf(err) {
	case passing, unknown, flood:
	default:
		return 0, false
	}
	f.tries[row]++
	if f.tries[row] >= fetchTries {
		return 0, false
	}
	rest := f.bot.pause(f.tries[row] - 1)
	var call *callError
	if errors.As(err, &call) {
		rest = max(rest, call.wait)
	}
	f.from[row] = f.bot.Now().Add(rest)
	return rest, true
}
