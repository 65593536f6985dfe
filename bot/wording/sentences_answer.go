package wording

// answerSentences say the answers of package answer.
var answerSentences = catalogue{}
