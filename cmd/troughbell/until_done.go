package main

import (
	"context"
	"errors"
	"io"
)

// errInterrupted ends the reading of an input that was given up.
var errInterrupted = errors.New("interrupted")

// untilDone reads an input until a context is done: a read that waits for a
// person or a pipe would otherwise outlive every signal.
type untilDone struct {
	ctx  context.Context
	from io.Reader
	buf  []byte
	got  chan received // of the read under way; nil if none is
	rest []byte
	err  error
}

type received struct {
	n   int
	err error
}

func newUntilDone(ctx context.Context, from io.Reader) *untilDone {
	return &untilDone{ctx: ctx, from: from, buf: make([]byte, 64<<10)}
}

// Read implements io.Reader. It is not for several goroutines.
func (u *untilDone) Read(p []byte) (int, error) {
	if len(u.rest) == 0 && u.err == nil {
		u.next()
	}
	if len(u.rest) == 0 {
		return 0, u.err
	}
	n := copy(p, u.rest)
	u.rest = u.rest[n:]
	return n, nil
}

// next waits for what comes first: more of the input, or the end of the context.
func (u *untilDone) next() {
	if u.got == nil {
		u.got = make(chan received, 1)
		go func(got chan<- received) {
			n, err := u.from.Read(u.buf)
			got <- received{n, err}
		}(u.got)
	}
	select {
	case r := <-u.got:
		u.got, u.rest, u.err = nil, u.buf[:r.n], r.err
	case <-u.ctx.Done():
		u.err = errInterrupted
	}
}
