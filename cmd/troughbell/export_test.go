package main

import (
	"archive/zip"
	"encoding/csv"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/require"
)

// exported gives the tables of an export by the names of their files, the first
// row of each being its columns.
func exported(t *testing.T, db string) map[string][]map[string]string {
	t.Helper()
	out := filepath.Join(t.TempDir(), "herd.zip")
	status, _, stderr := call(t, "", "export", "--db", db, "--out", out)
	require.Equal(t, exitDone, status, stderr)
	z, err := zip.OpenReader(out)
	require.NoError(t, err)
	defer z.Close()
	tables := map[string][]map[string]string{}
	for _, f := range z.File {
		r, err := f.Open()
		require.NoError(t, err)
		rows, err := csv.NewReader(r).ReadAll()
		require.NoError(t, err, f.Name)
		require.Greater(t, len(rows), 1, "%s has rows", f.Name)
		for _, row := range rows[1:] {
			m := map[string]string{}
			for i, col := range rows[0] {
				m[col] = row[i]
			}
			tables[f.Name] = append(tables[f.Name], m)
		}
	}
	return tables
}

// One file a kind, one row a record, plain numbers in SI, days and moments in
// ISO form.
func TestExport(t *testing.T) {
	tables := exported(t, kept(t, orchardJuly))
	for name, rows := range map[string]int{"weigh.csv": 4, "refill.csv": 2, "water.csv": 1, "spend.csv": 1, "weather.csv": 1, "arrive.csv": 1} {
		require.Len(t, tables[name], rows, name)
	}
	weigh := tables["weigh.csv"][0]
	require.Equal(t, "Hazel", weigh["animals"])
	require.Equal(t, "2026-06-27", weigh["on_day"])
	require.Regexp(t, `^68\.946\d*$`, weigh["weight_kg"])
	require.Equal(t, "45", strings.TrimSuffix(tables["spend.csv"][0]["amount"], ".0"))
	day := regexp.MustCompile(`^\d{4}-\d\d-\d\d$`)
	for name, rows := range tables {
		for _, row := range rows {
			require.Regexp(t, day, row["on_day"], name)
			at, err := time.Parse(time.RFC3339, row["at"])
			require.NoError(t, err, name)
			_, east := at.Zone()
			require.Equal(t, -5*3600, east, name)
		}
	}
}

// What was taken back is left out, and so is what an edit replaced.
func TestExportLeavesOutWhatWasTakenBack(t *testing.T) {
	db := kept(t, orchard+`2026-04-18 08:00 | fence 5.2
2026-04-18 08:01 | fence 6.2
2026-04-18 08:02 | undo
2026-04-18 08:03 | spent $45 on straw
2026-04-18 08:04 edit 13 | spent $54 on straw
`)
	tables := exported(t, db)
	require.Len(t, tables["fence.csv"], 1)
	require.Equal(t, "fence 5.2", tables["fence.csv"][0]["text"])
	require.Len(t, tables["spend.csv"], 1)
	require.Equal(t, "54", strings.TrimSuffix(tables["spend.csv"][0]["amount"], ".0"))
}

// No cell is a formula; numbers stay numbers.
func TestExportHoldsNoFormula(t *testing.T) {
	db := kept(t, orchard+"2026-04-18 08:03 | note: =HYPERLINK(\"x\")\n2026-04-18 08:04 | =1+1 fence 5.2\n")
	for name, rows := range exported(t, db) {
		for _, row := range rows {
			for col, v := range row {
				if v != "" && strings.ContainsRune("=+@\t\r\n", rune(v[0])) {
					t.Fatalf("%s %s: %q", name, col, v)
				}
			}
		}
	}
}

// A file that is there stays; nothing half written is left.
func TestExportOverNothing(t *testing.T) {
	db, dir := kept(t, orchard), t.TempDir()
	out := filepath.Join(dir, "herd.zip")
	write(t, out, "mine")
	for _, to := range []string{out, filepath.Join(dir, "none", "herd.zip"), dir} {
		status, _, stderr := call(t, "", "export", "--db", db, "--out", to)
		require.Equal(t, exitFailed, status, to)
		oneLine(t, stderr)
	}
	b, err := os.ReadFile(out)
	require.NoError(t, err)
	require.Equal(t, "mine", string(b))
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 1)
}

// The season and the coming dates are written too, beside the tables or alone.
func TestExportOfReportAndCalendar(t *testing.T) {
	db, dir := kept(t, orchardJuly), t.TempDir()
	zipped, page, dates := filepath.Join(dir, "a.zip"), filepath.Join(dir, "a.html"), filepath.Join(dir, "a.ics")
	status, stdout, stderr := call(t, "", "export", "--db", db, "--report", page, "--calendar", dates)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, "wrote the report to "+page+"\nwrote the calendar to "+dates+"\n", stdout)
	require.NoFileExists(t, zipped)
	b, err := os.ReadFile(page)
	require.NoError(t, err)
	require.Contains(t, string(b), "Hazel")
	f, err := os.Open(dates)
	require.NoError(t, err)
	defer f.Close()
	cal, err := ics.ParseCalendar(f)
	require.NoError(t, err)
	require.NotNil(t, cal)

	// A file that is there is not written over, and then none is written.
	status, _, stderr = call(t, "", "export", "--db", db, "--out", zipped, "--report", page)
	require.Equal(t, exitFailed, status)
	require.Contains(t, stderr, "--report")
	require.NoFileExists(t, zipped)
	status, _, stderr = call(t, "", "export", "--db", db)
	require.Equal(t, exitWrong, status)
	require.Contains(t, stderr, "--calendar")
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 2, "nothing half written")
}

// The report is of the season that is named, where one of that name is over.
func TestExportOfASeason(t *testing.T) {
	db, dir := kept(t, orchardJuly+`
2026-10-03 08:00 | all butchered
2027-05-01 08:00 | 2 pigs came today: Ada and Bo, 40 lb each
`), t.TempDir()
	for season, name := range map[string]string{"2026": "Hazel", "last": "Hazel", "": "Ada"} {
		page := filepath.Join(dir, "a"+season+".html")
		status, _, stderr := call(t, "", "export", "--db", db, "--report", page, "--season", season)
		require.Equal(t, exitDone, status, stderr)
		b, err := os.ReadFile(page)
		require.NoError(t, err)
		require.Contains(t, string(b), name)
		require.Equal(t, name == "Ada", !strings.Contains(string(b), "Hazel"), season)
	}
	page := filepath.Join(dir, "b.html")
	status, _, stderr := call(t, "", "export", "--db", db, "--report", page, "--season", "2019")
	require.Equal(t, exitFailed, status)
	require.Contains(t, stderr, "Over: ")
	oneLine(t, stderr)
	require.NoFileExists(t, page)
	status, _, stderr = call(t, "", "export", "--db", db, "--calendar", filepath.Join(dir, "b.ics"), "--season", "2026")
	require.Equal(t, exitWrong, status)
	require.Contains(t, stderr, "--report")
}
