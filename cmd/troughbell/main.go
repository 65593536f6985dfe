// Command troughbell is a chat bot for people who fatten a few pigs a year: it
// keeps what they text from the pen, and tells them what falls due.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"log/slog"
	"os"
	"os/signal"
	"slices"
	"strings"
	"syscall"
	_ "time/tzdata" // a bare machine has no zones

	"github.com/alecthomas/kong"
)

// Exit statuses.
const (
	exitDone   = 0
	exitFailed = 1
	exitWrong  = 2
)

// cli is the commands of the program.
type cli struct {
	Demo     demoCmd     `cmd:"" help:"Play an invented season in virtual time, then chat with that herd."`
	Chat     chatCmd     `cmd:"" help:"Chat in the terminal with a herd kept in a file."`
	Serve    serveCmd    `cmd:"" help:"Run the Telegram bot until stopped."`
	Replay   replayCmd   `cmd:"" help:"Play a timed log in virtual time."`
	Parse    parseCmd    `cmd:"" help:"Say what texts would be recorded as, without recording them."`
	Export   exportCmd   `cmd:"" help:"Write a herd's records as CSV files in a ZIP."`
	Import   importCmd   `cmd:"" help:"Take in records from such files, or weights from a list."`
	Backup   backupCmd   `cmd:"" help:"Write a consistent copy of the database, also while it is in use."`
	Restore  restoreCmd  `cmd:"" help:"Put a backup in the place of the database."`
	Health   healthCmd   `cmd:"" help:"Say whether the bot that serves the database is well."`
	Licences licencesCmd `cmd:"" help:"Print the licences of what the program is made of."`

	Version  versionFlag `help:"Say the version and end."`
	LogLevel string      `enum:"debug,info,warn,error" default:"info" env:"TROUGHBELL_LOG_LEVEL" help:"How much is logged to standard error: debug, info, warn, error."`
}

// wrong is the error of a call that was wrong, as against work that failed.
type wrong struct{ error }

func wrongf(format string, args ...any) error { return wrong{fmt.Errorf(format, args...)} }

// app is what a command runs with.
type app struct {
	ctx            context.Context
	stdin          io.Reader
	stdout, stderr io.Writer
	log            *slog.Logger
}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	context.AfterFunc(ctx, stop) // a second signal ends the program at once
	// A reader that went away is an error of the write, so that what is
	// temporary is still cleared away.
	signal.Notify(make(chan os.Signal, 1), syscall.SIGPIPE)
	os.Exit(run(ctx, os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// errAsked ends the parsing of a call that asked for help: all has been said.
var errAsked = errors.New("help was asked for")

// run runs one call of the program and gives its exit status.
func run(ctx context.Context, args []string, stdin io.Reader, stdout, stderr io.Writer) (status int) {
	var c cli
	helped := false
	parser, err := kong.New(&c,
		kong.Name("troughbell"),
		kong.Description("Reads short texts from the pig pen, keeps them, and says when: refill, water, worming, moving, the butcher.\n\nExample: troughbell demo"),
		kong.Writers(stdout, stderr),
		kong.UsageOnError(),
		kong.Exit(func(int) { helped = true; panic(errAsked) }),
	)
	if err != nil {
		fmt.Fprintln(stderr, "troughbell:", err)
		return exitFailed
	}
	defer func() {
		if r := recover(); r != nil {
			if !helped {
				panic(r)
			}
			status = exitDone
		}
	}()
	if len(args) == 0 {
		args = []string{"--help"}
	}
	k, err := parser.Parse(args)
	if err != nil {
		complain(stderr, fmt.Errorf("%w; see troughbell --help", err))
		return exitWrong
	}
	a := &app{ctx: ctx, stdin: stdin, stdout: stdout, stderr: stderr, log: newLog(stderr, c.LogLevel)}
	if c.LogLevel == "debug" {
		a.log.Warn("at this level the log shows texts and names")
	}
	err = k.Run(a)
	var w wrong
	switch {
	case err == nil:
		return exitDone
	case errors.As(err, &w):
		complain(stderr, err)
		return exitWrong
	case ctx.Err() != nil:
		a.log.Debug("stopped by a signal", "err", err)
		complain(stderr, errors.New("stopped before the work was done; start it again"))
		return exitFailed
	case errors.Is(err, syscall.EPIPE):
		return exitFailed // whoever read it has gone, on purpose
	default:
		complain(stderr, err)
		return exitFailed
	}
}

// complain says an error in one line, whatever it is made of.
func complain(w io.Writer, err error) {
	var parts []string
	for _, l := range strings.Split(err.Error(), "\n") {
		if l = strings.TrimRight(l, " ."); l != "" && !slices.Contains(parts, l) {
			parts = append(parts, l)
		}
	}
	fmt.Fprintf(w, "troughbell: %s\n", strings.Join(parts, "; "))
}

func newLog(w io.Writer, level string) *slog.Logger {
	var l slog.Level
	if err := l.UnmarshalText([]byte(level)); err != nil {
		l = slog.LevelInfo
	}
	return slog.New(slog.NewTextHandler(w, &slog.HandlerOptions{Level: l}))
}
