package bot

// How long texts are kept that nothing needs any more: those of messages sent,
// and messages that came in and could not be handled. What a text was read as
// stays with the herd.
const (
	sentDays   = 60
	failedDays = 30
)
