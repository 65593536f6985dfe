package reading

import (
	"regexp/syntax"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestNeeded(t *testing.T) {
	for expr, want := range map[string][]string{
		`^(?:we |i )?home(?: again)?$`:        {"home"},
		`^(?:tell|text)(?: me)? of (.+?)$`:    {" of "},
		`^(?:a|b)?(?:chores daily|each day)$`: {"chores daily", "each day"},
		`^(?:go(?: on)?)+$`:                   {"go"},
		`^(?:.*)$`:                            nil,
		`^(?:back|[0-9]+)$`:                   nil,
		`^(?i)loud$`:                          nil,
		`^(?:on )?(?:sunday|the [0-9]{1,2})$`: {"sunday", "the "},
	} {
		tree, err := syntax.Parse(expr, syntax.Perl)
		require.NoError(t, err)
		assert.ElementsMatch(t, want, needed(tree), expr)
	}
}

// All patterns know what they need, else each text pays for them.
func TestPatternsKnowWhatTheyNeed(t *testing.T) {
	for name, p := range map[string]pattern{
		"daily": daily, "eveAsked": eveAsked, "eveOff": eveOff, "homeAgain": homeAgain, "loadNamed": loadNamed, "loadShort": loadShort,
		"loadDay": loadDay, "loadBare": loadBare, "notGone": notGone, "againWords": againWords, "inAWhile": inAWhile,
		"postpone": postpone, "shopAsked": shopAsked, "shopUsual": shopUsual, "people": people, "erasesHerd": erasesHerd,
		"erasesAll": erasesAll, "erasesNamed": erasesNamed, "erasesMe": erasesMe, "leaves": leaves, "removes": removes,
		"kicksOut": kicksOut, "makesOwn": makesOwn, "handsOver": handsOver, "handsOn": handsOn,
	} {
		assert.NotEmpty(t, p.needs(), name)
		assert.NotNil(t, p.re(), name)
		t.Logf("%s: %q", name, p.needs())
	}
}
