package main

import (
	"context"
	"errors"
	"fmt"
	"runtime/metrics"
	"strings"
	"time"

	"troughbell/bot/health"
	"troughbell/store"
)

// healthCmd says whether the bot is well.
type healthCmd struct {
	dbFlag
	backupsFlag
}

// Help of the command.
func (healthCmd) Help() string {
	return `Says whether a serve process runs on this database, when it last polled and
sent, what waits and how much room the disk has; exit status 1 where something
is wrong. It reads the database and its lock, and needs no network.

Example: troughbell health --db /data/herd.db`
}

// Run says how the bot is.
func (c healthCmd) Run(a *app) error {
	path := c.file()
	copies, on, err := c.copies(path)
	if err != nil {
		return err
	}
	st, err := store.OpenReader(a.ctx, path)
	if err != nil {
		return err
	}
	defer st.Close()
	v, err := health.Of(a.ctx, st, path, copies, on)
	if err != nil {
		return err
	}
	now := time.Now()
	if _, err := fmt.Fprint(a.stdout, v.Page(now)); err != nil {
		return err
	}
	if ills := v.Ills(now); len(ills) > 0 {
		return errors.New(strings.Join(ills, "\n"))
	}
	return nil
}

// metricsFlag is where the endpoint for who watches the bot listens.
type metricsFlag struct {
	Metrics string `env:"TROUGHBELL_METRICS" placeholder:"ADDRESS" help:"Answer /health and /metrics (Prometheus) over HTTP at this address of the machine itself, as in 127.0.0.1:9310. Without it nothing listens."`
}

// check looks at the address before anything is opened.
func (f metricsFlag) check() error {
	if f.Metrics == "" {
		return nil
	}
	if err := health.CheckAddress(f.Metrics); err != nil {
		return wrongf("--metrics: %w", err)
	}
	return nil
}

// listen answers who watches the bot, until it is stopped.
func (s *server) listen(f metricsFlag, path string, copies store.Copies, keeps bool) (stop func(context.Context) error, err error) {
	if f.Metrics == "" {
		return func(context.Context) error { return nil }, nil
	}
	started := time.Now()
	e := health.Endpoint{
		Now: time.Now,
		Signs: func(ctx context.Context) (health.Signs, error) {
			return health.Of(ctx, s.store, path, copies, keeps)
		},
		Process: func() health.Process {
			p := health.Process{Version: version(), Started: started, Memory: memory()}
			p.Updates, p.TurnedOff, p.Sent, p.Failures = s.edge.Counts()
			return p
		},
	}
	return e.Listen(f.Metrics)
}

// memory is how much the program took from the system.
func memory() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/total:bytes"}}
	metrics.Read(sample)
	if sample[0].Value.Kind() != metrics.KindUint64 {
		return 0
	}
	return sample[0].Value.Uint64()
}
