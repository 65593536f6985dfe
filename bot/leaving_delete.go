package bot

import (
	"slices"

	"troughbell/bot/wording"
	"troughbell/store"
)

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
