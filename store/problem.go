package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"syscall"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"
)

// ProblemCode names what is wrong with a database file.
type ProblemCode string

// The codes of a Problem.
const (
	Missing     ProblemCode = "missing"        // no such file or folder
	NotDatabase ProblemCode = "not_a_database" // some other kind of file
	Foreign     ProblemCode = "foreign"        // a database of another program
	Damaged     ProblemCode = "damaged"
	ReadOnly    ProblemCode = "read_only" // the file or its folder cannot be written
	Full        ProblemCode = "full"      // no room on the disk
	Locked      ProblemCode = "locked"    // another process has it open for writing
	Busy        ProblemCode = "busy"      // another program holds a lock for too long
	Newer       ProblemCode = "newer"     // written by a newer version
	Older       ProblemCode = "older"     // to be brought up to date by a writer first
	Exists      ProblemCode = "exists"    // would be overwritten
	Unusable    ProblemCode = "unusable"  // the disk or the permissions fail
	Replaced    ProblemCode = "replaced"  // another file was put in its place
)

// Problem is something wrong with a file that a person can put right. Sentence
// says what, and what to do; Err is the cause, for a log.
type Problem struct {
	Code     ProblemCode
	Sentence string
	Err      error
}

// Error is the sentence alone.
func (p *Problem) Error() string { return p.Sentence }

// Unwrap gives the cause.
func (p *Problem) Unwrap() error { return p.Err }

// ErrNotFound is in the chain of an error about a row that is not there.
var ErrNotFound = errors.New("not found")

func problem(code ProblemCode, err error, format string, args ...any) *Problem {
	return &Problem{Code: code, Sentence: fmt.Sprintf(format, args...), Err: err}
}

// explain makes a Problem of an error about the file at path, where it is one
// that a person can put right; other errors stay as they are.
func explain(path string, err error) error {
	var known *Problem
	if err == nil || errors.As(err, &known) || errors.Is(err, context.Canceled) || errors.Is(err, context.DeadlineExceeded) {
		return err
	}
	if explained := explainSQL(path, err); errors.As(explained, &known) {
		return explained
	}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return problem(Missing, err, "There is no file %s; check the path.", path)
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EFBIG):
		return problem(Full, err, "There is no room left on the disk for %s; make room and try again.", path)
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return problem(ReadOnly, err, "%s cannot be written; check the permissions of the file and its folder.", path)
	}
	return err
}

// explainSQL is explain for errors that the content of the file or SQLite gave,
// and no others.
func explainSQL(path string, err error) error {
	var known *Problem
	var e *sqlite.Error
	if errors.Is(err, errNewerRecord) {
		return problem(Newer, err, "%s holds records of a newer version; use that version.", path)
	}
	if errors.As(err, &known) || !errors.As(err, &e) {
		return err
	}
	switch e.Code() {
	case sqlite3.SQLITE_READONLY_DBMOVED:
		return problem(Missing, err, "%s was moved or replaced while in use; start again.", path)
	case sqlite3.SQLITE_IOERR_SHORT_READ:
		return damaged(path, err)
	case sqlite3.SQLITE_IOERR_SHMSIZE: // the log's index finds no room
		return problem(Full, err, "There is no room left on the disk for %s; make room and try again.", path)
	}
	switch e.Code() & 0xff {
	case sqlite3.SQLITE_NOTADB:
		return problem(NotDatabase, err, "%s is not a troughbell database; check the path.", path)
	case sqlite3.SQLITE_CORRUPT:
		return damaged(path, err)
	case sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM:
		return problem(ReadOnly, err, "%s cannot be written; check the permissions of the file and its folder.", path)
	case sqlite3.SQLITE_FULL:
		return problem(Full, err, "There is no room left on the disk for %s; make room and try again.", path)
	case sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED:
		return problem(Busy, err, "%s is in use by another program; close that one and try again.", path)
	case sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_IOERR, sqlite3.SQLITE_AUTH:
		return problem(Unusable, err, "%s cannot be read or written; check the disk, and the permissions of the file and its folder.", path)
	}
	return err
}

func damaged(path string, err error) *Problem {
	return problem(Damaged, err, "%s is damaged; keep it, and put the latest backup in its place with `troughbell restore`.", path)
}
