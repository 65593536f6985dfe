package reading_test

import (
	"cmp"
	"hash/fnv"
	"math/rand/v2"
	"slices"
	"strings"
)

// draw is what a variant draws from.
type draw struct {
	*rand.Rand
	byHerd map[string][]*labelled
	often  map[string]bool // words of many texts, so that they are spelt right
	hash   map[*labelled]uint64
}

func newDraw(pool []*labelled) *draw {
	d := &draw{byHerd: map[string][]*labelled{}, often: map[string]bool{}, hash: map[*labelled]uint64{}}
	count := map[string]int{}
	for _, l := range pool {
		d.byHerd[l.Herd] = append(d.byHerd[l.Herd], l)
		d.hash[l] = hashOf(l.Now, l.Text)
		for w := range wordSet(l.Text) {
			count[w]++
			d.often[w] = count[w] >= 3
		}
	}
	return d
}

func wordSet(s string) map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(s) {
		out[w] = true
	}
	return out
}

func (d *draw) one(of []string) string { return of[d.IntN(len(of))] }

// begin draws anew for a text, by its words alone: what is drawn for the others
// stays as it is when a text more comes to be read right.
func (d *draw) begin(seed uint64, l *labelled) {
	d.Rand = rand.New(rand.NewPCG(seed, d.hash[l]))
}

func hashOf(parts ...string) uint64 {
	h := fnv.New64a()
	for _, p := range parts {
		_, _ = h.Write([]byte(p)) // a hash takes all it is given
		_, _ = h.Write([]byte{0})
	}
	return h.Sum64()
}

// another draws a text of the same herd that can stand beside those given.
func (d *draw) another(fits func(*labelled) bool, beside ...*labelled) *labelled {
	lot := d.Uint64()
	rank := func(l *labelled) uint64 { return rand.NewPCG(lot, d.hash[l]).Uint64() }
	pool := slices.Clone(d.byHerd[beside[0].Herd])
	slices.SortStableFunc(pool, func(a, b *labelled) int { return cmp.Compare(rank(a), rank(b)) })
next:
	for _, o := range pool {
		if !fits(o) {
			continue
		}
		for _, l := range beside {
			if o == l || rival(l, o) {
				continue next
			}
		}
		return o
	}
	return nil
}

// variant is a way to change a text, with the label it has then. It gives no
// text where it does not apply. right and wrong are what is reached, in percent;
// they are only ever made stricter. What a text is joined with changes a little with
// the texts that come to be read right, so that each leaves room.
type variant struct {
	name         string
	right, wrong float64
	make         func(*labelled, *draw) (string, [][]labelledEntry)
}

// keepLabel makes a variant of a change that leaves the label as it is.
func keepLabel(change func(string, *draw) string) func(*labelled, *draw) (string, [][]labelledEntry) {
	return func(l *labelled, d *draw) (string, [][]labelledEntry) { return change(l.Text, d), l.labels() }
}

var (
	openings = []string{"hey ", "ok so ", "Just a quick update: ", "morning! ", "fyi ", "well, ", "sorry for the late text, ", "long day. ", "hi, ", "um "}
	endings  = []string{" thanks", " lol", ". back to work now", " :)", "!!", ". Have a good night", " i think that's all", ". man it was muddy", " ok bye", "..."}
	joints   = []string{", ", ". ", " and ", "\n", "; ", ", also ", " and then ", ". oh and "}
	// headJoints part a question from what is told behind it.
	headJoints = []string{", ", ", and ", " and ", ". ", "\n", "; ", ". also ", ", also "}
	askJoints  = []string{". ", "\n", " and ", ". also ", ". oh and "}
	// asides are plans and talk with a number that is nobody's amount.
	asides = []string{
		"gotta be at work at 6", "supposed to hit 95 tomorrow", "the truck needs 4 tires", "my daughter turned 9 today", "only slept 5 hours",
		"drove 40 miles for parts", "the kids scored 3 goals", "been up since 4", "company coming at 5", "we have 12 people for dinner",
		"its 20 miles to the feed store", "my back feels 90 years old", "the hens laid 14 eggs", "the neighbors are having 20 people over tonight",
	}
)

var variants = []variant{
	{"capitals", 99.3, 0.2, keepLabel(func(s string, _ *draw) string { return strings.ToUpper(s) })},
	{"small letters", 98.8, 0.4, keepLabel(func(s string, _ *draw) string { return strings.ToLower(s) })},
	{"no full stop", 97.6, 0.6, keepLabel(func(s string, _ *draw) string { return strings.TrimRight(s, ".!") })},
	{"opening", 99.6, 0.2, keepLabel(func(s string, d *draw) string { return d.one(openings) + s })},
	{"ending", 99.5, 0.2, keepLabel(func(s string, d *draw) string { return strings.TrimRight(s, ".! ") + d.one(endings) })},
	{"a second thing", 91.6, 2.8, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		o := d.another((*labelled).tells, l)
		if o == nil {
			return "", nil
		}
		return unstopped(l.Text) + d.one(joints) + o.Text, together(l.labels(), o.labels(), l.Now[:10])
	}},
	{"a third thing", 83.1, 6.7, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		o := d.another((*labelled).tells, l)
		if o == nil {
			return "", nil
		}
		p := d.another((*labelled).tells, l, o)
		if p == nil {
			return "", nil
		}
		joint := d.one(joints)
		day := l.Now[:10]
		return unstopped(l.Text) + joint + unstopped(o.Text) + joint + p.Text, together(together(l.labels(), o.labels(), day), p.labels(), day)
	}},
	{"a question behind", 92.3, 0.8, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		o := d.another(func(o *labelled) bool { // a day asked about is told from the same day
			return o.asksOne() && (o.Entries[0]["on"] == nil || o.Now[:10] == l.Now[:10])
		}, l)
		if o == nil {
			return "", nil
		}
		return unstopped(l.Text) + d.one(askJoints) + o.Text, together(l.labels(), o.labels(), "")
	}},
	{"a question in front", 90.1, 0.6, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		o := d.another(func(o *labelled) bool {
			return o.asksOne() && (o.Entries[0]["on"] == nil || o.Now[:10] == l.Now[:10])
		}, l)
		if o == nil {
			return "", nil
		}
		joint := d.one(headJoints)
		if strings.HasSuffix(o.Text, "?") {
			joint = d.one([]string{" ", "\n"})
		}
		return unstopped(o.Text) + joint + l.Text, together(l.labels(), o.labels(), "")
	}},
	{"an aside behind", 98.6, 0.6, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		return unstopped(l.Text) + d.one([]string{". ", ", ", " and ", "\n"}) + d.one(asides), l.labels()
	}},
	{"an aside before", 98.8, 0.5, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		return d.one(asides) + d.one([]string{". ", ", ", " but ", "\n"}) + l.Text, l.labels()
	}},
	{"dictated", 85.3, 5.8, func(l *labelled, _ *draw) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		return dictated(l.Text), l.labels()
	}},
	{"spoken numbers", 96.3, 1.1, func(l *labelled, d *draw) (string, [][]labelledEntry) {
		if !l.tells() || numberedHerds[l.Herd] {
			return "", nil
		}
		return spokenNumbers(l.Text, d.Rand), l.labels()
	}},
	{"other words for units", 99.3, 0.5, keepLabel(otherUnits)},
	{"possessive names", 99.6, 0.2, possessive},
	{"a slip of a finger", 95.4, 1.9, slip},
}

func unstopped(s string) string { return strings.TrimRight(s, ". \n") }

// asksOne says that the label is one question.
func (l *labelled) asksOne() bool {
	return len(l.Entries) == 1 && l.Entries[0]["intent"] == "ask" && len(strings.Fields(l.Text)) <= 12
}
