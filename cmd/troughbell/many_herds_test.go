package main

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/model"
	"troughbell/store"
)

// keeper is the owner of the herd of that number, from 1, in a file of many herds.
func keeper(herd int) botapitest.Person {
	return botapitest.Person{ID: int64(1_000_000 + herd), Name: "Ann"}
}

// fillHerds makes a file of many herds at path, each with an owner and a private
// chat: the first ones have set-up and five weeks of rounds behind them, the
// others set-up alone. They are next looked at in the course of the day to come.
//
// The first herd is made record by record; the others are copied from it.
func fillHerds(tb testing.TB, path string, herds, seasons int) {
	tb.Helper()
	ctx, now := context.Background(), time.Now()
	st, err := store.Open(ctx, path, store.Options{Ephemeral: true})
	require.NoError(tb, err)
	var setUp int
	require.NoError(tb, st.Write(ctx, func(tx *store.Tx) (err error) {
		setUp, err = firstHerd(tx, now)
		return err
	}))
	require.NoError(tb, st.Close())

	db, err := sql.Open("sqlite", "file:"+path+"?_journal_mode=WAL&_synchronous=OFF")
	require.NoError(tb, err)
	defer func() { require.NoError(tb, db.Close()) }()
	db.SetMaxOpenConns(1)
	copyRows(tb, db, "herd", herds, "true", map[string]string{
		"id": "n", "look_again": fmt.Sprintf("%d + n * 7919 %% 1440 * 60000", now.Add(time.Hour).UnixMilli()),
	})
	copyRows(tb, db, "person", herds, "true", map[string]string{"id": "n", "operator": "0"})
	copyRows(tb, db, "member", herds, "true", map[string]string{"herd": "n", "person": "n"})
	copyRows(tb, db, "chat", herds, "true", map[string]string{
		"id": "n", "herd": "n", "person": "n", "external": fmt.Sprintf("%d + n", keeper(0).ID),
	})
	copyRows(tb, db, "record", herds, fmt.Sprintf("o.seq <= %d OR n <= %d", setUp, seasons), map[string]string{"herd": "n"})
	for _, query := range []string{
		"UPDATE herd SET seq = (SELECT max(seq) FROM record WHERE herd = herd.id)",
		"PRAGMA wal_checkpoint(TRUNCATE)",
	} {
		_, err = db.Exec(query)
		require.NoError(tb, err)
	}
}

// copyRows copies the rows of a table once for each number from 2 to n, with some
// columns changed.
func copyRows(tb testing.TB, db *sql.DB, table string, n int, where string, changed map[string]string) {
	tb.Helper()
	rows, err := db.Query("SELECT name FROM pragma_table_info(?)", table)
	require.NoError(tb, err)
	var to, from []string
	for rows.Next() {
		var name string
		require.NoError(tb, rows.Scan(&name))
		to = append(to, name)
		if value, ok := changed[name]; ok {
			from = append(from, value)
		} else {
			from = append(from, "o."+name)
		}
	}
	require.NoError(tb, rows.Err())
	require.NoError(tb, rows.Close())
	_, err = db.Exec(fmt.Sprintf("WITH RECURSIVE number (n) AS (SELECT 2 UNION ALL SELECT n + 1 FROM number WHERE n < %d),"+
		" o AS MATERIALIZED (SELECT * FROM %s) INSERT INTO %s (%s) SELECT %s FROM number CROSS JOIN o WHERE n >= 2 AND (%s)",
		n, table, table, strings.Join(to, ", "), strings.Join(from, ", "), where))
	require.NoError(tb, err)
}

// firstHerd makes an invented herd and gives how many of its records are set-up.
func firstHerd(tx *store.Tx, now time.Time) (setUp int, err error) {
	zone, err := time.LoadLocation("America/New_York")
	if err != nil {
		return 0, err
	}
	id, err := tx.CreateHerd("Long Acre", zone.String(), now)
	if err != nil {
		return 0, err
	}
	person, err := tx.CreatePerson(keeper(1).Name)
	if err != nil {
		return 0, err
	}
	if err := tx.SetOperator(person); err != nil {
		return 0, err
	}
	if err := tx.Join(id, person, store.Owner); err != nil {
		return 0, err
	}
	chat, err := tx.ChatOf("telegram", fmt.Sprint(keeper(1).ID), false)
	if err != nil {
		return 0, err
	}
	chat.Herd, chat.Person = id, person
	if err := tx.SaveChat(chat); err != nil {
		return 0, err
	}
	came := now.AddDate(0, 0, -35).Add(-time.Hour).In(zone)
	start := []model.Fact{
		model.Setting{Key: model.SetZone, Text: zone.String()},
		model.Setting{Key: model.SetUnits, Text: model.US},
		model.Setting{Key: model.SetChore, List: []string{model.WeekdayCode(now.AddDate(0, 0, 3).Weekday())}},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: model.Float(130)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel", CapacityL: model.Float(208), Nipples: model.Int(2)}},
		model.Arrive{Count: 4, Animals: []string{"Dot", "Rufus", "Nettle", "Gus"}, WeightKg: model.Float(22)},
	}
	add := func(at time.Time, f model.Fact) error {
		return tx.Append(&store.Envelope{
			Herd: id, On: model.DayOf(at), At: at, SaidAt: at, Zone: zone.String(), Judged: "certain", Fact: f,
		})
	}
	for _, f := range start {
		if err := add(came, f); err != nil {
			return 0, err
		}
	}
	for week := range 5 {
		at := came.AddDate(0, 0, 7*week).Add(time.Hour)
		for i, f := range []model.Fact{
			model.Refill{FeedKg: model.Float(40 + 6*float64(week)), Full: week > 1},
			model.Water{Full: true},
			model.Fence{Kv: 5.8},
			model.Weigh{Animals: []string{"Dot"}, GirthCm: 70 + 4*float64(week)},
		} {
			if err := add(at.Add(time.Duration(i)*time.Minute), f); err != nil {
				return 0, err
			}
		}
	}
	return len(start), nil
}
