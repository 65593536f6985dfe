package main

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"strings"

	"github.com/alecthomas/kong"
)

// stamped is the version that a build without the repository's history was told
// with -ldflags "-X main.stamped=..."; empty: as the history has it.
var stamped string

// version is the program's own, as the build knows it.
func version() string {
	if stamped != "" {
		return stamped
	}
	if b, ok := debug.ReadBuildInfo(); ok && b.Main.Version != "" {
		return strings.Trim(b.Main.Version, "()")
	}
	return "devel"
}

// versionFlag says the version and ends the program.
type versionFlag bool

// BeforeReset is called by the parser before anything is run.
func (versionFlag) BeforeReset(app *kong.Kong) error {
	if _, err := fmt.Fprintf(app.Stdout, "troughbell %s %s %s/%s\n", version(), runtime.Version(), runtime.GOOS, runtime.GOARCH); err != nil {
		return err
	}
	app.Exit(0)
	return nil
}
