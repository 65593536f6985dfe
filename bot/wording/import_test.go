package wording_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/wording"
	"troughbell/model"
)

func TestEchoOfImport(t *testing.T) {
	require.Equal(t, "import of 12 records from herd.zip", us(t).Echo(entry(model.Import{File: "herd.zip", Records: 12})))
	require.Equal(t, "import of 1 record from weights.csv", us(t).Echo(entry(model.Import{File: "weights.csv", Records: 1})))
}

// The preview of a file is short whatever is in it: what is most, a few lines that
// cannot be read, and where two files have such lines their names.
func TestImportPreview(t *testing.T) {
	day := model.DateDay(2026, 6, 20)
	var b wording.Brought
	b.Span(day)
	b.Span(day - 3)
	for range 3 {
		b.Count("weigh", true)
	}
	b.Count("note", true)
	b.Count("told", false)
	b.Here, b.Voided, b.Twice = 4, 1, 2
	b.Bad = []wording.BadLine{
		{File: "weigh.csv", Line: 3, Code: "row_pig", Names: []string{"Dott"}},
		{File: "weigh.csv", Line: 5, Code: "row_no_day"},
	}
	b.Unread = []string{"breed"}
	require.Equal(t, strings.Join([]string{
		"herd.zip: 12 records, Jun 17–20.",
		"New: 3 weighings, 1 note and 1 of what I told and asked.",
		"Here already: 4.",
		"Taken back here before: 1; that stays so.",
		"Twice in the file: 2.",
		"Left out: 2 lines.",
		"  Line 3: no pig is called Dott.",
		"  Line 5: the day is missing.",
		"Not looked at: breed.",
	}, "\n"), us(t).ImportPreview("herd.zip", b))

	for _, f := range model.Facts() {
		b.Count(f.Kind(), true)
	}
	for i := range 40 {
		b.Bad = append(b.Bad, wording.BadLine{File: "refill.csv", Line: i + 2, Code: "row_record"})
		b.Bad = append(b.Bad, wording.BadLine{File: "refill.csv", Line: i + 2, Code: "row_day", Names: []string{fmt.Sprint(i)}})
	}
	b.Swapped, b.Herd = true, "Elsewhere"
	got := us(t).ImportPreview("herd.zip", b)
	require.LessOrEqual(t, strings.Count(got, "\n"), 14, got)
	require.Less(t, len(got), 1000, got)
	require.Contains(t, got, "  refill.csv, line 2, 3, 4, 5, 6 and 35 more: what is in its cell \"record\" is damaged.\n", got)
	require.Contains(t, got, "  And 39 more lines.\n")
	require.Regexp(t, `and \d+ more\.\n`, got)
	require.Contains(t, got, "They are of the herd \"Elsewhere\", and this one will be called so.")

	require.Equal(t, "Nothing new to import.", lastLine(us(t).ImportPreview("herd.zip", wording.Brought{Here: 3})))
}

func lastLine(s string) string { return s[strings.LastIndexByte(s, '\n')+1:] }
