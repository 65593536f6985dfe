package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Names told after the pigs came complete their arrival, whatever words lead up to them.
func TestNamesToldLater(t *testing.T) {
	names := []string{"Pickle", "Truffle", "Olive"}
	for text, sexes := range map[string][]model.Sex{
		"names are Pickle, Truffle and Olive. Pickle is a boy":         {model.Barrow},
		"Pickle, Truffle and Olive":                                    nil,
		"they're called Pickle, Truffle and Olive":                     nil,
		"we named them pickle truffle n olive":                         nil,
		"their names: Pickle, Truffle, Olive":                          nil,
		"meet Pickle, Truffle and Olive!":                              nil,
		"kids named em Pickle Truffle and Olive":                       nil,
		"theyre Pickle, Truffle, and Olive":                            nil,
		"the names we picked are Pickle, Truffle, Olive":               nil,
		"Pickle the boy, Truffle and Olive are girls":                  {model.Barrow, model.Gilt, model.Gilt},
		"the boar is Pickle and the gilts are Truffle and Olive":       {model.Boar, model.Gilt, model.Gilt},
		"Pickle is the boar, the others are gilts, Truffle and Olive":  {model.Boar, model.Gilt, model.Gilt},
		"names Pickle (barrow), Truffle (gilt), Olive (gilt)":          {model.Barrow, model.Gilt, model.Gilt},
		"My daughter has called them Pickle, Truffle and Olive.":       nil,
		"They answer to Pickle, Truffle and Olive.":                    nil,
		"2 gilts and a barrow: Pickle the barrow, and Truffle & Olive": {model.Barrow},
		"we call them Truffle, Pickle and Olive. Pickle is the boy":    {model.Barrow},
	} {
		t.Run(text, func(t *testing.T) {
			got := saidAfter(t, "3 pigs came today, 45 lb each", text)
			require.Len(t, got.Entries, 1)
			require.NotEmpty(t, got.Entries[0].Replace)
			a := got.Entries[0].Act.(reading.Fact).Fact.(model.Arrive)
			require.Equal(t, names, a.Animals)
			require.Equal(t, 3, a.Count)
			require.Equal(t, sexes, a.Sexes)
		})
	}
}

// What only looks like a list of names names no pig.
func TestNoNamesTold(t *testing.T) {
	for _, text := range []string{
		"they're loud, smelly and hungry", "called the vet and the butcher", "the kids want names", "names are Salt and Pepper",
		"got Bella and Otto fed", "call the butcher tomorrow", "what should I name them?", "corn, barley and peas",
		"call the herd Hill Bunch", "we named the pens Upper, Lower and Creek",
	} {
		t.Run(text, func(t *testing.T) {
			got := saidAfter(t, "3 pigs came today, 45 lb each", text)
			for _, e := range got.Entries {
				if f, ok := e.Act.(reading.Fact); ok {
					require.NotEqual(t, model.Arrive{}.Kind(), f.Fact.Kind())
				}
			}
		})
	}
}

// Where pigs have no names yet, a name in the text is no fact of all of them.
func TestNameUntold(t *testing.T) {
	for text, code := range map[string]string{
		"Pickle's girth is 38":                   "no_names",
		"zeke girth 38":                          "no_names",
		"taped Wallace 38.5":                     "no_names",
		"today girth 38":                         "",
		"wormed everybody with ivermectin":       "",
		"finally girths: 38 39 40":               "",
		"wormed with fenbendazole in the feed":   "",
		"The girth is 38 on average":             "",
		"Sunday weights average 180 on the nose": "",
	} {
		t.Run(text, func(t *testing.T) {
			got, err := play(t, "ridge").say("2026-09-10T18:00", text)
			require.NoError(t, err)
			asked := ""
			for _, e := range got.Entries {
				if c, ok := e.Act.(reading.Clarify); ok {
					asked = c.Code
				}
			}
			require.Equal(t, code, asked)
		})
	}
	got, err := play(t, "ridge").say("2026-09-10T18:00", "olive is limping")
	require.NoError(t, err)
	require.Equal(t, model.Sick{Animals: []string{model.All}, Count: 1, Note: "limping"}, got.Entries[0].Act.(reading.Fact).Fact)
}

// One of the pigs that have no names yet is out all the same.
func TestOutByNameUntold(t *testing.T) {
	for text, out := range map[string]bool{
		"zeke got out through the gate": true, "pickle is out": true, "Maple escaped": true,
		"trash got out of hand": false, "finally got out there": false,
	} {
		got, err := play(t, "ridge").say("2026-09-10T18:00", text)
		require.NoError(t, err)
		f, ok := got.Entries[0].Act.(reading.Fact)
		require.Equal(t, out, ok && f.Fact.Kind() == model.Alarm{}.Kind(), text)
	}
}
