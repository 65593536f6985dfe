package answer

import (
	"sort"
	"strconv"
	"strings"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// sizes lists the herd as set up: pigs, feeders, barrels, pens, wallow,
// measures, the target and the mix.
func sizes(a asked) Answer {
	h := a.h
	if what := strings.ToLower(a.What); strings.Contains(what, "how many") && len(h.Alive(a.today)) > 0 &&
		(strings.Contains(what, "pig") || strings.Contains(what, "hog") || strings.Contains(what, "animal") || strings.Contains(what, "head") || strings.HasSuffix(strings.TrimRight(what, "?! "), "have")) && !strings.Contains(what, "nipple") {
		count := howMany(h.Alive(a.today))
		return Answer{Data: map[string]any{"sizes": []string{count}, "count": len(h.Alive(a.today))}, Text: a.say("sizes", wording.Args{Names: []string{count}})}
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
	var said []string
	pigs := h.Alive(a.today)
	var names []string
	for _, p := range pigs {
		if p.Name != "" {
			names = append(names, p.Name)
		}
	}
	said = append(said, a.say("sizes_pigs", wording.Args{Names: names, Q: []model.Quantity{wording.N(len(pigs))}}))
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

// howMany counts the living pigs and names those that have a name.
func howMany(pigs []*model.Animal) string {
	said := strconv.Itoa(len(pigs)) + " pigs"
	if len(pigs) == 1 {
		said = "1 pig"
	}
	names := make([]string, 0, len(pigs))
	for _, p := range pigs {
		if p.Name != "" {
			names = append(names, p.Name)
		}
	}
	if len(names) == 0 {
		return said
	}
	return said + ": " + wording.Join(names, "and")
}
