package main

import (
	"go/build"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// layers says what a package may import of ours, and what it may not import at
// all, with the reason. The first prefix that fits a package counts.
var layers = []struct {
	pkg       string
	ours      []string // prefixes; nil: nothing of ours
	forbidden map[string]string
}{
	{"model", nil, map[string]string{
		"os": "the model reads no file", "io": "the model does no input or output", "net": "the model knows no network",
		"log": "the model says nothing", "database/sql": "the model knows no database", "math/rand": "the same herd gives the same figures",
	}},
	{"store", []string{"model"}, map[string]string{"net": "the store is a file"}},
	{"schedule", []string{"model"}, map[string]string{"database/sql": "a nudge is a function of records and time", "os": "the planner reads no file"}},
	{"bot/reading", []string{"model", "bot/reading"}, map[string]string{"os": "reading is pure", "database/sql": "reading is pure"}},
	{"bot/slots", []string{"model", "bot/reading"}, nil},
	{"bot/wording", []string{"model", "schedule", "bot/reading", "bot/wording"}, map[string]string{"os": "wording is pure"}},
	{"bot/picture", []string{"model", "bot/wording"}, map[string]string{"os": "a picture is figures and words", "net": "a picture is figures and words"}},
	{"bot/answer", []string{"model", "schedule", "bot/reading", "bot/wording", "bot/picture", "bot/answer"}, nil},
	{"bot/document", []string{"model", "store", "schedule", "bot/reading", "bot/wording", "bot/answer"}, map[string]string{"os": "files are given and taken as bytes"}},
	{"bot/health", []string{"model", "store", "bot", "bot/telegram"}, nil},
	{"bot/telegram", []string{"store", "bot", "model", "schedule"}, nil},
	{"bot/terminal", []string{"store", "bot", "model"}, nil},
	{"bot/replay", []string{"store", "bot", "model"}, nil},
	{"bot", []string{"model", "store", "schedule", "bot/reading", "bot/slots", "bot/wording", "bot/picture", "bot/answer", "bot/document"}, nil},
	{"cmd", []string{"bot", "schedule", "store", "model"}, nil},
}

const module = "troughbell/"

// TestLayers walks all packages: imports point one way, and the core knows
// nothing of the world.
func TestLayers(t *testing.T) {
	root := filepath.Join("..", "..")
	seen := 0
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() {
			return err
		}
		if base := d.Name(); path != root && (strings.HasPrefix(base, ".") || base == "testdata") {
			return filepath.SkipDir
		}
		p, err := build.ImportDir(path, 0)
		if err != nil {
			return nil // no Go files here
		}
		rel, err := filepath.Rel(root, path)
		require.NoError(t, err)
		seen++
		checkLayer(t, filepath.ToSlash(rel), p)
		return nil
	})
	require.NoError(t, err)
	require.Greater(t, seen, 8, "the walk found the packages")
}

func checkLayer(t *testing.T, pkg string, p *build.Package) {
	t.Helper()
	require.NotEmpty(t, p.Doc, "package %s has a comment", pkg)
	for _, l := range layers {
		if pkg != l.pkg && !strings.HasPrefix(pkg, l.pkg+"/") {
			continue
		}
		for _, imp := range p.Imports {
			if own, ok := strings.CutPrefix(imp, module); ok {
				require.True(t, allowed(own, l.ours), "%s must not import %s", pkg, own)
			}
			for bad, why := range l.forbidden {
				require.False(t, imp == bad || strings.HasPrefix(imp, bad+"/") && imp != "net/url", "%s imports %s: %s", pkg, imp, why)
			}
			if strings.Contains(imp, "telegram-bot-api") {
				require.Equal(t, "bot/telegram", pkg, "only the edge knows the library")
			}
		}
		return
	}
	t.Fatalf("package %s has no layer: say in this test what it may import", pkg)
}

func allowed(own string, prefixes []string) bool {
	for _, p := range prefixes {
		if own == p || strings.HasPrefix(own, p+"/") {
			return true
		}
	}
	return false
}

// TestNoCommonNames keeps packages from being named for nothing.
func TestNoCommonNames(t *testing.T) {
	for _, name := range []string{"util", "utils", "helpers", "common", "misc"} {
		err := filepath.WalkDir(filepath.Join("..", ".."), func(path string, d os.DirEntry, err error) error {
			require.NotEqual(t, name, strings.TrimSuffix(d.Name(), ".go"), path)
			return err
		})
		require.NoError(t, err)
	}
}
