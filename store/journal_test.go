package store

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

func TestJournalGivesBackWhatWasAppended(t *testing.T) {
	s := newStore(t)
	var f farm
	var first, second Envelope
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		first = f.envelope(model.Weigh{Animals: []string{"Dot"}, GirthCm: 96.5})
		require.NoError(t, tx.Append(&first))
		second = f.envelope(model.Refill{Feeder: "hopper", FeedKg: model.Float(81.65), Full: true})
		second.Zone, second.Stated = "Europe/London", true
		second.At = noon.Add(1234567 * time.Nanosecond)
		require.NoError(t, tx.Append(&second))
	})
	require.Equal(t, "r1", first.ID)
	require.Equal(t, "America/Chicago", first.Zone)
	require.Equal(t, "2026-05-16T07:00:00-05:00", first.At.Format(time.RFC3339))
	require.Equal(t, 1*time.Millisecond, second.At.Sub(noon), "kept to the millisecond")
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Equal(t, []Envelope{first, second}, all)
		later, err := tx.JournalSince(f.herd, 1)
		require.NoError(t, err)
		require.Equal(t, []Envelope{second}, later)
		none, err := tx.JournalSince(f.herd, 2)
		require.NoError(t, err)
		require.Empty(t, none)
		row, err := tx.Herd(f.herd)
		require.NoError(t, err)
		require.Equal(t, int64(2), row.Seq)
	})
}

// factsOfEveryKind has at least one of each.
func factsOfEveryKind() []model.Fact {
	one, kg, minute, yes := 1, 20.5, 420, true
	born := model.DayOf(noon) - 60
	return []model.Fact{
		model.Weigh{Animals: []string{"Dot", "Pru"}, WeightKg: 81.65, By: model.ByScale},
		model.Refill{FeedKg: &kg, Fraction: model.Float(0.5), FromEmpty: true},
		model.FeedLevel{Days: model.Float(3)},
		model.Stock{Ingredient: "corn", Count: model.Float(4), Amount: &kg, Currency: "USD", Counted: true},
		model.Mixed{Batches: model.Float(2)},
		model.Water{Barrel: "barrel 2", Fraction: model.Float(0), Seen: true},
		model.WallowFill{Minutes: model.Float(20)},
		model.Worm{Treatment: model.Treatment{Animals: []string{"all"}, Product: "fenbendazole", WithdrawalDays: &one}},
		model.Treat{Treatment: model.Treatment{Animals: []string{"Dot"}, Product: "oxytetracycline"}},
		model.Move{Pen: "east", Animals: []string{"Dot"}},
		model.Sick{Animals: []string{"Dot"}, Note: "off her feed"},
		model.Alarm{What: model.AlarmOut},
		model.Fence{Kv: 4.5},
		model.Weather{HighC: model.Float(-3), RhPct: model.Float(0)},
		model.Forecast{Days: []model.ForecastDay{{On: 20610, HighC: model.Float(31.5), LowC: model.Float(18)}}},
		model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean_meal": 10}},
		model.Spend{Amount: 12.5, Currency: "GBP", What: "straw"},
		model.Arrive{Count: 2, Animals: []string{"Dot"}, Sexes: []model.Sex{model.Gilt}, WeightKg: &kg, Born: &born},
		model.Gone{Count: 1, How: model.Sold, Amount: &kg},
		model.Booked{Day: 20800, Minute: &minute},
		model.Expected{Day: 20900, Count: 4},
		model.AwayFrom{From: 20600, To: 20610},
		model.Note{What: "a \"quoted\" 100 % 'note'\x00\x1f\nüñ 🐖"},
		model.Remind{Day: 20700, What: "ear tags"},
		model.Done{About: []string{"refill"}},
		model.Snooze{Topics: []string{"weigh"}, Until: noon.Add(time.Hour)},
		model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "east", AreaM2: &kg, InUse: &yes}},
		model.Told{Key: "standing 2026-05-16", About: []string{}, Grade: "routine"},
		model.Question{About: "weigh", Code: "girth_or_weight", Body: []byte(`{"n":1}`)},
		model.Settled{Question: "r3", How: "answered"},
		model.Void{Record: "r1", Why: "undo"},
		model.Import{File: "herd.zip", Records: 3},
	}
}

func TestEveryKindOfFactComesBack(t *testing.T) {
	facts := factsOfEveryKind()
	seen := map[model.Kind]bool{}
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		for _, fact := range facts {
			seen[fact.Kind()] = true
			e := f.envelope(fact)
			require.NoError(t, tx.Append(&e))
		}
	})
	for _, fact := range model.Facts() {
		require.True(t, seen[fact.Kind()], "this test must have a %s", fact.Kind())
	}
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Len(t, all, len(facts))
		for i, e := range all {
			require.Equal(t, facts[i], e.Fact)
		}
		for _, fact := range facts { // and every view can show it
			require.NoError(t, tx.ViewRows(fact.Kind(), f.herd, func(cols, vals []string) error {
				require.Len(t, vals, len(cols))
				return nil
			}), fact.Kind())
		}
	})
}

func TestAppendRefuses(t *testing.T) {
	rows := []struct {
		name   string
		change func(*Envelope)
		says   string
	}{
		{"no fact", func(e *Envelope) { e.Fact = nil }, "no fact"},
		{"a fact that cannot be", func(e *Envelope) { e.Fact = model.Fence{Kv: -1} }, "kilovolts"},
		{"no moment", func(e *Envelope) { e.At = time.Time{} }, "no moment"},
		{"no herd", func(e *Envelope) { e.Herd = 0 }, "not found"},
		{"a herd that is not there", func(e *Envelope) { e.Herd = 99 }, "not found"},
		{"a zone that is not one", func(e *Envelope) { e.Zone = "Mars/Olympus" }, "time zone"},
		{"the machine's zone", func(e *Envelope) { e.Zone = "Local" }, "time zone"},
		{"a setting of a zone that is not one", func(e *Envelope) {
			e.Fact = model.Setting{Key: model.SetZone, Text: "central time"}
		}, "time zone"},
		{"a void of nothing", func(e *Envelope) { e.Fact = model.Void{Record: "r9", Why: "undo"} }, "r9"},
		{"an ID of another record", func(e *Envelope) { e.ID = "r7" }, "r7"},
		{"an ID with a blank", func(e *Envelope) { e.ID = "a b" }, "a b"},
		{"a person who is not there", func(e *Envelope) { e.By = 99 }, "FOREIGN KEY"},
		{"a chat that is not there", func(e *Envelope) { e.Source.Chat = 99 }, "FOREIGN KEY"},
	}
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			e := f.envelope(model.Note{What: "x"})
			r.change(&e)
			before := e
			err := s.Write(t.Context(), func(tx *Tx) error { return tx.Append(&e) })
			require.ErrorContains(t, err, r.says)
			require.Equal(t, before, e, "what was refused is not numbered")
		})
	}
	read(t, s, func(tx *Tx) {
		row, err := tx.Herd(f.herd)
		require.NoError(t, err)
		require.Zero(t, row.Seq)
	})
}

func TestRecordsOfAMessage(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		var ids []string
		for _, what := range []string{"one", "two", "three"} {
			e := f.envelope(model.Note{What: what})
			if what == "three" {
				e.Source.Message = "18"
			}
			require.NoError(t, tx.Append(&e))
			ids = append(ids, e.ID)
		}
		v := f.envelope(model.Void{Record: ids[0], Why: "edit"})
		v.Source.Message = "19"
		require.NoError(t, tx.Append(&v))

		found := func(live bool) (out []string) {
			e, err := tx.BySource(f.herd, Source{Chat: f.chat, Message: "17"}, live)
			require.NoError(t, err)
			for _, x := range e {
				out = append(out, x.ID)
			}
			return out
		}
		require.Equal(t, []string{"r1", "r2"}, found(false))
		require.Equal(t, []string{"r2"}, found(true))
		e, err := tx.BySource(f.herd+1, Source{Chat: f.chat, Message: "17"}, false)
		require.NoError(t, err)
		require.Empty(t, e, "another herd's")
	})
}

func TestHerdFollowsNameAndZone(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		say := func(at time.Time, fact model.Fact) string {
			e := f.envelope(fact)
			e.At = at
			require.NoError(t, tx.Append(&e))
			return e.ID
		}
		expect := func(name, zone string) {
			h, err := tx.Herd(f.herd)
			require.NoError(t, err)
			require.Equal(t, name, h.Name)
			require.Equal(t, zone, h.Zone)
			// The fold of the journal must say the same where it says anything.
			all, err := tx.Journal(f.herd)
			require.NoError(t, err)
			var records []model.Record
			for _, e := range all {
				records = append(records, e.Record())
			}
			folded := model.Fold(records)
			if folded.Name != "" {
				require.Equal(t, folded.Name, name)
			}
			if folded.Zone != "" {
				require.Equal(t, folded.Zone, zone)
			}
		}
		expect("Long Acre", "America/Chicago")
		say(noon, model.Setting{Key: model.SetUnits, Text: model.US})
		london := say(noon.Add(time.Hour), model.Setting{Key: model.SetZone, Text: "Europe/London"})
		expect("Long Acre", "Europe/London")
		say(noon, model.Setting{Key: model.SetZone, Text: "Asia/Tokyo"})
		expect("Long Acre", "Europe/London") // said later, but of an earlier moment
		name := say(noon, model.Setting{Key: model.SetHerd, Text: "Hill End"})
		expect("Hill End", "Europe/London")
		say(noon.Add(2*time.Hour), model.Void{Record: london, Why: "undo"})
		expect("Hill End", "Asia/Tokyo")
		say(noon.Add(2*time.Hour), model.Void{Record: name, Why: "undo"})
		expect("Long Acre", "Asia/Tokyo")
	})
}

func TestFailedWriteLeavesNothing(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	slip := errors.New("a slip")
	var kept *Tx
	err := s.Write(t.Context(), func(tx *Tx) error {
		kept = tx
		e := f.envelope(model.Note{What: "never was"})
		require.NoError(t, tx.Append(&e))
		return slip
	})
	require.ErrorIs(t, err, slip)
	require.ErrorIs(t, kept.SetValue("tick", "1"), errTxOver)
	require.PanicsWithValue(t, "a bug", func() {
		_ = s.Write(t.Context(), func(tx *Tx) error {
			e := f.envelope(model.Note{What: "never was"})
			require.NoError(t, tx.Append(&e))
			panic("a bug")
		})
	})
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Empty(t, all)
		require.Error(t, tx.SetValue("tick", "1"), "a read writes nothing")
	})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "1")) })
}

// The journal of each of several herds is what was appended to it, whatever
// else happens in between.
func TestJournalIsWhatWasAppended(t *testing.T) {
	s := newStore(t)
	rapid.Check(t, func(rt *rapid.T) {
		var herds []HerdID
		said := map[HerdID][]Envelope{}
		write(t, s, func(tx *Tx) {
			for range rapid.IntRange(1, 3).Draw(rt, "herds") {
				id, err := tx.CreateHerd("herd", "UTC", noon)
				require.NoError(t, err)
				herds = append(herds, id)
			}
		})
		for range rapid.IntRange(0, 8).Draw(rt, "writes") {
			fail := rapid.Bool().Draw(rt, "fail")
			var added []Envelope
			err := s.Write(t.Context(), func(tx *Tx) error {
				for range rapid.IntRange(0, 4).Draw(rt, "records") {
					herd := rapid.SampledFrom(herds).Draw(rt, "herd")
					e := Envelope{
						Herd: herd, At: time.UnixMilli(rapid.Int64Range(-1e12, 4e12).Draw(rt, "at")),
						On:     model.Day(rapid.IntRange(0, 40000).Draw(rt, "on")),
						Zone:   rapid.SampledFrom([]string{"", "Asia/Kathmandu", "America/St_Johns"}).Draw(rt, "zone"),
						Text:   rapid.String().Draw(rt, "text"),
						ByName: rapid.String().Draw(rt, "by"),
						Stated: rapid.Bool().Draw(rt, "stated"),
						Fact:   model.Note{What: rapid.StringN(1, 20, -1).Draw(rt, "what")},
						SaidAt: noon,
						Judged: "certain",
						Source: Source{Message: rapid.String().Draw(rt, "message")},
					}
					if err := tx.Append(&e); err != nil {
						return err
					}
					added = append(added, e)
				}
				if fail {
					return errors.New("a slip")
				}
				return nil
			})
			require.Equal(rt, fail, err != nil, "%v", err)
			if !fail {
				for _, e := range added {
					said[e.Herd] = append(said[e.Herd], e)
				}
			}
		}
		read(t, s, func(tx *Tx) {
			for _, id := range herds {
				all, err := tx.Journal(id)
				require.NoError(t, err)
				require.Equal(rt, said[id], all)
				for i, e := range all {
					require.Equal(rt, int64(i+1), e.Seq)
					require.Equal(rt, fmt.Sprintf("r%d", i+1), e.ID)
				}
			}
		})
	})
}

func FuzzRecordText(f *testing.F) {
	f.Add("Dot 38 girth", "Ann", "17")
	f.Add("", "", "")
	f.Add("a\x00b\xff", "'; DROP TABLE record; --", " ")
	s := newStore(f)
	var herd HerdID
	write(f, s, func(tx *Tx) {
		var err error
		herd, err = tx.CreateHerd("herd", "UTC", noon)
		require.NoError(f, err)
	})
	f.Fuzz(func(t *testing.T, text, by, message string) {
		e := Envelope{Herd: herd, At: noon, Text: text, ByName: by, Source: Source{Message: message}, Fact: model.Done{}}
		write(t, s, func(tx *Tx) {
			require.NoError(t, tx.Append(&e))
			back, err := tx.JournalSince(herd, e.Seq-1)
			require.NoError(t, err)
			require.Equal(t, strings.ToValidUTF8(text, ""), strings.ToValidUTF8(back[0].Text, ""))
			require.Equal(t, []Envelope{e}, back)
		})
	})
}

// A new record is guarded against taking another's place by two look-ups, however
// many records the herd has.
func TestTheGuardOfRecordsLooksThroughNone(t *testing.T) {
	s := newStore(t)
	require.NoError(t, s.Write(t.Context(), func(tx *Tx) error {
		var trigger string
		_, err := tx.one("SELECT sql FROM sqlite_schema WHERE name = 'record_never_replaced'", nil, &trigger)
		require.NoError(t, err)
		_, when, _ := strings.Cut(trigger, "WHEN ")
		when, _, _ = strings.Cut(when, "BEGIN")
		when = strings.NewReplacer("new.herd", "1", "new.seq", "2", "new.id", "'a'").Replace(when)
		plan, err := list(tx, "EXPLAIN QUERY PLAN SELECT "+when, nil, func(s scanner) (detail string, err error) {
			var id, parent, unused int
			return detail, s.Scan(&id, &parent, &unused, &detail)
		})
		require.NoError(t, err)
		looks := 0
		for _, step := range plan {
			if strings.Contains(step, " record ") {
				looks++
				require.Regexp(t, `\(herd=\? AND (seq|id)=\?\)`, step)
			}
		}
		require.Equal(t, 2, looks, "%v", plan)
		return nil
	}))
}
