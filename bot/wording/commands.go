package wording

import (
	"slices"
	"strings"
)

// Menu is where a command is offered.
type Menu string

// The menus.
const (
	PrivateMenu  Menu = "private"  // a member's own chat
	GroupMenu    Menu = "group"    // a chat of several people
	OperatorMenu Menu = "operator" // the own chat of who runs the server
)

// Languages has the languages in which there are menus; empty is that for all
// who speak none of the others.
var Languages = []string{""}

// Command is a command of the chat: it is offered in menus, listed by "help
// commands" and read as the text that it stands for.
type Command struct {
	Name        string // without the slash
	Description string
	Text        string // what it stands for; empty: its own name
	Menus       []Menu
}

var (
	everywhere = []Menu{PrivateMenu, GroupMenu, OperatorMenu}
	inPrivate  = []Menu{PrivateMenu, OperatorMenu}
	toOperator = []Menu{OperatorMenu}
)

// Commands lists the commands in their order.
var Commands = []Command{
	{"today", "What is due in the next days", "what's due?", everywhere},
	{"feed", "How much feed is left", "how much feed is left?", everywhere},
	{"water", "How much water is left", "how much water is left?", everywhere},
	{"weights", "What the pigs weigh", "what do they weigh?", everywhere},
	{"butcher", "When the pigs are ready", "when are they ready for the butcher?", everywhere},
	{"withdrawal", "Which pigs are clear", "are they clear?", everywhere},
	{"cost", "What the pigs cost", "what do they cost?", inPrivate},
	{"picture", "Growth, drawn", "picture of growth", everywhere},
	{"calendar", "The coming dates, drawn", "", everywhere},
	{"why", "The sums behind the last answer", "why?", everywhere},
	{"undo", "Take the last record back", "", everywhere},
	{"export", "All records as files", "", inPrivate},
	{"import", "Records or weights from a file", "", inPrivate},
	{"privacy", "What is kept, and how to end it", "", inPrivate},
	{"invite", "A code to let family in", "", inPrivate},
	{"newherd", "A code for a further household", "", toOperator},
	{"herd", "Speak of another of your herds", "", toOperator},
	{"help", "How to use this", "", everywhere},
}

// Offered lists the commands of a menu in a language.
func Offered(in Menu, language string) []Command {
	if !slices.Contains(Languages, language) {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(Commands), func(c Command) bool { return !slices.Contains(c.Menus, in) })
}

// CommandText is a command as the text that it stands for; a word that is none
// stands for itself.
func CommandText(word, rest string) string {
	text := strings.ReplaceAll(word, "_", " ")
	for _, c := range Commands {
		if c.Name == word && c.Text != "" {
			text = c.Text
		}
	}
	return strings.TrimSpace(text + " " + rest)
}

// commandList has a line for each command of a member's own chat.
func commandList() []string {
	var out []string
	for _, c := range Offered(PrivateMenu, "") {
		out = append(out, "/"+c.Name+": "+c.Description)
	}
	return out
}

// Description is what Telegram shows of the bot before somebody has started it.
func Description() string {
	return "A private herd book for a few pigs. Text what you do in the pen, in your own words; " +
		"it keeps that, says how long feed and water last, when to worm, move and book, and writes on your chore day. " +
		"You need the code of who runs it."
}
