package main

import (
	"io"
	"net"
	"net/http"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
)

// freePort gives an address of this machine that nothing listens on.
func freePort(t *testing.T) string {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer l.Close()
	return l.Addr().String()
}

// The bot is well while it serves, and not when it was killed or stopped; who
// asks needs no network, and what is watched tells no text.
func TestHealth(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	status, _, stderr := call(t, "", "health", "--db", db)
	require.Equal(t, exitFailed, status, "there is no database")
	oneLine(t, stderr)
	address := freePort(t)
	serve := func() *program {
		return startWith(t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token},
			"serve", "--db", db, "--telegram-api", api.URL(), "--zone", "America/New_York", "--metrics", address)
	}
	p := serve()
	pair(t, api, p)
	api.Say(ann, setUp)
	eventually(t, func() bool { status, _, _ := call(t, "", "health", "--db", db); return status == exitDone }, p)
	status, page, stderr := call(t, "", "health", "--db", db)
	require.Equal(t, exitDone, status, stderr)
	require.Empty(t, stderr)
	require.Regexp(t, `^open in: process \d+, serve\npolled: \d+ s ago\n`, page)

	get := func(path string) (int, string) {
		r, err := http.Get("http://" + address + path)
		require.NoError(t, err)
		defer r.Body.Close()
		b, err := io.ReadAll(r.Body)
		require.NoError(t, err)
		return r.StatusCode, string(b)
	}
	code, page := get("/health")
	require.Equal(t, http.StatusOK, code)
	require.Contains(t, page, "ok\nopen in: process ")
	code, page = get("/metrics")
	require.Equal(t, http.StatusOK, code)
	require.Contains(t, page, "\ntroughbell_herds 1\n")
	require.Regexp(t, `\ntroughbell_updates_total [1-9]`, page)
	for _, private := range []string{"Ann", "Olive", "hopper"} {
		require.NotContains(t, page, private)
	}

	p.kill(t)
	status, _, stderr = call(t, "", "health", "--db", db)
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	require.Contains(t, stderr, "does not run")
	p = serve()
	require.Equal(t, "ready", p.line(t))
	status, _, stderr = call(t, "", "health", "--db", db)
	require.Equal(t, exitDone, status, stderr)
	p.stop(t, syscall.SIGTERM)
	status, _, _ = call(t, "", "health", "--db", db)
	require.Equal(t, exitFailed, status)
}

// The endpoint is reached from the machine itself alone.
func TestMetricsElsewhere(t *testing.T) {
	t.Setenv("TROUGHBELL_TELEGRAM_TOKEN", testToken)
	for _, address := range []string{"0.0.0.0:9310", ":9310", "192.168.1.2:9310", "9310"} {
		status, _, stderr := call(t, "", "serve", "--db", filepath.Join(t.TempDir(), "herd.db"), "--metrics", address)
		require.Equal(t, exitWrong, status, address)
		oneLine(t, stderr)
		require.Contains(t, stderr, "127.0.0.1:9310")
	}
	busy, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer busy.Close()
	status, _, stderr := call(t, "", "serve", "--db", filepath.Join(t.TempDir(), "herd.db"), "--metrics", busy.Addr().String())
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	require.Contains(t, stderr, "choose another port")
}

func TestVersion(t *testing.T) {
	status, stdout, stderr := call(t, "", "--version")
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, "troughbell "+version()+" "+runtime.Version()+" "+runtime.GOOS+"/"+runtime.GOARCH+"\n", stdout)
}
