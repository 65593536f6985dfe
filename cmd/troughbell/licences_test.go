package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// linkedModule is a module that is compiled into the program, for one system or other.
type linkedModule struct {
	Path, Version, Dir string
	Main               bool
}

// linked lists the modules whose packages the program is built from, on each
// kind of system that it is built for.
func linked(t *testing.T) (out []linkedModule) {
	t.Helper()
	seen := map[string]bool{}
	for _, system := range []string{"linux/amd64", "linux/arm64", "linux/arm", "windows/amd64", "darwin/arm64"} {
		goos, arch, _ := strings.Cut(system, "/")
		cmd := exec.Command("go", "list", "-deps", "-json=Module", ".")
		cmd.Env = append(os.Environ(), "CGO_ENABLED=0", "GOOS="+goos, "GOARCH="+arch)
		var stdout, stderr bytes.Buffer
		cmd.Stdout, cmd.Stderr = &stdout, &stderr
		require.NoError(t, cmd.Run(), "%s", &stderr)
		for d := json.NewDecoder(&stdout); ; {
			var p struct{ Module *linkedModule }
			err := d.Decode(&p)
			if errors.Is(err, io.EOF) {
				break
			}
			require.NoError(t, err)
			if m := p.Module; m != nil && !m.Main && !seen[m.Path] {
				seen[m.Path] = true
				out = append(out, *m)
			}
		}
	}
	slices.SortFunc(out, func(a, b linkedModule) int { return strings.Compare(a.Path, b.Path) })
	return out
}

var (
	licenceFile   = regexp.MustCompile(`(?i)^(licen[cs]e|copying|copyright|notice)`)
	licenceFolder = regexp.MustCompile(`(?i)^(licen[cs]es|third_party_licen[cs]es)$`)
)

// notCode are files beside a licence that are about nothing that is compiled in;
// and the one of two licences that is not chosen.
var notCode = map[string]bool{
	"modernc.org/memory/LICENSE-LOGO":               true, // a picture
	"github.com/golang/freetype/licenses/gpl.txt":   true, // the FreeType License is chosen
	"github.com/golang/freetype/licenses/README":    true,
	"github.com/golang/freetype/licenses/README.md": true,
}

// texts are the files of a module that tell of its licence, by their names.
func (m linkedModule) texts(t *testing.T) (names []string, texts map[string]string) {
	t.Helper()
	texts = map[string]string{}
	take := func(name string) {
		if notCode[m.Path+"/"+name] {
			return
		}
		b, err := os.ReadFile(filepath.Join(m.Dir, name))
		require.NoError(t, err)
		names = append(names, name)
		texts[name] = strings.TrimRight(strings.ReplaceAll(string(b), "\r\n", "\n"), " \n") + "\n"
	}
	entries, err := os.ReadDir(m.Dir)
	require.NoError(t, err)
	for _, e := range entries {
		switch {
		case e.IsDir() && licenceFolder.MatchString(e.Name()):
			more, err := os.ReadDir(filepath.Join(m.Dir, e.Name()))
			require.NoError(t, err)
			for _, f := range more {
				if !f.IsDir() {
					take(e.Name() + "/" + f.Name())
				}
			}
		case !e.IsDir() && licenceFile.MatchString(e.Name()):
			take(e.Name())
		}
	}
	return names, texts
}

// marks are sentences that only texts of the licence have, in lower case; the
// first licence whose marks are all there is meant.
var marks = []struct {
	licence string
	has     []string
}{
	{"Apache-2.0", []string{"apache license version 2.0, january 2004", "grant of patent license"}},
	{"OFL-1.1", []string{"sil open font license version 1.1"}},
	{"FTL", []string{"freetype license, which is similar to the original bsd license with an advertising clause"}},
	{"MIT", []string{"permission is hereby granted, free of charge, to any person obtaining a copy", `the software is provided "as is"`}},
	{"BSD-3-Clause", []string{"redistribution and use in source and binary forms", "redistributions in binary form must reproduce the above copyright", "neither the name"}},
	{"BSD-2-Clause", []string{"redistribution and use in source and binary forms", "redistributions in binary form must reproduce the above copyright"}},
}

// licenceOf recognises a text; empty: it is none that we know.
func licenceOf(text string) string {
	text = strings.ToLower(strings.Join(strings.Fields(text), " "))
	for _, m := range marks {
		if !slices.ContainsFunc(m.has, func(s string) bool { return !strings.Contains(text, s) }) {
			return m.licence
		}
	}
	return ""
}

// TestLicences holds what `troughbell licences` prints, and the table in README,
// to the licence files of the modules that are compiled in. None of an unknown
// licence is. After a change of modules: go test ./cmd/troughbell -run
// 'TestLicences$' -update, then the table.
func TestLicences(t *testing.T) {
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	require.NoError(t, err)
	_, table, ok := strings.Cut(string(readme), "| licence | of what is compiled in |\n")
	require.True(t, ok)
	table, _, _ = strings.Cut(table, "\n\n")
	rows := map[string]string{}
	for _, l := range strings.Split(table, "\n")[1:] {
		cells := strings.Split(l, "|")
		rows[strings.TrimSpace(cells[1])] = cells[2]
	}
	var out strings.Builder
	out.WriteString("troughbell is made with the work of others. What is compiled in, with its licence:\n")
	ofGo := ""
	listed := 0
	modules := linked(t)
	require.Greater(t, len(modules), 15)
	for _, m := range modules {
		names, texts := m.texts(t)
		require.NotEmpty(t, names, "%s has no licence", m.Path)
		licence := licenceOf(texts[names[0]])
		require.NotEmpty(t, licence, "the licence of %s is none that we know: read it first\n%s", m.Path, texts[names[0]])
		require.Contains(t, rows[licence], "`"+m.Path+"`", "README's table")
		listed++
		if m.Path == "golang.org/x/sys" { // the same text as that of Go
			ofGo = texts[names[0]]
		}
		for _, n := range names {
			fmt.Fprintf(&out, "\n==== %s: %s\n\n%s", m.Path, strings.TrimSuffix(n+", "+licenceOf(texts[n]), ", "), texts[n])
		}
	}
	require.Equal(t, "BSD-3-Clause", licenceOf(ofGo))
	fmt.Fprintf(&out, "\n==== Go, its standard library and runtime: BSD-3-Clause; the time zones in it are in the public domain\n\n%s", ofGo)
	words, err := os.ReadFile(filepath.Join("..", "..", "bot", "reading", "english", "copyright.txt"))
	require.NoError(t, err)
	fmt.Fprintf(&out, "\n==== The lists of English words: SCOWL\n\n%s", words)
	require.Equal(t, 2*listed, strings.Count(table, "`"), "README's table lists nothing else")
	if *update {
		require.NoError(t, os.WriteFile(filepath.Join("legal", "licences.txt"), []byte(out.String()), 0o644))
		return
	}
	status, stdout, stderr := call(t, "", "licences")
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, out.String(), stdout, "the texts changed: -update")
	require.Contains(t, stdout, "SIL OPEN FONT LICENSE", "that of the letters in pictures")
}

func TestLicenceOf(t *testing.T) {
	own, err := os.ReadFile(filepath.Join("..", "..", "LICENSE"))
	require.NoError(t, err)
	require.Equal(t, "MIT", licenceOf(string(own)))
	require.Empty(t, licenceOf("GNU GENERAL PUBLIC LICENSE Version 3, 29 June 2007"))
	require.Empty(t, licenceOf("Permission to use is granted to friends."))
}
