package store

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

func TestPeopleOfAHerd(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		has, err := tx.HasOperator()
		require.NoError(t, err)
		require.False(t, has)
		bob, err := tx.CreatePerson("Bob")
		require.NoError(t, err)
		_, ok, err := tx.Member(f.herd, bob)
		require.NoError(t, err)
		require.False(t, ok)
		require.NoError(t, tx.Join(f.herd, bob, Helper))
		require.NoError(t, tx.Join(f.herd, bob, Family), "a role can change")
		require.ErrorContains(t, tx.Join(f.herd, bob, "king"), "king")
		require.ErrorContains(t, tx.Join(99, bob, Family), "FOREIGN KEY")
		require.NoError(t, tx.SetOperator(f.person))
		require.ErrorIs(t, tx.SetOperator(99), ErrNotFound)
		require.NoError(t, tx.Rename(bob, "Rob"))
		require.Error(t, tx.Rename(bob, ""))

		members, err := tx.Members(f.herd)
		require.NoError(t, err)
		require.Equal(t, []Member{
			{Herd: f.herd, Person: f.person, Name: "Ann", Role: Owner, Operator: true},
			{Herd: f.herd, Person: bob, Name: "Rob", Role: Family},
		}, members)
		one, ok, err := tx.Member(f.herd, bob)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, members[1], one)
		has, err = tx.HasOperator()
		require.NoError(t, err)
		require.True(t, has)

		second, err := tx.CreateHerd("Hill End", "UTC", noon)
		require.NoError(t, err)
		require.NoError(t, tx.Join(second, bob, Owner))
		in, err := tx.Memberships(bob)
		require.NoError(t, err)
		require.Len(t, in, 2)
		require.NoError(t, tx.Forget(Forgetting{Herd: f.herd, Person: bob, Named: true}))
		require.ErrorIs(t, tx.Forget(Forgetting{Herd: f.herd, Person: bob}), ErrNotFound)
		in, err = tx.Memberships(bob)
		require.NoError(t, err)
		require.Equal(t, []Member{{Herd: second, Person: bob, Name: "Rob", Role: Owner}}, in)
	})
}

func TestCodesAreUsedOnce(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		code, err := tx.NewCode(f.herd, Family, false, noon, time.Hour)
		require.NoError(t, err)
		require.Regexp(t, `^[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{5}$`, code)

		kept, err := list(tx, "SELECT hex(hash) FROM code", nil, func(row scanner) (h string, err error) {
			err = row.Scan(&h)
			return h, err
		})
		require.NoError(t, err)
		require.Len(t, kept, 1)
		require.NotContains(t, kept[0], strings.ReplaceAll(code, "-", ""))

		for _, wrong := range []string{"", "-", code[:9], code + "0", "00000-00000"} {
			_, ok, err := tx.UseCode(wrong, noon)
			require.NoError(t, err)
			require.False(t, ok, wrong)
		}
		typed := " " + strings.ToLower(strings.Replace(code, "-", " ", 1)) + "\n"
		typed = strings.NewReplacer("0", "o", "1", "l").Replace(typed)
		g, ok, err := tx.UseCode(typed, noon.Add(time.Hour-time.Second))
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, Grant{Herd: f.herd, Role: Family}, g)
		_, ok, err = tx.UseCode(code, noon)
		require.NoError(t, err)
		require.False(t, ok, "spent")

		pair, err := tx.NewCode(0, Owner, true, noon, time.Hour)
		require.NoError(t, err)
		require.NotEqual(t, code, pair)
		_, ok, err = tx.UseCode(pair, noon.Add(time.Hour))
		require.NoError(t, err)
		require.False(t, ok, "too old")
		g, ok, err = tx.UseCode(pair, noon)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, Grant{Role: Owner, Operator: true}, g)
	})
}

func TestTextsThatCanOnlyBeACode(t *testing.T) {
	for text, want := range map[string]bool{
		"7K3QD-M4XNA": true, " 7k3qd-m4xna\n": true, "7k3qdm4xna": true, "ABCDE-FGHJK": true,
		"": false, "7K3QD": false, "7K3QD-M4XN": false, "7K3QD-M4XNAA": false, "everything": false,
		"Dot 38 girth": false, "2026-05-16": false, "5 bags corn": false, "half-empty": false, "7K3Q-DM4XNA": false,
	} {
		require.Equal(t, want, LooksLikeCode(text), text)
	}
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		for range 50 {
			code, err := tx.NewCode(0, Owner, true, noon, time.Hour)
			require.NoError(t, err)
			require.True(t, LooksLikeCode(code), code)
		}
	})
}
