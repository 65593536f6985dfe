package store

import (
	"errors"
	"fmt"
)

// CreatePerson makes a person.
func (tx *Tx) CreatePerson(name string) (PersonID, error) {
	r, err := tx.exec("INSERT INTO person (id, name) VALUES ("+nextID("person")+", ?)", name)
	if err != nil {
		return 0, fmt.Errorf("new person: %w", err)
	}
	id, err := r.LastInsertId()
	return PersonID(id), err
}

// Join makes a person a member of a herd, or changes the role.
func (tx *Tx) Join(herd HerdID, person PersonID, role Role) error {
	switch role {
	case Owner, Family, Helper:
	default:
		return fmt.Errorf("join herd %d: there is no role %q", herd, role)
	}
	_, err := tx.exec("INSERT INTO member (herd, person, role) VALUES (?, ?, ?)"+
		" ON CONFLICT (herd, person) DO UPDATE SET role = excluded.role", int64(herd), int64(person), string(role))
	if err != nil {
		return fmt.Errorf("join herd %d: %w", herd, err)
	}
	return nil
}

const memberColumns = "SELECT m.herd, m.person, p.name, m.role, p.operator" +
	" FROM member AS m JOIN person AS p ON p.id = m.person WHERE "

func scanMember(row scanner) (m Member, err error) {
	err = row.Scan(&m.Herd, &m.Person, &m.Name, &m.Role, &m.Operator)
	return m, err
}

// Member gives a person's membership; false if there is none.
func (tx *Tx) Member(herd HerdID, person PersonID) (Member, bool, error) {
	m, err := list(tx, memberColumns+"m.herd = ? AND m.person = ?", []any{int64(herd), int64(person)}, scanMember)
	if err != nil {
		return Member{}, false, fmt.Errorf("member of herd %d: %w", herd, err)
	}
	if len(m) == 0 {
		return Member{}, false, nil
	}
	return m[0], true, nil
}

// Members lists the people of a herd, those who came first before the others.
func (tx *Tx) Members(herd HerdID) ([]Member, error) {
	m, err := list(tx, memberColumns+"m.herd = ? ORDER BY m.person", []any{int64(herd)}, scanMember)
	if err != nil {
		return nil, fmt.Errorf("members of herd %d: %w", herd, err)
	}
	return m, nil
}

// Memberships lists the herds that a person belongs to, by herd.
func (tx *Tx) Memberships(person PersonID) ([]Member, error) {
	m, err := list(tx, memberColumns+"m.person = ? ORDER BY m.herd", []any{int64(person)}, scanMember)
	if err != nil {
		return nil, fmt.Errorf("herds of person %d: %w", person, err)
	}
	return m, nil
}

// Rename changes what a person is called in records to come.
func (tx *Tx) Rename(person PersonID, name string) error {
	if name == "" {
		return errors.New("a person needs a name")
	}
	return tx.change(fmt.Sprintf("person %d", person), "UPDATE person SET name = ? WHERE id = ?", name, int64(person))
}

// SetOperator makes a person the operator of this server.
func (tx *Tx) SetOperator(person PersonID) error {
	return tx.change(fmt.Sprintf("person %d", person), "UPDATE person SET operator = 1 WHERE id = ?", int64(person))
}

// Resign ends a person's right to run this server.
func (tx *Tx) Resign(person PersonID) error {
	return tx.change(fmt.Sprintf("person %d", person), "UPDATE person SET operator = 0 WHERE id = ?", int64(person))
}

// HasOperator reports whether the server has an operator.
func (tx *Tx) HasOperator() (has bool, err error) {
	if _, err = tx.one("SELECT EXISTS (SELECT 1 FROM person WHERE operator = 1)", nil, &has); err != nil {
		return false, fmt.Errorf("operator: %w", err)
	}
	return has, nil
}
