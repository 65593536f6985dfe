package wording

import (
	"strings"

	"troughbell/model"
)

// Help is one screen on how to use the bot, or with a topic three or four examples in
// the herd's own names; or the first week; or the list of commands. A topic that is not known gets
// the screen.
func (v Voice) Help(about string) string {
	switch strings.TrimSpace(strings.ToLower(about)) {
	case "commands":
		return strings.Join(commandList(), "\n")
	case "start":
		return v.firstWeek()
	}
	if t, ok := findTopic(about); ok {
		lines := []string{t.Title + ". Text things like:"}
		for _, x := range v.Examples(t) {
			lines = append(lines, "  "+x)
		}
		return strings.Join(lines, "\n")
	}
	words := make([]string, len(Topics))
	for i, t := range Topics {
		words[i] = t.Name
	}
	return strings.Join([]string{
		"Text what you did, in any order, several in one text:",
		"  " + v.examplesOf("feed")[0] + ", " + v.examplesOf("water")[0],
		"  " + v.examplesOf("weigh")[0],
		"Ask: how much feed is left? when are they ready? what's due? why?",
		"Wrong? Edit your message, or text: undo.",
		"Help on one thing: help " + strings.Join(words, ", help ") + ", help start, help commands",
	}, "\n")
}

// Example is one text in the herd's own names for a kind of record or a topic.
func (v Voice) Example(about string) string {
	if t, ok := findTopic(about); ok {
		return v.Examples(t)[0]
	}
	return v.examplesOf("feed")[0]
}

func (v Voice) examplesOf(name string) []string {
	t, _ := findTopic(name)
	return v.Examples(t)
}

// Examples fills a topic's examples with the herd's own names.
func (v Voice) Examples(t Topic) []string {
	texts := t.US
	if v.Metric() && t.Metric != nil {
		texts = t.Metric
	}
	return v.own(texts)
}

func (v Voice) own(texts []string) []string {
	replace := strings.NewReplacer(
		"PIG", v.ownName(), "FEEDER", v.ownFeeder(), "BARREL", v.ownBarrel(), "PEN", v.ownPen(),
	)
	out := make([]string, len(texts))
	for i, s := range texts {
		out[i] = replace.Replace(s)
	}
	return out
}

func findTopic(about string) (Topic, bool) {
	about = strings.ToLower(strings.TrimSpace(about))
	for _, t := range Topics {
		if about == t.Name {
			return t, true
		}
	}
	for _, t := range Topics {
		for _, k := range t.Kinds {
			if about == string(k) {
				return t, true
			}
		}
		for _, w := range t.Words {
			if about == w {
				return t, true
			}
		}
	}
	return Topic{}, false
}

// Topic is a thing that help can be asked about: its records and questions, and
// what to text. In the examples PIG, FEEDER, BARREL and PEN stand for the
// herd's own names.
type Topic struct {
	Name   string // what is typed behind "help"
	Title  string
	Words  []string     // other words for it, and topics of questions
	Kinds  []model.Kind // records that it covers
	US     []string
	Metric []string // nil: the same
}
