package telegram

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"sync"
	"sync/atomic"
	"time"

	"troughbell/bot"
	"troughbell/store"
)

// Limits of sending. The zero value of a field is Telegram's own.
type Limits struct {
	PerSecond      float64 // over all chats
	ChatPerSecond  float64 // in one chat
	GroupPerMinute float64 // in one group
}

func (l Limits) orTelegrams() Limits {
	if l.PerSecond == 0 {
		l.PerSecond = 25
	}
	if l.ChatPerSecond == 0 {
		l.ChatPerSecond = 1
	}
	if l.GroupPerMinute == 0 {
		l.GroupPerMinute = 20
	}
	return l
}

// Config is what a Bot runs with.
type Config struct {
	Store  *store.Store
	Desk   *bot.Desk
	Log    *slog.Logger
	Token  string
	API    string // base address of the Bot API server; empty: the public one
	Zone   *time.Location
	Limits Limits
	Now    func() time.Time
}

// Bot is the Telegram edge: it polls, keeps what comes in, has it answered, and
// sends what waits in the outbox.
type Bot struct {
	Config
	client *client
	name   atomic.Pointer[string] // the bot's own user name, for /cmd@name

	inbox, outbox chan struct{} // something is there
	strangers     *toldOnce
	pace          *pace

	stop  context.CancelFunc
	wg    sync.WaitGroup
	fatal chan error
}

// New makes a Bot; nothing runs yet.
func New(c Config) *Bot {
	if c.API == "" {
		c.API = PublicAPI
	}
	if c.Now == nil {
		c.Now = time.Now
	}
	c.Limits = c.Limits.orTelegrams()
	return &Bot{
		Config: c, client: newClient(c.API, c.Token),
		inbox: make(chan struct{}, 1), outbox: make(chan struct{}, 1),
		strangers: newToldOnce(), pace: newPace(c.Limits),
		fatal: make(chan error, 1),
	}
}

// ErrToken is the error of a token that Telegram does not know.
var ErrToken = errors.New("Telegram does not accept the token: check TROUGHBELL_TELEGRAM_TOKEN, or ask BotFather for a new one")

// ErrOther is the error of a second copy that polls with the same token.
var ErrOther = errors.New("another copy of the bot is running with this token: stop it first")

// Start begins to poll, to answer and to send. It gives a channel that is
// closed when the first poll was answered, and one that gets an error if the
// Bot cannot go on.
func (b *Bot) Start(ctx context.Context) (ready <-chan struct{}, fatal <-chan error) {
	ctx, b.stop = context.WithCancel(ctx)
	up := make(chan struct{})
	b.wg.Go(func() { b.poll(ctx, up) })
	b.wg.Go(func() { b.answer(ctx) })
	b.wg.Go(func() { b.send(ctx) })
	b.wg.Go(func() { b.keepIntroducing(ctx) })
	wake(b.inbox)
	wake(b.outbox)
	return up, b.fatal
}

// Stop ends the poll at once, lets the message and the call under way end, and
// waits for that as long as ctx lasts.
func (b *Bot) Stop(ctx context.Context) error {
	b.stop()
	done := make(chan struct{})
	go func() { b.wg.Wait(); close(done) }()
	select {
	case <-done:
		return nil
	case <-ctx.Done():
		return fmt.Errorf("stop the bot: %w", ctx.Err())
	}
}

// Wake tells the sender that something waits in the outbox.
func (b *Bot) Wake() { wake(b.outbox) }

func (b *Bot) die(err error) {
	select {
	case b.fatal <- err:
	default:
	}
}

func wake(c chan struct{}) {
	select {
	case c <- struct{}{}:
	default:
	}
}

// sleep waits, and reports whether it was for the whole span.
func sleep(ctx context.Context, d time.Duration) bool {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-ctx.Done():
		return false
	case <-t.C:
		return true
	}
}

// backoff grows from a second to a minute and is reset by a success.
type backoff struct{ n int }

func (b *backoff) next() time.Duration {
	d := time.Second << min(b.n, 6)
	b.n++
	return min(d, time.Minute)
}
