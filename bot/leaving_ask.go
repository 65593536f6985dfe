package bot

import (
	"path/filepath"
	"slices"

	"troughbell/bot/wording"
	"troughbell/store"
)

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
