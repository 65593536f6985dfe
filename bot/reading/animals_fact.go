package reading

import "troughbell/model"

// AnimalsOf are the pigs that a fact is about.
func AnimalsOf(f model.Fact) []string {
	switch v := f.(type) {
	case model.Weigh:
		return v.Animals
	case model.Worm:
		return v.Animals
	case model.Treat:
		return v.Animals
	case model.Sick:
		return v.Animals
	case model.Gone:
		return v.Animals
	case model.Move:
		return v.Animals
	}
	return nil
}

// withAnimals is the fact about other pigs; false for one that is about none.
func withAnimals(f model.Fact, names []string) (model.Fact, bool) {
	switch v := f.(type) {
	case model.Weigh:
		v.Animals = names
		return v, true
	case model.Worm:
		v.Animals = names
		return v, true
	case model.Treat:
		v.Animals = names
		return v, true
	case model.Sick:
		v.Animals = names
		return v, true
	case model.Gone:
		v.Animals, v.Count = names, 0
		return v, true
	case model.Move:
		v.Animals = names
		return v, true
	case model.Alarm:
		v.Animals = names
		return v, true
	}
	return nil, false
}
