package reading

import (
	"slices"
	"strings"
	"sync"
)

// Many words are said in one of several forms that mean the same: "they are out of
// feed", "theyre outta feed". A lexicon names one of them; the others follow from here.

// spokenForms are the families of such forms, the one that the lexicons use most first.
// What begins questions is not among them: its words say more apart.
var spokenForms = [][]string{
	split("isn't, isnt, is not, ain't, aint"),
	split("aren't, arent, are not, ain't, aint"),
	split("wasn't, wasnt, was not"),
	split("weren't, werent, were not"),
	split("don't, dont, do not"),
	split("doesn't, doesnt, does not"),
	split("didn't, didnt, did not"),
	split("won't, wont, will not"),
	split("can't, cant, cannot, can not"),
	split("haven't, havent, have not"),
	split("hasn't, hasnt, has not"),
	split("hadn't, hadnt, had not"),
	split("wouldn't, wouldnt, would not"),
	split("couldn't, couldnt, could not"),
	split("shouldn't, shouldnt, should not"),
	split("they're, theyre, they are"),
	split("it's, it is"),
	split("i'm, im, i am"),
	split("he's, hes, he is"),
	split("she's, shes, she is"),
	split("we're, we are"),
	split("i've, ive, i have"),
	split("we've, weve, we have"),
	split("they've, theyve, they have"),
	split("that's, thats, that is"),
	split("there's, theres, there is"),
	split("i'll, i will"),
	split("we'll, we will"),
	split("out of, outta, outa"),
	split("going to, gonna, gunna"),
	split("got to, gotta"),
	split("want to, wanna"),
	split("have to, hafta"),
	split("kind of, kinda"),
	split("sort of, sorta"),
	split("until, till, til, 'til"),
	split("through, thru"),
	split("enough, enuf, enuff"),
	split("them, em"),
	split("you, u, ya"),
}

// mostForms bounds in how many ways a phrase is written out.
const mostForms = 24

// spokenForm is one form of a family, cut into its words.
type spokenForm struct {
	words  []string
	family []string
}

// formsFrom are the forms by their first word, the longest first.
var formsFrom = sync.OnceValue(func() map[string][]spokenForm {
	out := map[string][]spokenForm{}
	for _, family := range spokenForms {
		for _, form := range family {
			words := strings.Fields(form)
			out[words[0]] = append(out[words[0]], spokenForm{words, family})
		}
	}
	for _, forms := range out {
		slices.SortStableFunc(forms, func(a, b spokenForm) int { return len(b.words) - len(a.words) })
	}
	return out
})

// formAt is the family of the form that begins the words, with how many it takes; 0
// where none does.
func formAt(words []string) (family []string, n int) {
	for _, f := range formsFrom()[words[0]] {
		if len(f.words) <= len(words) && slices.Equal(f.words, words[:len(f.words)]) {
			return f.family, len(f.words)
		}
	}
	return nil, 0
}

// otherForms are the other ways to write a phrase. A word that stands alone keeps the
// number of its words, since what its parts say alone is settled elsewhere.
func otherForms(phrase string) []string {
	words := strings.Fields(phrase)
	if !slices.ContainsFunc(words, func(w string) bool { return len(formsFrom()[w]) > 0 }) {
		return nil
	}
	ways := []string{""}
	for i := 0; i < len(words); {
		family, n := formAt(words[i:])
		if n == 0 {
			family, n = words[i:i+1], 1
		}
		var next []string
		for _, w := range ways {
			for _, form := range family {
				if len(next) < mostForms && (n < len(words) || strings.Count(form, " ") == n-1) {
					next = append(next, strings.TrimSpace(w+" "+form))
				}
			}
		}
		ways = next
		i += n
	}
	out := ways[:0]
	for _, w := range ways {
		if w != phrase {
			out = append(out, w)
		}
	}
	return out
}
