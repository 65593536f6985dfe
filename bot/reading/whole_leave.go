package reading

import (
	"slices"
	"strings"
)

// Texts that end something for good - the herd, a person's part in it - count only
// where they are all that a text says: what they lead to is asked for once more.

const (
	politely = `(?:(?:hi|hey|ok|okay|so|please|pls|can you|could you|would you|can i|could i|how do i|how can i|how to|` +
		`i want to|i want you to|i would like to|i'd like to|i need to|i need you to|let's|go ahead and|just|now),? )*`
	forGood = `(?: (?:please|pls|now|for good|forever|for ever|permanently|completely|entirely|altogether|` +
		`(?:and|with) (?:all|everything|all (?:of )?(?:its|the|my|our) (?:data|records|history|texts)|(?:its|the|my|our) (?:data|records|history|texts))))*`
	erase = `(?:delete|erase|remove|wipe|wipe out|forget|destroy|purge|get rid of)`
)

func whole(expr string) pattern {
	return newPattern(`^` + politely + expr + forGood + `$`)
}

var (
	erasesHerd = whole(erase + ` (?:(?:this|the|that|my|our|all|whole|entire|of) )*herd(?: book)?`)
	erasesAll  = whole(`(?:delete|erase|remove|wipe|wipe out|destroy|purge|forget) (?:everything` +
		`(?: here| in here| you have| you keep| you know| there is| about us| about this herd| of ours| on us)?|` +
		`(?:all|all of) (?:(?:the|our|this) )?(?:data|records|history)|(?:the|our) (?:whole |entire )?(?:data|history|database|account))`)
	erasesNamed = whole(`(?:delete|erase|remove|wipe|destroy|purge|forget|get rid of) (?:the herd )?(.+?)`)
	erasesMe    = whole(`(?:(?:delete|erase|remove|wipe|forget|purge) (?:about )?(?:me|myself|(?:all )?(?:of )?my (?:data|account|name|texts|messages|chat|records)|` +
		`everything about me|all (?:you have|you know|you keep) (?:on|about|of) me)|take me (?:out|off)|sign me off|unsubscribe(?: me)?)` +
		`(?:(?: of| from)? (?:this|the|our) (?:herd|list|bot))?`)
	leaves = whole(`leave (?:this|the) herd`)

	removes   = whole(`(?:remove|kick out|throw out|uninvite|lock out|block|take out) (?:the )?((?:helper |sitter |family )?.+?)(?: (?:from|out of) (?:this|the|our|my) (?:herd|household|people|bot|list))?`)
	kicksOut  = whole(`(?:kick|throw|take|lock) (.+?) (?:out|off)(?: of (?:this|the|our) herd)?`)
	makesOwn  = whole(`(?:make|let) (.+?) (?:be )?(?:the |an? )?(?:new )?owner(?: of (?:this|the) herd| instead of me)?`)
	handsOver = whole(`(?:hand|give|pass|transfer|sign)(?: over)? (?:this|the|my|our) herd(?: over| on)? to (.+?)`)
	handsOn   = whole(`hand(?: it)? over to (.+?)`)
	people    = newPattern(`^(?:` + politely + `)(?:people|members|household|the household|who is in here|who's in here|who is here|who belongs here|` +
		`who has access|who can write here|who can text you|who is in (?:this|the) herd|who's in (?:this|the) herd|list (?:the )?(?:people|members)|show (?:the )?(?:people|members))$`)
)

// OfPeople reports whether a text may speak of the people of the household, so
// that their names are of use for reading it.
func OfPeople(text string) bool {
	text = strings.ToLower(text)
	return len(text) <= longestWhole && slices.ContainsFunc([]string{
		"remove", "kick", "throw", "uninvite", "block", "lock", "take ", "owner", "hand", "give", "pass", "transfer", "sign",
	}, func(w string) bool { return strings.Contains(text, w) })
}

// leavingWords are words without one of which a text is no such wish.
var leavingWords = []string{
	"delete", "erase", "remove", "wipe", "forget", "destroy", "purge", "rid of", "take", "sign", "unsubscribe", "leave", "kick", "throw",
	"uninvite", "lock", "owner", "herd", "hand", "people", "members", "household", "who",
}

// plainText is a text in lower case without the signs at its ends.
func plainText(text string) string {
	text = strings.Join(strings.Fields(strings.ToLower(text)), " ")
	text = strings.NewReplacer("’", "'", "\"", "", "“", "", "”", "").Replace(text)
	return strings.Trim(text, "/.!?, ")
}

// leaving reads a wish to end the herd or a person's part in it, and whose herd it
// is to be.
func (r *reader) leaving() (Reading, bool) {
	if !slices.ContainsFunc(leavingWords, func(w string) bool { return strings.Contains(r.plain, w) }) {
		return Reading{}, false
	}
	text := plainText(r.text)
	switch {
	case erasesMe.matches(text), leaves.matches(text):
		return r.just(Do{What: "forget me"}), true
	case erasesHerd.matches(text), erasesAll.matches(text), r.erasesByName(text):
		return r.just(Do{What: "delete herd"}), true
	case people.matches(text):
		return r.just(Do{What: "people"}), true
	}
	for _, p := range []pattern{makesOwn, handsOver, handsOn} {
		if m := p.groups(text); m != nil && r.c.Herd.Animal(m[1]) == nil {
			return r.just(Do{What: "hand over", Arg: m[1]}), true
		}
	}
	for _, p := range []pattern{removes, kicksOut} {
		if m := p.groups(text); m != nil && r.person(m[1]) {
			return r.just(Do{What: "remove person", Arg: m[1]}), true
		}
	}
	return Reading{}, false
}

// erasesByName reports whether the herd is to go by its name, which no pig has.
func (r *reader) erasesByName(text string) bool {
	name := plainText(r.c.Herd.Name)
	m := erasesNamed.groups(text)
	return name != "" && m != nil && m[1] == name && r.c.Herd.Animal(name) == nil
}

// person reports whether the word is a person's name, with the role before it or
// not, and no pig's.
func (r *reader) person(word string) bool {
	for _, role := range []string{"helper ", "sitter ", "family "} {
		word = strings.TrimPrefix(word, role)
	}
	return r.c.Herd.Animal(word) == nil && slices.ContainsFunc(r.c.People, func(name string) bool { return plainText(name) == word })
}
