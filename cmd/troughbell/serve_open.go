package main

import (
	"context"
	"errors"
	"os"
	"time"

	"troughbell/bot/telegram"
	"troughbell/store"
)

// openServer opens the database and says the pairing code. Where a fault of the
// disk is in the way, which passes or is put right without the program, it says so
// once, in the log and to whoever runs the server, and waits; nil without an error
// where it was stopped meanwhile.
func openServer(a *app, path string, c telegram.Config) (*server, error) {
	var fault *store.Problem // the first
	for try := 0; ; try++ {
		s, err := openOnce(a, path, c)
		if err == nil {
			if fault != nil {
				a.log.Info("the database works again")
			}
			return s, nil
		}
		p, passes := passing(path, err)
		if !passes {
			return nil, err
		}
		if fault == nil {
			fault = p
			a.log.Warn("the database fails; trying again until it works", "err", p)
			tellOfFault(a, path, c, p)
		}
		select {
		case <-a.ctx.Done():
			return nil, nil
		case <-time.After(c.Limits.Pause(try)):
		}
	}
}

func openOnce(a *app, path string, c telegram.Config) (*server, error) {
	s, err := newServer(a, path, c)
	if err != nil {
		return nil, err
	}
	if err := s.pair(a.ctx); err != nil {
		return nil, errors.Join(err, s.store.Close())
	}
	return s, nil
}

// passing is the fault of the disk that an error tells of. A herd that waits
// behind it is worth waiting for; where there is none yet, a wrong path or wrong
// permissions are to be seen at once.
func passing(path string, err error) (p *store.Problem, ok bool) {
	if !errors.As(err, &p) {
		return nil, false
	}
	switch p.Code {
	case store.Full, store.ReadOnly, store.Unusable, store.Busy:
		info, err := os.Stat(path)
		return p, err == nil && info.Size() > 0
	}
	return nil, false
}

// lastWords is how long the operators are told at most that the program cannot
// start yet.
const lastWords = 15 * time.Second

// tellOfFault tells the operators of it, where the database can be read.
func tellOfFault(a *app, path string, c telegram.Config, p *store.Problem) {
	ctx, cancel := context.WithTimeout(a.ctx, lastWords)
	defer cancel()
	st, err := store.OpenReader(ctx, path)
	if err != nil {
		a.log.Warn("who runs the server cannot be told on Telegram", "err", err)
		return
	}
	c.Store, c.Log, c.Now = st, a.log, time.Now
	err = telegram.New(c).TellFault(ctx, p)
	if err = errors.Join(err, st.Close()); err != nil {
		a.log.Warn("who runs the server could not be told on Telegram", "err", err)
	}
}
