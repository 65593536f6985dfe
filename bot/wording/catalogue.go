package wording

import "strings"

// A catalogue holds sentences by their code. Each part of the program has its
// own, so that one code may be a reason here and a question there.
type catalogue map[string]string

// The parts of a language.
const (
	partEffect   = "effect"
	partQuestion = "question"
	partChoice   = "choice"
	partNone     = "none"
	partLine     = "line"
	partReason   = "reason"
	partMissing  = "missing"
	partSetup    = "setup"
	partAnswer   = "answer"
	partTalk     = "talk"
	partPicture  = "picture"
	partLeave    = "leave"
	partImport   = "import"
)

// english has all sentences in English.
var english = map[string]catalogue{
	partEffect:   effectSentences,
	partQuestion: questionSentences,
	partChoice:   choicePhrases,
	partNone:     noneSentences,
	partLine:     lineSentences,
	partReason:   reasonSentences,
	partMissing:  missingSentences,
	partSetup:    setupSentences,
	partAnswer:   answerSentences,
	partTalk:     talkSentences,
	partPicture:  pictureSentences,
	partLeave:    leaveSentences,
	partImport:   importSentences,
}

// metricEnding ends the code of a sentence whose example has metric units.
const metricEnding = "_metric"

// Say gives the sentence of an answer by its code.
func (v Voice) Say(code string, a Args) string { return v.say(partAnswer, code, a) }

// Phrase gives an answer's phrase by its code, to stand inside of a sentence.
func (v Voice) Phrase(code string, a Args) string { return v.phrase(partAnswer, code, a) }

// Caption gives a line of a picture by its code.
func (v Voice) Caption(code string, a Args) string { return v.say(partPicture, code, a) }

// Label gives words of a picture by their code, to stand beside what they name.
func (v Voice) Label(code string, a Args) string { return v.phrase(partPicture, code, a) }

// say gives a sentence by its part and code. A code without a sentence, which
// the tests of the catalogues rule out for all that the program itself gives
// out, is said as its plain words with its arguments.
func (v Voice) say(part, code string, a Args) string { return capital(v.phrase(part, code, a)) }

func (v Voice) phrase(part, code string, a Args) string {
	if v.Metric() {
		if s, ok := english[part][code+metricEnding]; ok {
			return v.render(s, a)
		}
	}
	s, ok := english[part][code]
	if !ok {
		s = strings.ReplaceAll(code, "_", " ") + "[: {n}][ {q0}][, {on}][, {at}]"
	}
	return v.render(s, a)
}
