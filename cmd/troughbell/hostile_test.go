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
// person says so: nothing is recorded for Dot on its account, and one tap says it.
func TestLookAlikes(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	status, _, stderr := replayed0(t, "2026-05-16 08:10 | 4 pigs came today, Dot, Moss, Plum and Fern, 45 lb each\n", db)
	require.Equal(t, exitDone, status, stderr)
	for _, text := range []string{
		"D\u043et 60 lb", "D\u03bft 60 lb", "\uff24\uff4f\uff54 60 lb", "D\u043et died", "sold M\u043ess", "moved D\u043et to the north pen",
		"wormed D\u043et with ivermectin, 18 days withdrawal", "D\u043et limping", "D0t 60 lb",
	} {
		status, out, stderr := call(t, text+"\n", "parse", "--json", "--db", db, "--now", "2026-05-20T08:00")
		require.Equal(t, exitDone, status, stderr)
		for _, e := range jsonLines(t, out)[0].Entries {
			require.Contains(t, []any{"clarify", "none"}, e["intent"], "%s: %s", text, out)
		}
		if text != "D0t 60 lb" {
			require.Contains(t, out, "Is that ", "%s: %s", text, out)
		}
	}
	status, all, stderr := replayed(t, "2026-05-20 08:10 | D\u043et 60 lb\n2026-05-20 08:11 | yes\n2026-05-20 08:12 | M\u043ess 61 lb\n2026-05-20 08:13 | no\n", "--db", db)
	require.Equal(t, exitDone, status, stderr)
	replies := only(all, "reply")
	require.Contains(t, replies[len(replies)-4].Text, "Is that Dot?")
	require.Contains(t, replies[len(replies)-3].Text, "Dot 60 lb.")
	require.NotContains(t, replies[len(replies)-1].Text, "61 lb")
}

// A pig is not named as one that lives, nor so that the two look the same: another
// name is asked for, and nothing recorded until then.
func TestNamesThatAreTaken(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	status, all, stderr := replayed(t, `2026-05-16 08:10 | 4 pigs came today, Dot, Moss, Plum and Fern, 45 lb each
2026-05-16 08:11 | 270
2026-05-17 08:10 | one more pig came today, named D`+"\u043e"+`t, 45 lb
2026-05-17 08:11 | record nothing
2026-05-17 09:10 | one more pig came today, named Dot, 45 lb
2026-05-17 09:11 | Bella
2026-05-17 10:10 | 2 more pigs came today: Fern and F`+"\u0435"+`rn, 45 lb each
2026-05-17 10:11 | no name
2026-05-17 11:10 | 2 more pigs came today: Rosa and R`+"\u043e"+`sa, 45 lb each
2026-05-17 11:11 | plum
2026-05-17 11:12 | Ruby
`, "--db", db)
	require.Equal(t, exitDone, status, stderr)
	var said strings.Builder
	for _, e := range only(all, "reply") {
		said.WriteString(e.Text + "\n")
	}
	require.Equal(t, 4, strings.Count(said.String(), "already, and two I could not tell apart."), said.String())
	require.Contains(t, said.String(), "1 pig came: Bella")
	require.Contains(t, said.String(), "2 pigs came: Rosa and Ruby")
	arrivals := 0
	for _, r := range records(t, db) {
		if strings.Contains(r, ` {"count"`) {
			require.NotRegexp(t, `"animals":.*[\x{43e}\x{435}]`, r)
			arrivals++
		}
	}
	require.Equal(t, 4, arrivals)
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
