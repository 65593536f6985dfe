package bot

import (
	"errors"
	"fmt"
	"path"
	"strings"
	"time"
	"unicode"

	"troughbell/bot/document"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// Upload is a file that came with a message.
type Upload struct {
	Name  string
	Bytes []byte
	// Fault says why there are no Bytes; empty if there are.
	Fault string
}

// Why there is nothing of an Upload.
const (
	FileTooLarge    = "too_large"
	FileUnreachable = "unreachable"
)

// longestFile is how much of a file's name is shown, in characters.
const longestFile = 60

// title is the file's name as it is shown and kept.
func (u Upload) title() string {
	name := path.Base(strings.ReplaceAll(u.Name, `\`, "/"))
	name = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(name, ""))
	if r := []rune(name); len(r) > longestFile {
		name = string(r[:longestFile])
	}
	if name = strings.TrimSpace(name); name == "" || name == "." || name == "/" {
		return "file"
	}
	return name
}

// aboutImport is what the question whether to take a file in is about.
const aboutImport = "import"

// uploadKey is what a file is called that came with a message.
func uploadKey(src store.Source) string { return fmt.Sprintf("%d:%s", src.Chat, src.Message) }

// readUpload reads a file against the herd and works out what it brings.
func (s *State) readUpload(u Upload, now time.Time, base int64) (intakePlan, error) {
	in, err := document.ReadTables(u.Name, u.Bytes, document.Terms{Units: s.Herd.Units, Zone: s.Zone, Now: now})
	if err != nil {
		return intakePlan{}, err
	}
	return s.planImport(in, base)
}

// upload answers a file: what is in it, and whether to take it in. Until that is
// answered nothing of it is recorded.
func (t *talk) upload() error {
	u := *t.m.Upload
	if t.m.Edit {
		if err := t.dropAsked(); err != nil {
			return err
		}
	}
	v := t.voice()
	switch {
	case t.m.From.Role == store.Helper:
		t.say(v.Forbidden(aboutImport))
		return nil
	case u.Fault != "":
		t.say(v.Import(u.Fault))
		return nil
	}
	plan, err := t.s.readUpload(u, t.now, 0)
	var bad *document.Unreadable
	switch {
	case errors.As(err, &bad):
		t.say(v.Import(bad.Code, bad.Names...))
		return nil
	case err != nil:
		return err
	}
	preview := v.ImportPreview(u.title(), plan.says)
	if len(plan.new) == 0 {
		t.say(preview)
		return nil
	}
	today := model.DayOf(t.now)
	key := uploadKey(t.source())
	t.r = reading.Reading{Entries: []reading.Entry{{On: today, Act: reading.Clarify{
		About: aboutImport, Code: "import_sure", Names: []string{u.title()}, Q: []model.Quantity{wording.N(len(plan.new))},
		Choices: []reading.Choice{
			{Code: "import_yes", Entries: []reading.Entry{{Act: reading.Do{What: aboutImport, Arg: key}, On: today}}},
			{Code: "import_no", Entries: []reading.Entry{{Act: reading.None{Reason: "import_left"}, On: today}}},
		},
	}}}}
	t.out.Keep = &store.Upload{Herd: t.s.Row.ID, By: t.m.From.Person, Key: key, Name: u.Name, Bytes: u.Bytes, At: t.now}
	t.out.At = t.now
	reply := Reply{Entries: t.r.Entries}
	question, err := t.ask(&reply)
	if err != nil {
		return err
	}
	reply.Text = strings.Join(append([]string{preview}, question...), "\n")
	reply.Buttons = t.buttons
	t.out.Replies = []Reply{reply}
	return nil
}

// dropAsked drops the questions that an earlier version of the message raised.
func (t *talk) dropAsked() error {
	for _, q := range t.s.Herd.Open() {
		if src, _ := t.s.origin(q.ID); src == t.source() {
			if err := t.append(t.note(model.Settled{Question: q.ID, How: "dropped"})); err != nil {
				return err
			}
		}
	}
	return nil
}

// takeIn notes which file is to be taken in, of who may: the desk has it.
func (t *talk) takeIn(key string) {
	if t.m.From.Role == store.Helper {
		t.lines = append(t.lines, t.voice().Forbidden(aboutImport))
		return
	}
	t.out.TakeIn = key
	t.lines = append(t.lines, t.voice().Import("begun"))
}
