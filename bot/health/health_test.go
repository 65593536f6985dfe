package health_test

import (
	"bytes"
	"context"
	"errors"
	"io"
	"net/http"
	"net/http/httptest"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/health"
	"troughbell/model"
	"troughbell/store"
)

var now = time.Date(2026, 11, 30, 12, 0, 0, 0, time.UTC)

// well is the signs of a bot that is well.
func well() health.Signs {
	return health.Signs{
		Running: true, Holder: "process 12, serve", Polled: now.Add(-40 * time.Second), Sent: now.Add(-3 * time.Hour),
		Round: now.Add(-9 * time.Minute), Herds: 2, Bytes: 812_000, Free: 12_000_000_000, FreeKnown: true,
		Backups: true, Backup: store.Copy{Path: "/b/herd-2026-11-30.db", On: model.DateDay(2026, 11, 30)},
	}
}

func TestIlls(t *testing.T) {
	require.Empty(t, well().Ills(now))
	rows := []struct {
		change func(*health.Signs)
		says   string
	}{
		{func(v *health.Signs) { v.Running, v.Holder = false, "" }, "the bot does not run; start it"},
		{func(v *health.Signs) { v.Running, v.Holder = false, "process 9, chat" }, "open in another troughbell (process 9, chat)"},
		{func(v *health.Signs) { v.Polled = time.Time{} }, "Telegram was reached never"},
		{func(v *health.Signs) { v.Polled = now.Add(-6 * time.Minute) }, "Telegram was reached 6 min ago"},
		{func(v *health.Signs) { v.Round = now.Add(-26 * time.Minute) }, "gone through 26 min ago"},
		{func(v *health.Signs) { v.Inbox, v.InboxSince = 3, now.Add(-3*time.Hour) }, "the oldest came 3 h ago"},
		{func(v *health.Signs) { v.Free = 9_000_000 }, "9000 kB left; make room"},
		{func(v *health.Signs) { v.NoBackup = now.Add(-5 * time.Hour) }, "no backup could be made for 5 h; look into the log"},
		{func(v *health.Signs) { v.NoBackup, v.WhyNone = now.Add(-time.Hour), store.Damaged }, "for 60 min: the database is damaged; keep the file"},
	}
	for _, r := range rows {
		v := well()
		r.change(&v)
		ills := v.Ills(now)
		require.Len(t, ills, 1, r.says)
		require.Contains(t, ills[0], r.says)
	}
	v := well()
	v.Inbox, v.InboxSince, v.Outbox, v.FreeKnown, v.Free = 40, now.Add(-time.Second), 7, false, 0
	require.Empty(t, v.Ills(now), "a moment's work waits; the room on the disk is not known")
	require.Contains(t, v.Page(now), "waiting: 40 in, 7 out\n")
	v.Running, v.FreeKnown, v.Free = false, true, 9_000_000
	require.Len(t, v.Ills(now), 2, "a full disk may be why the bot does not run")
	v = well()
	v.Backups, v.NoBackup = false, now
	require.Empty(t, v.Ills(now), "none are wanted any more")
}

// Signs are read from the database and its lock, whoever holds it.
func TestSignsOfADatabase(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	for _, role := range []string{"serve", "chat"} {
		s, err := store.Open(t.Context(), path, store.Options{Ephemeral: true, Role: role})
		require.NoError(t, err)
		require.NoError(t, s.Write(t.Context(), func(tx *store.Tx) error {
			_, err := tx.Receive(store.Incoming{Key: role, Chat: "1", At: now})
			return err
		}))
		copies, err := store.CopiesOf(path, "")
		require.NoError(t, err)
		v, err := health.Of(t.Context(), s, path, copies, true)
		require.NoError(t, err)
		require.Equal(t, role == "serve", v.Running)
		require.Contains(t, v.Holder, ", "+role)
		require.Equal(t, now, v.InboxSince)
		require.Positive(t, v.Bytes)
		require.NoError(t, s.Close())
	}
	s, err := store.OpenReader(t.Context(), path)
	require.NoError(t, err)
	defer func() { require.NoError(t, s.Close()) }()
	v, err := health.Of(t.Context(), s, path, store.Copies{}, false)
	require.NoError(t, err)
	require.False(t, v.Running)
	require.Empty(t, v.Holder)
	require.Equal(t, 2, v.Inbox)
	again, err := store.Open(t.Context(), path, store.Options{Ephemeral: true})
	require.NoError(t, err, "who asks leaves no lock behind")
	require.NoError(t, again.Close())
}

var (
	nameForm   = regexp.MustCompile(`^[a-zA-Z_:][a-zA-Z0-9_:]*$`)
	sampleForm = regexp.MustCompile(`^([a-zA-Z_:][a-zA-Z0-9_:]*)(\{[a-zA-Z_][a-zA-Z0-9_]*="(?:[^"\\\n]|\\["\\n])*"(?:,[a-zA-Z_][a-zA-Z0-9_]*="(?:[^"\\\n]|\\["\\n])*")*\})? (\S+)$`)
)

// parsed reads a page by the rules of the text format 0.0.4 as the Prometheus
// documentation gives them ("Exposition formats", "Text format details"): lines end
// with a line feed, the last one too; a name has one HELP and one TYPE, both before
// its samples, which stand together; a label's value escapes backslash, quote and
// line feed; values are what strconv.ParseFloat reads; no sample stands twice.
func parsed(t *testing.T, page string) map[string]float64 {
	t.Helper()
	require.True(t, strings.HasSuffix(page, "\n"))
	types, helps, out := map[string]string{}, map[string]bool{}, map[string]float64{}
	current := ""
	for _, l := range strings.Split(strings.TrimSuffix(page, "\n"), "\n") {
		if rest, ok := strings.CutPrefix(l, "# "); ok {
			word, rest, _ := strings.Cut(rest, " ")
			name, rest, _ := strings.Cut(rest, " ")
			require.Regexp(t, nameForm, name)
			if name != current {
				require.NotContains(t, helps, name, "its lines stand together")
			}
			current = name
			require.NotContains(t, out, name, "above the samples")
			switch word {
			case "HELP":
				require.False(t, helps[name])
				require.NotRegexp(t, `\\[^\\n]`, rest)
				helps[name] = true
			case "TYPE":
				require.NotContains(t, types, name)
				require.Contains(t, []string{"counter", "gauge"}, rest)
				types[name] = rest
			default:
				t.Fatalf("a comment that says nothing: %s", l)
			}
			continue
		}
		m := sampleForm.FindStringSubmatch(l)
		require.NotNil(t, m, l)
		require.Equal(t, current, m[1])
		require.Contains(t, types, m[1])
		require.Equal(t, types[m[1]] == "counter", strings.HasSuffix(m[1], "_total"), l)
		v, err := strconv.ParseFloat(m[3], 64)
		require.NoError(t, err)
		require.NotContains(t, out, m[1]+m[2])
		out[m[1]+m[2]] = v
	}
	return out
}

func TestExposition(t *testing.T) {
	var page bytes.Buffer
	p := health.Process{Version: "v1.2 \"of\" a\\b\nday", Started: now, Memory: 3 << 30, Counts: health.Counts{Updates: 12_345_678_901}}
	require.NoError(t, health.Exposition(&page, well(), p))
	got := parsed(t, page.String())
	require.InDelta(t, 1, got[`troughbell_build_info{version="v1.2 \"of\" a\\b\nday"}`], 0)
	require.InDelta(t, float64(now.Unix()), got["troughbell_start_time_seconds"], 0)
	require.InDelta(t, 12_345_678_901, got["troughbell_updates_total"], 0)
	require.InDelta(t, 12e9, got["troughbell_disk_free_bytes"], 0)
	require.InDelta(t, float64(now.Add(-40*time.Second).Unix()), got["troughbell_last_poll_timestamp_seconds"], 0)
	require.InDelta(t, float64(now.Add(-12*time.Hour).Unix()), got["troughbell_last_backup_timestamp_seconds"], 0)
	require.InDelta(t, 0, got["troughbell_backup_failing_since_timestamp_seconds"], 0)
	v := well()
	v.Sent, v.FreeKnown, v.Backups = time.Time{}, false, false
	page.Reset()
	require.NoError(t, health.Exposition(&page, v, p))
	got = parsed(t, page.String())
	require.InDelta(t, 0, got["troughbell_last_send_timestamp_seconds"], 0)
	require.NotContains(t, got, "troughbell_disk_free_bytes", "what is not known is left out")
	require.NotContains(t, got, "troughbell_last_backup_timestamp_seconds")
}

func TestEndpoint(t *testing.T) {
	v := well()
	var fails error
	e := health.Endpoint{
		Signs:   func(context.Context) (health.Signs, error) { return v, fails },
		Process: func() health.Process { return health.Process{Version: "v1"} },
		Now:     func() time.Time { return now },
	}
	s := httptest.NewServer(e.Handler())
	defer s.Close()
	get := func(path string) (int, string, string) {
		t.Helper()
		r, err := http.Get(s.URL + path)
		require.NoError(t, err)
		defer r.Body.Close()
		b, err := io.ReadAll(r.Body)
		require.NoError(t, err)
		return r.StatusCode, r.Header.Get("Content-Type"), string(b)
	}
	status, _, page := get("/health")
	require.Equal(t, http.StatusOK, status)
	require.True(t, strings.HasPrefix(page, "ok\nopen in: process 12, serve\npolled: 40 s ago\n"), page)
	status, kind, page := get("/metrics")
	require.Equal(t, http.StatusOK, status)
	require.Equal(t, "text/plain; version=0.0.4; charset=utf-8", kind)
	require.Greater(t, len(parsed(t, page)), 10)
	v.Polled = now.Add(-time.Hour)
	status, _, page = get("/health")
	require.Equal(t, http.StatusServiceUnavailable, status)
	require.Contains(t, page, "check the network")
	fails = errors.New("it is torn")
	status, _, page = get("/health")
	require.Equal(t, http.StatusServiceUnavailable, status)
	require.Contains(t, page, "it is torn")
	status, _, _ = get("/metrics")
	require.Equal(t, http.StatusServiceUnavailable, status)
	status, _, _ = get("/")
	require.Equal(t, http.StatusNotFound, status)
	r, err := http.Post(s.URL+"/health", "text/plain", nil)
	require.NoError(t, err)
	require.NoError(t, r.Body.Close())
	require.Equal(t, http.StatusMethodNotAllowed, r.StatusCode)
}

func TestAddresses(t *testing.T) {
	for _, good := range []string{"127.0.0.1:9310", "127.8.0.1:80", "[::1]:9310"} {
		require.NoError(t, health.CheckAddress(good), good)
	}
	for _, bad := range []string{
		"", "9310", ":9310", "0.0.0.0:9310", "[::]:9310", "192.168.1.2:9310", "localhost:9310", "example.org:9310",
		"127.0.0.1", "127.0.0.1:", "127.0.0.1:0", "127.0.0.1:http", "127.0.0.1:70000",
	} {
		require.Error(t, health.CheckAddress(bad), bad)
	}
}
