package bot

import (
	"fmt"
	"slices"
	"strings"

	"troughbell/store"
)

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
