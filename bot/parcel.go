package bot

import (
	"troughbell/bot/document"
	"troughbell/store"
)

// File goes out with a reply or a nudge.
type File struct {
	Kind    string // store.Photo or store.Document
	Name    string // as the person will find it: a plain file name
	Bytes   []byte // at most store.MaxFile
	Caption string // below it; empty: as much of the text as fits

	given *document.Given // what is to be remembered of a calendar that goes out
}

// maxCaption is how long the text below a file may be, in UTF-16 units. Telegram
// takes 1,024 (its Bot API manual, sendPhoto); what is left is room for the line
// that says which button was pressed.
const maxCaption = 900

// parcel is one message on its way into the outbox.
type parcel struct {
	text    string
	buttons [][]string
	file    *store.File
}

// pack makes messages of a text, its buttons and its files. A text short enough
// goes below the first file where that has no caption of its own; else the files
// come behind the text. The buttons hang below the end of the text.
func pack(text string, buttons [][]string, files []File) []parcel {
	var out []parcel
	below := len(files) > 0 && files[0].Caption == "" && units(text) <= maxCaption
	if text != "" && !below {
		for _, part := range split(text, maxUnits) {
			out = append(out, parcel{text: part})
		}
		out[len(out)-1].buttons = buttons
	}
	for i, f := range files {
		p := parcel{text: split(f.Caption, maxCaption)[0], file: &store.File{Kind: f.Kind, Name: f.Name, Bytes: f.Bytes}}
		if i == 0 && below {
			p.text, p.buttons = text, buttons
		}
		out = append(out, p)
	}
	return out
}
