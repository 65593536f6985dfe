package bot

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// All files and all of the text go out, the buttons hang below the end of the
// text, and nothing is longer than its place allows.
func TestPack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := strings.Repeat("a line of words\n", rapid.IntRange(1, 600).Draw(rt, "lines"))
		var files []File
		for range rapid.IntRange(0, 3).Draw(rt, "files") {
			files = append(files, File{
				Kind: "photo", Name: "a.png", Bytes: []byte("x"),
				Caption: strings.Repeat("é🐷", rapid.SampledFrom([]int{0, 1, 400}).Draw(rt, "caption")),
			})
		}
		var said []string
		got, last := 0, ""
		for _, p := range pack(text, [][]string{{"Done"}}, files) {
			limit := maxUnits
			if p.file != nil {
				got++
				limit = maxCaption
			}
			require.LessOrEqual(rt, units(p.text), limit)
			if strings.Contains(p.text, "words") {
				said = append(said, p.text)
			}
			if p.buttons != nil {
				require.Empty(rt, last, "the buttons hang once")
				last = p.text
			}
		}
		require.Equal(rt, len(files), got)
		require.Equal(rt, strings.TrimSpace(text), strings.TrimSpace(strings.Join(said, "\n")))
		require.Equal(rt, said[len(said)-1], last)
	})
	require.Empty(t, pack("", nil, nil))
}
