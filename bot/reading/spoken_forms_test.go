package reading

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestOtherForms: a phrase is known in all the forms of its words; a word that stands
// alone only in those of as many words.
func TestOtherForms(t *testing.T) {
	assert.Subset(t, otherForms("they're out of feed"), []string{"theyre out of feed", "they are outta feed", "theyre outta feed"})
	assert.NotContains(t, otherForms("they're out of feed"), "they're out of feed")
	assert.ElementsMatch(t, []string{"isnt", "aint", "ain't"}, otherForms("isn't"))
	assert.Empty(t, otherForms("hanging weight"))
	l := words()
	for _, w := range []string{"outta feed", "did not eat", "cannot get up"} {
		if m := l.of[w]; assert.NotNil(t, m, w) {
			assert.False(t, m.sense.empty(), w)
		}
	}
}

// TestSpokenNumbers: hundreds and thousands said in a row add up.
func TestSpokenNumbers(t *testing.T) {
	l := words()
	for text, want := range map[string]float64{
		"one eighty":                             180,
		"two oh five":                            205,
		"a hundred and five":                     105,
		"one hundred eighty two":                 182,
		"nine thousand five hundred":             9500,
		"twelve thousand and fifty":              12050,
		"three thousand":                         3000,
		"one hundred twenty thousand":            120000,
		"two thousand six hundred and forty two": 2642,
		"four point five":                        4.5,
	} {
		toks := scan(nil, text, false)
		v, n := l.spoken(toks)
		assert.Equal(t, want, v, text)
		assert.Equal(t, len(toks), n, text)
	}
}
