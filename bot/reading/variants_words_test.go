package reading_test

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"unicode"
)

// numberedHerds call their pigs by numbers.
var numberedHerds = map[string]bool{"pinfold": true, "sawbuck": true, "flatrock": true, "kiln": true, "garth": true}

// dictated leaves out what nobody says aloud: capitals, marks, ends of lines.
func dictated(s string) string {
	var b strings.Builder
	in := []rune(s)
	for i, c := range in {
		number := i > 0 && i+1 < len(in) && unicode.IsDigit(in[i-1]) && unicode.IsDigit(in[i+1])
		switch {
		case strings.ContainsRune(".,", c) && number, strings.ContainsRune("/:-", c) && number:
			b.WriteRune(c)
		case strings.ContainsRune(".,;!?()\n:-•*", c):
			b.WriteRune(' ')
		default:
			b.WriteRune(unicode.ToLower(c))
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

var plainNumber = regexp.MustCompile(`(?:^|[ ])(\d{2,3})(?:$|[ ]|[,.](?:$|[ \n]))`)

// spokenNumbers says the amounts of a text in words: one eighty, a hundred and
// eighty, one hundred eighty.
func spokenNumbers(s string, rnd *rand.Rand) string {
	style := rnd.IntN(3)
	for {
		at := plainNumber.FindStringSubmatchIndex(s)
		if at == nil {
			return s
		}
		v, err := strconv.Atoi(s[at[2]:at[3]])
		if err != nil {
			return s
		}
		s = s[:at[2]] + inWords(v, style) + s[at[3]:]
	}
}

var (
	ones = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}
	tens = []string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}
)

// inWords says a number below 1000 in one of three styles.
func inWords(v, style int) string {
	if v < 20 {
		return ones[v]
	}
	if v < 100 {
		if v%10 == 0 {
			return tens[v/10]
		}
		return tens[v/10] + " " + ones[v%10]
	}
	hundred, rest := ones[v/100]+" hundred", v%100
	switch style {
	case 0:
		if rest >= 10 {
			return ones[v/100] + " " + inWords(rest, style)
		}
		if rest > 0 {
			return ones[v/100] + " oh " + ones[rest]
		}
	case 1:
		if v/100 == 1 {
			hundred = "a hundred"
		}
		if rest > 0 {
			return hundred + " and " + inWords(rest, style)
		}
	}
	if rest > 0 {
		return hundred + " " + inWords(rest, style)
	}
	return hundred
}

// unitNames are other words for the units behind a number.
var unitNames = []struct {
	was *regexp.Regexp
	is  []string
}{
	{regexp.MustCompile(`(\d) ?(?:lbs?|pounds)\b`), []string{"${1} lbs", "${1} pounds", "${1}#", "${1}lb"}},
	{regexp.MustCompile(`(\d) ?(?:gal|gallons)\b`), []string{"${1} gallons", "${1}gal", "${1} gals"}},
	{regexp.MustCompile(`(\d) ?(?:inches|inch)\b`), []string{"${1} inches", `${1}"`, "${1} in."}},
	{regexp.MustCompile(`(\d) ?kg\b`), []string{"${1} kilos", "${1}kg", "${1} kilograms"}},
	{regexp.MustCompile(`(\d) ?cm\b`), []string{"${1} centimeters", "${1}cm"}},
	{regexp.MustCompile(`(\d) ?(?:min|mins|minutes)\b`), []string{"${1} minutes", "${1} min", "${1}mins"}},
	{regexp.MustCompile(`\$(\d+(?:[.]\d\d)?)`), []string{"${1} dollars", "${1} bucks", "$$${1}"}},
}

func otherUnits(s string, d *draw) string {
	for _, u := range unitNames {
		s = u.was.ReplaceAllString(s, d.one(u.is))
	}
	return strings.ReplaceAll(s, "..", ".")
}

// possessive gives a pig before its weight an "'s".
func possessive(l *labelled, d *draw) (string, [][]labelledEntry) {
	if !l.tells() {
		return "", nil
	}
	s := l.Text
	for _, a := range l.talk.herd.Animals {
		if a.Name == "" || unicode.IsDigit(rune(a.Name[0])) {
			continue
		}
		s = regexp.MustCompile(`(?i)\b(`+regexp.QuoteMeta(a.Name)+`) (\d)`).ReplaceAllString(s, "${1}'s $2")
	}
	return s, l.labels()
}

// slip changes a letter of one longer word that is all small letters and spelt
// right. Free words of the person are kept as they were typed.
func slip(l *labelled, d *draw) (string, [][]labelledEntry) {
	at := wordPlaces.FindAllStringIndex(l.Text, -1)
	for n := 0; n < 20 && len(at) > 0; n++ {
		p := at[d.IntN(len(at))]
		w := l.Text[p[0]:p[1]]
		if len(w) < 5 || strings.ToLower(w) != w || !d.often[w] || p[0] > 0 && !unicode.IsSpace(rune(l.Text[p[0]-1])) {
			continue
		}
		bent := bend(w, d.Rand)
		if bent == w || d.often[bent] {
			continue
		}
		return l.Text[:p[0]] + bent + l.Text[p[1]:], append(l.labels(), freeWords(l.labels(), w, bent)...)
	}
	return "", nil
}

var wordPlaces = regexp.MustCompile(`[A-Za-z']+`)

func bend(w string, rnd *rand.Rand) string {
	at := 1 + rnd.IntN(len(w)-2)
	switch rnd.IntN(3) {
	case 0:
		return w[:at] + w[at+1:]
	case 1:
		return w[:at] + w[at+1:at+2] + w[at:at+1] + w[at+2:]
	}
	return w[:at] + w[at:at+1] + w[at:]
}

// freeWords are labels whose free words hold a word as it was typed.
func freeWords(labels [][]labelledEntry, was, is string) [][]labelledEntry {
	var out [][]labelledEntry
	for _, es := range labels {
		var bent []labelledEntry
		changed := false
		for _, e := range es {
			c := labelledEntry{}
			for k, v := range e {
				if s, ok := v.(string); ok && (k == "note" || k == "product" || k == "what" && (e["intent"] == "spend" || e["intent"] == "remind" || e["intent"] == "note")) {
					words := strings.Fields(s)
					for i, w := range words {
						if strings.Contains(was, strings.ToLower(w)) {
							words[i], changed = is, true
						}
					}
					v = strings.Join(words, " ")
				}
				c[k] = v
			}
			bent = append(bent, c)
		}
		if changed {
			out = append(out, bent)
		}
	}
	return out
}
