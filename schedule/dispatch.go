package schedule

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"sync"
	"time"

	"github.com/robfig/cron/v3"
)

// Desk is where the dispatcher finds herds that are due and has them looked at.
type Desk interface {
	// DueHerds lists herds whose time to be looked at has come, at most limit.
	DueHerds(ctx context.Context, now time.Time, limit int) ([]int64, error)
	// Look decides for each of the herds, queues what is due and notes when to look
	// again: all of it for a herd, or nothing. It gives the errors of the herds
	// whose look failed; the others are looked at all the same.
	Look(ctx context.Context, herds []int64, now time.Time) map[int64]error
	// Woke is called before the first sweep, with from zero, and before the first
	// one after a pause of the machine, with the moment of the last sweep.
	Woke(ctx context.Context, from, now time.Time) error
	// Alive notes now and then that the program was running at the moment.
	Alive(ctx context.Context, now time.Time) error
}

const (
	sweepBatch    = 100              // herds asked for at once
	lookBatch     = 5                // herds looked at in one go: a message that comes in waits no longer
	restsFor      = 3                // times as long as a look took
	mostRest      = 30 * time.Second // in a sweep: after an outage all herds are due
	watchdogEvery = 30 * time.Second
	overdue       = 75 * time.Second // a sweep is missing after so long
	pause         = 5 * time.Minute  // the machine slept
	aliveEvery    = 10 * time.Minute
)

// Dispatcher sweeps the desk once a minute, and does what else is to be done each
// minute. A cron entry keeps each beat; a watchdog that compares wall clocks
// steps in where the cron's timer slept with the machine or waits for a future
// that the clock was set back from.
type Dispatcher struct {
	desk   Desk
	now    func() time.Time
	report func(error)

	cron   *cron.Cron
	beats  []*beat // the sweep first
	cancel context.CancelFunc
	done   sync.WaitGroup

	alive time.Time // of the sweep alone
}

// beat is work that is done each minute. None waits for another.
type beat struct {
	work func(ctx context.Context, from, now time.Time) // from is the beat before, zero at first
	job  cron.Job

	mu   sync.Mutex
	last time.Time // wall clock of the last one's start
}

// NewDispatcher makes a dispatcher over the desk. now is the wall clock; report
// is told of every error and panic, and must not block.
func NewDispatcher(desk Desk, now func() time.Time, report func(error)) *Dispatcher {
	d := &Dispatcher{desk: desk, now: now, report: report}
	d.beats = []*beat{{work: d.sweep}}
	return d
}

// Also has other work done at once and then each minute, beside the sweep, which
// does not wait for it; a minute in which it is still at work is passed over. It
// is called before Start.
func (d *Dispatcher) Also(work func(ctx context.Context, now time.Time) error) {
	d.beats = append(d.beats, &beat{work: func(ctx context.Context, _, now time.Time) { d.tell(work(ctx, now)) }})
}

// Start begins to sweep, at once and then each minute, until Stop or until ctx
// ends. It is called once.
func (d *Dispatcher) Start(ctx context.Context) error {
	ctx, d.cancel = context.WithCancel(ctx)
	log := cronLog{d.report}
	// The order matters: with Recover outside, one panic would mean "still
	// running" for ever.
	d.cron = cron.New(cron.WithLogger(log), cron.WithChain(cron.SkipIfStillRunning(log), cron.Recover(log)))
	for _, b := range d.beats {
		id, err := d.cron.AddFunc("* * * * *", func() { d.strike(ctx, b) })
		if err != nil {
			d.cancel()
			return fmt.Errorf("the minute's beat: %w", err)
		}
		b.job = d.cron.Entry(id).WrappedJob
	}
	d.cron.Start()
	for _, b := range d.beats {
		d.done.Go(func() { d.watch(ctx, b) })
	}
	return nil
}

// watch does the work of a beat at once, and then where it is missing.
func (d *Dispatcher) watch(ctx context.Context, b *beat) {
	b.job.Run()
	tick := time.NewTicker(watchdogEvery)
	defer tick.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
			if d.missed(b) {
				b.job.Run()
			}
		}
	}
}

// Stop ends the sweeping and waits for the running one, no longer than ctx.
func (d *Dispatcher) Stop(ctx context.Context) error {
	d.cancel()
	stopped := d.cron.Stop()
	watched := make(chan struct{})
	go func() {
		d.done.Wait()
		close(watched)
	}()
	for _, c := range []<-chan struct{}{stopped.Done(), watched} {
		select {
		case <-c:
		case <-ctx.Done():
			return fmt.Errorf("a sweep is still running: %w", ctx.Err())
		}
	}
	return nil
}

// missed reports whether a beat is overdue by the wall clock, or lies in the
// clock's future.
func (d *Dispatcher) missed(b *beat) bool {
	now := d.wall()
	b.mu.Lock()
	defer b.mu.Unlock()
	return now.Sub(b.last) > overdue || now.Before(b.last)
}

// wall is the wall clock without the monotonic reading, which stands still
// while the machine sleeps.
func (d *Dispatcher) wall() time.Time { return d.now().Round(0) }

// strike does the work of a beat.
func (d *Dispatcher) strike(ctx context.Context, b *beat) {
	if ctx.Err() != nil {
		return
	}
	now := d.wall()
	b.mu.Lock()
	from := b.last
	b.last = now
	b.mu.Unlock()
	b.work(ctx, from, now)
}

// sweep is one sweep with what goes before and after it.
func (d *Dispatcher) sweep(ctx context.Context, from, now time.Time) {
	if from.IsZero() || now.Sub(from) >= pause {
		d.tell(d.desk.Woke(ctx, from, now))
	}
	d.tell(Sweep(ctx, &unhurried{Desk: d.desk, now: d.now}, now))
	if now.Sub(d.alive) >= aliveEvery || now.Before(d.alive) {
		d.alive = now
		d.tell(d.desk.Alive(ctx, now))
	}
}

func (d *Dispatcher) tell(err error) {
	if err != nil && !errors.Is(err, context.Canceled) {
		d.report(err)
	}
}

// unhurried is a desk that leaves time to who texts: in a long sweep it rests after
// each look for three times as long as that took, half a minute in all.
type unhurried struct {
	Desk
	now    func() time.Time
	looks  int
	rested time.Duration
}

// Look implements Desk.
func (u *unhurried) Look(ctx context.Context, herds []int64, now time.Time) map[int64]error {
	began := u.now()
	errs := u.Desk.Look(ctx, herds, now)
	if u.looks += len(herds); u.looks <= sweepBatch || u.rested >= mostRest {
		return errs
	}
	rest := max(0, min(restsFor*u.now().Sub(began), mostRest-u.rested)) // the clock may be set back
	u.rested += rest
	timer := time.NewTimer(rest)
	defer timer.Stop()
	select {
	case <-timer.C:
	case <-ctx.Done():
	}
	return errs
}

// Sweep has every herd that is due looked at once. A herd whose look fails is
// passed over until the next sweep; the errors are joined.
func Sweep(ctx context.Context, desk Desk, now time.Time) error {
	var failed []error
	seen := map[int64]bool{}
	for {
		// Herds that failed are due still and take up room in the answer.
		herds, err := desk.DueHerds(ctx, now, sweepBatch+len(failed))
		if err != nil {
			return errors.Join(append(failed, err)...)
		}
		var fresh []int64
		for _, id := range herds {
			if !seen[id] {
				seen[id] = true
				fresh = append(fresh, id)
			}
		}
		for batch := range slices.Chunk(fresh, lookBatch) {
			if err := ctx.Err(); err != nil {
				return errors.Join(append(failed, err)...)
			}
			errs := desk.Look(ctx, batch, now)
			for _, id := range batch {
				if err := errs[id]; err != nil {
					failed = append(failed, fmt.Errorf("herd %d: %w", id, err))
				}
			}
		}
		if len(fresh) == 0 {
			return errors.Join(failed...)
		}
	}
}

// cronLog passes on errors, panics among them, and drops the rest: cron's own
// logger would write to standard output, where the chat is.
type cronLog struct{ report func(error) }

func (cronLog) Info(string, ...any) {}

func (l cronLog) Error(err error, msg string, with ...any) {
	l.report(fmt.Errorf("%s: %w %v", msg, err, with))
}
