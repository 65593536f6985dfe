package telegram

import (
	"context"
	"errors"
	"fmt"
	"sync"
	"sync/atomic"
	"time"

	"troughbell/bot/reading"
)

// ErrToken is the error of a token that Telegram does not know.
var ErrToken = errors.New("the token is not accepted by Telegram: check TROUGHBELL_TELEGRAM_TOKEN, or ask BotFather for a new one")

// ErrOther is the error of a second copy that polls with the same token.
var ErrOther = errors.New("another copy of the bot is running with this token: stop it first")

// Bot is the Telegram edge: it polls, keeps what comes in, has it answered, and
// sends what waits in the outbox. Each of these runs by itself; the inbox and
// the outbox in the store are all that lies between them.
type Bot struct {
	Config
	client *client
	me     atomic.Pointer[identity]

	inbox, outbox chan struct{} // something is there
	files         chan struct{} // a message waits for its file
	asides        chan func(context.Context)
	strangers     *strangers
	lines         *lines
	calls         sync.Map // that are under way: what ends each, by its row of the outbox
	pace          *pace
	counts        counts
	troubles      sync.Map // what fails now, so that the log tells of it once
	distress      distress

	stop   context.CancelFunc
	graced context.Context // of calls under way: they outlive the Bot's end by the grace
	wg     sync.WaitGroup
	fatal  chan error
}

// New makes a Bot; nothing runs yet.
func New(c Config) *Bot {
	c = c.withDefaults()
	b := &Bot{
		Config: c, client: newClient(c.API, c.Token),
		inbox: make(chan struct{}, 1), outbox: make(chan struct{}, 1), files: make(chan struct{}, 1),
		asides: make(chan func(context.Context), maxAsides), strangers: newStrangers(),
		lines: newLines(), pace: newPace(c.Limits), fatal: make(chan error, 1),
	}
	c.Store.OnQueued(b.queued)
	return b
}

// Start begins to poll, to answer and to send. It gives a channel that is
// closed when the first poll was answered, and one that gets an error if the
// Bot cannot go on. It is called once; the end of ctx stops the Bot as Stop
// does.
func (b *Bot) Start(ctx context.Context) (ready <-chan struct{}, fatal <-chan error) {
	ctx, b.stop = context.WithCancel(ctx)
	calls, cut := context.WithCancel(context.WithoutCancel(ctx))
	b.graced = calls
	context.AfterFunc(ctx, func() { time.AfterFunc(b.Limits.Grace, cut) })
	up := make(chan struct{})
	b.wg.Go(reading.Prepare)
	b.wg.Go(func() { b.poll(ctx, up) })
	b.wg.Go(func() { b.answer(ctx) })
	b.wg.Go(func() { b.send(ctx, calls) })
	b.wg.Go(func() { b.introduce(ctx) })
	b.wg.Go(func() { b.fetch(ctx, calls) })
	for range asideWorkers {
		b.wg.Go(func() { b.doAsides(ctx, calls) })
	}
	wake(b.inbox)
	return up, b.fatal
}

// Stop ends the poll at once, lets the message being handled end and the calls
// under way too, those for the grace at most, and waits for that as long as ctx
// lasts.
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

func (b *Bot) die(err error) {
	select {
	case b.fatal <- err:
	default: // the first reason counts
	}
}

func wake(c chan struct{}) {
	select {
	case c <- struct{}{}:
	default:
	}
}
