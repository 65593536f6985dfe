package bot

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The words alone, whatever the reading makes of them.
func TestUrgentWords(t *testing.T) {
	names := []string{"Olive", "Big Red"}
	for _, row := range []struct{ text, card string }{
		{"Olive is fitting", "vet_now"},
		{"olive's belly is turning blue", "vet_now"},
		{"Big Red broke his back leg", "vet_now"},
		{"big red's leg is broken", "vet_now"},
		{"he can not breathe", "vet_now"},
		{"pig will not get up", "vet_now"},
		{"not drinking since yesterday", "vet_now"},
		{"red spots shaped like diamonds on his back", "vet_now"},
		{"tongue is blue, and blisters on the snout", "notifiable"}, // the graver card wins
		{"fed kitchen scraps and now she cannot breathe", "vet_now"},
		{"rectal temp 40.5 c", "vet_now"},
		{"rectal temp 39.3 c", ""}, // at rest, Acta Veterinaria Scandinavica 2015
		{"temp 103", ""},
		{"temp 104", "fever"},
		{"temp hit 104", ""},
		{"fits", "vet_now"},
		{"feed scale fits under the hopper", ""},
		{"blind in one eye since birth", ""},
		{"all fever gone", ""},
		{"breathless", ""}, // whole words only
		{"", ""},
		{"?!.,", ""},
	} {
		require.Equal(t, row.card, urgent(row.text, names), row.text)
	}
	require.Equal(t, "vet_now", urgent("blind", nil))
	require.Empty(t, urgent("blind", []string{"Blind"}))
	require.Empty(t, urgent("blind", []string{"", "..", ",", "Blind"}), "a name without words is none")
}

// A group that a phrase names and that is not there would match nothing, and
// nobody would hear of it.
func TestUrgentPhrasesAreWellFormed(t *testing.T) {
	for word, rules := range urgentRules {
		require.NotEmpty(t, word)
		for _, r := range rules {
			require.NotNil(t, r.parts[len(r.parts)-1], r.phrase)
			for _, p := range r.parts {
				if p != nil {
					require.NotEmpty(t, p, r.phrase)
				}
			}
		}
	}
}

func FuzzUrgent(f *testing.F) {
	f.Add("pig can't breathe", "Olive")
	f.Add("not", "not")
	f.Fuzz(func(t *testing.T, text, name string) {
		urgent(text, []string{name})
	})
}
