package store

import (
	"context"
	"database/sql"
	"database/sql/driver"
	"errors"
	"fmt"
	"io"
	"reflect"
)

// statement is a prepared statement of a connection, run on the driver itself: for
// statements as small as those of a text, database/sql costs about as much as they do.
type statement struct {
	driver.Stmt
	// changesPeople says that it changes people or chats.
	changesPeople bool
}

// prepare prepares a statement on the connection, which must outlive it.
func prepare(conn *sql.Conn, query string) (s statement, err error) {
	err = conn.Raw(func(d any) (err error) {
		s.Stmt, err = d.(driver.ConnPrepareContext).PrepareContext(context.Background(), query)
		return err
	})
	s.changesPeople = changesPeople.MatchString(query)
	return s, err
}

func (s statement) exec(ctx context.Context, args []any) (sql.Result, error) {
	values, err := valuesOf(args)
	if err != nil {
		return nil, err
	}
	return s.Stmt.(driver.StmtExecContext).ExecContext(ctx, values)
}

// each runs f for each row, as long as it gives no error.
func (s statement) each(args []any, f func(scanner) error) (err error) {
	values, err := valuesOf(args)
	if err != nil {
		return err
	}
	rows, err := s.Stmt.(driver.StmtQueryContext).QueryContext(context.Background(), values)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, rows.Close()) }()
	r := row(make([]driver.Value, len(rows.Columns())))
	for {
		switch err := rows.Next(r); {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return err
		}
		if err := f(r); err != nil {
			return err
		}
	}
}

// valuesOf makes of arguments what the driver takes.
func valuesOf(args []any) ([]driver.NamedValue, error) {
	values := make([]driver.NamedValue, len(args))
	for i, a := range args {
		values[i] = driver.NamedValue{Ordinal: i + 1, Value: a}
		switch a.(type) {
		case int64, string, bool, []byte, nil:
			continue
		}
		var err error
		if values[i].Value, err = driver.DefaultParameterConverter.ConvertValue(a); err != nil {
			return nil, fmt.Errorf("argument %d: %w", i+1, err)
		}
	}
	return values, nil
}

// row is a row that was read.
type row []driver.Value

// Scan implements scanner.
func (r row) Scan(dest ...any) error {
	if len(dest) != len(r) {
		return fmt.Errorf("a row of %d columns is read into %d", len(r), len(dest))
	}
	for i, to := range dest {
		if err := assign(to, r[i]); err != nil {
			return fmt.Errorf("column %d: %w", i, err)
		}
	}
	return nil
}

// assign keeps a column where to points.
func assign(to any, v driver.Value) error {
	switch to := to.(type) {
	case sql.Scanner:
		return to.Scan(v)
	case *[]byte:
		switch v := v.(type) {
		case []byte:
			*to = v
			return nil
		case nil:
			*to = nil
			return nil
		}
	}
	p := reflect.ValueOf(to)
	if p.Kind() == reflect.Pointer {
		e := p.Elem()
		switch v := v.(type) {
		case string:
			if e.Kind() == reflect.String {
				e.SetString(v)
				return nil
			}
		case int64:
			switch {
			case e.CanInt() && !e.OverflowInt(v):
				e.SetInt(v)
				return nil
			case e.Kind() == reflect.Bool && v>>1 == 0:
				e.SetBool(v == 1)
				return nil
			}
		}
	}
	return fmt.Errorf("a %T does not fit a %T", v, to)
}
