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

	"golang.org/x/term"

	"troughbell/bot"
	"troughbell/store"
)

// Chat is one terminal on one herd.
type Chat struct {
	Store *store.Store
	Desk  *bot.Desk
	Herd  store.HerdID
	// Now is the clock, which may run ahead of the world's (a demo).
	Now func() time.Time

	mu      sync.Mutex // one transaction and its output at a time
	chat    store.ChatID
	me      store.Member
	screen  io.Writer
	buttons []string // of what was said last, for a bare number
	count   int
}

// Open finds the terminal's chat and person in the herd, or makes them: who
// sits at the terminal owns the herd where nobody does yet.
func (c *Chat) Open(ctx context.Context) error {
	return c.Store.Write(ctx, func(tx *store.Tx) error {
		chat, err := tx.ChatOf("terminal", fmt.Sprint(c.Herd), false)
		if err != nil {
			return err
		}
		if chat.Person == 0 {
			if chat.Person, err = owner(tx, c.Herd); err != nil {
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

func owner(tx *store.Tx, herd store.HerdID) (store.PersonID, error) {
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
	if f, ok := in.(*os.File); ok && term.IsTerminal(int(f.Fd())) {
		if o, ok := out.(*os.File); ok && term.IsTerminal(int(o.Fd())) {
			return c.interactive(ctx, f, o)
		}
	}
	c.screen = out
	return c.lines(ctx, in)
}

func (c *Chat) interactive(ctx context.Context, in, out *os.File) error {
	before, err := term.MakeRaw(int(in.Fd()))
	if err != nil {
		return fmt.Errorf("cannot take the terminal: %w", err)
	}
	defer func() { _ = term.Restore(int(in.Fd()), before) }()
	t := term.NewTerminal(struct {
		io.Reader
		io.Writer
	}{in, out}, "> ")
	if w, h, err := term.GetSize(int(out.Fd())); err == nil {
		_ = t.SetSize(w, h)
	}
	c.mu.Lock()
	c.screen = t
	c.mu.Unlock()
	if err := c.greet(ctx); err != nil {
		return err
	}
	read := make(chan string)
	failed := make(chan error, 1)
	go func() {
		for {
			l, err := t.ReadLine()
			if err != nil {
				failed <- err
				return
			}
			select {
			case read <- l:
			case <-ctx.Done():
				return
			}
		}
	}()
	for {
		select {
		case <-ctx.Done():
			return nil
		case err := <-failed:
			if errors.Is(err, io.EOF) {
				return nil
			}
			return fmt.Errorf("read the terminal: %w", err)
		case l := <-read:
			if err := c.hear(ctx, l); err != nil {
				return err
			}
		}
	}
}

func (c *Chat) lines(ctx context.Context, in io.Reader) error {
	r := bufio.NewReader(in)
	for ctx.Err() == nil {
		l, err := r.ReadString('\n')
		if strings.TrimSpace(l) != "" {
			if herr := c.hear(ctx, strings.TrimRight(l, "\r\n")); herr != nil {
				return herr
			}
		}
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return fmt.Errorf("read the input: %w", err)
		}
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
	if n, err := strconv.Atoi(text); err == nil && n >= 1 && n <= len(c.buttons) {
		text = c.buttons[n-1]
	}
	c.buttons = nil
	now := c.Now()
	c.count++
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		m := bot.Message{
			Herd: c.Herd, Chat: c.chat, From: c.me, Text: text, At: now,
			ID: fmt.Sprintf("%d-%d", now.UnixMilli(), c.count),
		}
		out, err := c.Desk.Handle(tx, m)
		if err != nil {
			return err
		}
		return c.Desk.Queue(tx, m, out)
	})
	if err != nil {
		c.Desk.Forget(c.Herd)
		// What could not be kept is said so; the chat goes on.
		_, werr := fmt.Fprintf(c.screen, "Not recorded: %v\n", err)
		return werr
	}
	return c.drain(ctx)
}

// Look looks at the herd and shows the nudges that fall due.
func (c *Chat) Look(ctx context.Context) error {
	c.mu.Lock()
	defer c.mu.Unlock()
	now := c.Now()
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		row, err := tx.Herd(c.Herd)
		if err != nil || row.Seq == 0 || row.LookAgain.After(now) {
			return err
		}
		pushes, err := c.Desk.Look(tx, c.Herd, now, time.Time{})
		if err != nil {
			return err
		}
		return c.Desk.QueuePushes(tx, c.Herd, pushes)
	})
	if err != nil {
		c.Desk.Forget(c.Herd)
		return err
	}
	return c.drain(ctx)
}

// drain shows what waits in the outbox for this terminal.
func (c *Chat) drain(ctx context.Context) error {
	if c.screen == nil {
		return nil
	}
	return c.Store.Write(ctx, func(tx *store.Tx) error {
		for {
			o, ok, err := tx.NextTo(c.chat)
			if err != nil || !ok {
				return err
			}
			if err := c.show(o); err != nil {
				return err
			}
			o.State, o.Sent = "sent", fmt.Sprint(o.ID)
			if err := tx.SaveOutgoing(o); err != nil {
				return err
			}
		}
	})
}

func (c *Chat) show(o store.Outgoing) error {
	mark := ""
	if o.Kind == "nudge" {
		mark = "* "
	}
	lines := strings.Split(o.Text, "\n")
	for i, l := range lines {
		if i > 0 {
			mark = strings.Repeat(" ", len(mark))
		}
		if _, err := fmt.Fprintf(c.screen, "%s%s\n", mark, l); err != nil {
			return err
		}
	}
	c.buttons = nil
	var labels []string
	for _, row := range o.Buttons {
		for _, l := range row {
			c.buttons = append(c.buttons, l)
			labels = append(labels, fmt.Sprintf("%d %s", len(c.buttons), l))
		}
	}
	if len(labels) == 0 {
		return nil
	}
	_, err := fmt.Fprintf(c.screen, "( %s )\n", strings.Join(labels, " | "))
	return err
}
