package store

import (
	"path/filepath"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Reads beside a write see whole transactions: the records of a herd and the
// herd's own count of them never differ.
func TestReadersBesideAWriter(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{Ephemeral: true})
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	other, err := OpenReader(t.Context(), path)
	require.NoError(t, err)
	defer func() { require.NoError(t, other.Close()) }()

	const writes = 100
	var all sync.WaitGroup
	for range 2 { // writers, one after another by themselves
		all.Go(func() {
			for range writes {
				err := s.Write(t.Context(), func(tx *Tx) error {
					for range 2 {
						e := f.envelope(model.Done{})
						if err := tx.Append(&e); err != nil {
							return err
						}
					}
					return nil
				})
				if err != nil {
					t.Error(err)
					return
				}
			}
		})
	}
	for _, reader := range []*Store{s, s, s, s, other, other} {
		all.Go(func() {
			for range writes / 4 {
				err := reader.Read(t.Context(), func(tx *Tx) error {
					before, err := tx.Herd(f.herd)
					if err != nil {
						return err
					}
					journal, err := tx.Journal(f.herd)
					if err == nil && (int64(len(journal)) != before.Seq || before.Seq%2 != 0) {
						t.Errorf("%d records, %d counted", len(journal), before.Seq)
					}
					return err
				})
				if err != nil {
					t.Error(err)
					return
				}
			}
		})
	}
	all.Wait()
	read(t, other, func(tx *Tx) {
		h, err := tx.Herd(f.herd)
		require.NoError(t, err)
		require.Equal(t, int64(4*writes), h.Seq)
	})
}
