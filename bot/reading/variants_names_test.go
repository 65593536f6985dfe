package reading_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// otherNames are names of pigs that are words of the day or of the pen.
var otherNames = []string{"Barley", "Acorn", "Rose", "Rain", "Penny", "Bill", "May", "Will", "Sunday", "Corn"}

// renamed is a herd whose pigs have other names, and which name became which.
type renamed struct {
	talk *talk
	now  map[string]string
}

// rename plays a herd's log with the names of otherNames, in turn from the given
// one on.
func rename(t testing.TB, herd string, from *talk, shift int) *renamed {
	r := &renamed{now: map[string]string{}}
	log, err := os.ReadFile(filepath.Join(corpora, "herds", herd+".log"))
	require.NoError(t, err)
	text := string(log)
	for _, a := range from.herd.Animals {
		if a.Name == "" || r.now[strings.ToLower(a.Name)] != "" || strings.ContainsAny(a.Name, "0123456789 ") || len(r.now) == len(otherNames) {
			continue
		}
		r.now[strings.ToLower(a.Name)] = otherNames[(len(r.now)+shift)%len(otherNames)]
	}
	r.talk = playLog(t, strings.NewReader(r.in(text)))
	var named []string
	for _, a := range r.talk.herd.Animals {
		named = append(named, strings.ToLower(a.Name))
	}
	for _, name := range r.now {
		assert.Contains(t, named, strings.ToLower(name), "%s", herd)
	}
	return r
}

var anyWord = regexp.MustCompile(`[A-Za-z]+`)

// in is a text with the other names, in small letters where the old ones were.
func (r *renamed) in(s string) string {
	return anyWord.ReplaceAllStringFunc(s, func(w string) string {
		is := r.now[strings.ToLower(w)]
		switch {
		case is == "":
			return w
		case w == strings.ToLower(w):
			return strings.ToLower(is)
		}
		return is
	})
}

// fits says that a label's pigs are all named in the text as they are called.
func (r *renamed) fits(l *labelled) bool {
	named := false
	for _, e := range l.Entries {
		list, _ := e["animals"].([]any)
		for _, a := range list {
			name, _ := a.(string)
			if r.now[strings.ToLower(name)] == "" || !regexp.MustCompile(`(?i)\b`+regexp.QuoteMeta(name)+`\b`).MatchString(l.Text) {
				return false
			}
			named = true
		}
	}
	return named
}

// labels are a text's labels with the other names.
func (r *renamed) labels(l *labelled) [][]labelledEntry {
	var change func(v any) any
	change = func(v any) any {
		switch v := v.(type) {
		case string:
			return r.in(v)
		case []any:
			out := make([]any, len(v))
			for i := range v {
				out[i] = change(v[i])
			}
			return out
		}
		return v
	}
	var out [][]labelledEntry
	for _, es := range l.labels() {
		var now []labelledEntry
		for _, e := range es {
			c := labelledEntry{}
			for k, v := range e {
				if k == "animals" || k == "note" || k == "what" {
					v = change(v)
				}
				c[k] = v
			}
			now = append(now, c)
		}
		out = append(out, now)
	}
	return out
}

// TestNamesThatAreWords reads the texts of herds whose pigs are called by words
// that mean something else.
func TestNamesThatAreWords(t *testing.T) {
	const right, wrong = 96.9, 1.3
	herds := map[[2]string]*renamed{}
	var c counts
	for n, l := range seeds(t) {
		if numberedHerds[l.Herd] || l.Herd == "none" || l.Herd == "ridge" {
			continue
		}
		shift := n % len(otherNames)
		key := [2]string{l.Herd, otherNames[shift]}
		if herds[key] == nil {
			herds[key] = rename(t, l.Herd, l.talk, shift)
		}
		r := herds[key]
		if !r.fits(l) {
			continue
		}
		moved := *l
		moved.talk = r.talk
		c.add(t, &moved, r.in(l.Text), r.labels(l))
	}
	c.report(t, "names that are words", right, wrong)
}
