package reading

// Prepare makes the tables of words, for which the first text would have to wait
// otherwise, and the first with a slip again.
func Prepare() {
	words()
	usages()
	askedIn()
	heardBy()
	isDaily()
	formsFrom()
	aboutByWord()
	edgesOf()
	meantWords()
	usedWords()
}
