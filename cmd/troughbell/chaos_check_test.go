package main

import (
	"database/sql"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/model"
	"troughbell/store"
)

// settle waits until everything is handled and sent, and every herd's standing
// message was.
func (c *chaos) settle() {
	db, err := sql.Open("sqlite", "file:"+c.db+"?mode=ro&_query_only=1&_busy_timeout=5000")
	require.NoError(c.t, err)
	defer func() { require.NoError(c.t, db.Close()) }()
	var waiting, unsent, told int
	c.await("an empty inbox and outbox", func() bool {
		c.press()
		if c.api.Pending() > 0 {
			return false
		}
		require.NoError(c.t, db.QueryRowContext(c.t.Context(), "SELECT (SELECT count(*) FROM incoming WHERE handled = 0),"+
			" (SELECT count(*) FROM outgoing WHERE state IN ('pending', 'sending')),"+
			" (SELECT count(DISTINCT chat) FROM outgoing WHERE kind = 'nudge' AND state = 'sent')").Scan(&waiting, &unsent, &told))
		return waiting == 0 && unsent == 0 && told == len(c.pens) && c.api.Pending() == 0
	})
}

// check holds what is kept, and what the chats show, against what was said.
func (c *chaos) check() {
	require.Equal(c.t, c.form.kills, c.kills)
	require.NotContains(c.t, c.log.String(), "set aside")
	require.NotContains(c.t, c.log.String(), "panic")
	c.checkFile()
	c.checkRecords()
	shown := map[int64][]botapitest.Message{}
	for _, m := range c.api.AllMessages() {
		shown[m.Chat] = append(shown[m.Chat], m)
	}
	c.checkReplies(shown)
	c.checkDeliveries(shown)
	c.checkOrder(shown)
}

// checkFile has the file copied, which finds any damage in it.
func (c *chaos) checkFile() {
	st, err := store.OpenReader(c.t.Context(), c.db)
	require.NoError(c.t, err)
	defer func() { require.NoError(c.t, st.Close()) }()
	require.NoError(c.t, st.Backup(c.t.Context(), filepath.Join(c.t.TempDir(), "copy.db")))
}

// checkRecords finds every version of every text that counted recorded once, and
// of those only the last one standing.
func (c *chaos) checkRecords() {
	type key struct{ message, text string }
	kept, standing := map[key]map[model.Kind]int{}, map[key]map[model.Kind]int{}
	standingNudges := map[store.HerdID]int{}
	all := journal(c.t, c.db)
	voided := map[string]bool{}
	for _, e := range all {
		if v, ok := e.Fact.(model.Void); ok {
			voided[fmt.Sprint(e.Herd, v.Record)] = true
		}
	}
	for _, e := range all {
		if t, ok := e.Fact.(model.Told); ok && t.Standing {
			standingNudges[e.Herd]++
		}
		k := key{e.Source.Message, e.Text}
		count(kept, k, e.Fact.Kind())
		if !voided[fmt.Sprint(e.Herd, e.ID)] {
			count(standing, k, e.Fact.Kind())
		}
		c.records++
	}
	for _, s := range c.sayings {
		became := lazy(func() string { return recordsOf(all, s) })
		for _, v := range s.versions {
			k := key{fmt.Sprint(s.id), v.text}
			for kind, n := range v.want {
				require.Equal(c.t, n, kept[k][kind], "%s of message %d %q, seed %d\n%s", kind, s.id, v.text, c.seed, became)
				if v.text != s.last().text {
					n = 0
				}
				require.Equal(c.t, n, standing[k][kind], "%s of message %d %q that stand, seed %d\n%s", kind, s.id, v.text, c.seed, became)
			}
		}
		require.Empty(c.t, kept[key{fmt.Sprint(s.id), s.late}], "message %d %q came too late, seed %d", s.id, s.late, c.seed)
	}
	byPress := map[string]map[model.Kind]int{}
	for k, kinds := range kept {
		byPress[k.message] = kinds
	}
	for _, p := range c.presses {
		got := byPress["press-"+p.query]
		for kind, n := range p.want {
			require.Equal(c.t, n, got[kind], "%s of press %s, seed %d", kind, p.query, c.seed)
		}
		if p.want == nil {
			require.Empty(c.t, got, "a second press, %s, seed %d", p.query, c.seed)
		}
	}
	require.Len(c.t, standingNudges, len(c.pens), "each herd has its standing message, seed %d", c.seed)
	for herd, n := range standingNudges {
		require.Equal(c.t, 1, n, "standing messages of herd %d, seed %d", herd, c.seed)
	}
}

// recordsOf lists what became of a message.
func recordsOf(all []store.Envelope, s *saying) string {
	var b strings.Builder
	fmt.Fprintf(&b, "said: %v\n", s.versions)
	for _, e := range all {
		if e.Source.Message == fmt.Sprint(s.id) {
			fmt.Fprintf(&b, "%s %s %+v: %q\n", e.ID, e.Fact.Kind(), e.Fact, e.Text)
		}
	}
	return b.String()
}

func count[K comparable](m map[K]map[model.Kind]int, k K, kind model.Kind) {
	if m[k] == nil {
		m[k] = map[model.Kind]int{}
	}
	m[k][kind]++
}

// checkReplies finds an answer to the last version of every text, and the
// message that a button hung below turned into text.
func (c *chaos) checkReplies(shown map[int64][]botapitest.Message) {
	for _, s := range c.sayings {
		require.True(c.t, slices.ContainsFunc(shown[s.pen.who.ID], func(m botapitest.Message) bool {
			return m.ReplyTo == fmt.Sprint(s.id) && (m.File != nil || strings.Contains(m.Text, s.last().says))
		}), "an answer to message %d %q, seed %d", s.id, s.last().text, c.seed)
	}
	for _, p := range c.presses {
		for _, m := range shown[p.pen.who.ID] {
			if m.ID == p.message {
				require.Empty(c.t, m.Buttons, "%s was pressed, seed %d", m.Text, c.seed)
			}
		}
	}
}

// checkDeliveries finds everything of the outbox delivered, and explains what
// was delivered more than once.
func (c *chaos) checkDeliveries(shown map[int64][]botapitest.Message) {
	db, err := sql.Open("sqlite", "file:"+c.db+"?mode=ro&_query_only=1")
	require.NoError(c.t, err)
	defer func() { require.NoError(c.t, db.Close()) }()
	rows, err := db.QueryContext(c.t.Context(), "SELECT c.external, o.kind, o.reply_to, o.state, o.sent, f.kind IS NOT NULL"+
		" FROM outgoing AS o JOIN chat AS c ON c.id = o.chat LEFT JOIN attachment AS f ON f.outgoing = o.id")
	require.NoError(c.t, err)
	byID := map[string]bool{}
	for rows.Next() {
		var chat, kind, replyTo, state, sent string
		var file bool
		require.NoError(c.t, rows.Scan(&chat, &kind, &replyTo, &state, &sent, &file))
		if kind == "nudge" {
			require.Equal(c.t, "sent", state, "a nudge in chat %s, seed %d", chat, c.seed)
		}
		if state != "sent" || kind == "edit" {
			continue
		}
		require.NotEmpty(c.t, sent)
		byID[chat+" "+sent] = true
		switch {
		case kind == "nudge":
			c.nudges++
		default:
			c.replies++
		}
		if file {
			c.documents++
		}
	}
	require.NoError(c.t, rows.Err())
	require.NoError(c.t, rows.Close())
	there := map[string]bool{}
	for chat, all := range shown {
		for _, m := range all {
			there[fmt.Sprint(chat, " ", m.ID)] = true
		}
	}
	for id := range byID {
		require.True(c.t, there[id], "what is noted as sent is in its chat: %s, seed %d", id, c.seed)
	}
	for chat, all := range shown {
		taken := map[int]bool{}
		for i, m := range all {
			if byID[fmt.Sprint(chat, " ", m.ID)] {
				continue
			}
			// The outbox does not know of it: it went out again, or what took its place;
			// or it was itself sent again, and the one before it was pressed meanwhile.
			of, cause := c.doubted(all, i, taken)
			require.NotEmpty(c.t, cause, "%q in chat %d, reply to %q, went out again, seed %d\n%s", m.Text, chat, m.ReplyTo, c.seed, copies(all, m))
			taken[of] = true
			c.repeated[cause]++
		}
	}
	require.LessOrEqual(c.t, c.repeated[cutOff], 8*c.kills, "no more than are sent at once")
}

// cutOff is why a message came twice that was under way when the program ended.
const cutOff = "the program was killed before it was noted"

// doubted finds the message of a chat whose outcome nobody could know, so that
// message i was sent beside it: itself, or an earlier copy. Each serves once.
func (c *chaos) doubted(all []botapitest.Message, i int, taken map[int]bool) (of int, cause string) {
	alone := true
	for j, m := range all {
		alone = alone && (j == i || m.ReplyTo != all[i].ReplyTo)
	}
	if alone {
		return i, ""
	}
	for j := i; j >= 0; j-- {
		if all[j].ReplyTo != all[i].ReplyTo || taken[j] {
			continue
		}
		if cause := c.cause(all, j); cause != "" {
			return j, cause
		}
	}
	return i, ""
}

// cause says why the outcome of message i of a chat could not be known; empty if
// it could. A program has one call under way in a chat: the last that it made
// there. No clock tells which was cut off: the server may get to a call only
// after the program that made it has ended.
func (c *chaos) cause(all []botapitest.Message, i int) string {
	m := all[i]
	switch {
	case m.Lost:
		return "its answer was lost"
	case m.Via != fmt.Sprint(c.kills) && !slices.ContainsFunc(all[i+1:], func(n botapitest.Message) bool { return n.Via == m.Via }):
		return cutOff
	}
	return ""
}

// copies lists what a chat shows in answer to the same message.
func copies(all []botapitest.Message, of botapitest.Message) string {
	var b strings.Builder
	for i, m := range all {
		if m.ReplyTo == of.ReplyTo {
			fmt.Fprintf(&b, "%d of %d: %d by program %s, answer lost: %v, edited %d times, %q\n", i, len(all), m.ID, m.Via, m.Lost, m.Edits, m.Text)
		}
	}
	return b.String()
}

// checkOrder finds the answers in the order in which the texts came in. What was
// edited is left out: its answer may be a new one.
func (c *chaos) checkOrder(shown map[int64][]botapitest.Message) {
	for _, p := range c.pens {
		at := map[string]int{}
		for i, m := range shown[p.who.ID] {
			if _, again := at[m.ReplyTo]; !again {
				at[m.ReplyTo] = i
			}
		}
		before, last := -1, int64(0)
		for _, s := range p.arrived {
			if len(s.versions) > 1 || s.late != "" {
				continue
			}
			i, ok := at[fmt.Sprint(s.id)]
			require.True(c.t, ok)
			require.Greater(c.t, i, before, "the answer to %d comes after that to %d, seed %d", s.id, last, c.seed)
			before, last = i, s.id
		}
	}
}

// report sums up the run.
func (c *chaos) report() string {
	var b strings.Builder
	fmt.Fprintf(&b, "seed %d: %d texts (%d of them edits and presses) over %d herds, %d updates repeated, %d groups mixed up, ids begun anew %d times\n",
		c.seed, c.said, c.said-len(c.sayings), len(c.pens), c.repeats, c.mixed, c.recounts)
	total := 0
	for _, n := range c.faults {
		total += n
	}
	fmt.Fprintf(&b, "%d kills, %d calls, %d of them failed:\n", c.kills, c.calls.Load(), total)
	for _, k := range sortedKeys(c.faults) {
		fmt.Fprintf(&b, "  %s: %d\n", k, c.faults[k])
	}
	fmt.Fprintf(&b, "%d records, %d replies (%d files), %d nudges\n", c.records, c.replies, c.documents, c.nudges)
	for _, k := range sortedKeys(c.repeated) {
		fmt.Fprintf(&b, "  sent twice, %s: %d\n", k, c.repeated[k])
	}
	fmt.Fprintf(&b, "time: %s", c.ended.Sub(c.began).Round(time.Second/10))
	return b.String()
}

func sortedKeys(m map[string]int) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}
