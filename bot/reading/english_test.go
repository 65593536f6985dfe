package reading

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWordList finds each word of the lists, and none that is not there.
func TestWordList(t *testing.T) {
	for _, list := range []*wordList{commonEnglish(), rarerEnglish()} {
		all := strings.Fields(list.text)
		assert.True(t, slices.IsSorted(all))
		has := map[string]bool{}
		for _, w := range all {
			has[w] = true
		}
		for _, w := range all {
			if !list.has(w) {
				t.Fatalf("%q is not found", w)
			}
			if other := w + "q"; list.has(other) != has[other] {
				t.Fatalf("%q is found", other)
			}
		}
		for _, w := range []string{"", "a", "zzz", "é", "aé", "{", "a'", "9x", "\n", "ab\n"} {
			assert.False(t, list.has(w), w)
		}
	}
	assert.False(t, newWordList("").has("a"))
}
