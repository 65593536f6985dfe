package main

import (
	"fmt"
	"os"
	"time"

	"troughbell/bot"
	"troughbell/bot/picture"
	"troughbell/bot/replay"
	"troughbell/bot/terminal"
	"troughbell/model"
	"troughbell/store"
)

// pngFlag is where pictures are saved beside being shown as charts.
type pngFlag struct {
	PNG string `name:"png" placeholder:"DIR" help:"Save pictures as PNG files in this folder, too."`
}

// screen is what charts on standard output can show.
func (a *app) screen() picture.Screen { return terminal.ScreenOf(a.stdout, os.Getenv) }

// page writes a conversation to standard output, with its pictures as charts.
func (a *app) page() *replay.Page {
	p := replay.NewPage(a.stdout)
	p.Screen = a.screen()
	return p
}

// saving saves the pictures of what goes through a writer into the folder.
func (f pngFlag) saving(w replay.Writer) replay.Writer {
	if f.PNG == "" {
		return w
	}
	return pngWriter{w, f.PNG}
}

type pngWriter struct {
	replay.Writer
	folder string
}

// Reply saves the pictures, then passes the reply on.
func (w pngWriter) Reply(at time.Time, r bot.Reply, h *model.Herd) error {
	for _, f := range r.Files {
		if f.Kind != store.Photo {
			continue
		}
		if _, err := terminal.Save(w.folder, f.Name, f.Bytes); err != nil {
			return fmt.Errorf("save the picture %s: %w; name another folder with --png", f.Name, err)
		}
	}
	return w.Writer.Reply(at, r, h)
}
