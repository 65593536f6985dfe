package terminal_test

import (
	"fmt"
	"io"
	"os"
	"strings"
	"syscall"
	"testing"
	"time"
	"unsafe"

	"github.com/stretchr/testify/require"
	"golang.org/x/term"

	"troughbell/bot/terminal"
)

// pty is both ends of a terminal: what a person types and sees, and what the
// program has.
func pty(t *testing.T) (person, program *os.File) {
	t.Helper()
	person, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0)
	if err != nil {
		t.Skipf("no terminals here: %v", err)
	}
	t.Cleanup(func() { _ = person.Close() })
	control := func(request uintptr, arg unsafe.Pointer) {
		_, _, errno := syscall.Syscall(syscall.SYS_IOCTL, person.Fd(), request, uintptr(arg))
		require.Zero(t, errno)
	}
	var unlock int32
	var number uint32
	control(syscall.TIOCSPTLCK, unsafe.Pointer(&unlock))
	control(syscall.TIOCGPTN, unsafe.Pointer(&number))
	size := struct{ rows, cols, x, y uint16 }{24, 60, 0, 0}
	control(syscall.TIOCSWINSZ, unsafe.Pointer(&size))
	program, err = os.OpenFile(fmt.Sprintf("/dev/pts/%d", number), os.O_RDWR|syscall.O_NOCTTY, 0)
	require.NoError(t, err)
	t.Cleanup(func() { _ = program.Close() })
	return person, program
}

// sees waits until the person sees a text behind all that was seen before.
func sees(t *testing.T, seen *screen, from int, want string) {
	t.Helper()
	require.Eventually(t, func() bool { return strings.Contains(seen.String()[from:], want) },
		30*time.Second, 2*time.Millisecond, "%q is not seen in %q", want, seen.String())
}

// TestAtATerminal types at a terminal: a line is edited, a nudge that comes
// meanwhile leaves it whole, Ctrl-C and Ctrl-D end the chat and give the
// terminal back as it was.
func TestAtATerminal(t *testing.T) {
	const ctrlC, ctrlD, left, up = "\x03", "\x04", "\x1b[D", "\x1b[A"
	st, id := herd(t)
	c := &clock{at: friday}
	person, program := pty(t)
	before, err := term.GetState(int(program.Fd()))
	require.NoError(t, err)
	require.True(t, terminal.Interactive(program, program))
	require.False(t, terminal.Interactive(program, io.Discard))
	var seen screen
	go func() { _, _ = io.Copy(&seen, person) }() // until the terminal goes
	typed := func(s string) {
		_, err := io.WriteString(person, s)
		require.NoError(t, err)
	}

	chat := open(t, st, id, c)
	ended := make(chan error, 1)
	go func() { ended <- chat.Run(t.Context(), program, program) }()
	sees(t, &seen, 0, "How many pigs") // a new herd is greeted
	sees(t, &seen, 0, "\n> ")          // what is typed before the prompt is a line of the kernel's
	typed(strings.TrimSpace(setUp) + "\r")
	sees(t, &seen, 0, "nudges") // the line itself is seen at once

	typed("fence 5.3" + left + "\x7f2") // the cursor stands before the 3: now 523
	sees(t, &seen, 0, "fence 5")
	c.set(friday.Add(13 * time.Hour))
	from := len(seen.String())
	require.NoError(t, chat.Look(t.Context()))
	sees(t, &seen, from, "* ")
	sees(t, &seen, from, "> fence 523") // the line stands again below the nudge
	typed("\x7f.\r")
	sees(t, &seen, from, "Fence 5.3 kV.")
	from = len(seen.String())
	typed(up)
	sees(t, &seen, from, "fence 5.3")
	typed(ctrlC)
	require.NoError(t, <-ended)
	after, err := term.GetState(int(program.Fd()))
	require.NoError(t, err)
	require.Equal(t, before, after)

	again := open(t, st, id, c)
	from = len(seen.String()) // before it can write
	go func() { ended <- again.Run(t.Context(), program, program) }()
	sees(t, &seen, from, "> ")
	typed(ctrlD)
	require.NoError(t, <-ended)
	after, err = term.GetState(int(program.Fd()))
	require.NoError(t, err)
	require.Equal(t, before, after)
}
