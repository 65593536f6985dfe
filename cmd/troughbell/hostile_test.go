package main

import (
	"encoding/json"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
)

// hostile is texts that try to break out of what they are.
var hostile = []string{
	"2 more pigs came today: Ro\u202ebert and Bob'); DROP TABLE herd;--, 50 lb each",
	"note: \u202eeverything \u2066is\u2069 \x1b[2J\x07 fine \x00 here",
	"our herd is '; DELETE FROM record; --",
	"fed 40 lb of corn\u200b\u200d\u00ad\ufeff, full",
	"pens: A\u0301\u0301\u0301\u0301\u0301\u0301\u0301\u0301 50x80 ft",
	"\" OR 1=1; --", "%s%n%x {{.}} ${HOME} $(reboot) `id`", "spent $9e99 on \"\"\"", strings.Repeat("(", 4000), strings.Repeat("Dot ", 1000),
	"remind me tomorrow: \u2067call\u2028 the vet",
}

// What cannot be seen, or turns the direction of what stands behind it, is shown
// to nobody, and texts that look like SQL are texts.
func TestHostileTexts(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	var log strings.Builder
	log.WriteString("2026-05-16 08:10 | 4 pigs came today, Dot, Moss, Plum and Fern, 45 lb each\n")
	for _, text := range hostile {
		b, err := json.Marshal(text)
		require.NoError(t, err)
		log.WriteString("2026-05-17 08:10 | " + string(b) + "\n")
	}
	log.WriteString("2026-05-18 08:10 | Dot 46 lb\n")
	status, all, stderr := replayed(t, log.String(), "--db", db)
	require.Equal(t, exitDone, status, stderr)
	for _, e := range all {
		if e.Kind == "reply" || e.Kind == "nudge" {
			require.False(t, strings.ContainsFunc(e.Text, func(r rune) bool {
				return r != '\n' && unicode.In(r, unicode.Cc, unicode.Cf, unicode.Co)
			}), "%q", e.Text)
		}
	}
	replies := only(all, "reply")
	require.Contains(t, replies[len(replies)-1].Text, "Dot 46 lb.")
	require.Len(t, journals(t, db), 1)
	for _, r := range records(t, db) {
		require.NotContains(t, r, "\u202e")
	}
}

// A name in letters of another script that look the same is no pig's until the
// person says so: nothing is recorded for Dot on its account.
func TestLookAlikes(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	status, _, stderr := replayed0(t, "2026-05-16 08:10 | 4 pigs came today, Dot, Moss, Plum and Fern, 45 lb each\n", db)
	require.Equal(t, exitDone, status, stderr)
	for _, text := range []string{
		"D\u043et 60 lb", "D\u03bft 60 lb", "D0t 60 lb", "D\u043et died", "sold M\u043ess", "moved D\u043et to the north pen", "wormed D\u043et with ivermectin, 18 days withdrawal",
		"\uff24\uff4f\uff54 60 lb",
	} {
		status, out, stderr := call(t, text+"\n", "parse", "--json", "--db", db, "--now", "2026-05-20T08:00")
		require.Equal(t, exitDone, status, stderr)
		for _, e := range jsonLines(t, out)[0].Entries {
			require.Contains(t, []any{"clarify", "none"}, e["intent"], "%s: %s", text, out)
		}
	}
}

var wordForm = regexp.MustCompile(`[\p{L}\d]{3,}`)

// At the default level the log holds no word of what is texted or answered, and
// no name, of members or strangers.
func TestLogsHoldNoTexts(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	p := startWith(t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token},
		"serve", "--db", filepath.Join(t.TempDir(), "herd.db"), "--telegram-api", api.URL(), "--zone", "America/New_York")
	pair(t, api, p)
	stranger := botapitest.Person{ID: 707070, Name: "Zebedee"}
	texts := []string{setUp, "olive 95 lb, rufus limping", "qwertz blorp", "wormed all, fenbendazole, 6 days", "spent $45 on straw", "invite", "/herd nowhere", "export"}
	for _, text := range texts {
		id := api.Say(ann, text)
		eventually(t, func() bool { return len(answers(api, id)) > 0 }, p)
	}
	api.Say(stranger, "let me in please, sesame")
	eventually(t, func() bool { return len(api.Messages(stranger.ID)) > 0 }, p)
	p.stop(t, syscall.SIGTERM)
	said := strings.ToLower(strings.ReplaceAll(p.said(), "\npair", ""))
	said = regexp.MustCompile(`(?m)^(pair .*|ready)$`).ReplaceAllString(said, "") // the standard output
	said = regexp.MustCompile(`time=\S+`).ReplaceAllString(said, "")
	words := append(texts, "let me in please, sesame", stranger.Name, ann.Name)
	for _, m := range api.Messages(ann.ID) {
		words = append(words, m.Text)
	}
	logged := map[string]bool{}
	for _, w := range wordForm.FindAllString(said, -1) {
		logged[w] = true
	}
	for _, text := range words {
		for _, w := range wordForm.FindAllString(strings.ToLower(text), -1) {
			require.False(t, logged[w], "%q is in the log: %s", w, said)
		}
	}
}
