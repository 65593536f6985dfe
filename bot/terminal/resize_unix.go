//go:build unix

package terminal

import (
	"os"
	"os/signal"
	"syscall"
)

// resizes tells when the terminal gets another size, until stop.
func resizes() (tell <-chan os.Signal, stop func()) {
	c := make(chan os.Signal, 1)
	signal.Notify(c, syscall.SIGWINCH)
	return c, func() { signal.Stop(c) }
}
