package reading

import (
	"regexp"
	"regexp/syntax"
	"slices"
	"strings"
	"sync"
)

// pattern is a regular expression that looks first for what all it matches
// contains. Few texts contain it, and to look for it takes a hundredth of the time. Both
// are made when they are first asked for.
type pattern struct {
	re    func() *regexp.Regexp
	needs func() []string // one of these stands in all that is matched; none: not known
}

func newPattern(expr string) pattern {
	return pattern{
		re: sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) }),
		needs: sync.OnceValue(func() []string {
			tree, err := syntax.Parse(expr, syntax.Perl)
			if err != nil {
				panic(err) // as regexp.MustCompile does
			}
			return needed(tree)
		}),
	}
}

func (p pattern) may(text string) bool {
	needs := p.needs()
	return needs == nil || slices.ContainsFunc(needs, func(s string) bool { return strings.Contains(text, s) })
}

// matches reports whether the text matches.
func (p pattern) matches(text string) bool { return p.may(text) && p.re().MatchString(text) }

// groups are the match and its groups, nil without a match.
func (p pattern) groups(text string) []string {
	if !p.may(text) {
		return nil
	}
	return p.re().FindStringSubmatch(text)
}

// needed are strings one of which stands in everything that an expression
// matches, nil if there is no such set. Of several the one whose shortest string
// is the longest is taken.
func needed(re *syntax.Regexp) []string {
	switch re.Op {
	case syntax.OpLiteral:
		if re.Flags&syntax.FoldCase == 0 {
			return []string{string(re.Rune)}
		}
	case syntax.OpCapture, syntax.OpPlus:
		return needed(re.Sub[0])
	case syntax.OpRepeat:
		if re.Min > 0 {
			return needed(re.Sub[0])
		}
	case syntax.OpConcat:
		var best []string
		for _, sub := range re.Sub {
			if set := needed(sub); set != nil && (best == nil || shortest(set) > shortest(best)) {
				best = set
			}
		}
		return best
	case syntax.OpAlternate:
		var all []string
		for _, sub := range re.Sub {
			set := needed(sub)
			if set == nil {
				return nil
			}
			all = append(all, set...)
		}
		return all
	}
	return nil
}

func shortest(set []string) int {
	return len(slices.MinFunc(set, func(a, b string) int { return len(a) - len(b) }))
}
