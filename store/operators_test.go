package store

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What each poll asks for reads neither all people nor all chats.
func TestOperatorsAreFoundByIndex(t *testing.T) {
	s := newStore(t)
	read(t, s, func(tx *Tx) {
		for _, query := range []string{
			chatColumns + operatorChats,
			"SELECT EXISTS (SELECT 1 FROM person WHERE operator = 1)",
		} {
			plan, err := list(tx, "EXPLAIN QUERY PLAN "+query, nil, func(row scanner) (detail string, err error) {
				err = row.Scan(new(int), new(int), new(int), &detail)
				return detail, err
			})
			require.NoError(t, err)
			for _, step := range plan {
				require.False(t, strings.HasPrefix(step, "SCAN") && !strings.Contains(step, "INDEX person_operator") &&
					!strings.Contains(step, "CONSTANT ROW"), "%s: %s", query, step)
			}
		}
	})
}
