package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// whose is the day whose pigs a question is about: today, or for a weight in the
// past that day.
func (a asked) whose() model.Day {
	if (a.Topic == "weight" || a.Topic == "growth") && a.On != nil && *a.On < a.today {
		return *a.On
	}
	return a.today
}

// whichPigs finds the pigs alive on the day that the question is about; all of
// them where it names none.
func (a asked) whichPigs(on model.Day) (pigs []*model.Animal, named bool) {
	alive := a.h.Alive(on)
	if len(a.Animals) == 0 || len(a.Animals) == 1 && a.Animals[0] == model.All {
		return alive, false
	}
	for _, p := range alive {
		for _, n := range a.Animals {
			if p.Name != "" && strings.EqualFold(p.Name, n) {
				pigs = append(pigs, p)
				break
			}
		}
	}
	return pigs, true
}

// noSuchPig is the answer about pigs that are not there, or not any more.
func (a asked) noSuchPig() Answer {
	code := "no_such_pig"
	for _, n := range a.Animals {
		if p := a.h.Animal(n); p != nil && p.Gone != nil {
			code = "pig_gone"
		}
	}
	return Answer{Text: a.say(code, wording.Args{Names: a.Animals})}
}

// byName gives the pigs under their names; pigs without names are one entry,
// under All.
func byName(pigs []*model.Animal) (names []string, of map[string][]*model.Animal) {
	of = map[string][]*model.Animal{}
	for _, p := range pigs {
		name := p.Name
		if name == "" {
			name = model.All
		}
		if _, there := of[name]; !there {
			names = append(names, name)
		}
		of[name] = append(of[name], p)
	}
	return names, of
}

// subject names the pigs asked about for a sentence: nothing where it is the
// whole herd.
func (a asked) subject() []string {
	if !a.named {
		return nil
	}
	names := make([]string, len(a.pigs))
	for i, p := range a.pigs {
		names[i] = p.Name
	}
	return names
}
