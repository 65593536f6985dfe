package terminal

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"
	"sync"
	"time"

	"troughbell/bot"
	"troughbell/bot/picture"
	"troughbell/bot/wording"
	"troughbell/store"
)

// Chat is one terminal on one herd.
type Chat struct {
	Store *store.Store
	Desk  *bot.Desk
	Herd  store.HerdID
	// Now is the clock, which may run ahead of the world's (a demo).
	Now func() time.Time
	// Files is the folder that files are saved into; it is made when there is one.
	Files string
	// PNG is the folder that pictures are saved into as well; empty: they are only
	// shown as charts of characters, on Screen.
	PNG    string
	Screen picture.Screen

	mu      sync.Mutex // one transaction and its output at a time
	clock   *bot.Clock
	alive   time.Time // when it was last noted that the chat is open
	lost    int       // texts that could not be kept
	chat    store.ChatID
	me      store.Member
	screen  io.Writer
	width   int      // of the screen, in characters; 0: not known
	buttons []string // of what was said last, for a bare number
	count   int
	charts  []string // of the pictures that wait in the outbox
	over    bool     // the herd, or who sits here, was taken out
}

// Open finds the terminal's chat and person in the herd, or makes them: who
// sits at the terminal owns the herd where nobody does yet.
func (c *Chat) Open(ctx context.Context) error {
	c.clock = &bot.Clock{Store: c.Store, Desk: c.Desk}
	if err := c.clock.Woke(ctx, time.Time{}, c.Now()); err != nil {
		return err
	}
	return c.Store.Write(ctx, func(tx *store.Tx) error {
		chat, err := tx.ChatOf("terminal", fmt.Sprint(c.Herd), false)
		if err != nil {
			return err
		}
		if chat.Person == 0 {
			if chat.Person, err = Owner(tx, c.Herd); err != nil {
				return err
			}
			chat.Herd = c.Herd
			if err := tx.SaveChat(chat); err != nil {
				return err
			}
		}
		c.chat = chat.ID
		m, ok, err := tx.Member(c.Herd, chat.Person)
		if err != nil {
			return err
		}
		if !ok {
			return fmt.Errorf("the terminal's person is no member of the herd")
		}
		c.me = m
		return nil
	})
}

// Owner is the person who owns a herd; where nobody does yet, one is made.
func Owner(tx *store.Tx, herd store.HerdID) (store.PersonID, error) {
	members, err := tx.Members(herd)
	if err != nil {
		return 0, err
	}
	for _, m := range members {
		if m.Role == store.Owner {
			return m.Person, nil
		}
	}
	id, err := tx.CreatePerson("")
	if err != nil {
		return 0, err
	}
	return id, tx.Join(herd, id, store.Owner)
}

// Run chats until the end of input, or until ctx is done. Where in is a
// terminal, lines can be edited and recalled, and nudges that come while typing
// do not break the line; else one message a line is read.
func (c *Chat) Run(ctx context.Context, in io.Reader, out io.Writer) error {
	if Interactive(in, out) {
		return c.interactive(ctx, in.(*os.File), out.(*os.File))
	}
	if err := c.begin(ctx, out); err != nil {
		return err
	}
	return c.lines(ctx, in)
}

// begin takes the screen and shows what has fallen due meanwhile.
func (c *Chat) begin(ctx context.Context, screen io.Writer) error {
	c.mu.Lock()
	c.screen = screen
	c.mu.Unlock()
	return c.Look(ctx)
}

// lines reads one message a line. That a text could not be kept is an error at
// the end: nobody may be there to read it on the screen.
func (c *Chat) lines(ctx context.Context, in io.Reader) error {
	r := bufio.NewReader(in)
	late := 0 // texts for which there is no herd any more
	for {
		l, err := r.ReadString('\n')
		if ctx.Err() != nil {
			break
		}
		if strings.TrimSpace(l) != "" {
			if c.over {
				late++
			} else if herr := c.hear(ctx, strings.TrimRight(l, "\r\n")); herr != nil {
				return herr
			}
		}
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return fmt.Errorf("read the input: %w", err)
		}
	}
	if late > 0 {
		return fmt.Errorf("texts that came after the end of this chat were not kept (%d): start a new chat for them", late)
	}
	if c.lost > 0 {
		return fmt.Errorf("%d of the texts could not be kept: put right what the chat says of it, and send them again", c.lost)
	}
	return nil
}

// greet starts the conversation of a herd that has none yet.
func (c *Chat) greet(ctx context.Context) error {
	var fresh bool
	err := c.Store.Read(ctx, func(tx *store.Tx) error {
		row, err := tx.Herd(c.Herd)
		fresh = row.Seq == 0
		return err
	})
	if err != nil || !fresh {
		return err
	}
	return c.hear(ctx, "start")
}

// hear takes one line: a text, or the number of a button shown last.
func (c *Chat) hear(ctx context.Context, text string) error {
	text = strings.TrimSpace(text)
	if text == "" {
		return nil
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	press := false
	if n, err := strconv.Atoi(text); err == nil && n >= 1 && n <= len(c.buttons) {
		text, press = c.buttons[n-1], true
	}
	c.buttons = nil
	ctx = context.WithoutCancel(ctx) // what was begun is answered before the chat stops
	var file *bot.Upload
	if path, ok := importing(text); ok {
		u, err := ReadUpload(path)
		if err != nil {
			c.lost++
			_, err = io.WriteString(c.screen, c.shown(fmt.Sprintf("Nothing imported: %v\n", err)))
			return err
		}
		file = &u
	}
	now := c.Now()
	c.count++
	var out bot.Outcome
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		me, ok, err := tx.Member(c.Herd, c.me.Person) // the herd may have been handed on
		if err != nil {
			return err
		}
		if ok {
			c.me = me
		}
		m := bot.Message{
			Herd: c.Herd, Chat: c.chat, From: c.me, Text: text, At: now, Pressed: press, Upload: file,
			ID: fmt.Sprintf("%d-%d", now.UnixMilli(), c.count),
		}
		if out, err = c.Desk.Handle(tx, m); err != nil || out.Gone != "" {
			return err
		}
		c.charts = c.chartsOf(out.Replies)
		return c.Desk.Queue(tx, m, out)
	})
	if err != nil {
		c.Desk.Forget(c.Herd)
		// What could not be kept is said so; the chat goes on.
		c.lost++
		_, werr := io.WriteString(c.screen, c.shown(fmt.Sprintf("Not recorded: %v\n", err)))
		return werr
	}
	if len(out.Farewells) > 0 {
		if err := c.farewell(out); err != nil || c.over {
			return err
		}
	}
	return c.drain(ctx)
}

// Look looks at the herd and shows the nudges that fall due. The first look
// after a time in which no chat was open tells of that.
func (c *Chat) Look(ctx context.Context) error {
	c.mu.Lock()
	defer c.mu.Unlock()
	ctx = context.WithoutCancel(ctx)
	now := c.Now()
	if c.over {
		return nil
	}
	if err := c.clock.Look(ctx, []int64{int64(c.Herd)}, now)[int64(c.Herd)]; err != nil {
		return err
	}
	if now.Sub(c.alive) >= aliveEvery {
		if err := c.clock.Alive(ctx, now); err != nil {
			return err
		}
		c.alive = now
	}
	return c.drain(ctx)
}

// aliveEvery is how often it is noted that the chat is open.
const aliveEvery = time.Minute

// drain shows what waits in the outbox for this terminal, and drops what is too
// old to be worth saying: it may have waited since the terminal was open last.
func (c *Chat) drain(ctx context.Context) error {
	if c.screen == nil {
		return nil
	}
	now := c.Now()
	return c.Store.Write(ctx, func(tx *store.Tx) error {
		for {
			o, ok, err := tx.NextTo(c.chat)
			if err != nil || !ok {
				return err
			}
			worth, err := c.worth(tx, o, now)
			if err != nil {
				return err
			}
			o.State = store.Dropped
			if worth {
				if err := c.show(tx, o); err != nil {
					return err
				}
				o.State, o.Sent = store.Sent, fmt.Sprint(o.ID)
			}
			if err := tx.SaveOutgoing(o); err != nil {
				return err
			}
		}
	})
}

// worth reports whether something is worth saying still. A danger has no end of
// its own: it is, while nobody has settled it.
func (c *Chat) worth(tx *store.Tx, o store.Outgoing, now time.Time) (bool, error) {
	switch {
	case !o.GoodUntil.IsZero():
		return !now.After(o.GoodUntil), nil
	case o.Kind == "nudge":
		return c.Desk.StillDue(tx, o.Herd, o.Told, now)
	}
	return true, nil
}

func (c *Chat) show(tx *store.Tx, o store.Outgoing) error {
	saved := ""
	chart := c.nextChart(o.File)
	if o.File != nil && c.folderFor(o.File) != "" {
		b, err := tx.FileBytes(o.ID)
		if err != nil {
			return err
		}
		saved = "File: "
		if path, err := save(c.folderFor(o.File), o.File.Name, b); err != nil { // the chat goes on
			saved = fmt.Sprintf("The file %s could not be saved: %v. Name a folder with --files and ask again.", o.File.Name, err)
		} else {
			saved += path
		}
	}
	mark := ""
	if o.Kind == "nudge" {
		mark = "* "
	}
	var page strings.Builder
	text := strings.Split(c.shown(o.Text), "\n")
	if o.File != nil && o.Text == "" {
		text = nil
	}
	for _, l := range text {
		for _, part := range wrap(l, c.width-len(mark)) {
			fmt.Fprintf(&page, "%s%s\n", mark, part)
			mark = strings.Repeat(" ", len(mark))
		}
	}
	page.WriteString(chart)
	if saved != "" { // as it is, in one line: a path is to be copied
		fmt.Fprintf(&page, "%s%s\n", mark, saved)
	}
	c.buttons = nil
	var labels []string
	for _, row := range o.Buttons {
		for _, l := range row {
			c.buttons = append(c.buttons, l)
			labels = append(labels, fmt.Sprintf("%d %s", len(c.buttons), c.shown(l)))
		}
	}
	if len(labels) > 0 {
		for _, part := range wrap("( "+strings.Join(labels, " | ")+" )", c.width) {
			fmt.Fprintln(&page, part)
		}
	}
	// In one piece: a line being typed is put below it once.
	_, err := io.WriteString(c.screen, page.String())
	return err
}

// shown is a text in the characters that the screen has.
func (c *Chat) shown(text string) string {
	if c.Screen.Plain {
		return wording.ASCII(text)
	}
	return text
}
