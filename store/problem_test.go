package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestExplain(t *testing.T) {
	for _, r := range []struct {
		err  error
		code ProblemCode
	}{
		{fs.ErrNotExist, Missing},
		{&fs.PathError{Op: "open", Path: "x", Err: syscall.EACCES}, ReadOnly},
		{&fs.PathError{Op: "open", Path: "x", Err: syscall.EROFS}, ReadOnly},
		{fmt.Errorf("sync: %w", syscall.ENOSPC), Full},
		{errNewerRecord, Newer},
	} {
		err := explain("/barn/herd.db", r.err)
		requireProblem(t, err, r.code, "/barn/herd.db")
		require.ErrorIs(t, err, r.err, "the cause is kept for a log")
		require.Equal(t, err, explain("/elsewhere", err), "what is explained stays")
	}
	for _, err := range []error{nil, errors.New("a slip"), context.Canceled, fmt.Errorf("herd 3: %w", ErrNotFound)} {
		require.Equal(t, err, explain("/barn/herd.db", err))
	}
	// What a caller's own work met inside a transaction is not the database's.
	require.Equal(t, fs.ErrNotExist, explainSQL("/barn/herd.db", fs.ErrNotExist))
}
