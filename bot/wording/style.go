package wording

import "slices"

// Styles of a quantity, behind a colon in a sentence.
const (
	styleFeed  = "feed"     // feed: to a pound, from a hundred on to five
	styleLean  = "feedbare" // feed without its unit
	styleExact = "exact"    // as the person said it
	stylePer   = "per"      // money per kilogram or pound
	styleFine  = "fine"     // two decimals: percent, ratio
	styleBare  = "bare"     // without its unit
	styleDown  = "down"     // rounded down: what guards the pigs
	styleUp    = "up"       // rounded up to a whole number
	styleDay   = "day"      // of a moment: its day only
	styleSign  = "sign"     // with a plus or a minus

	styleNear   = "near"   // of a day: as today or tomorrow where it is
	styleClock  = "clock"  // of a moment: its hour only
	styleEdge   = "edge"   // of a moment: rounded to the safe side
	styleWide   = "wide"   // of a span of days: only where it is more than one
	styleLikely = "likely" // of a moment: to the nearest hour or day
)

func knownStyle(s string) bool {
	return slices.Contains([]string{styleFeed, styleLean, styleExact, stylePer, styleFine, styleBare, styleDown, styleUp, styleDay, styleSign, styleEdge, styleLikely, styleWide, styleClock, styleNear}, s)
}
