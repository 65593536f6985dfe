package wording

// Command is a command of the chat's menu.
type Command struct {
	Name        string // without the slash
	Description string
}

// Commands lists the commands of the menu in their order.
var Commands = []Command{
	{"today", "What is due in the next days"},
	{"feed", "How much feed is left"},
	{"water", "How much water is left"},
	{"weights", "What the pigs weigh"},
	{"butcher", "When the pigs are ready"},
	{"withdrawal", "Which pigs are clear"},
	{"cost", "What the pigs cost"},
	{"why", "The sums behind the last answer"},
	{"undo", "Take the last record back"},
	{"export", "All records as files"},
	{"help", "How to use this"},
}

// CommandTexts is the text that a command stands for; a command that is not
// here stands for its own name.
var CommandTexts = map[string]string{
	"today":      "what's due?",
	"feed":       "how much feed is left?",
	"water":      "how much water is left?",
	"weights":    "what do they weigh?",
	"butcher":    "when are they ready for the butcher?",
	"withdrawal": "are they clear?",
	"cost":       "what do they cost?",
	"why":        "why?",
}
