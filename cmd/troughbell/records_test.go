package main

import (
	"context"
	"encoding/json"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
	"troughbell/store"
)

// journals lists the records of each herd of a database, in their order.
func journals(t *testing.T, db string) map[string][]store.Envelope {
	t.Helper()
	ctx := context.Background()
	st, err := store.OpenReader(ctx, db)
	require.NoError(t, err)
	defer func() { require.NoError(t, st.Close()) }()
	out := map[string][]store.Envelope{}
	require.NoError(t, st.Read(ctx, func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil {
			return err
		}
		for _, h := range herds {
			if out[h.Name], err = tx.Journal(h.ID); err != nil {
				return err
			}
		}
		return nil
	}))
	return out
}

// records writes the records of a database one a line, without what tells one
// run from another: the ids of messages.
func records(t *testing.T, db string) []string {
	t.Helper()
	var out []string
	for herd, journal := range journals(t, db) {
		for _, e := range journal {
			fact, err := json.Marshal(e.Fact)
			require.NoError(t, err)
			out = append(out, fmt.Sprintf("%s %s %s %s %s %v %s %q %s %s",
				herd, e.ID, e.On, e.At, e.SaidAt, e.Stated, e.ByName, e.Text, e.Judged, fact))
		}
	}
	return out
}

// fences counts the fence records that stand, by their text.
func fences(t *testing.T, db string) map[string]int {
	t.Helper()
	out := map[string]int{}
	for _, journal := range journals(t, db) {
		voided := map[string]bool{}
		for _, e := range journal {
			if v, ok := e.Fact.(model.Void); ok {
				voided[v.Record] = true
			}
		}
		for _, e := range journal {
			if e.Fact.Kind() == "fence" && !voided[e.ID] {
				out[e.Text]++
			}
		}
	}
	return out
}
