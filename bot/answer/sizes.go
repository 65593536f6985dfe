package answer

import (
	"sort"
	"strings"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// sizes lists the herd as set up: pigs, feeders, barrels, pens, wallow,
// measures, the target and the mix.
func sizes(a asked) Answer {
	h := a.h
	pigs := h.Alive(a.today)
	count := a.howMany(pigs)
	if asksCount(a.What) {
		return Answer{Data: map[string]any{"sizes": []string{count}, "pigs": len(pigs)}, Text: a.say("sizes", wording.Args{Names: []string{count}})}
	}
	var settings []model.Setting
	for _, f := range h.Feeders {
		settings = append(settings, thing(model.SetFeeder, model.Thing{Name: f.Name, CapacityKg: f.CapacityKg, CapacityL: f.CapacityL}))
	}
	for _, b := range h.Barrels {
		settings = append(settings, thing(model.SetBarrel, model.Thing{Name: b.Name, CapacityL: b.CapacityL, Nipples: b.Nipples}))
	}
	for _, p := range h.Pens {
		settings = append(settings, thing(model.SetPen, model.Thing{Name: p.Name, AreaM2: p.AreaM2}))
	}
	if w := h.Wallow; w != nil {
		settings = append(settings, thing(model.SetWallow, model.Thing{AreaM2: w.AreaM2, DepthM: w.DepthM}))
	}
	measures := make([]string, 0, len(h.Sizes))
	for name := range h.Sizes {
		measures = append(measures, name)
	}
	sort.Strings(measures)
	for _, name := range measures {
		settings = append(settings, thing(model.SetSize, model.Thing{Name: name, FeedKg: model.Float(h.Sizes[name])}))
	}
	if h.TargetStated {
		settings = append(settings, model.Setting{Key: model.SetTarget, Number: model.Float(h.TargetKg)})
	}
	said := []string{count}
	for _, s := range settings {
		said = append(said, a.v.Echo(reading.Entry{Act: reading.Fact{Fact: s}}))
	}
	if r, ok := h.Recipe(); ok {
		said = append(said, a.v.Echo(reading.Entry{Act: reading.Fact{Fact: r}}))
	}
	asked := strings.ToLower(a.What)
	var kept []string
	for _, s := range said {
		if asked != "" && strings.Contains(strings.ToLower(s), asked) {
			kept = append(kept, s)
		}
	}
	if len(kept) > 0 {
		said = kept
	}
	return Answer{
		Data: map[string]any{"sizes": said, "pigs": len(pigs)},
		Text: a.say("sizes", wording.Args{Names: []string{strings.Join(said, "; ")}}),
	}
}

func thing(key string, t model.Thing) model.Setting { return model.Setting{Key: key, Thing: &t} }

// howMany counts the pigs, and names those that have names.
func (a asked) howMany(pigs []*model.Animal) string {
	var names []string
	for _, p := range pigs {
		if p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return a.say("sizes_pigs", wording.Args{Names: names, Q: []model.Quantity{wording.N(len(pigs))}})
}

// asksCount reports whether the question is how many pigs there are, and of
// nothing else.
func asksCount(what string) bool {
	what = strings.TrimRight(strings.ToLower(what), "?! ")
	if !strings.Contains(what, "how many") || strings.Contains(what, "nipple") {
		return false
	}
	for _, word := range []string{"pig", "hog", "animal", "head"} {
		if strings.Contains(what, word) {
			return true
		}
	}
	return strings.HasSuffix(what, "have")
}
