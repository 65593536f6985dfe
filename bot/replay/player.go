package replay

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/store"
)

// Writer takes what happens, in order.
type Writer interface {
	// Text is what a person says; h, here and below, is the state after it.
	Text(at time.Time, who, text string, h *model.Herd) error
	Reply(at time.Time, r bot.Reply, h *model.Herd) error
	Nudge(p bot.Push, h *model.Herd) error
	// Failed is a line that could not be read or answered.
	Failed(number int, err error) error
	// Ready ends what one line of input led to.
	Ready(at time.Time) error
}

// Player plays lines for one herd.
type Player struct {
	// Files is where the documents of a log lie, by their paths; nil: a log has none,
	// and "file" is a part of a name.
	Files fs.FS

	store *store.Store
	desk  *bot.Desk
	herd  store.HerdID
	chat  store.ChatID
	zone  *time.Location
	out   Writer

	run      string         // makes the ids of this run's messages its own
	now      time.Time      // how far time has come
	messages map[int]string // line to the id of its message
	people   map[string]store.Member
	failed   int
	ended    int // the line that deleted the herd; 0: none
}

// New makes a player for a herd of the store. zone holds until the herd states
// its own.
func New(ctx context.Context, st *store.Store, herd store.HerdID, zone *time.Location, out Writer) (*Player, error) {
	p := &Player{
		store: st, desk: bot.NewDesk(), herd: herd, zone: zone, out: out,
		messages: map[int]string{}, people: map[string]store.Member{},
	}
	err := st.Write(ctx, func(tx *store.Tx) error {
		s, err := p.desk.State(tx, herd)
		if err != nil {
			return err
		}
		p.zone = s.Zone
		p.run = fmt.Sprintf("%d.", s.Row.Seq)
		if n := len(s.Journal); n > 0 { // time goes on where the herd's records end
			p.now = s.Journal[n-1].SaidAt
		}
		chat, err := tx.ChatOf("replay", fmt.Sprint(herd), false)
		if err != nil {
			return err
		}
		p.chat = chat.ID
		members, err := tx.Members(herd)
		if err != nil {
			return err
		}
		for _, m := range members {
			p.people[m.Name] = m
			if m.Role == store.Owner {
				p.people[""] = m
			}
		}
		return nil
	})
	return p, err
}

// byteOrderMark is what some editors put before a text.
const byteOrderMark = "\uFEFF"

// Play plays a log to its end. The error is one of the store or of the writer;
// lines that cannot be read are told to the writer, and Failed reports them.
func (p *Player) Play(ctx context.Context, log io.Reader) error {
	in := bufio.NewReader(log)
	for number := 1; ; number++ {
		s, err := in.ReadString('\n')
		if number == 1 {
			s = strings.TrimPrefix(s, byteOrderMark)
		}
		if s != "" && !skipped(s) {
			if err := p.line(ctx, number, s); err != nil {
				return err
			}
		}
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return fmt.Errorf("read the log: %w", err)
		}
	}
}

// Failed is how many lines could not be read.
func (p *Player) Failed() int { return p.failed }

// Now is how far time has come, in the herd's zone.
func (p *Player) Now() time.Time { return p.now.In(p.zone) }

func (p *Player) line(ctx context.Context, number int, s string) error {
	l, err := parseLine(number, s)
	if l.file != "" && p.Files == nil {
		l.who, l.file = strings.TrimSpace(l.who+" file "+l.file), ""
		l.tick = l.text == ""
	}
	if err == nil {
		err = p.step(ctx, l)
	}
	var bad *badLine
	if errors.As(err, &bad) {
		p.failed++
		if err := p.out.Failed(number, bad); err != nil {
			return err
		}
	} else if err != nil {
		return err
	}
	return p.out.Ready(p.Now())
}

// badLine is a line that cannot be read or played. The log goes on behind it.
type badLine struct{ why string }

func (b *badLine) Error() string { return b.why }

func badf(format string, args ...any) error { return &badLine{fmt.Sprintf(format, args...)} }

func (p *Player) step(ctx context.Context, l line) error {
	if p.ended != 0 {
		return badf("line %d of the log deleted the herd: nothing after it is played", p.ended)
	}
	at := p.moment(l.wall)
	if at.Before(p.now) {
		return badf("time goes back: the log is already at %s", p.Now().Format("2006-01-02 15:04"))
	}
	for _, of := range []int{l.edit, l.reply} {
		if of != 0 && p.messages[of] == "" {
			return badf("line %d of the log is no message", of)
		}
	}
	if err := p.liveTo(ctx, at); err != nil {
		return err
	}
	p.now = at
	if l.tick {
		return nil
	}
	return p.hear(ctx, l)
}

// moment is the instant of a wall time in the herd's zone: of a repeated hour
// the first pass, unless that would go back, then the second.
func (p *Player) moment(wall time.Time) time.Time {
	at := model.DayOf(wall).At(model.MinuteOf(wall), p.zone).Add(time.Duration(wall.Second()) * time.Second)
	if !at.Before(p.now) {
		return at
	}
	if second := secondPass(at); !second.Before(p.now) {
		return second
	}
	return at
}

// changeReach is further than any change of the clock moves it.
const changeReach = 3 * time.Hour

// secondPass is the moment at which the wall clock shows the same again after
// it was set back; t itself where it is not.
func secondPass(t time.Time) time.Time {
	_, before := t.Zone()
	_, after := t.Add(changeReach).Zone()
	second := t.Add(time.Duration(before-after) * time.Second)
	if second.After(t) && second.Hour() == t.Hour() && second.Minute() == t.Minute() {
		return second
	}
	return t
}

// liveTo lives through the time until at: whatever falls due is told.
func (p *Player) liveTo(ctx context.Context, at time.Time) error {
	for {
		var pushes []bot.Push
		var after *bot.State
		done := false
		err := p.store.Write(ctx, func(tx *store.Tx) error {
			row, err := tx.Herd(p.herd)
			if err != nil {
				return err
			}
			if row.Seq == 0 || row.LookAgain.After(at) {
				done = true
				return nil
			}
			when := row.LookAgain
			if when.Before(p.now) {
				when = p.now
			}
			p.now = when
			if pushes, err = p.desk.Look(tx, p.herd, when, time.Time{}); err != nil {
				return err
			}
			after, err = p.desk.State(tx, p.herd)
			return err
		})
		if err != nil || done {
			return err
		}
		for _, push := range pushes {
			if err := p.out.Nudge(push, after.Herd); err != nil {
				return err
			}
		}
	}
}

// hear takes what a person says.
func (p *Player) hear(ctx context.Context, l line) error {
	id := p.run + fmt.Sprint(l.number)
	m := bot.Message{
		Herd: p.herd, Chat: p.chat, ID: id, Text: l.text, At: p.now, Wall: true,
		ReplyTo: p.messages[l.reply],
	}
	var err error
	if m.Upload, err = p.upload(l.file); err != nil {
		return err
	}
	if l.edit != 0 {
		m.Edit, m.ID = true, p.messages[l.edit]
	}
	p.messages[l.number] = m.ID
	var out bot.Outcome
	var after *bot.State
	err = p.store.Write(ctx, func(tx *store.Tx) error {
		var err error
		if m.From, err = p.person(tx, l.who); err != nil {
			return err
		}
		if after, err = p.desk.State(tx, p.herd); err != nil {
			return err
		}
		if out, err = p.desk.Handle(tx, m); err != nil || out.Gone == bot.HerdGone {
			return err
		}
		after, err = p.desk.State(tx, p.herd)
		return err
	})
	if err != nil {
		p.desk.Forget(p.herd)
		return err
	}
	p.gone(l, &out)
	p.now, p.zone = out.At, after.Zone
	if err := p.out.Text(p.Now(), l.who, l.said(), after.Herd); err != nil {
		return err
	}
	for _, r := range out.Replies {
		if err := p.out.Reply(p.Now(), r, after.Herd); err != nil {
			return err
		}
	}
	return nil
}

// gone sees to what is there no more after a line, and gives the last word in the
// place of a reply.
func (p *Player) gone(l line, out *bot.Outcome) {
	if len(out.Farewells) > 0 {
		p.desk.Forget(p.herd)
	}
	switch out.Gone {
	case bot.HerdGone:
		p.ended = l.number
	case bot.PersonGone:
		delete(p.people, l.who)
	default:
		return
	}
	for _, f := range out.Farewells {
		if f.Chat.ID == p.chat {
			out.Replies = append(out.Replies, bot.Reply{Text: f.Text})
		}
	}
}

// person is the member of that name, made family where there is none; nobody
// named is the owner.
func (p *Player) person(tx *store.Tx, who string) (store.Member, error) {
	if m, ok := p.people[who]; ok {
		now, still, err := tx.Member(p.herd, m.Person) // the herd may have been handed on
		if err != nil || still {
			return now, err
		}
	}
	role := store.Family
	if who == "" {
		role = store.Owner
	}
	id, err := tx.CreatePerson(who)
	if err != nil {
		return store.Member{}, err
	}
	if err := tx.Join(p.herd, id, role); err != nil {
		return store.Member{}, err
	}
	m := store.Member{Herd: p.herd, Person: id, Name: who, Role: role}
	p.people[who] = m
	return m, nil
}
