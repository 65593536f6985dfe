package wording

// reasonSentences say the reasons of figures, by the codes of packages model
// and schedule.
var reasonSentences = catalogue{}
