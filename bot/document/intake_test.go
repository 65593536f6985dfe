package document

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"
	"unicode/utf16"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func terms(units string) Terms { return Terms{Units: units, Zone: newYork, Now: july} }

// brought says what a file brings in one line for each row, and its faults.
func brought(t *testing.T, name string, b []byte, how Terms) []string {
	t.Helper()
	in, err := ReadTables(name, b, how)
	var bad *Unreadable
	if errors.As(err, &bad) {
		return []string{strings.Join(append([]string{bad.Code}, bad.Names...), " ")}
	}
	require.NoError(t, err)
	var out []string
	for _, r := range in.Rows {
		out = append(out, fmt.Sprintf("%d %s %v", r.Line, r.At.Format("2006-01-02 15:04"), r.Fact))
	}
	for _, b := range in.Bad {
		out = append(out, strings.Join(append([]string{fmt.Sprint(b.Line), b.Code}, b.Names...), " "))
	}
	return out
}

// Lists of weights as people keep them.
func TestLists(t *testing.T) {
	us, metric, none := terms(model.US), terms(model.Metric), terms("")
	for _, tt := range []struct {
		name string
		text string
		how  Terms
		want []string
	}{
		{"plain", "date,pig,weight\n2026-06-20,Olive,100\n", us, []string{"2 2026-06-20 12:00 {[Olive] 45.359237 scale 0 0}"}},
		{"metric", "date;Tier;kg\n20.6.2026;Olive;45,5\n", metric, []string{"2 2026-06-20 12:00 {[Olive] 45.5 scale 0 0}"}},
		{"tabs, byte order mark, CRLF", "\ufeffdate\tname\tweight_kg\r\n6/20/2026\tOlive\t45.5\r\n", us, []string{"2 2026-06-20 12:00 {[Olive] 45.5 scale 0 0}"}},
		{"tape", "date,name,girth_in,length_in\n2026-06-20,Olive,30,40\n2026-06-21,Rufus,31,\n", metric, []string{
			"2 2026-06-20 12:00 {[Olive] 0  76.2 101.6}", "3 2026-06-21 12:00 {[Rufus] 0  78.74 0}",
		}},
		{"herd's inches", "when,pig,girth\n2026-06-20,Olive,30\n", us, []string{"2 2026-06-20 12:00 {[Olive] 0  76.2 0}"}},
		{"units in the cells", "Day,Animal,Weight\n2026-06-20,Olive,100 lb\n2026-06-20,Rufus,50kg\n", none, []string{
			"2 2026-06-20 12:00 {[Olive] 45.359237 scale 0 0}", "3 2026-06-20 12:00 {[Rufus] 50 scale 0 0}",
		}},
		{"units in brackets", "Datum;Schwein;Gewicht (kg)\n1.6.26;Olive;30\n", none, []string{"2 2026-06-01 12:00 {[Olive] 30 scale 0 0}"}},
		{"no unit at all", "date,pig,weight\n2026-06-20,Olive,100\n", none, []string{"2 row_unit weight 100"}},
		{"two units", "date,pig,weight_kg\n2026-06-20,Olive,100 lb\n", us, []string{"2 row_unit weight 100 lb"}},
		{"a time", "date,time,pig,kg\n2026-06-20,7:30 pm,Olive,40\n2026-06-20 06:15,,Rufus,41\n", us, []string{
			"2 2026-06-20 19:30 {[Olive] 40 scale 0 0}", "3 2026-06-20 06:15 {[Rufus] 41 scale 0 0}",
		}},
		{"a bare day with midnight behind it", "date,pig,kg\n2026-06-20 00:00:00,Olive,40\n", us, []string{"2 2026-06-20 12:00 {[Olive] 40 scale 0 0}"}},
		{"this morning", "date,pig,kg\n2026-07-25,Olive,40\n", us, []string{"2 2026-07-25 08:00 {[Olive] 40 scale 0 0}"}},
		{"months in words", "date,pig,kg\n20 Jun 2026,Olive,40\n\"June 21, 2026\",Olive,41\n22-Jun-26,Olive,42\n", us, []string{
			"2 2026-06-20 12:00 {[Olive] 40 scale 0 0}", "3 2026-06-21 12:00 {[Olive] 41 scale 0 0}", "4 2026-06-22 12:00 {[Olive] 42 scale 0 0}",
		}},
		{"to come", "date,pig,kg\n2026-07-26,Olive,40\n2026-07-25 09:00,Olive,41\n", us, []string{"2 row_future 2026-07-26", "3 row_future 2026-07-25"}},
		{"long ago", "date,pig,kg\n1999-12-31,Olive,40\n", us, []string{"2 row_day 1999-12-31"}},
		{"no such day", "date,pig,kg\n2026-06-31,Olive,40\n30.2.26,Olive,40\nyesterday,Olive,40\n46158,Olive,40\n", us, []string{
			"2 row_day 2026-06-31", "3 row_day 30.2.26", "4 row_day yesterday", "5 row_day 46158",
		}},
		{"month first in the US", "date,pig,kg\n6/5/2026,Olive,40\n", us, []string{"2 2026-06-05 12:00 {[Olive] 40 scale 0 0}"}},
		{"day first else", "date,pig,kg\n6/5/2026,Olive,40\n", metric, []string{"2 2026-05-06 12:00 {[Olive] 40 scale 0 0}"}},
		{"order not told", "date,pig,kg\n6/5/2026,Olive,40\n", none, []string{"2 row_day 6/5/2026"}},
		{"order told by another line", "date,pig,kg\n6/5/2026,Olive,40\n13/5/2026,Olive,41\n", us, []string{
			"2 2026-05-06 12:00 {[Olive] 40 scale 0 0}", "3 2026-05-13 12:00 {[Olive] 41 scale 0 0}",
		}},
		{"order that cannot be", "date,pig,kg\n6/5/2026,Olive,40\n13/5/2026,Olive,41\n5/13/2026,Olive,41\n", us, []string{
			"2 row_day 6/5/2026", "3 row_day 13/5/2026", "4 row_day 5/13/2026",
		}},
		{"a comma in a number", "date,pig,weight_kg\n2026-06-20,Olive,45,5\n", us, []string{"2 row_wide"}},
		{"a comma in a number in quotes", "date,pig,weight_kg\n2026-06-20,Olive,\"45,5\"\n", us, []string{"2 row_cell weight 45,5"}},
		{"a thousand or not", "date;pig;weight_kg\n2026-06-20;Olive;1.250\n", us, []string{"2 row_cell weight 1.250"}},
		{"points beside semicolons", "date;pig;weight_kg\n2026-06-20;Olive;45.25\n2026-06-21;Olive;46.125\n", us, []string{
			"2 2026-06-20 12:00 {[Olive] 45.25 scale 0 0}", "3 2026-06-21 12:00 {[Olive] 46.125 scale 0 0}",
		}},
		{"what cannot be", "date,pig,kg,girth\n2026-06-20,Olive,7000,\n2026-06-20,,40,\n,Olive,40,\n2026-06-20,Olive,,\n2026-06-20,Olive,40,30\n2026-06-20,Olive,-4,\n2026-06-20,Olive,NaN,\n2026-06-20,Olive,0x1p3,\n", us, []string{
			"2 row_range 7000", "3 row_no_pig", "4 row_no_day", "5 row_no_weight", "6 row_both", "7 row_range -4", "8 row_cell weight NaN", "9 row_cell weight 0x1p3",
		}},
		{"signs that steer a screen", "date,pig,kg\n2026-06-20,\x1b[2J,40\n2026-06-20,a\u009bb,40\n", us, []string{"2 row_signs", "3 row_signs"}},
		{"a formula", "date,pig,kg\n2026-06-20,'=1+1,40\n", us, []string{"2 2026-06-20 12:00 {[=1+1] 40 scale 0 0}"}},
		{"sep=", "sep=;\r\ndate;pig;kg\r\n2026-06-20;Olive;40\r\n", us, []string{"3 2026-06-20 12:00 {[Olive] 40 scale 0 0}"}},
		{"lines left empty", "\n\ndate,pig,kg,\n,,,\n2026-06-20,Olive,40,\n\n", us, []string{"5 2026-06-20 12:00 {[Olive] 40 scale 0 0}"}},
		{"no head", "2026-06-20,Olive,40\n2026-06-21,Olive,40\n", us, []string{"no_columns weights.csv"}},
		{"only a head", "date,pig,kg\n", us, []string{"no_rows"}},
		{"two weights", "date,pig,kg,weight\n2026-06-20,Olive,40,41\n", us, []string{"column_twice weights.csv weight"}},
		{"one name twice", "date,pig,kg,KG\n2026-06-20,Olive,40,41\n", us, []string{"column_twice weights.csv KG"}},
		{"a quote left open", "date,pig,kg\n2026-06-20,\"Olive,40\n2026-06-21,Olive,41\n", us, []string{"quote weights.csv 2"}},
		{"other letters", "date,pig,kg\n2026-06-20,Fl\xf6ckchen,40\n", us, []string{"encoding weights.csv"}},
		{"no text", "date,pig,kg\n2026-06-20,a\x00b,40\n", us, []string{"no_text weights.csv"}},
		{"nothing", " \n", us, []string{"empty"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			require.Equal(t, tt.want, brought(t, "weights.csv", []byte(tt.text), tt.how))
		})
	}
}

// A spreadsheet's "Unicode text" is UTF-16.
func TestListInUTF16(t *testing.T) {
	var b bytes.Buffer
	for _, c := range utf16.Encode([]rune("\ufeffdate\tTier\tkg\r\n20.6.2026\tFlöckchen\t45,5\r\n")) {
		require.NoError(t, binary.Write(&b, binary.LittleEndian, c))
	}
	require.Equal(t, []string{"2 2026-06-20 12:00 {[Flöckchen] 45.5 scale 0 0}"}, brought(t, "x.txt", b.Bytes(), terms(model.Metric)))
}

// zipped is a ZIP of files of these names, each with the bytes.
func zipped(t testing.TB, b []byte, names ...string) []byte {
	t.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, n := range names {
		w, err := z.CreateHeader(&zip.FileHeader{Name: n, Method: zip.Deflate})
		require.NoError(t, err)
		if !strings.HasSuffix(n, "/") {
			_, err = w.Write(b)
			require.NoError(t, err)
		}
	}
	require.NoError(t, z.Close())
	return out.Bytes()
}

// lying is a ZIP whose heads say that its file is smaller than it is.
func lying(z []byte, size int) []byte {
	out := bytes.Clone(z)
	for _, head := range []struct {
		sign string
		at   int
	}{{"PK\x01\x02", 24}} {
		i := bytes.Index(out, []byte(head.sign))
		binary.LittleEndian.PutUint32(out[i+head.at:], uint32(size))
	}
	return out
}

// Files made to harm: each is refused with a reason, in little memory.
func TestHostileFiles(t *testing.T) {
	list := []byte("date,pig,kg\n2026-06-20,Olive,40\n")
	bomb := bytes.Repeat([]byte("date,pig,kg\n"), maxUnpacked/12+1)
	many := make([]string, maxEntries+1)
	for i := range many {
		many[i] = fmt.Sprintf("%d.csv", i)
	}
	locked := zipped(t, list, "weigh.csv")
	for _, sign := range []struct {
		s  string
		at int
	}{{"PK\x03\x04", 6}, {"PK\x01\x02", 8}} {
		locked[bytes.Index(locked, []byte(sign.s))+sign.at] |= 1
	}
	wide := []byte(strings.Repeat("a,", maxColumns+1) + "\n1\n")
	long := []byte("date,pig,kg\n2026-06-20," + strings.Repeat("x", maxCell+1) + ",40\n")
	rows := []byte("date,pig,kg\n" + strings.Repeat("2026-06-20,Olive,40\n", maxRows+1))
	// As many columns as a table may have, and too many lines of that: more cells than
	// bytes tell of.
	cells := []byte("date,pig,kg" + strings.Repeat(",", maxColumns-3) + "\n" + strings.Repeat("1"+strings.Repeat(",", maxColumns-1)+"\n", maxCells/maxColumns+1))
	for name, tt := range map[string]struct {
		file []byte
		want string
	}{
		"too large":            {make([]byte, MaxIntake+1), "too_large"},
		"a bomb":               {zipped(t, bomb, "weigh.csv"), "zip_large"},
		"a bomb that lies":     {lying(zipped(t, bomb, "weigh.csv"), 100), "zip_large|zip_broken"},
		"bombs by halves":      {zipped(t, bomb[:len(bomb)/3], "a.csv", "b.csv", "c.csv", "d.csv"), "zip_large"},
		"too many files":       {zipped(t, list, many...), "zip_many"},
		"a way out":            {zipped(t, list, "../weigh.csv"), "zip_path"},
		"a way out of Windows": {zipped(t, list, `..\weigh.csv`), "zip_path"},
		"from the root":        {zipped(t, list, "/etc/weigh.csv"), "zip_path"},
		"of a drive":           {zipped(t, list, `C:\weigh.csv`), "zip_path"},
		"one name twice":       {zipped(t, list, "a/x.csv", "b/X.csv"), "zip_twice X.csv"},
		"a password":           {locked, "zip_locked"},
		"no table in it":       {zipped(t, list, "pen.pdf"), "zip_empty"},
		"only the beginning":   {zipped(t, list, "weigh.csv")[:60], "zip_broken"},
		"damaged":              {bytes.Replace(zipped(t, list, "weigh.csv"), []byte("PK\x01\x02"), []byte("PK\x01\x09"), 1), "zip_broken"},
		"a picture":            {[]byte("\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR"), "no_text x.csv"},
		"too many columns":     {wide, "columns x.csv"},
		"a long cell":          {long, "cell x.csv 2"},
		"too many lines":       {rows, "rows"},
		"too many cells":       {cells, "cells x.csv"},
	} {
		got := brought(t, "x.csv", tt.file, terms(model.US))
		require.Len(t, got, 1, name)
		require.Contains(t, strings.Split(tt.want, "|"), got[0], name)
	}
	// What systems leave in a ZIP does no harm.
	got := brought(t, "x.zip", zipped(t, list, "herd/", "herd/x.csv", "__MACOSX/herd/._x.csv", "herd/.DS_Store", "herd/report.html"), terms(model.US))
	require.Equal(t, []string{"2 2026-06-20 12:00 {[Olive] 40 scale 0 0}"}, got)
}

// What harmless did to a text, asItWas takes back, whatever it was.
func TestHarmlessComesBack(t *testing.T) {
	for _, s := range []string{"", "'", "''", "'=1", "=1", "'tis", "+", "-5", "- 5", "@x", "\tx", "\r", "\n'", "x"} {
		require.Equal(t, s, asItWas(harmless(s)), "%q", s)
		require.NotContains(t, "=+@\t\r\n", (harmless(s) + "x")[:1])
	}
}

// A table without its records is read by its columns, in its own clothes.
func TestTableByItsColumns(t *testing.T) {
	text := "on_day,at,feeder,feed_kg,full\n20.06.2026,20.06.2026 18:30,north,70.5,1\n2026-06-21,,,20,0\n2026-06-22,,,,TRUE\n2026-06-23,,,-1,\n,,,5,\n2026-06-24,later,,5,\n2026-06-24,,,5,maybe\n"
	require.Equal(t, []string{
		"2 2026-06-20 18:30 refill north 70.5 full", "3 2026-06-21 12:00 refill  20 ", "4 2026-06-22 12:00 refill  0 full",
		"5 row_check the feed poured must be more than nothing", "6 row_no_day", "7 row_moment later", "8 row_cell full maybe",
	}, poured(t, "refill (1).csv", text))
}

func poured(t *testing.T, name, text string) []string {
	t.Helper()
	in, err := ReadTables(name, []byte(text), terms(model.Metric))
	require.NoError(t, err)
	var out []string
	for _, r := range in.Rows {
		f := r.Fact.(model.Refill)
		kg, full := 0.0, map[bool]string{true: "full"}[f.Full]
		if f.FeedKg != nil {
			kg = *f.FeedKg
		}
		out = append(out, fmt.Sprintf("%d %s %s %s %v %s", r.Line, r.At.Format("2006-01-02 15:04"), f.Kind(), f.Feeder, kg, full))
	}
	for _, b := range in.Bad {
		out = append(out, strings.Join(append([]string{fmt.Sprint(b.Line), b.Code}, b.Names...), " "))
	}
	return out
}

// The record in a row is held to what a person's text could have led to.
func TestRecordsAreHeldToBounds(t *testing.T) {
	row := func(kind, body string) string {
		return fmt.Sprintf(`{"kind":%q,"version":1,"on":"2026-06-20","zone":"America/New_York","at":"2026-06-20T12:00:00Z","said":"2026-06-20T12:00:00Z","body":%s}`, kind, body)
	}
	long := strings.Repeat("x", longestText+1)
	for name, tt := range map[string]struct{ record, want string }{
		"good":                  {row("note", `{"what":"hay"}`), ""},
		"check":                 {row("note", `{"what":""}`), "row_check a note needs words"},
		"newer":                 {strings.Replace(row("note", `{"what":"hay"}`), `"version":1`, `"version":9`, 1), "row_newer"},
		"older than any":        {strings.Replace(row("note", `{"what":"hay"}`), `"version":1`, `"version":0`, 1), "row_record"},
		"no kind":               {row("egg", `{}`), "row_kind_unknown egg"},
		"damaged":               {row("note", `{"what":`), "row_record"},
		"no moment":             {`{"kind":"note","version":1,"zone":"UTC","body":{"what":"hay"}}`, "row_record"},
		"zone":                  {strings.Replace(row("note", `{"what":"hay"}`), "America/New_York", "../../etc/passwd", 1), "row_zone ../../etc/passwd"},
		"machine's zone":        {strings.Replace(row("note", `{"what":"hay"}`), "America/New_York", "Local", 1), "row_zone Local"},
		"setting of a zone":     {row("settings", `{"key":"zone","text":"Nowhere"}`), "row_zone Nowhere"},
		"said later":            {strings.Replace(row("note", `{"what":"hay"}`), `"said":"2026-06`, `"said":"2027-06`, 1), "row_future 2026-06-20"},
		"long":                  {row("note", `{"what":"`+long+`"}`), "row_long"},
		"long name":             {row("sick", `{"animals":["`+long[:longestName+1]+`"]}`), "row_long"},
		"signs":                 {row("note", `{"what":"a\u001b[2J"}`), "row_signs"},
		"number":                {row("refill", `{"feed_kg":1e300}`), "row_range 1e+300"},
		"day far off":           {row("remind", `{"day":"9999-01-01","what":"x"}`), "row_day 9999-01-01"},
		"moment far off":        {row("snooze", `{"until":"2400-01-01T00:00:00Z"}`), "row_day 2400-01-01T00:00:00Z"},
		"name of an ingredient": {row("recipe", `{"ingredients":{"`+long[:longestName+1]+`":1}}`), "row_long"},
	} {
		in, err := ReadTables("mine.csv", []byte("on_day,record\n2026-06-20,\""+strings.ReplaceAll(tt.record, `"`, `""`)+"\"\n"), terms(model.US))
		require.NoError(t, err, name)
		if tt.want == "" {
			require.Empty(t, in.Bad, name)
			require.Len(t, in.Rows, 1, name)
			continue
		}
		require.Empty(t, in.Rows, name)
		require.Equal(t, tt.want, strings.Join(append([]string{in.Bad[0].Code}, in.Bad[0].Names...), " "), name)
	}
}

// FuzzImport reads whatever comes: nothing that is read breaks a rule, and nothing
// takes long.
func FuzzImport(f *testing.F) {
	list := []byte("date;Tier;kg\n20.6.2026;Olive;45,5\n")
	f.Add("weights.csv", list, byte(0))
	f.Add("weights.csv", []byte("date,pig,weight\n6/20/2026,Olive,100 lb\n"), byte(1))
	f.Add("x.zip", zipped(f, list, "weigh.csv", "x.csv"), byte(2))
	f.Add("x.txt", []byte("\xff\xfed\x00a\x00t\x00e\x00"), byte(0))
	f.Add("refill.csv", []byte("on_day,at,feeder,feed_kg,full,record\n2026-06-20,,north,70.5,1,\n"), byte(1))
	f.Add("note.csv", []byte("sep=\t\nid\ton_day\twhat\trecord\nr1\t2026-06-20\thay\t\"{\"\"kind\"\":\"\"note\"\",\"\"version\"\":1,\"\"zone\"\":\"\"UTC\"\",\"\"at\"\":\"\"2026-06-20T12:00:00Z\"\",\"\"body\"\":{\"\"what\"\":\"\"hay\"\"}}\"\n"), byte(0))
	f.Add("question.csv", []byte("id,on_day,body,record\nr1,2026-06-20,{},\n"), byte(2))
	units := []string{"", model.US, model.Metric}
	f.Fuzz(func(t *testing.T, name string, b []byte, u byte) {
		began := time.Now()
		in, err := ReadTables(name, b, terms(units[int(u)%len(units)]))
		if took := time.Since(began); took > 20*time.Second {
			t.Fatalf("took %s", took)
		}
		var bad *Unreadable
		if err != nil && !errors.As(err, &bad) {
			t.Fatal(err)
		}
		for _, r := range in.Rows {
			if err := r.Fact.Check(); err != nil {
				t.Fatalf("line %d: %v", r.Line, err)
			}
			if r.On > model.DayOf(july) || r.At.After(july) || r.On < firstDay {
				t.Fatalf("line %d is of %s, %s", r.Line, r.On, r.At)
			}
			if f := sound(r, july); f != nil {
				t.Fatalf("line %d: %v", r.Line, f)
			}
		}
		if len(in.Rows)+len(in.Bad) > maxRows {
			t.Fatalf("%d rows", len(in.Rows)+len(in.Bad))
		}
	})
}
