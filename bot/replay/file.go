package replay

import (
	"errors"
	"io"

	"troughbell/bot"
	"troughbell/bot/document"
)

// upload is the document that a line brings, as far as one may be large.
func (p *Player) upload(path string) (u *bot.Upload, err error) {
	if path == "" {
		return nil, nil
	}
	f, err := p.Files.Open(path)
	if err != nil {
		return nil, badf("the file cannot be read (%v): put it beside the log", err)
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	info, err := f.Stat()
	if err != nil {
		return nil, badf("the file cannot be read: %v", err)
	}
	b, err := io.ReadAll(io.LimitReader(f, document.MaxIntake+1))
	if err != nil {
		return nil, badf("the file cannot be read: %v", err)
	}
	return &bot.Upload{Name: info.Name(), Bytes: b}, nil
}

// said is a line as it is shown.
func (l line) said() string {
	switch {
	case l.file == "":
		return l.text
	case l.text == "":
		return "[" + l.file + "]"
	}
	return "[" + l.file + "] " + l.text
}
