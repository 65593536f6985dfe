package main

import (
	"errors"
	"fmt"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/sys/unix"

	"troughbell/bot/telegram/botapitest"
)

// diskFault is something that happens to the disk under a running program.
type diskFault struct {
	name string
	disk func(t *testing.T) string      // makes the folder for the database; nil: a usual one
	hurt func(t *testing.T, r *diskRig) // the fault begins
	mend func(t *testing.T, r *diskRig) // it ends; nil: the program mends it by itself
	told string                         // what the operator reads
}

// diskRig is a running program with its database.
type diskRig struct {
	api *botapitest.Server
	db  string
	p   *program
}

var diskFaults = []diskFault{
	{
		name: "the disk is full", disk: smallDisk, told: "disk is full",
		hurt: func(t *testing.T, r *diskRig) { fillUp(t, r.db+".filler") },
		mend: func(t *testing.T, r *diskRig) { require.NoError(t, os.Remove(r.db+".filler")) },
	},
	{
		name: "the files may not grow", told: "cannot be written",
		hurt: func(t *testing.T, r *diskRig) { limitFiles(t, r, 4096) },
		mend: func(t *testing.T, r *diskRig) { limitFiles(t, r, math.MaxUint64) },
	},
	{
		name: "the files can only be read", told: "cannot be written",
		hurt: func(t *testing.T, r *diskRig) {
			freeze(t, r.db, true)
			t.Cleanup(func() { freeze(t, r.db, false) })
		},
		mend: func(t *testing.T, r *diskRig) { freeze(t, r.db, false) },
	},
	{
		name: "the folder is gone", told: "folder is gone",
		hurt: func(t *testing.T, r *diskRig) { require.NoError(t, os.RemoveAll(filepath.Dir(r.db))) },
		mend: func(t *testing.T, r *diskRig) { require.NoError(t, os.Mkdir(filepath.Dir(r.db), 0o700)) },
	},
	{
		name: "the file is deleted", told: "nothing is lost",
		hurt: func(t *testing.T, r *diskRig) { require.NoError(t, os.Remove(r.db)) },
	},
}

// TestDiskFaults lives through faults of the disk as people on Telegram do: who
// runs the server reads what is wrong, once, who texts that it waits; nothing is
// acknowledged that is not kept, and it goes on by itself.
func TestDiskFaults(t *testing.T) {
	for _, f := range diskFaults {
		t.Run(f.name, func(t *testing.T) {
			t.Parallel()
			r := newDiskRig(t, f.disk)
			f.hurt(t, r)
			var ids, waits []int64
			for i := range 12 {
				ids = append(ids, r.api.Say(ann, fmt.Sprintf("spent %d straw", 20+i)))
				waits = append(waits, r.api.Say(ben, fmt.Sprintf("spent %d salt", 20+i)))
			}
			told := func() int { return r.count(ann, f.told) }
			eventually(t, func() bool { return told() > 0 }, r.p)
			if f.mend != nil {
				eventually(t, func() bool { return r.count(ben, "waits") > 0 || f.name == "the folder is gone" }, r.p)
				require.Zero(t, r.count(ann, "Spent $2")+r.count(ann, "Spent $3"), "nothing is said to be recorded")
				require.Equal(t, 24, r.api.Pending(), "it all waits at Telegram")
				f.mend(t, r)
			}
			eventually(t, func() bool {
				for i := range ids {
					if len(answers(r.api, ids[i])) == 0 || r.count(ben, fmt.Sprintf("Spent $%d on salt", 20+i)) == 0 {
						return false
					}
				}
				return true
			}, r.p)
			r.p.stop(t, syscall.SIGTERM)
			require.Equal(t, 1, told(), "once")
			require.LessOrEqual(t, r.count(ben, "waits"), 1, "once")
			require.Contains(t, r.p.said(), "level=WARN")
			require.LessOrEqual(t, strings.Count(r.p.said(), "the database fails"), 1, r.p.said())
			require.NotContains(t, r.p.said(), "the minute's round")
			kept := texts(t, r.db)
			for i := range waits {
				require.Equal(t, 1, kept[fmt.Sprintf("spent %d straw", 20+i)])
				require.Equal(t, 1, kept[fmt.Sprintf("spent %d salt", 20+i)])
			}
			require.Equal(t, 1, kept["spent 10 straw"], "what was before stays")
		})
	}
}

// TestDiskFaultsAtStart has the program start while the disk fails: who runs the
// server reads it once, what people text waits at Telegram, and the program starts
// to serve by itself. One that waits is stopped as any other.
func TestDiskFaultsAtStart(t *testing.T) {
	for _, f := range diskFaults {
		if f.name != "the disk is full" && f.name != "the files can only be read" {
			continue
		}
		t.Run(f.name, func(t *testing.T) {
			t.Parallel()
			r := newDiskRig(t, f.disk)
			r.p.stop(t, syscall.SIGTERM)
			f.hurt(t, r)
			for range 2 {
				before := r.count(ann, f.told)
				r.start(t)
				eventually(t, func() bool { return r.count(ann, f.told) == before+1 }, r.p)
				require.Equal(t, 1, strings.Count(r.p.said(), "the database fails"), r.p.said())
				r.p.stop(t, syscall.SIGTERM)
			}
			r.start(t)
			eventually(t, func() bool { return r.count(ann, f.told) == 3 }, r.p)
			id := r.api.Say(ann, "spent 20 straw")
			tries := len(r.api.Calls("getUpdates"))
			eventually(t, func() bool { // it looks as if it ran while it tries
				status, _, stderr := call(t, "", "health", "--db", r.db)
				return status == exitFailed && strings.Contains(stderr, "does not run")
			}, r.p)
			f.mend(t, r)
			require.Equal(t, "ready", r.p.line(t))
			eventually(t, func() bool { return len(answers(r.api, id)) == 1 }, r.p)
			require.Greater(t, len(r.api.Calls("getUpdates")), tries)
			r.p.stop(t, syscall.SIGTERM)
			require.Equal(t, 3, r.count(ann, f.told), "once for each start")
			require.Equal(t, 1, strings.Count(r.p.said(), "the database fails"), r.p.said())
			require.Equal(t, 1, strings.Count(r.p.said(), "the database works again"), r.p.said())
			require.Equal(t, 1, texts(t, r.db)["spent 20 straw"])
		})
	}
}

// TestDamageWhileRunning has pages of the open file overwritten: the program
// tells it and ends, so that what is texted waits at Telegram, and goes on with
// the backup that is put in place.
func TestDamageWhileRunning(t *testing.T) {
	t.Parallel()
	r := newDiskRig(t, nil)
	r.p.stop(t, syscall.SIGTERM)
	backup := filepath.Join(t.TempDir(), "backup.db")
	status, _, stderr := call(t, "", "backup", "--db", r.db, "--out", backup)
	require.Equal(t, exitDone, status, stderr)
	r.start(t)
	require.Equal(t, "ready", r.p.line(t))
	spoil(t, r.db)
	r.api.Say(ann, "spent 20 straw")
	require.Equal(t, exitFailed, r.p.end(t))
	require.Equal(t, 1, r.count(ann, "The database is damaged."))
	require.Zero(t, r.count(ann, "Spent $20"))
	require.Contains(t, r.p.said(), "put the latest backup in its place")

	r.start(t) // it is found at the start too
	require.Equal(t, exitFailed, r.p.end(t))
	require.Contains(t, r.p.said(), "put the latest backup in its place")
	status, _, stderr = call(t, "", "restore", "--db", r.db, "--force", backup)
	require.Equal(t, exitDone, status, stderr)
	r.start(t)
	id := r.api.Say(ann, "spent 21 straw")
	eventually(t, func() bool { return len(answers(r.api, id)) == 1 }, r.p)
	r.p.stop(t, syscall.SIGTERM)
	require.Equal(t, 1, texts(t, r.db)["spent 10 straw"])
}

// TestReplacedWhileRunning puts another file in the place of the open one: the
// program tells it, keeps what it had, ends, and goes on with the new one.
func TestReplacedWhileRunning(t *testing.T) {
	t.Parallel()
	r := newDiskRig(t, nil)
	backup := filepath.Join(t.TempDir(), "backup.db")
	status, _, stderr := call(t, "", "backup", "--db", r.db, "--out", backup)
	require.Equal(t, exitDone, status, stderr)
	id := r.api.Say(ann, "spent 20 straw")
	eventually(t, func() bool { return len(answers(r.api, id)) == 1 && r.api.Pending() == 0 }, r.p)
	require.NoError(t, os.Rename(backup, r.db))
	r.api.Say(ann, "spent 21 straw")
	require.Equal(t, exitFailed, r.p.end(t))
	require.Equal(t, 1, r.count(ann, "was replaced"))
	kept, err := filepath.Glob(r.db + ".kept-*")
	require.NoError(t, err)
	require.Len(t, kept, 1)
	require.Equal(t, 1, texts(t, kept[0])["spent 20 straw"])
	r.start(t)
	eventually(t, func() bool { return r.count(ann, "Spent $21 ") == 1 }, r.p)
	r.p.stop(t, syscall.SIGTERM)
	require.Equal(t, 1, texts(t, r.db)["spent 21 straw"])
	require.Zero(t, texts(t, r.db)["spent 20 straw"])
}

// spoil overwrites the insides of a database's pages, but the first.
func spoil(t *testing.T, db string) {
	t.Helper()
	f, err := os.OpenFile(db, os.O_RDWR, 0)
	require.NoError(t, err)
	info, err := f.Stat()
	require.NoError(t, err)
	for at := int64(4096); at < info.Size(); at += 4096 {
		_, err = f.WriteAt([]byte("a mouse was here a mouse was here"), at)
		require.NoError(t, err)
	}
	require.NoError(t, f.Close())
}

var ben = botapitest.Person{ID: 102, Name: "Ben"}

// newDiskRig starts a program for Ann, who runs it, and Ben.
func newDiskRig(t *testing.T, disk func(*testing.T) string) *diskRig {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "data")
	require.NoError(t, os.Mkdir(dir, 0o700))
	if disk != nil {
		dir = disk(t)
	}
	r := &diskRig{api: botapitest.New(testToken), db: filepath.Join(dir, "herd.db")}
	t.Cleanup(r.api.Close)
	r.start(t)
	pair(t, r.api, r.p)
	r.api.Say(ann, setUp)
	invite := r.api.Say(ann, "invite my wife")
	eventually(t, func() bool { return len(answers(r.api, invite)) == 1 }, r.p)
	code := regexp.MustCompile(`[0-9A-Z]{5}-[0-9A-Z]{5}`).FindString(answers(r.api, invite)[0].Text)
	require.NotEmpty(t, code)
	r.api.Say(ben, code)
	eventually(t, func() bool { return r.count(ben, "") > 0 }, r.p)
	first := r.api.Say(ann, "spent 10 straw")
	eventually(t, func() bool { return len(answers(r.api, first)) == 1 && r.api.Pending() == 0 }, r.p)
	return r
}

func (r *diskRig) start(t *testing.T) {
	t.Helper()
	r.p = startWith(t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + testToken},
		"serve", "--db", r.db, "--telegram-api", r.api.URL(), "--telegram-haste", "20")
}

// count is how many messages in a private chat hold the words.
func (r *diskRig) count(p botapitest.Person, words string) (n int) {
	for _, m := range r.api.Messages(p.ID) {
		if strings.Contains(m.Text, words) {
			n++
		}
	}
	return n
}

// smallDisk mounts a disk of its own.
func smallDisk(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	if err := unix.Mount("tmpfs", dir, "tmpfs", 0, "size=64m"); err != nil {
		t.Skipf("this machine lets a test mount no disk of its own: %v", err)
	}
	t.Cleanup(func() { require.NoError(t, unix.Unmount(dir, 0)) })
	return dir
}

// fillUp takes all the room there is.
func fillUp(t *testing.T, path string) {
	t.Helper()
	f, err := os.Create(path)
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	for size := 1 << 16; size > 0; {
		if _, err := f.Write(make([]byte, size)); errors.Is(err, syscall.ENOSPC) {
			size /= 2
		} else {
			require.NoError(t, err)
		}
	}
}

// limitFiles sets how large a file the program may write.
func limitFiles(t *testing.T, r *diskRig, size uint64) {
	t.Helper()
	var limit unix.Rlimit
	require.NoError(t, unix.Prlimit(r.p.cmd.Process.Pid, unix.RLIMIT_FSIZE, nil, &limit))
	limit.Cur = min(size, limit.Max)
	require.NoError(t, unix.Prlimit(r.p.cmd.Process.Pid, unix.RLIMIT_FSIZE, &limit, nil))
}

// immutable is the flag of a file that nobody may change.
const immutable = 0x10

// freeze makes the database unchangeable, even for who has it open, or ends that.
func freeze(t *testing.T, db string, on bool) {
	t.Helper()
	for _, path := range []string{db, db + "-wal"} {
		f, err := os.Open(path)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		require.NoError(t, err)
		flags, err := unix.IoctlGetInt(int(f.Fd()), unix.FS_IOC_GETFLAGS)
		if err == nil {
			flags &^= immutable
			if on {
				flags |= immutable
			}
			err = unix.IoctlSetPointerInt(int(f.Fd()), unix.FS_IOC_SETFLAGS, flags)
		}
		require.NoError(t, f.Close())
		if err != nil {
			t.Skipf("this machine lets a test make no file unchangeable: %v", err)
		}
	}
}
