package telegram

import (
	"path"
	"strings"

	"troughbell/bot"
	"troughbell/bot/document"
	"troughbell/store"
)

// file is a document that came with a message. The person's app says what it is
// called and how large it is.
type file struct {
	id, name string
	size     int
}

// brings reports whether a message brings a file to be taken in: a table or a ZIP
// with no words of its own, or any file with the word for it.
func (u update) brings(text string) bool {
	if u.file.id == "" {
		return false
	}
	switch strings.ToLower(strings.Trim(strings.TrimSpace(text), "/.")) {
	case "import", "import this", "import file":
		return true
	case "":
		return u.file.isTable()
	}
	return false
}

func (f file) isTable() bool {
	switch strings.ToLower(path.Ext(f.name)) {
	case ".zip", ".csv", ".tsv":
		return true
	}
	return false
}

// takeFile has the file taken in that came with a message. It is fetched first,
// outside of this transaction, where it is worth it.
func (h *handling) takeFile(m bot.Message) error {
	m.Medium = ""
	switch {
	case h.fetched != nil:
		m.Upload = h.fetched
	case h.member.Role == store.Helper: // who may not is told so at once
		m.Upload = &bot.Upload{Name: h.u.file.name}
	case h.u.file.size > document.MaxIntake:
		m.Upload = &bot.Upload{Name: h.u.file.name, Fault: bot.FileTooLarge}
	default:
		h.await = true
		h.after = append(h.after, func() { wake(h.bot.files) })
		return nil
	}
	return h.hear(m)
}
