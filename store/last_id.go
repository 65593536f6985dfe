package store

import "fmt"

// numbered are the tables whose ids are known outside of them: to a button below
// a message, to what a desk remembers of a herd. No id of theirs comes twice.
var numbered = []string{"herd", "person", "chat", "outgoing"}

// nextID is SQL for the id of a new row: beyond all that the table has or had.
func nextID(table string) string {
	return fmt.Sprintf("max(coalesce((SELECT max(id) FROM %[1]s), 0),"+
		" coalesce((SELECT id FROM last_id WHERE of = '%[1]s'), 0)) + 1", table)
}

// keepLastIDs notes the highest ids, before rows are deleted.
func (tx *Tx) keepLastIDs() error {
	for _, table := range numbered {
		_, err := tx.exec("INSERT INTO last_id (of, id) SELECT ?, "+nextID(table)+" - 1 WHERE true"+
			" ON CONFLICT (of) DO UPDATE SET id = excluded.id", table)
		if err != nil {
			return fmt.Errorf("last id of %s: %w", table, err)
		}
	}
	return nil
}
