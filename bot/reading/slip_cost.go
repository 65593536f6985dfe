package reading

import "strings"

// How likely a word was typed, heard or put in the place of another: the noisy
// channel between what was meant and what arrived. The lower, the likelier.

// noSlip is the cost of a word that nobody comes to by a slip.
const noSlip = 9

// sounds are the sound keys of a word, with its vowels and without.
type sounds struct{ full, bare string }

func soundsOf(w string) sounds { return sounds{soundKey(w, true), soundKey(w, false)} }

// slipCost is what it takes to come from the word that was meant to the one that
// stands there; sx and mx are how they sound.
func slipCost(said, meant string, sx, mx sounds) float64 {
	if said == meant {
		return 0
	}
	d := distance(said, meant)
	cost := float64(noSlip)
	switch {
	case d == 1:
		cost = oneSlip(said, meant)
	case d == 2 && len(said) > 5 && len(meant) > 5 && said[0] == meant[0]:
		cost = 1.6
	case d == 2 && len(said) > 4 && len(meant) > 4 && said[:3] == meant[:3]:
		cost = 1.7
	}
	if sx.full != "" && sx.full == mx.full {
		return min(cost, 0.4)
	}
	a, b := sx.bare, mx.bare
	if a == "" || b == "" {
		return cost
	}
	switch {
	case a == b && len(a) > 1 && d <= 3:
		cost = min(cost, 0.5+0.25*float64(d)+short(a, said))
	case len(a) > 2 && len(b) > 2 && distance(a, b) == 1 && d <= 3 && a[0] == b[0]:
		cost = min(cost, 1.2+0.15*float64(d-1))
	}
	return cost
}

// short adds to the cost of words so short that many sound alike.
func short(key, said string) float64 {
	switch {
	case len(key) < 3 && len(said) < 4:
		return 0.4
	case len(key) < 3:
		return 0.15
	}
	return 0
}

// oneSlip is the cost of one letter swapped with its neighbour, doubled, left out,
// added or changed.
func oneSlip(said, meant string) float64 {
	cost := 0.9
	i := 0
	for i < len(said) && i < len(meant) && said[i] == meant[i] {
		i++
	}
	switch {
	case len(said) == len(meant) && swapped(said, meant):
		cost = 0.4
	case len(said) != len(meant):
		longer := said
		if len(meant) > len(said) {
			longer = meant
		}
		c := longer[min(i, len(longer)-1)]
		switch {
		case i > 0 && longer[i-1] == c:
			cost = 0.3
		case isVowel(c):
			cost = 0.5
		default:
			cost = 0.7
		}
	case isVowel(said[i]) && isVowel(meant[i]):
		cost = 0.6
	case spokenAlike(said[i], meant[i]) || besideKey(said[i], meant[i]):
		cost = 0.7
	}
	switch {
	case i == 0 && len(said) == len(meant):
		cost += 0.3
	case i == 0:
		cost += 0.15
	}
	if len(meant) < 4 {
		cost += 0.15
	}
	return cost
}

// otherLetter says that two words differ in one letter that is neither spoken like the
// other nor lies beside it: "mowed" is a word of its own, no slip for "moved".
func otherLetter(said, meant string) bool {
	if len(said) != len(meant) || distance(said, meant) != 1 || swapped(said, meant) {
		return false
	}
	for i := range len(said) {
		if a, b := said[i], meant[i]; a != b {
			return !(isVowel(a) && isVowel(b)) && !spokenAlike(a, b) && !besideKey(a, b)
		}
	}
	return false
}

// spokenAlike says that two consonants are spoken alike but for the voice.
func spokenAlike(a, b byte) bool {
	for _, p := range [...]string{"bp", "dt", "gk", "gc", "fv", "sz", "mn", "lr", "ck", "cs"} {
		if a == p[0] && b == p[1] || a == p[1] && b == p[0] {
			return true
		}
	}
	return false
}

var keyRows = [...]string{"qwertyuiop", "asdfghjkl", "zxcvbnm"}

// besideKey says that two letters lie beside each other on a keyboard.
func besideKey(a, b byte) bool {
	for r, row := range keyRows {
		x := strings.IndexByte(row, a)
		if x < 0 {
			continue
		}
		for s := max(r-1, 0); s <= min(r+1, len(keyRows)-1); s++ {
			y := strings.IndexByte(keyRows[s], b)
			if y < 0 {
				continue
			}
			off := 0 // a lower row lies half a key further to the right
			if s > r {
				off = -1
			} else if s < r {
				off = 1
			}
			return y == x || y == x+off || s == r && (y == x-1 || y == x+1)
		}
		return false
	}
	return false
}
