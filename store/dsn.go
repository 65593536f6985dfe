package store

import (
	"net/url"
	"path/filepath"
	"strings"
	"sync"

	"modernc.org/sqlite"
)

// Settings of every connection go into its DSN: a PRAGMA that is run on a pool
// reaches one connection of it only. What is deleted is overwritten
// (secure_delete): it may be a stranger's text.
var (
	writing = []string{
		"mode=rw", "_txlock=immediate", "_busy_timeout=5000", "_foreign_keys=on",
		"_journal_mode=WAL", "_synchronous=FULL", "_dqs=0", "_pragma=wal_autocheckpoint(0)",
		"_pragma=journal_size_limit(16777216)", "_pragma=cache_size(-4096)", "_pragma=temp_store(memory)", "_pragma=secure_delete(on)",
	}
	// An ephemeral file keeps the write-ahead log, so that readers stay beside
	// the writer, and leaves out every wait for the disk.
	ephemeral = []string{
		"mode=rw", "_txlock=immediate", "_busy_timeout=5000", "_foreign_keys=on",
		"_journal_mode=WAL", "_synchronous=OFF", "_dqs=0",
		"_pragma=journal_size_limit(4194304)", "_pragma=cache_size(-4096)", "_pragma=temp_store(memory)", "_pragma=secure_delete(on)",
	}
	reading = []string{"mode=ro", "_query_only=1", "_busy_timeout=5000", "_dqs=0", "_pragma=cache_size(-2048)"}
	// copying reads, but may write a copy elsewhere.
	copying = []string{"mode=ro", "_busy_timeout=5000", "_dqs=0"}
	// frozen reads a file that nothing writes, in a folder where the log's
	// side files cannot be made.
	frozen        = []string{"mode=ro", "immutable=1", "_query_only=1", "_dqs=0"}
	frozenCopying = []string{"mode=ro", "immutable=1", "_dqs=0"}
)

// dsn names the file at path, which must be absolute, with settings.
func dsn(path string, settings []string) string {
	p := filepath.ToSlash(path)
	if !strings.HasPrefix(p, "/") {
		p = "/" + p
	}
	u := url.URL{Path: p}
	return "file://" + u.EscapedPath() + "?" + strings.Join(settings, "&")
}

// syncOnce has SQLite bring to the disk what a file holds without the time at which
// it was written, which the journal of the file system would have to take as well.
// Where the system knows no such call, the other is made as before.
var syncOnce = sync.OnceFunc(func() { _, _ = sqlite.Fdatasync(true) })
