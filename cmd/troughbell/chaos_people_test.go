package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"troughbell/bot/telegram/botapitest"
	"troughbell/model"
)

// pen is one herd of the run with the person who texts of it.
type pen struct {
	who     botapitest.Person
	zone    *time.Location
	setUp   *saying
	spent   int                // sums named so far
	own     []*saying          // what can be edited
	arrived []*saying          // in the order in which they came in
	choice  *saying            // which the person has not answered yet; nothing else is said before
	pressed map[string][]int64 // messages, by what their first button carries
}

func newPen(i int, zone *time.Location) *pen {
	return &pen{who: botapitest.Person{ID: int64(1000 + i), Name: fmt.Sprintf("Kim %d", i)}, zone: zone, pressed: map[string][]int64{}}
}

// saying is one message with what is to become of it.
type saying struct {
	pen      *pen
	id       int64
	versions []telling // those that count, in the order in which they came in
	late     string    // a version that came in after a later one, and counts for nothing
}

// telling is a message's text as it was at a time.
type telling struct {
	text string
	want map[model.Kind]int // records
	says string             // in the answer
}

func (s *saying) last() telling { return s.versions[len(s.versions)-1] }

// pressing is a press of a button.
type pressing struct {
	pen     *pen
	query   string
	message int64
	want    map[model.Kind]int
}

// setUp has every person tell of the herd. The set-ups are dated a while ago, so
// that the chores of that time are due by now.
func (c *chaos) setUp() {
	ago := c.began.Add(-20 * time.Minute)
	c.api.SetClock(func() time.Time { return ago })
	for i, p := range c.pens {
		chores := c.began.Add(-10 * time.Minute)
		if c.form.later > 0 && i%2 == 1 {
			chores = c.began.Add(time.Duration(1+i%c.form.later) * time.Minute)
		}
		chores = chores.In(p.zone)
		p.setUp = c.say(p, telling{
			text: fmt.Sprintf("4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. one feeder, red hopper, holds 200 lb. "+
				"two water barrels, shed and oak, 55 gal each. target 270 lb, chores %s %s, time zone %s, US units",
				strings.ToLower(chores.Weekday().String()), chores.Format("3:04 pm"), p.zone),
			want: map[model.Kind]int{"arrive": 1}, says: "4 pigs came",
		})
	}
	c.api.SetClock(time.Now)
}

// talk has people say things, in groups that come close together, until so many
// were said.
func (c *chaos) talk(until int) {
	for c.said < until {
		if c.rnd.IntN(4) == 0 {
			c.press()
		}
		for group := 1 + c.rnd.IntN(30); group > 0 && c.said < until; group-- {
			p := c.pens[c.rnd.IntN(len(c.pens))]
			if p.choice == nil {
				c.chat(p)
			} else if !slices.ContainsFunc(c.pens, func(p *pen) bool { return p.choice == nil }) {
				c.await("choices", func() bool { c.press(); return p.choice == nil })
			}
		}
	}
}

// chat has one person do one thing.
func (c *chaos) chat(p *pen) {
	switch n := c.rnd.IntN(1000); {
	case n < 600:
		p.own = append(p.own, c.say(p, p.spend()))
	case n < 720:
		v := p.spend()
		c.say(p, telling{v.text + "\nfence 5.2\n\nspent 3 salt", map[model.Kind]int{"spend": 2, "fence": 1}, v.says})
	case n < 780:
		c.say(p, telling{"when is butcher day?", nil, "270 lb"})
	case n < 782:
		c.say(p, telling{"export", nil, ""})
	case n < 784:
		c.say(p, telling{"show growth", nil, ""})
	case n < 820:
		p.choice = c.say(p, telling{"barrel full", nil, "Which water barrel?"})
	case n < 900 && len(p.own) > 0:
		s := p.own[c.rnd.IntN(len(p.own))]
		c.edit(s, p.spend())
	case n < 930:
		c.hasty(p)
	case n < 970:
		c.mix(p)
	default:
		c.say(p, p.spend())
		c.api.Repeat()
		c.repeats++
	}
}

// spend is a text with a sum that the person never named before.
func (p *pen) spend() telling {
	p.spent++
	cents := 1000 + 7*p.spent
	sum := fmt.Sprintf("%d.%02d", cents/100, cents%100)
	return telling{"spent " + sum + " straw", map[model.Kind]int{"spend": 1}, "$" + strings.TrimSuffix(sum, ".00") + " "}
}

func (c *chaos) say(p *pen, v telling) *saying {
	s := &saying{pen: p, id: c.api.Say(p.who, v.text), versions: []telling{v}}
	c.sayings = append(c.sayings, s)
	p.arrived = append(p.arrived, s)
	c.said++
	return s
}

func (c *chaos) edit(s *saying, v telling) {
	c.api.Edit(s.pen.who.ID, s.pen.who, s.id, v.text)
	s.versions = append(s.versions, v)
	c.said++
}

// hasty edits a message twice right after sending it, and the updates come in
// the wrong order: the last version first.
func (c *chaos) hasty(p *pen) {
	old, newer, newest := p.spend(), p.spend(), p.spend()
	c.api.Hold()
	s := c.say(p, old)
	now := time.Now()
	for i, v := range []telling{newer, newest} {
		c.api.SetClock(func() time.Time { return now.Add(time.Duration(i+1) * time.Second) })
		c.api.Edit(p.who.ID, p.who, s.id, v.text)
		c.said++
	}
	c.api.SetClock(time.Now)
	if c.rnd.IntN(2) == 0 {
		c.api.Release(2, 0, 1)
		s.versions, s.late = []telling{newest}, newer.text
	} else {
		c.api.Release(0, 2, 1, 0)
		s.versions, s.late = []telling{old, newest}, newer.text
		c.repeats++
	}
	c.mixed++
}

// mix has some people's texts come in mixed up, one of them twice.
func (c *chaos) mix(p *pen) {
	c.api.Hold()
	before := len(p.arrived)
	for range 3 {
		c.say(p, p.spend())
	}
	order := c.rnd.Perm(3)
	came := make([]*saying, 3)
	for i, j := range order {
		came[i] = p.arrived[before+j]
	}
	copy(p.arrived[before:], came)
	c.api.Release(append(order, order[c.rnd.IntN(3)])...)
	c.repeats++
	c.mixed++
}

// press has people press the buttons that they see: of a question to them, once
// or twice, and of a nudge; and of a copy, where one went out twice.
func (c *chaos) press() {
	for _, m := range c.api.AllMessages() {
		if len(m.Buttons) == 0 {
			continue
		}
		p, label := c.pens[m.Chat-c.pens[0].who.ID], m.Buttons[0].Label
		answered, offered := p.pressed[m.Buttons[0].Data]
		switch {
		case slices.Contains(answered, m.ID):
		case offered:
			c.pressed(p, m, label, nil)
		case p.choice != nil && m.ReplyTo == fmt.Sprint(p.choice.id):
			p.choice = nil
			c.pressed(p, m, label, map[model.Kind]int{"water": 1})
			if c.rnd.IntN(3) == 0 { // impatient
				c.pressed(p, m, label, nil)
			}
		case m.ReplyTo == "" && label == "Done":
			c.pressed(p, m, label, map[model.Kind]int{"done": 1})
		}
	}
}

func (c *chaos) pressed(p *pen, m botapitest.Message, label string, want map[model.Kind]int) {
	q := c.api.Press(p.who, m.ID, label)
	if q == "" { // the message was settled just now, in answer to the press of its copy
		return
	}
	data := m.Buttons[0].Data
	p.pressed[data] = append(p.pressed[data], m.ID)
	c.presses = append(c.presses, &pressing{p, q, m.ID, want})
	c.said++
}
