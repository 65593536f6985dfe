package bot_test

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// A drug that is texted and not understood leaves no pig clear until it is
// settled.
func TestADrugNotUnderstoodIsNotClear(t *testing.T) {
	for _, text := range []string{
		"vet gave it something, 2.5 ml in the neck, 10 day withdrawal",
		"gave the sick one 5ml, 25 days",
		"the limping one got a jab of longicillin",
		"injected the red one",
		"vet came, gave painstop, 12 days, bill 140",
	} {
		b := readyBook(t)
		before := len(b.state(t).Treatments)
		out := b.text(t, text)
		h := b.state(t)
		if len(h.Treatments) > before { // read after all: then its days decide
			continue
		}
		require.NotEmpty(t, h.Open(), "%s: %s", text, said(out))
		require.Contains(t, said(b.text(t, "are they clear?")), "NOT CLEAR", text)
		b.text(t, "gave olive penicillin, 21 days")
		require.Len(t, b.state(t).Treatments, before+1)
		require.Contains(t, said(b.text(t, "is olive clear?")), "NOT CLEAR", text)
	}
}

func TestNoDrugLeavesPigsClear(t *testing.T) {
	b := readyBook(t)
	for _, text := range []string{
		"gave them a shot of water", "should I get them vaccinated?", "the neighbor gave his pigs an injection",
		"didn't give the wormer", "spent 27 wormer", "vet bill 140, got the medicine paid", "got a new pen ready", "note: ask the vet about a vaccine",
	} {
		b.message(t, bot.Message{ID: text, Text: text})
	}
	for _, q := range b.state(t).Open() {
		require.NotEqual(t, "drug_unclear", q.F.Code)
	}
}

// Labelled texts that are no treatments raise no question on drugs.
func TestTheGuardKeepsQuiet(t *testing.T) {
	f, err := os.Open(filepath.Join("..", "testdata", "texts", "tuning.jsonl"))
	require.NoError(t, err)
	defer f.Close()
	b := openBook(t, store.Options{Ephemeral: true})
	b.text(t, setUp)
	lines := bufio.NewScanner(f)
	asked := 0
	for lines.Scan() {
		var l struct {
			Text    string
			Entries []map[string]any
		}
		require.NoError(t, json.Unmarshal(lines.Bytes(), &l))
		for _, e := range b.text(t, l.Text).Replies {
			for _, q := range e.Questions {
				if len(q.Labels) == 1 && q.Labels[0] == "no drug" {
					asked++
					for _, want := range l.Entries {
						kinds := fmt.Sprint(want["intent"], want["about"], want["of"])
						drug := strings.Contains(kinds, "treat") || strings.Contains(kinds, "worm")
						require.True(t, drug, l.Text)
					}
				}
			}
		}
	}
	require.Less(t, asked, 8)
}
