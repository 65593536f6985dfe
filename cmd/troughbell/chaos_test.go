package main

import (
	"fmt"
	"math/rand/v2"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

// chaosForm is how large a run is.
type chaosForm struct {
	texts, herds, kills int
	backlog             int // texts that wait for an answer at the most, before more are said
	limit               time.Duration
	// later is within how many minutes from now the chores of a half of the herds
	// fall due; 0: those of all fell due a while ago.
	later int
}

var (
	smallChaos = chaosForm{texts: 500, herds: 20, kills: 5, backlog: 500, limit: 2 * time.Minute}
	fullChaos  = chaosForm{texts: 20_000, herds: 200, kills: 60, backlog: 1500, limit: 20 * time.Minute, later: 4}
)

// TestChaos has people say a lot to a program that is killed again and again,
// through a server on which every method fails in every way, that repeats
// updates, mixes them up and counts them anew. Every text is recorded once,
// every reply and nudge is delivered, in the order of its chat, and twice only
// where no program could know better.
//
// TROUGHBELL_CHAOS=full runs it for minutes, TROUGHBELL_CHAOS="2000 40 60" with so
// many texts, herds and kills; TROUGHBELL_CHAOS_SEED=n draws another run.
func TestChaos(t *testing.T) {
	form := smallChaos
	switch own := os.Getenv("TROUGHBELL_CHAOS"); own {
	case "":
		t.Parallel()
	case "full":
		form = fullChaos
	default:
		form.limit = fullChaos.limit
		_, err := fmt.Sscan(own, &form.texts, &form.herds, &form.kills)
		require.NoError(t, err, "TROUGHBELL_CHAOS is full, or how many texts, herds and kills")
	}
	seed := uint64(1)
	if s := os.Getenv("TROUGHBELL_CHAOS_SEED"); s != "" {
		_, err := fmt.Sscan(s, &seed)
		require.NoError(t, err)
	}
	c := newChaos(t, form, seed)
	c.run()
	c.check()
	t.Log(c.report())
}

// chaos is one run.
type chaos struct {
	t    *testing.T
	form chaosForm
	seed uint64
	rnd  *rand.Rand // of what people and the power do
	api  *botapitest.Server
	db   string
	p    *program
	log  strings.Builder // of the programs that ended

	began, ended time.Time
	calls        atomic.Int64
	faults       map[string]int // by method and kind; the server's lock guards it
	calm         atomic.Bool    // no call hangs any more
	kills        int
	pens         []*pen
	said         int // texts, edits and presses
	sayings      []*saying
	looked       int            // messages that were looked at for answers
	replied      map[int64]bool // messages of people that were answered
	presses      []*pressing
	repeats      int // of updates
	mixed        int // groups of updates that came in another order
	recounts     int // times that the ids of updates began anew

	records, replies, nudges, documents int
	repeated                            map[string]int // messages that came twice, by cause
}

func newChaos(t *testing.T, form chaosForm, seed uint64) *chaos {
	c := &chaos{
		t: t, form: form, seed: seed, rnd: rand.New(rand.NewPCG(seed, 1)),
		api: botapitest.New(testToken), db: filepath.Join(t.TempDir(), "herd.db"),
		replied: map[int64]bool{}, faults: map[string]int{}, repeated: map[string]int{}, began: time.Now(),
	}
	t.Cleanup(c.api.Close)
	c.found()
	luck := rand.New(rand.NewPCG(seed, 2))
	c.api.Luck(func(method string, _ int64) botapitest.Fault {
		c.calls.Add(1)
		name, f := c.fault(luck, method)
		if name != "" {
			c.faults[method+" "+name]++
		}
		return f
	})
	return c
}

// fault draws how a call fares.
func (c *chaos) fault(luck *rand.Rand, method string) (string, botapitest.Fault) {
	ms := func(n int) time.Duration { return time.Duration(luck.IntN(n)) * time.Millisecond }
	of := 1000
	if method == "getUpdates" || method == "getMe" { // there are few of these
		of = 300
	}
	switch n := luck.IntN(of); {
	case n < 6:
		return "429", botapitest.Fault{Status: http.StatusTooManyRequests, Description: "Too Many Requests: retry after 1", RetryAfter: 1}
	case n < 16:
		return "500", botapitest.Fault{Status: http.StatusInternalServerError, Description: "Internal Server Error"}
	case n < 26:
		return "502 page", botapitest.Fault{Status: http.StatusBadGateway, Page: "<html>bad gateway</html>"}
	case n < 41:
		return "hang-up", botapitest.Fault{HangUp: true}
	case n < 61:
		return "lost answer", botapitest.Fault{Lost: true}
	case n < 81:
		return "slow", botapitest.Fault{Delay: ms(150)}
	case n < 82 && method != "getUpdates" && !c.calm.Load():
		return "no answer", botapitest.Fault{Silent: true} // until the program gives up or is killed
	}
	return "", botapitest.Fault{}
}

// found makes the herds, each with its owner, before the program runs.
func (c *chaos) found() {
	st, err := store.Open(c.t.Context(), c.db, store.Options{})
	require.NoError(c.t, err)
	defer func() { require.NoError(c.t, st.Close()) }()
	zone := noonZone(c.began)
	require.NoError(c.t, st.Write(c.t.Context(), func(tx *store.Tx) error {
		for i := range c.form.herds {
			p := newPen(i, zone)
			c.pens = append(c.pens, p)
			owner, err := tx.CreatePerson(p.who.Name)
			if err != nil {
				return err
			}
			if i == 0 {
				if err := tx.SetOperator(owner); err != nil {
					return err
				}
			}
			herd, err := tx.CreateHerd("", zone.String(), c.began)
			if err != nil {
				return err
			}
			if err := tx.Join(herd, owner, store.Owner); err != nil {
				return err
			}
			chat, err := tx.ChatOf("telegram", fmt.Sprint(p.who.ID), false)
			if err != nil {
				return err
			}
			chat.Herd, chat.Person = herd, owner
			if err := tx.SaveChat(chat); err != nil {
				return err
			}
		}
		return nil
	}))
}

// start starts the next program, whose calls the server knows by its number.
func (c *chaos) start() {
	c.p = startWith(c.t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + c.api.Token},
		"serve", "--db", c.db, "--telegram-api", c.api.URLVia(fmt.Sprint(c.kills)), "--telegram-haste", "50")
}

func (c *chaos) run() {
	c.api.RestartIDs(firstID)
	c.start()
	c.setUp()
	rounds := c.form.kills + 1
	for round := range rounds {
		if round > 0 && round%max(2, rounds/3) == 0 {
			c.recount()
		}
		c.await("fewer texts to wait", func() bool { return c.unanswered() < c.form.backlog })
		if round == c.form.kills-1 { // so that a sweep at a start finds what is due
			c.await("the set-up", func() bool {
				return !slices.ContainsFunc(c.pens, func(p *pen) bool { return !c.answered()[p.setUp.id] })
			})
		}
		c.talk(c.form.texts * (round + 1) / rounds)
		if round < c.form.kills {
			c.kill()
		}
	}
	c.calm.Store(true)
	c.settle()
	c.p.stop(c.t, syscall.SIGTERM)
	c.log.WriteString(c.p.said())
	c.ended = time.Now()
}

// kill ends the program at a moment that is drawn, mostly by how far it has come,
// and starts it again.
func (c *chaos) kill() {
	if c.rnd.IntN(4) == 0 { // while it starts, or soon after
		time.Sleep(time.Duration(c.rnd.IntN(150)) * time.Millisecond)
	} else {
		after := c.calls.Load() + int64(c.rnd.IntN(c.form.texts/c.form.kills))
		c.await("calls", func() bool { return c.calls.Load() >= after || c.unanswered() == 0 })
	}
	c.p.kill(c.t)
	c.kills++
	c.log.WriteString(c.p.said())
	c.start()
}

// recount has the server count its updates anew, from far lower: it does so only
// when nothing waits.
func (c *chaos) recount() {
	c.await("an empty queue", func() bool { return c.api.Pending() == 0 })
	c.recounts++
	c.api.RestartIDs(firstID >> (2 * c.recounts))
}

// firstID is where the ids of updates begin.
const firstID = 1 << 28

func (c *chaos) await(what string, ok func() bool) {
	c.t.Helper()
	for end := time.Now().Add(c.form.limit); !ok(); time.Sleep(2 * time.Millisecond) {
		require.True(c.t, time.Now().Before(end), "waited in vain for %s; %s\n%s", what, c.progress(), c.tail())
	}
}

func (c *chaos) progress() string {
	return fmt.Sprintf("seed %d, %d said, %d kills, %d unanswered, %d updates pending", c.seed, c.said, c.kills, c.unanswered(), c.api.Pending())
}

// tail is the last that the programs logged.
func (c *chaos) tail() string {
	all := c.log.String() + c.p.said()
	return all[max(0, len(all)-4000):]
}

// answered tells which messages got an answer.
func (c *chaos) answered() map[int64]bool {
	for _, m := range c.api.MessagesSince(c.looked) {
		var id int64
		if _, err := fmt.Sscan(m.ReplyTo, &id); err == nil {
			c.replied[id] = true
		}
		c.looked++
	}
	return c.replied
}

func (c *chaos) unanswered() int { return len(c.sayings) - len(c.answered()) }

// noonZone is a zone in which it is about noon, so that no quiet hours and no
// midnight fall into the run.
func noonZone(now time.Time) *time.Location {
	best, off := time.UTC, 24*time.Hour
	for _, name := range []string{
		"Pacific/Honolulu", "America/Los_Angeles", "America/New_York", "America/Sao_Paulo", "Europe/London",
		"Europe/Helsinki", "Asia/Dubai", "Asia/Bangkok", "Asia/Tokyo", "Pacific/Auckland",
	} {
		l, err := time.LoadLocation(name)
		if err != nil {
			panic(err) // the program brings the zones along
		}
		at := now.In(l)
		noon := time.Date(at.Year(), at.Month(), at.Day(), 13, 0, 0, 0, l)
		if d := at.Sub(noon).Abs(); d < off {
			best, off = l, d
		}
	}
	return best
}
