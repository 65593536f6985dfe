package reading

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"troughbell/model"
)

// TestLikelyWord: what is no word is taken for the one that was meant; English words,
// names and what may be anything stay as they are.
func TestLikelyWord(t *testing.T) {
	herd := model.Fold([]model.Record{{ID: "a", Fact: model.Arrive{Count: 2, Animals: []string{"Fern", "Otis"}}}})
	for text, want := range map[string]string{
		"feeder filled to th lid":          "feeder filled to the lid",
		"al of tehm aroud 205":             "all of them around 205",
		"wayed 3 of them":                  "weighed 3 of them",
		"sry 187":                          "sorry 187",
		"it tok five bgas":                 "it took five bags",
		"how mony sacks tae the finish":    "how many sacks to the finish",
		"water barrel oak, 208 l":          "water barrel oak , 208 l",
		"however the drama on the porch":   "however the drama on the porch",
		"the neighbour zbigniew came over": "the neighbour zbigniew came over",
	} {
		r := newReader(Context{Herd: herd}, text)
		r.tokenize()
		r.rightSpelling()
		var got []string
		for i := range r.toks {
			if r.toks[i].kind != tokBreak {
				got = append(got, r.toks[i].s)
			}
		}
		r.done()
		assert.Equal(t, want, strings.Join(got, " "))
	}
}
