package reading

import "strings"

// zoneUnsure stands in the place of a zone where the side told of a state does not
// settle which of its two it is in.
const zoneUnsure = "?"

// stateSides tell which side of a state is meant.
var stateSides = setOfWords(split(`west, western, east, eastern, north, northern, south, southern, central, middle, northwest, northwestern, northeast, northeastern, southwest, southwestern,
	southeast, southeastern, upstate, rural, far, upper, lower, coastal, panhandle`))

// unclearSides are the sides of states on which the zone changes.
var unclearSides = map[string][]string{
	"kentucky":     split("west, western, south, southern, southwest, southwestern"),
	"tennessee":    split("southeast, southeastern"),
	"indiana":      split("northwest, northwestern, southwest, southwestern, north, northern, south, southern, west, western"),
	"florida":      split("panhandle, northwest, northwestern, west, western"),
	"michigan":     split("upper, northwest, northwestern"),
	"texas":        split("west, western, far"),
	"kansas":       split("west, western, northwest, northwestern"),
	"nebraska":     split("west, western, panhandle, northwest, northwestern, southwest, southwestern"),
	"north dakota": split("west, western, southwest, southwestern"),
	"south dakota": split("west, western, southwest, southwestern, northwest, northwestern"),
	"oregon":       split("east, eastern, southeast, southeastern"),
	"idaho":        split("north, northern, panhandle, central"),
}

// zoneOfSide reads "western Kentucky" at token i: the zone, zoneUnsure where the side does
// not settle it, and how many tokens it took.
func (r *reader) zoneOfSide(i int) (zone string, n int) {
	k := i
	for k < len(r.toks) && k < i+3 && r.toks[k].kind == tokWord && (stateSides[r.toks[k].s] || k > i && (r.toks[k].s == "part" || r.toks[k].s == "of" || r.toks[k].s == "peninsula")) {
		k++
	}
	for k < len(r.toks) && k > i && k < i+5 && (r.toks[k].s == "of" || r.toks[k].s == "part") {
		k++
	}
	if k == i || k >= len(r.toks) {
		return "", 0
	}
	zone, n = r.zoneAt(k)
	if n == 0 || !strings.HasPrefix(zone, "America/") || n == 1 && stateSides[r.toks[k].s] {
		return "", 0
	}
	state := r.toks[k].s
	if n == 2 {
		state += " " + r.toks[k+1].s
	}
	n += k - i
	unclear, divided := unclearSides[state]
	for m := i; divided && m < k; m++ {
		side := r.toks[m].s
		for _, u := range unclear {
			if side == u {
				return zoneUnsure, n
			}
		}
		if state == "tennessee" && (side == "east" || side == "eastern" || side == "northeast" || side == "northeastern") {
			return "America/New_York", n
		}
	}
	return zone, n
}
