package main

import (
	"bytes"
	_ "embed" // the season
	"fmt"
	"time"

	"troughbell/bot"
	"troughbell/bot/replay"
	"troughbell/bot/terminal"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// demoSeason is an invented season of an invented herd.
//
//go:embed demo/season.log
var demoSeason []byte

// demoZone is where the invented herd lives.
const demoZone = "America/New_York"

// demoCmd plays the demo.
type demoCmd struct {
	filesFlag
	pngFlag
	NoChat bool `help:"Stop after the season."`
}

// Help of the command.
func (demoCmd) Help() string {
	return `Needs no token, no network and no set-up, and leaves nothing behind
but the files that you ask for.

Example: troughbell demo --no-chat`
}

// Run plays the season, then chats.
func (c demoCmd) Run(a *app) error {
	zone, err := time.LoadLocation(demoZone)
	if err != nil {
		return fmt.Errorf("the demo's time zone: %w", err)
	}
	st, clean, err := scratch(a.ctx)
	if err != nil {
		return err
	}
	defer clean()
	var herd store.HerdID
	err = st.Write(a.ctx, func(tx *store.Tx) error {
		var err error
		herd, err = tx.CreateHerd("", zone.String(), time.Unix(0, 0))
		return err
	})
	if err != nil {
		return err
	}
	p, err := replay.New(a.ctx, st, herd, zone, c.saving(a.page()))
	if err != nil {
		return err
	}
	fmt.Fprintln(a.stdout, `An invented season of seven pigs, played in a moment. ">" is what the keeper
texts, "*" is what the bot says unasked.`)
	if err := p.Play(a.ctx, bytes.NewReader(demoSeason)); err != nil {
		return err
	}
	if c.NoChat {
		return nil
	}
	end, started := p.Now(), time.Now()
	v := wording.Voice{Now: end} // the orchard has US units
	fmt.Fprintf(a.stdout, "\nIt is %s, %s, in the orchard, and the herd is yours to ask about or to text to.\nTry: how long till butcher? | olive 46 girth | what's due? | help\nLeave with Ctrl-D.\n\n",
		v.LongDay(model.DayOf(end)), v.Clock(model.MinuteOf(end)))
	return talk(a, &terminal.Chat{
		Store: st, Desk: bot.NewDesk(), Herd: herd, Files: c.folder(), PNG: c.PNG, Screen: a.screen(),
		Now: func() time.Time { return end.Add(time.Since(started)) },
	})
}
