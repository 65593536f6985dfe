package reading

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWordIn finds each word of the lists, and none that is not there.
func TestWordIn(t *testing.T) {
	for _, list := range []string{commonEnglish, rarerEnglish} {
		all := strings.Fields(list)
		assert.True(t, slices.IsSorted(all))
		has := map[string]bool{}
		for _, w := range all {
			has[w] = true
		}
		for _, w := range all {
			if !wordIn(list, w) {
				t.Fatalf("%q is not found", w)
			}
			if other := w + "q"; wordIn(list, other) != has[other] {
				t.Fatalf("%q is found", other)
			}
		}
		assert.False(t, wordIn(list, ""))
		assert.False(t, wordIn(list, "a"))
		assert.False(t, wordIn(list, "zzz"))
	}
	assert.False(t, wordIn("", "a"))
}
