package bot

import (
	"encoding/json"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"time"
	"unicode"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// leaving is a wish that was put to a person once more: it is carried out when
// they type what they were asked to type, soon, and let be by anything else they
// say. No name stands in it.
type leaving struct {
	What leaveWhat      `json:"what"`
	Who  store.PersonID `json:"who,omitempty"`
	At   time.Time      `json:"at"`
}

// leavingStands is how long it can be confirmed.
const leavingStands = 10 * time.Minute

func leavingName(m Message) string { return store.PersonValue("leaving", m.Herd, m.From.Person) }

// takeLeaving gives what waits for the person's word, and forgets of it: whatever
// they say now decides it.
func takeLeaving(tx *store.Tx, m Message) (*leaving, error) {
	v, err := tx.Value(leavingName(m))
	if err != nil || v == "" {
		return nil, err
	}
	var l leaving
	if err := json.Unmarshal([]byte(v), &l); err != nil {
		return nil, fmt.Errorf("what waits to be confirmed: %w", err)
	}
	return &l, tx.SetValue(leavingName(m), "")
}

func (l leaving) keep(tx *store.Tx, m Message) error {
	b, err := json.Marshal(l)
	if err != nil {
		return fmt.Errorf("what waits to be confirmed: %w", err)
	}
	return tx.SetValue(leavingName(m), string(b))
}

// PersonOrHerd is what is gone after a message.
type PersonOrHerd string

// What can be gone.
const (
	HerdGone   PersonOrHerd = "herd"
	PersonGone PersonOrHerd = "person" // who spoke
)

// Farewell is the last word to a chat of which nothing is kept: it is said once
// the transaction is committed, and stands in no outbox. The chat is as it was.
type Farewell struct {
	Chat store.Chat
	Text string
}

// leave is one such wish on its way, in its transaction.
type leave struct {
	d    *Desk
	tx   *store.Tx
	s    *State
	m    Message
	v    wording.Voice
	now  time.Time
	team []store.Member
	mine store.Member // who speaks, as the store has it now

	farewells []Farewell
}

func (d *Desk) newLeave(tx *store.Tx, s *State, m Message) (*leave, error) {
	now := m.At.In(s.Zone)
	l := &leave{d: d, tx: tx, s: s, m: m, now: now, v: wording.Voice{Herd: s.Herd, Now: now}, mine: m.From}
	var err error
	l.team, err = tx.Members(m.Herd)
	for _, p := range l.team {
		if p.Person == m.From.Person {
			l.mine = p
		}
	}
	return l, err
}

// confirmed takes a message as the answer to what waits for it. done is false
// where it is something else, which lets it be.
func (d *Desk) confirmed(tx *store.Tx, s *State, m Message, was leaving) (out Outcome, done bool, err error) {
	l, err := d.newLeave(tx, s, m)
	if err != nil {
		return Outcome{}, false, err
	}
	typed, err := l.typed(was)
	if err != nil || m.Edit || m.Pressed || m.Medium != "" || plain(m.Text) == "" || plain(m.Text) != plain(typed) {
		return Outcome{}, false, err
	}
	if l.now.Sub(was.At) > leavingStands {
		return l.say(l.v.TooLate()), true, nil
	}
	switch was.What {
	case leaveForget:
		out, err = l.forget()
	case leaveDelete:
		out, err = l.delete()
	default:
		out, err = l.handOver(was.Who)
	}
	return out, true, err
}

// typed is what has to be typed; empty where that cannot be done any more.
func (l *leave) typed(was leaving) (string, error) {
	if was.What != leaveForget && l.mine.Role != store.Owner {
		return "", nil
	}
	switch was.What {
	case leaveForget:
		return typable(l.mine.Name), nil
	case leaveDelete:
		return typable(l.s.Row.Name), nil
	}
	to, ok, err := l.tx.Member(l.m.Herd, was.Who)
	if err != nil || !ok {
		return "", err
	}
	return to.Name, nil
}

// typable is a name, or what is typed in its place where it has nothing in it
// that can be typed.
func typable(name string) string {
	if plain(name) == "" {
		return wording.AllOfIt()
	}
	return name
}

// plain is a text by its letters and digits alone.
func plain(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, text)
}

// peopleFor is the names of a herd's people, where a text may speak of them.
func peopleFor(tx *store.Tx, m Message) (names []string, err error) {
	if !reading.OfPeople(m.Text) {
		return nil, nil
	}
	team, err := tx.Members(m.Herd)
	for _, p := range team {
		names = append(names, p.Name)
	}
	return names, err
}

// leave answers a wish that ends something, and says of one that waited for the
// person's word that it is let be.
func (d *Desk) leave(tx *store.Tx, m Message, was *leaving, out *Outcome) error {
	lapsed := was != nil && out.At.Sub(was.At) <= leavingStands
	if out.Leave == nil && !lapsed {
		return nil
	}
	s, err := d.State(tx, m.Herd)
	if err != nil {
		return err
	}
	l, err := d.newLeave(tx, s, m)
	if err != nil {
		return err
	}
	if w := out.Leave; w != nil {
		text, err := l.answer(*w)
		if err != nil {
			return err
		}
		out.Farewells = l.farewells
		out.Replies = append(out.Replies, Reply{Text: text, Entries: w.entries})
		return nil
	}
	if len(out.Replies) == 0 {
		out.Replies = []Reply{{}}
	}
	r := &out.Replies[0]
	r.Text = strings.TrimSuffix(l.v.LetBe()+"\n"+r.Text, "\n")
	return nil
}

func (l *leave) say(text string) Outcome {
	return Outcome{At: l.now, Replies: []Reply{{Text: text, Entries: []reading.Entry{{
		Act: reading.None{Reason: "confirmed"}, On: model.DayOf(l.now),
	}}}}}
}

// answer answers a wish that was just voiced.
func (l *leave) answer(w Leave) (string, error) {
	c, err := l.tx.Chat(l.m.Chat)
	switch {
	case err != nil:
		return "", err
	case c.Group && w.What != leavePeople: // it is confirmed in private only
		return wording.PrivateOnly(), nil
	}
	switch w.What {
	case leaveDelete:
		return l.askDelete()
	case leaveForget:
		return l.askForget()
	case leaveRemove:
		return l.remove(w.Who)
	case leaveHandOver:
		return l.askHandOver(w.Who)
	}
	names, roles := l.people()
	return l.v.People(l.s.Row.Name, names, roles, l.mine.Role == store.Owner), nil
}

func (l *leave) people() (names, roles []string) {
	for _, m := range l.team {
		names, roles = append(names, m.Name), append(roles, string(m.Role))
	}
	return names, roles
}

func (l *leave) askDelete() (string, error) {
	live := slices.Collect(l.s.live())
	ask := wording.Deleting{
		Herd: l.s.Row.Name, Records: len(live), Minutes: int(leavingStands.Minutes()),
	}
	if plain(ask.Herd) == "" {
		ask.Herd = ""
	}
	for _, e := range live {
		if ask.Since == 0 || e.On < ask.Since {
			ask.Since = e.On
		}
	}
	for _, m := range l.team {
		ask.People = append(ask.People, m.Name)
	}
	var err error
	if ask.Files, err = l.tx.FilesWaiting(l.m.Herd); err != nil {
		return "", err
	}
	if ask.Copies, err = l.copies(); err != nil {
		return "", err
	}
	if err := (leaving{What: leaveDelete, At: l.now}).keep(l.tx, l.m); err != nil {
		return "", err
	}
	return l.v.Delete(ask), nil
}

// delete takes the herd out. The last word to its chats is given out, since
// nothing of it is to be kept.
func (l *leave) delete() (Outcome, error) {
	chats, err := l.tx.Chats(l.m.Herd)
	if err != nil {
		return Outcome{}, err
	}
	if err := l.tx.EraseHerd(l.m.Herd); err != nil {
		return Outcome{}, err
	}
	l.d.Forget(l.m.Herd)
	copies, err := l.copies()
	if err != nil {
		return Outcome{}, err
	}
	out := Outcome{At: l.now, Gone: HerdGone}
	for _, c := range chats {
		text := l.v.DeletedByOwner(l.s.Row.Name)
		if c.ID == l.m.Chat {
			text = l.v.Deleted(l.s.Row.Name, copies)
			if l.mine.Operator {
				further, err := l.tx.Memberships(l.mine.Person)
				if err != nil {
					return Outcome{}, err
				}
				if len(further) == 0 {
					text += "\n" + l.v.StillOperator()
				}
			}
		}
		if out.Farewells, err = l.farewell(out.Farewells, c, text); err != nil {
			return Outcome{}, err
		}
	}
	if !slices.ContainsFunc(chats, func(c store.Chat) bool { return c.ID == l.m.Chat }) { // of a replay
		out.Farewells = append(out.Farewells, Farewell{Chat: store.Chat{ID: l.m.Chat}, Text: l.v.Deleted(l.s.Row.Name, copies)})
	}
	return out, nil
}

// farewell adds the last word to a chat, with which herd it speaks of now, if it
// speaks of any.
func (l *leave) farewell(to []Farewell, c store.Chat, text string) ([]Farewell, error) {
	if c.Dead != "" {
		return to, nil
	}
	now, ok, err := l.tx.FindChat(c.Transport, c.External)
	if err != nil {
		return nil, err
	}
	if ok && now.Herd != 0 && now.Herd != l.m.Herd {
		row, err := l.tx.Herd(now.Herd)
		if err != nil {
			return nil, err
		}
		text += "\n" + l.v.SpeaksOf(wording.HerdName(row.Name, int64(row.ID)))
	}
	return append(to, Farewell{Chat: c, Text: text}), nil
}

// askForget says what being forgotten takes. An owner has to see to the herd
// first.
func (l *leave) askForget() (string, error) {
	all, err := l.tx.Memberships(l.mine.Person)
	if err != nil {
		return "", err
	}
	var herds []string
	for _, m := range all {
		row, err := l.tx.Herd(m.Herd)
		if err != nil {
			return "", err
		}
		name := wording.HerdName(row.Name, int64(row.ID))
		herds = append(herds, name)
		team, err := l.tx.Members(m.Herd)
		if err != nil {
			return "", err
		}
		if m.Role != store.Owner || slices.ContainsFunc(team, func(o store.Member) bool {
			// The nameless one is who sits at the terminal.
			return o.Role == store.Owner && o.Person != m.Person && (o.Name != "" || m.Name == "")
		}) {
			continue
		}
		if m.Herd != l.m.Herd {
			return l.v.OwnerElsewhere(name), nil
		}
		return l.v.OwnerGoes(l.s.Row.Name, heir(team, m.Person)), nil
	}
	if len(herds) == 1 && l.s.Row.Name == "" {
		herds = nil
	}
	if err := (leaving{What: leaveForget, At: l.now}).keep(l.tx, l.m); err != nil {
		return "", err
	}
	name := l.mine.Name
	if plain(name) == "" {
		name = ""
	}
	return l.v.Forget(herds, name, l.mine.Operator, int(leavingStands.Minutes())), nil
}

// heir is who could own the herd: family before helpers.
func heir(team []store.Member, but store.PersonID) string {
	for _, role := range []store.Role{store.Family, store.Helper} {
		for _, m := range team {
			if m.Role == role && m.Person != but && m.Name != "" {
				return m.Name
			}
		}
	}
	return ""
}

// forget takes who speaks out of every herd.
func (l *leave) forget() (Outcome, error) {
	all, err := l.tx.Memberships(l.mine.Person)
	if err != nil {
		return Outcome{}, err
	}
	c, err := l.tx.Chat(l.m.Chat)
	if err != nil {
		return Outcome{}, err
	}
	if l.mine.Operator {
		if err := l.tx.Resign(l.mine.Person); err != nil {
			return Outcome{}, err
		}
	}
	for _, m := range all {
		if err := l.takeOut(m, false); err != nil {
			return Outcome{}, err
		}
		if err := l.tell(m.Herd, func(o store.Member) bool { return o.Role == store.Owner }, l.v.ForgottenNotice(), "forgotten"); err != nil {
			return Outcome{}, err
		}
	}
	return Outcome{At: l.now, Gone: PersonGone, Farewells: []Farewell{{Chat: c, Text: l.v.Forgotten()}}}, nil
}

// takeOut takes a person out of a herd; what they left open is the owner's.
func (l *leave) takeOut(m store.Member, named bool) error {
	team, err := l.tx.Members(m.Herd)
	if err != nil {
		return err
	}
	f := store.Forgetting{Herd: m.Herd, Person: m.Person, Named: named}
	for _, o := range team {
		if o.Role == store.Owner && o.Person != m.Person && (f.Heir == 0 || o.Name != "") {
			f.Heir = o.Person
		}
	}
	l.d.Forget(m.Herd) // who said what is told otherwise now
	return l.tx.Forget(f)
}

// tell queues a word to the chats of some of a herd's people.
func (l *leave) tell(herd store.HerdID, who func(store.Member) bool, text, key string) error {
	team, err := l.tx.Members(herd)
	if err != nil {
		return err
	}
	chats, err := l.tx.Chats(herd)
	if err != nil {
		return err
	}
	for _, c := range chats {
		if c.Dead != "" || c.ID == l.m.Chat || !slices.ContainsFunc(team, func(m store.Member) bool { return m.Person == c.Person && who(m) }) {
			continue
		}
		o := store.Outgoing{
			Key: fmt.Sprintf("%s:%d:%d:%d", key, herd, c.ID, l.now.UnixMilli()), Herd: herd, Chat: c.ID, Kind: "reply", Text: text,
		}
		if _, err := l.tx.Queue(&o); err != nil {
			return err
		}
	}
	return nil
}

// find is the one person of the herd of that name, with the role before it where
// two have it; else what is to be said.
func (l *leave) find(who string) (m store.Member, answer string) {
	role, name, ok := strings.Cut(who, " ")
	if role == "sitter" {
		role = string(store.Helper)
	}
	var found []store.Member
	for _, m := range l.team {
		if plain(m.Name) != "" && (plain(m.Name) == plain(who) || ok && plain(m.Name) == plain(name) && role == string(m.Role)) {
			found = append(found, m)
		}
	}
	switch len(found) {
	case 0:
		names, roles := l.people()
		return m, l.v.Nobody(who, names, roles)
	case 1:
		return found[0], ""
	}
	return m, l.v.OfPerson("two_of_name", found[0].Name)
}

// remove takes another person out, at once: it may be needed at once, and a new
// code lets them in again.
func (l *leave) remove(who string) (string, error) {
	m, answer := l.find(who)
	switch {
	case answer != "":
		return answer, nil
	case m.Person == l.mine.Person:
		return l.v.NotYourself(), nil
	case m.Role == store.Owner:
		return l.v.OfPerson("not_owner", m.Name), nil
	}
	chats, err := l.tx.Chats(m.Herd)
	if err != nil {
		return "", err
	}
	if err := l.takeOut(m, true); err != nil {
		return "", err
	}
	for _, c := range chats {
		if c.Person != m.Person {
			continue
		}
		if l.farewells, err = l.farewell(l.farewells, c, l.v.RemovedNotice(l.s.Row.Name)); err != nil {
			return "", err
		}
	}
	return l.v.OfPerson("removed", m.Name), nil
}

func (l *leave) askHandOver(who string) (string, error) {
	m, answer := l.find(who)
	switch {
	case answer != "":
		return answer, nil
	case m.Role == store.Owner:
		return l.v.OfPerson("owns_already", m.Name), nil
	}
	if err := (leaving{What: leaveHandOver, Who: m.Person, At: l.now}).keep(l.tx, l.m); err != nil {
		return "", err
	}
	return l.v.HandOver(m.Name, int(leavingStands.Minutes())), nil
}

func (l *leave) handOver(to store.PersonID) (Outcome, error) {
	m, ok, err := l.tx.Member(l.m.Herd, to)
	if err != nil || !ok {
		return Outcome{}, err
	}
	if err := l.tx.Join(l.m.Herd, to, store.Owner); err != nil {
		return Outcome{}, err
	}
	if err := l.tx.Join(l.m.Herd, l.mine.Person, store.Family); err != nil {
		return Outcome{}, err
	}
	err = l.tell(l.m.Herd, func(o store.Member) bool { return o.Person == to }, l.v.HandedNotice(l.s.Row.Name), "owner")
	return l.say(l.v.OfPerson("handed_over", m.Name)), err
}

// copies names the copies of the database that lie where it runs, as who looks for
// them there would.
func (l *leave) copies() (names []string, err error) {
	if l.d.Copies == nil {
		return nil, nil
	}
	all, err := l.d.Copies()
	if err != nil {
		return nil, err
	}
	var daily []store.Copy
	for _, c := range all {
		if c.Schema == 0 {
			daily = append(daily, c)
		} else {
			names = append(names, filepath.Base(c.Path))
		}
	}
	if n := len(daily); n > 0 {
		last := daily[n-1] // the oldest come first
		names = append(names, l.v.DailyCopies(filepath.Base(filepath.Dir(last.Path)), n, last.On))
	}
	return names, nil
}
