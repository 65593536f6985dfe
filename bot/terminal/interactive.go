package terminal

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"

	"golang.org/x/term"
)

// Interactive reports whether both ends are a terminal with a person at it.
func Interactive(in io.Reader, out io.Writer) bool {
	i, ok := in.(*os.File)
	if !ok || !term.IsTerminal(int(i.Fd())) {
		return false
	}
	o, ok := out.(*os.File)
	return ok && term.IsTerminal(int(o.Fd()))
}

// interactive chats at a terminal: lines are edited and recalled, and what is
// said meanwhile stands above the line being typed.
func (c *Chat) interactive(ctx context.Context, in, out *os.File) error {
	before, err := term.MakeRaw(int(in.Fd()))
	if err != nil {
		return fmt.Errorf("cannot take the terminal: %w", err)
	}
	defer func() {
		_ = term.Restore(int(in.Fd()), before)
		fmt.Fprintln(out) // the shell's prompt begins a line of its own
	}()
	t := term.NewTerminal(struct {
		io.Reader
		io.Writer
	}{in, out}, "> ")
	fit := func() {
		if w, h, err := term.GetSize(int(out.Fd())); err == nil && w > 0 {
			_ = t.SetSize(w, h) // fails only where the terminal has gone, as the next write does
			c.mu.Lock()
			c.width = w
			c.mu.Unlock()
		}
	}
	fit()
	resized, stop := resizes()
	defer stop()
	if err := c.begin(ctx, t); err != nil {
		return err
	}
	if err := c.greet(ctx); err != nil {
		return err
	}
	typed, ended := typing(ctx, t)
	for {
		select {
		case <-ctx.Done():
			return nil
		case <-resized:
			fit()
		case err := <-ended:
			if errors.Is(err, io.EOF) { // Ctrl-C or Ctrl-D
				return nil
			}
			return fmt.Errorf("read the terminal: %w", err)
		case l := <-typed:
			if err := c.hear(ctx, l); err != nil || c.over {
				return err
			}
		}
	}
}

// typing gives the lines typed, and what ended them.
func typing(ctx context.Context, t *term.Terminal) (<-chan string, <-chan error) {
	lines, ended := make(chan string), make(chan error, 1)
	go func() {
		for {
			l, err := t.ReadLine()
			if err != nil {
				ended <- err
				return
			}
			select {
			case lines <- l:
			case <-ctx.Done():
				return
			}
		}
	}()
	return lines, ended
}
