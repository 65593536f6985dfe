package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/document"
)

// longAgo is a herd of two years ago, whatever the clock says.
const longAgo = `2024-05-01 08:00 | 2 pigs came today: Olive and Rufus, 45 lb each. us units, time zone Chicago
2024-05-02 08:00 | fence 5.2
`

const weightList = "date,pig,weight\n2024-05-20,olive,70\n5/21/2024,Rufus,72 lb\n"

// file writes a file of that name and gives its path.
func file(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	write(t, path, text)
	return path
}

// A file is shown, and taken in only where that is said; then once.
func TestImport(t *testing.T) {
	db, weights := kept(t, longAgo), file(t, "weights.csv", weightList)
	const shown = "weights.csv: 2 records, May 20–21 2024.\nNew: 2 weighings.\n"
	status, stdout, stderr := call(t, "", "import", "--db", db, weights)
	require.Equal(t, exitWrong, status)
	require.Equal(t, shown, stdout)
	oneLine(t, stderr)
	require.Empty(t, exported(t, db)["weigh.csv"])

	status, stdout, stderr = call(t, "", "import", "--db", db, "--yes", weights)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, shown+"Imported 2 records from weights.csv. Wrong? Text: undo.\n", stdout)
	rows := exported(t, db)["weigh.csv"]
	require.Len(t, rows, 2)
	require.Equal(t, "Olive", rows[0]["animals"])
	require.Equal(t, "70.00", rows[0]["weight_lb"])

	status, stdout, _ = call(t, "", "import", "--db", db, "--yes", weights)
	require.Equal(t, exitDone, status)
	require.Contains(t, stdout, "Here already: 2.\nNothing new to import.")
	require.Len(t, exported(t, db)["weigh.csv"], 2)
}

// Lines that cannot be read are named, the rest comes in, and the status tells.
func TestImportLeavesOut(t *testing.T) {
	db, weights := kept(t, longAgo), file(t, "weights.csv", weightList+"2024-05-22,Dott,3\nsoon,Olive,70\n")
	status, stdout, stderr := call(t, "", "import", "--db", db, "--yes", weights)
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	require.Contains(t, stdout, "Left out: 2 lines.\n  Line 4: no pig is called Dott.\n  Line 5: soon is no day that I can read; write it as 2026-05-16.\n")
	require.Len(t, exported(t, db)["weigh.csv"], 2)
	status, _, stderr = call(t, "", "import", "--db", db, "--yes", file(t, "weights.csv", "date,pig,kg\n2024-05-22,Dott,3\n"))
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
}

// What is no file of ours is refused in one line, and nothing is changed.
func TestImportOfNothing(t *testing.T) {
	db := kept(t, longAgo)
	for name, path := range map[string]string{
		"none":      filepath.Join(t.TempDir(), "none.csv"),
		"a folder":  t.TempDir(),
		"empty":     file(t, "weights.csv", ""),
		"no table":  file(t, "herd.zip", "PK\x03\x04 and so on"),
		"too large": file(t, "weights.csv", strings.Repeat("x", document.MaxIntake+1)),
		"picture":   file(t, "weights.csv", "\x89PNG\x00"),
	} {
		status, stdout, stderr := call(t, "", "import", "--db", db, "--yes", path)
		require.Equal(t, exitFailed, status, name)
		require.Empty(t, stdout, name)
		oneLine(t, stderr)
	}
	status, _, stderr := call(t, "", "import", "--db", db)
	require.Equal(t, exitWrong, status)
	oneLine(t, stderr)
	require.Len(t, exported(t, db)["fence.csv"], 1)
}

// The ZIP of one database makes the herd of another; where that is declined there is
// none, and where several herds are one is to be named.
func TestImportIntoAnotherDatabase(t *testing.T) {
	db, dir := kept(t, longAgo), t.TempDir()
	z, other := filepath.Join(dir, "herd.zip"), filepath.Join(dir, "other.db")
	status, _, stderr := call(t, "", "export", "--db", db, "--out", z)
	require.Equal(t, exitDone, status, stderr)
	status, _, _ = call(t, "", "import", "--db", other, z)
	require.Equal(t, exitWrong, status)
	status, _, stderr = call(t, "", "export", "--db", other, "--out", filepath.Join(dir, "x.zip"))
	require.Equal(t, exitFailed, status)
	require.Contains(t, stderr, "no herd yet")
	status, _, stderr = call(t, "", "import", "--db", other, "--yes", z)
	require.Equal(t, exitDone, status, stderr)
	want, got := exported(t, db), exported(t, other)
	require.Len(t, got["import.csv"], 1)
	delete(got, "import.csv")
	require.Equal(t, want, got)

	status, _, stderr = call(t, longAgo, "replay", "--db", other, "--herd", "Second", "-")
	require.Equal(t, exitDone, status, stderr)
	status, _, stderr = call(t, "", "import", "--db", other, "--yes", z)
	require.Equal(t, exitWrong, status)
	require.Contains(t, stderr, "--herd")
}

// The same in the terminal's chat: a file, its preview, a word, and back.
func TestImportInTheChat(t *testing.T) {
	db, weights := kept(t, longAgo), file(t, "weights.csv", weightList)
	_, stdout, _ := call(t, strings.Join([]string{
		"import " + weights, "no", "import '" + weights + "'", "1", "last weighing of olive?", "undo import", "import nothing.csv", "import", "help import",
	}, "\n")+"\n", "chat", "--db", db)
	for _, part := range []string{
		"weights.csv: 2 records, May 20–21 2024.\nNew: 2 weighings.\nImport 2 records from weights.csv?\n( 1 Import | 2 Leave it )\nDropped. Nothing recorded of it.\n",
		"( 1 Import | 2 Leave it )\nImported 2 records from weights.csv. Wrong? Text: undo.\n",
		"Olive 70 lb (from a file)",
		"Undone: import of 2 records from weights.csv.\n",
		"Nothing imported: cannot read nothing.csv: no such file or directory\n",
		"Send me the file: ",
		"Files, out and in. Text things like:\n  export\n  import\n",
	} {
		require.Contains(t, stdout, part)
	}
	require.Empty(t, exported(t, db)["weigh.csv"])
}

// What is answered at a terminal decides; anything but yes is no.
func TestAgreed(t *testing.T) {
	for answer, want := range map[string]bool{"yes\n": true, "Y\n": true, "import": true, "no\n": false, "\n": false, "": false, "maybe\n": false} {
		var out bytes.Buffer
		got, err := agreed(&app{stdin: strings.NewReader(answer), stdout: &out}, 3)
		require.NoError(t, err)
		require.Equal(t, want, got, answer)
		require.Contains(t, out.String(), "Import the 3?")
	}
	_, err := agreed(&app{stdin: failing{}, stdout: io.Discard}, 3)
	require.ErrorIs(t, err, os.ErrClosed)
}

type failing struct{}

func (failing) Read([]byte) (int, error) { return 0, os.ErrClosed }
