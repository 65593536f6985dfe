package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"slices"

	"troughbell/model"
)

// ViewRows gives what the view of a kind shows for one herd, in the order of
// their moments, those taken back left out: plain numbers, days as 2026-05-16,
// moments in RFC 3339, nothing for what was not said. The columns herd and
// voided, which say nothing then, are left out. cols and vals are good until f
// returns. A kind without rows calls f not once.
func (tx *Tx) ViewRows(kind model.Kind, herd HerdID, f func(cols []string, vals []string) error) (err error) {
	if tx.c == nil {
		return errTxOver
	}
	defer func() {
		if err != nil {
			err = fmt.Errorf("view %s: %w", ViewName(kind), err)
		}
	}()
	facts := model.Facts()
	i := slices.IndexFunc(facts, func(f model.Fact) bool { return f.Kind() == kind })
	if i < 0 {
		return errors.New("there is no such kind of record")
	}
	// Not the view itself: only a writer brings that up to date.
	rows, err := tx.c.conn.QueryContext(context.Background(), fmt.Sprintf(
		"WITH v AS (%s) SELECT v.* FROM v JOIN record AS r ON r.herd = v.herd AND r.id = v.id"+
			" WHERE v.herd = ? AND v.voided IS NULL ORDER BY r.at, r.seq", viewSQL(facts[i])), int64(herd))
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, rows.Close()) }()
	return eachRow(rows, f)
}

func eachRow(rows *sql.Rows, f func(cols []string, vals []string) error) error {
	names, err := rows.Columns()
	if err != nil {
		return err
	}
	read, dest := make([]sql.NullString, len(names)), make([]any, len(names))
	var cols, vals []string
	for i, n := range names {
		dest[i] = &read[i]
		if n != "herd" && n != "voided" {
			cols = append(cols, n)
		}
	}
	for rows.Next() {
		if err := rows.Scan(dest...); err != nil {
			return err
		}
		vals = vals[:0]
		for i, n := range names {
			if n != "herd" && n != "voided" {
				vals = append(vals, read[i].String)
			}
		}
		if err := f(cols, vals); err != nil {
			return err
		}
	}
	return rows.Err()
}
