package main

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"os"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"time"

	"troughbell/bot"
	"troughbell/bot/telegram"
	"troughbell/schedule"
	"troughbell/schedule/forecast"
	"troughbell/store"
)

// serveCmd runs the Telegram bot.
type serveCmd struct {
	dbFlag
	zoneFlag
	weatherFlag
	backupsFlag
	metricsFlag
	API   string  `name:"telegram-api" env:"TROUGHBELL_TELEGRAM_API" placeholder:"URL" help:"Base address of the Bot API server, without a trailing slash. Default: the public one."`
	Haste float64 `name:"telegram-haste" env:"TROUGHBELL_TELEGRAM_HASTE" default:"1" placeholder:"N" help:"Send N times as fast as Telegram allows: for tests against a Bot API server of their own on this machine."`
}

// Help of the command.
func (serveCmd) Help() string {
	return `The token comes in TROUGHBELL_TELEGRAM_TOKEN, or in the file that
TROUGHBELL_TELEGRAM_TOKEN_FILE names.

Prints "pair CODE" while nobody owns the server: send the code to the bot.
Copies the database each night; see --backups, and troughbell restore --help.

Example: TROUGHBELL_TELEGRAM_TOKEN_FILE=token troughbell serve`
}

// stopLimit is how long what is under way may take to end. The edge cuts its
// calls off well before.
const stopLimit = 2 * time.Second

// memoryLimit is from where on memory is tidied up more often than time is saved by
// letting it be: what a small board has to spare. Twice of what is in use would
// otherwise be let grow before that is done. GOMEMLIMIT changes it.
const memoryLimit = 140 << 20

// untidied is how much may be left lying before memory is tidied up, in percent of
// what is in use: little is, and most of what a text makes is left at once. GOGC
// changes it.
const untidied = 200

// Run serves until the context ends.
func (c serveCmd) Run(a *app) (err error) {
	token, err := botToken()
	if err != nil {
		return err
	}
	if err := telegram.CheckAPI(c.API); err != nil {
		return wrongf("--telegram-api: %w", err)
	}
	if err := telegram.CheckHaste(c.API, c.Haste); err != nil {
		return wrongf("--telegram-haste: %w", err)
	}
	zone, err := c.location()
	if err != nil {
		return err
	}
	path, err := c.path()
	if err != nil {
		return err
	}
	if err := c.check(); err != nil {
		return err
	}
	source, err := c.source()
	if err != nil {
		return err
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(memoryLimit)
	}
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(untidied)
	}
	s, err := openServer(a, path, telegram.Config{Token: token, API: c.API, Zone: zone, Limits: telegram.Hasty(c.Haste)})
	if err != nil || s == nil {
		return err
	}
	s.source = source
	copies, keeps, err := c.copies(path)
	if err != nil {
		return errors.Join(err, s.store.Close())
	}
	s.desk.Copies = copies.All
	if keeps {
		s.keepBackups(copies, zone)
	}
	stop, err := s.listen(c.metricsFlag, path, copies, keeps)
	if err != nil {
		return errors.Join(err, s.store.Close())
	}
	defer func() {
		ctx, cancel := context.WithTimeout(context.Background(), stopLimit)
		defer cancel()
		err = errors.Join(err, stop(ctx))
	}()
	return s.run(a.ctx)
}

// botToken is the token from the environment or a file; never from a flag,
// which every process list would show.
func botToken() (string, error) {
	token, from := os.Getenv("TROUGHBELL_TELEGRAM_TOKEN"), "TROUGHBELL_TELEGRAM_TOKEN"
	if strings.TrimSpace(token) == "" {
		from = os.Getenv("TROUGHBELL_TELEGRAM_TOKEN_FILE")
		if from == "" {
			return "", wrongf("there is no bot token: set TROUGHBELL_TELEGRAM_TOKEN, or TROUGHBELL_TELEGRAM_TOKEN_FILE to a file that holds it")
		}
		b, err := os.ReadFile(from)
		if err != nil {
			return "", fmt.Errorf("cannot read the token file: %w", err)
		}
		token = string(b)
	}
	token = strings.TrimSpace(token)
	switch {
	case token == "":
		return "", wrongf("the token file %s is empty: put the bot's token into it", from)
	case strings.ContainsFunc(token, func(r rune) bool { return r <= ' ' || r > '~' || strings.ContainsRune("/?#%", r) }):
		return "", wrongf("what %s holds is no bot token: put the one from BotFather there, and nothing else", from)
	}
	return token, nil
}

// server is the Telegram bot with its store and its clock.
type server struct {
	app    *app
	store  *store.Store
	desk   *bot.Desk
	edge   *telegram.Bot
	clock  *schedule.Dispatcher
	source forecast.Source // nil: no forecasts
}

func newServer(a *app, path string, c telegram.Config) (*server, error) {
	var edge *telegram.Bot
	st, err := store.Open(a.ctx, path, store.Options{Role: bot.Serving, PutBack: func() { edge.PutBack() }})
	if err != nil {
		return nil, err
	}
	desk := bot.NewDesk()
	c.Store, c.Desk, c.Log, c.Now = st, desk, a.log, time.Now
	edge = telegram.New(c)
	clock := &bot.Clock{Store: st, Desk: desk}
	return &server{
		app: a, store: st, desk: desk, edge: edge,
		clock: schedule.NewDispatcher(clock, time.Now, ofRound(edge, hourly(a.log, time.Now))),
	}, nil
}

// ofRound is told what goes wrong in the minute's round: the edge of trouble with
// the database, which it meets as well and logs once, and report of the rest.
func ofRound(edge *telegram.Bot, report func(error)) func(error) {
	return func(err error) {
		var p *store.Problem
		if errors.As(err, &p) {
			edge.Report(p)
			return
		}
		report(err)
	}
}

// keepBackups has a copy of the database made each night.
func (s *server) keepBackups(copies store.Copies, zone *time.Location) {
	b := &bot.Backups{Store: s.store, Copies: copies, Zone: zone, Log: s.app.log}
	s.desk.KeepBackups(b)
	s.clock.Also(b.Beat)
}

// hourly logs what goes wrong in the minute's round, and what goes on going
// wrong once an hour.
func hourly(log *slog.Logger, now func() time.Time) func(error) {
	var mu sync.Mutex
	var last string
	var at time.Time
	return func(err error) {
		mu.Lock()
		defer mu.Unlock()
		if err.Error() == last && now().Sub(at) < time.Hour {
			return
		}
		last, at = err.Error(), now()
		log.Error("the minute's round fails", "err", err)
	}
}

// run starts the parts, says when they are ready, and stops them in reverse.
func (s *server) run(ctx context.Context) (err error) {
	defer func() { err = errors.Join(err, s.store.Close()) }()
	defer fetchForecasts(s.app, s.store, s.desk, s.source)()
	// The edge first: the clock reports to it.
	ready, fatal := s.edge.Start(ctx)
	stops := []func(context.Context) error{s.edge.Stop}
	defer func() {
		ctx, cancel := context.WithTimeout(context.Background(), stopLimit)
		defer cancel()
		for _, stop := range slices.Backward(stops) {
			err = errors.Join(err, stop(ctx))
		}
	}()
	if err := s.clock.Start(ctx); err != nil {
		return err
	}
	stops = append(stops, s.clock.Stop)
	for {
		select {
		case <-ctx.Done():
			return nil
		case err := <-fatal:
			return err
		case <-ready:
			ready = nil
			if _, err := fmt.Fprintln(s.app.stdout, "ready"); err != nil {
				s.app.log.Warn("nobody reads the standard output; the bot goes on", "err", err)
			}
		}
	}
}

// valueStarted is the name of the value that says when the program started to
// serve, in Unix seconds.
const valueStarted = "serve.started"

// pair prints a one-time code while the server has no operator. It writes at
// each start, so that a file that can only be read is found before anything is
// taken from Telegram.
func (s *server) pair(ctx context.Context) error {
	var code string
	err := s.store.Write(ctx, func(tx *store.Tx) error {
		var err error
		if code, err = s.edge.PairCode(tx); err != nil {
			return err
		}
		return tx.SetValue(valueStarted, strconv.FormatInt(time.Now().Unix(), 10))
	})
	if err != nil || code == "" {
		return err
	}
	_, err = fmt.Fprintf(s.app.stdout, "pair %s\n", code)
	return err
}
