package reading

// Read reads one text. It never panics and never guesses: what is in doubt
// comes back as a Clarify, what is not understood in Left. There is always at
// least one entry.
func Read(c Context, text string) Reading {
	panic("reading")
}
