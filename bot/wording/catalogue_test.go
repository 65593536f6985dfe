package wording

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/schedule"
)

func TestSentencesAreWellFormed(t *testing.T) {
	for part, sentences := range english {
		require.NotEmpty(t, sentences, part)
		for code, s := range sentences {
			require.Empty(t, wrong(s), "%s %s: %s", part, code, s)
			require.NotContains(t, s, "  ", "%s %s", part, code)
			require.LessOrEqual(t, strings.Count(s, danger), 1, "%s %s", part, code)
			for _, r := range strings.NewReplacer(danger, "", "–", "", "°", "").Replace(s) {
				require.Less(t, r, rune(128), "%s %s holds %q", part, code, r)
			}
		}
	}
}

func TestMalformedSentencesAreFound(t *testing.T) {
	for _, s := range []string{
		"Hello!", "[{n}", "{n", "a]", "[a [b]]", "{x}", "{q}", "{q0|pig}", "{q0:loud}", "{}", "{n*x}", "{q0~z1}",
	} {
		require.NotEmpty(t, wrong(s), s)
	}
	for _, s := range []string{"{n}", "{q0~q1:feed} {d0~d1}", "[{?q1|batch|batches}]", "{n*2:sign}", "{q3:up|batch|batches}", "{t0:day}"} {
		require.Empty(t, wrong(s), s)
	}
}

func TestEveryCodeHasASentence(t *testing.T) {
	for _, code := range schedule.Codes {
		requireCode(t, lineSentences, code)
	}
	for _, code := range schedule.ReasonCodes {
		requireCode(t, reasonSentences, code)
	}
	for _, code := range []string{
		reading.NoneChatter, reading.NoneThanks, reading.NonePlan, reading.NoneHearsay, reading.NoneNegation, reading.NoneForeign,
		reading.NoneUnknown, reading.NoneFuture, reading.NoneBefore, reading.NoneNoPigs, reading.NoneUnit, reading.NoneEmpty, reading.NoneSettled,
	} {
		requireCode(t, noneSentences, code)
	}
	for _, code := range constants(t, "../../model", "Reason") {
		requireCode(t, reasonSentences, code)
	}
	for _, code := range codesUsed(t, "../../model", "Reason") {
		requireCode(t, reasonSentences, code)
	}
	for _, code := range codesUsed(t, "../../model", "Missing") {
		requireCode(t, missingSentences, code)
	}
	for _, code := range codesUsed(t, ".", "Effect") {
		requireCode(t, effectSentences, code)
	}
	for _, code := range codesUsed(t, "../reading", "Clarify") {
		requireCode(t, questionSentences, code)
	}
	for _, code := range append(codesUsed(t, "../reading", "Choice"), calls(t, "../reading", "add", "try")...) {
		requireCode(t, choicePhrases, code)
	}
	for _, code := range said(t, "../answer") {
		requireCode(t, answerSentences, code)
	}
	for _, code := range append(calls(t, "../document", "faulty", "unreadable"), "row_pig", "row_pigs", "row_early", "row_gone") {
		requireCode(t, importSentences, code)
	}
	for _, step := range SetupSteps {
		requireCode(t, setupSentences, step)
	}
}

func requireCode(t *testing.T, sentences catalogue, code string) {
	t.Helper()
	_, ok := sentences[code]
	assert.True(t, ok, "no sentence for %q", code)
}

// A question can be asked once more when what filled it is gone.
func TestQuestionsCanBeAskedAgain(t *testing.T) {
	for code := range questionSentences {
		if strings.HasSuffix(code, again) {
			continue
		}
		got := Voice{}.reminded("weigh", code)
		if strings.HasPrefix(code, "water_") || strings.HasPrefix(code, "refill_") || strings.HasPrefix(code, "booked_") || strings.HasPrefix(code, "away_") {
			about, rest, _ := strings.Cut(code, "_")
			got = Voice{}.reminded(about, rest)
		}
		assert.NotContains(t, got, "a question on", code)
		assert.NotContains(t, got, "  ", code)
	}
	require.Equal(t, "a question on the weighing.", Voice{}.reminded("weigh", "unheard_of"))
}

// goFiles parses the sources of a package, tests left out.
func goFiles(t *testing.T, dir string) []*ast.File {
	t.Helper()
	set := token.NewFileSet()
	paths, err := filepath.Glob(filepath.Join(dir, "*.go"))
	require.NoError(t, err)
	var out []*ast.File
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(set, path, nil, 0)
		require.NoError(t, err)
		out = append(out, f)
	}
	require.NotEmpty(t, out)
	return out
}

func text(e ast.Expr) (string, bool) {
	l, ok := e.(*ast.BasicLit)
	if !ok || l.Kind != token.STRING {
		return "", false
	}
	s, err := strconv.Unquote(l.Value)
	return s, err == nil
}

// constants lists the values of string constants whose names begin with the
// prefix, and of all those in files of reasons.
func constants(t *testing.T, dir, prefix string) []string {
	t.Helper()
	var out []string
	for _, f := range goFiles(t, dir) {
		ast.Inspect(f, func(n ast.Node) bool {
			v, ok := n.(*ast.ValueSpec)
			if !ok {
				return true
			}
			for i, name := range v.Names {
				if i < len(v.Values) && strings.HasPrefix(name.Name, prefix) {
					if s, ok := text(v.Values[i]); ok {
						out = append(out, s)
					}
				}
			}
			return true
		})
	}
	require.NotEmpty(t, out)
	return out
}

// codesUsed lists the codes given in literals of a type, as its field Code or
// What, or as a first field without a name. A constant stands for its value.
func codesUsed(t *testing.T, dir, typeName string) []string {
	t.Helper()
	values := map[string]string{}
	files := goFiles(t, dir)
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			if v, ok := n.(*ast.ValueSpec); ok {
				for i, name := range v.Names {
					if i < len(v.Values) {
						if s, ok := text(v.Values[i]); ok {
							values[name.Name] = s
						}
					}
				}
			}
			return true
		})
	}
	var out []string
	add := func(e ast.Expr) {
		if s, ok := text(e); ok {
			out = append(out, s)
		} else if id, ok := e.(*ast.Ident); ok && values[id.Name] != "" {
			out = append(out, values[id.Name])
		}
	}
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			lit, ok := n.(*ast.CompositeLit)
			if !ok || !isType(lit.Type, typeName) {
				return true
			}
			for i, e := range lit.Elts {
				kv, ok := e.(*ast.KeyValueExpr)
				if !ok {
					if i == 0 {
						add(e)
					}
					continue
				}
				if key, ok := kv.Key.(*ast.Ident); ok && (key.Name == "Code" || key.Name == "What") {
					add(kv.Value)
				}
			}
			return true
		})
	}
	return out
}

// isType reports whether an expression is the type, or a slice of it.
func isType(e ast.Expr, name string) bool {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name == name
	case *ast.SelectorExpr:
		return e.Sel.Name == name
	}
	return false
}

// calls lists the texts passed to local functions of these names, by which
// package reading gathers choices.
func calls(t *testing.T, dir string, names ...string) []string {
	t.Helper()
	var out []string
	for _, f := range goFiles(t, dir) {
		ast.Inspect(f, func(n ast.Node) bool {
			c, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			id, ok := c.Fun.(*ast.Ident)
			if !ok || !slices.Contains(names, id.Name) {
				return true
			}
			for _, a := range c.Args {
				if s, ok := text(a); ok {
					out = append(out, s)
				}
			}
			return true
		})
	}
	return out
}

// said lists the codes that package answer says: what it passes to say, Say and
// Phrase, and what it keeps in a variable called code.
func said(t *testing.T, dir string) []string {
	t.Helper()
	var out []string
	for _, f := range goFiles(t, dir) {
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if sel, ok := n.Fun.(*ast.SelectorExpr); ok && len(n.Args) > 0 {
					switch sel.Sel.Name {
					case "say", "Say", "Phrase", "task":
						for _, arg := range n.Args {
							if s, ok := text(arg); ok {
								out = append(out, s)
							}
						}
					}
				}
			case *ast.AssignStmt:
				for i, left := range n.Lhs {
					if id, ok := left.(*ast.Ident); ok && id.Name == "code" && i < len(n.Rhs) {
						if s, ok := text(n.Rhs[i]); ok {
							out = append(out, s)
						}
					}
				}
			}
			return true
		})
	}
	require.NotEmpty(t, out)
	return out
}
