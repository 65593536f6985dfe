package main

import (
	"context"
	"time"

	"troughbell/bot"
	"troughbell/bot/terminal"
	"troughbell/store"
)

// chatCmd chats in the terminal.
type chatCmd struct {
	dbFlag
	herdFlag
	zoneFlag
	weatherFlag
	filesFlag
	pngFlag
}

// Help of the command.
func (chatCmd) Help() string {
	return `Reads one message a line and exits at the end of input where that is no
terminal.

Example: troughbell chat

Example: echo "how much feed is left" | troughbell chat --db herd.db`
}

// Run chats.
func (c chatCmd) Run(a *app) error {
	zone, err := c.location()
	if err != nil {
		return err
	}
	path, err := c.path()
	if err != nil {
		return err
	}
	st, err := store.Open(a.ctx, path, store.Options{Role: "chat"})
	if err != nil {
		return err
	}
	defer st.Close()
	herd, err := c.herd(a.ctx, st, zone, time.Now(), false)
	if err != nil {
		return err
	}
	source, err := c.source()
	if err != nil {
		return err
	}
	copies, err := store.CopiesOf(path, "")
	if err != nil {
		return err
	}
	desk := bot.NewDesk()
	desk.Copies = copies.All
	defer fetchForecasts(a, st, desk, source)()
	return talk(a, &terminal.Chat{Store: st, Desk: desk, Herd: herd, Now: time.Now, Files: c.folder(), PNG: c.PNG, Screen: a.screen()})
}

// talk runs a terminal chat with its nudges until it ends.
func talk(a *app, c *terminal.Chat) error {
	if err := c.Open(a.ctx); err != nil {
		return err
	}
	ctx, stop := context.WithCancel(a.ctx)
	defer stop()
	ticking := make(chan struct{})
	go func() {
		defer close(ticking)
		tick := time.NewTicker(20 * time.Second)
		defer tick.Stop()
		for {
			select {
			case <-ctx.Done():
				return
			case <-tick.C:
				if err := c.Look(ctx); err != nil && ctx.Err() == nil {
					a.log.Error("look for nudges", "err", err)
				}
			}
		}
	}()
	in := a.stdin
	if !terminal.Interactive(a.stdin, a.stdout) {
		in = newUntilDone(ctx, a.stdin)
	}
	err := c.Run(ctx, in, a.stdout)
	stop()
	<-ticking
	return err
}
