package reading

import "strings"

// What is left of a word when its vowels are left out, "bth tnks fll", or when it
// is spelt by its sound, "tanx".

// clippable are the words of the pen that people write without their vowels.
const clippable = `full both tank tanks barrel barrels feeder feeders hopper hoppers water left pigs filled bucket buckets pounds
	wormed moved weighed taped hosed fence today girth small empty bought mixed batch batches limping butcher weight much need wallow
	morning night gallons gallon topped level half gilts barrows dead sick cough coughing yesterday tomorrow spent dollars sold all last how
	long when what does till until they good fine done`

// clippedWords gives a word of the pen for its consonants, where but one has them.
func clippedWords(l *lexicon) map[string]string {
	out := map[string]string{}
	twice := map[string]bool{}
	for _, w := range strings.Fields(clippable) {
		for _, c := range []string{clip(w), strings.ReplaceAll(clip(w), "ks", "x")} {
			if len(c) < 3 && c != "bth" || l.of[c] != nil || l.plain[c] || c == w {
				continue
			}
			if old, ok := out[c]; ok && old != w {
				twice[c] = true
			}
			out[c] = w
		}
		if d := squeezed(clip(w)); len(d) >= 3 && l.of[d] == nil && !l.plain[d] {
			if old, ok := out[d]; ok && old != w {
				twice[d] = true
			}
			out[d] = w
		}
	}
	for c := range twice {
		delete(out, c)
	}
	out["tanx"] = "tanks"
	return out
}

// clip leaves the vowels out of a word but for one that begins it.
func clip(w string) string {
	var b strings.Builder
	for i, c := range w {
		if i == 0 || !strings.ContainsRune("aeiou", c) {
			b.WriteRune(c)
		}
	}
	return b.String()
}

// squeezed writes doubled letters once.
func squeezed(w string) string {
	var b strings.Builder
	var last rune
	for _, c := range w {
		if c != last {
			b.WriteRune(c)
		}
		last = c
	}
	return b.String()
}
