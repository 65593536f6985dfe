package replay

import (
	"bufio"
	"encoding/json"
	"io"
	"time"

	"troughbell/bot"
	"troughbell/model"
)

// JSON writes what happens as JSON Lines, flushed after every line of input, so
// that another program can hold a conversation.
type JSON struct{ w *bufio.Writer }

// NewJSON writes to w.
func NewJSON(w io.Writer) *JSON { return &JSON{bufio.NewWriter(w)} }

func (j *JSON) put(v any) error {
	e := json.NewEncoder(j.w)
	e.SetEscapeHTML(false)
	return e.Encode(v)
}

type event struct {
	At       string    `json:"at,omitempty"`
	Kind     string    `json:"kind"`
	Line     int       `json:"line,omitempty"`
	Who      string    `json:"who,omitempty"`
	About    *[]string `json:"about,omitempty"`
	Standing *bool     `json:"standing,omitempty"`
	Grade    string    `json:"grade,omitempty"`
	Text     *string   `json:"text,omitempty"`
	// What a reply or a nudge has none of is an empty list; the others have no
	// such key.
	Entries *[]map[string]any `json:"entries,omitempty"`
	Buttons *[][]string       `json:"buttons,omitempty"`
	Files   []file            `json:"files,omitempty"`
}

type file struct {
	Name  string `json:"name"`
	Kind  string `json:"kind"`
	Bytes int    `json:"bytes"`
}

func files(fs []bot.File) (out []file) {
	for _, f := range fs {
		out = append(out, file{f.Name, f.Kind, len(f.Bytes)})
	}
	return out
}

func labels(buttons [][]string) *[][]string {
	if buttons == nil {
		buttons = [][]string{}
	}
	return &buttons
}

// stamp writes a moment in RFC 3339, with its offset also where that is none.
func stamp(t time.Time) string { return t.Format("2006-01-02T15:04:05-07:00") }

// Text implements Writer.
func (j *JSON) Text(at time.Time, who, text string, _ *model.Herd) error {
	return j.put(event{At: stamp(at), Kind: "text", Who: who, Text: &text})
}

// Reply implements Writer.
func (j *JSON) Reply(at time.Time, r bot.Reply, h *model.Herd) error {
	entries := r.Slots()
	return j.put(event{
		At: stamp(at), Kind: "reply", Text: &r.Text, Entries: &entries, Buttons: labels(r.Buttons),
		Files: files(r.Files),
	})
}

// Nudge implements Writer.
func (j *JSON) Nudge(p bot.Push, _ *model.Herd) error {
	about := append([]string{}, p.Nudge.About()...)
	return j.put(event{
		At: stamp(p.At), Kind: "nudge", About: &about, Standing: &p.Nudge.Standing,
		Grade: string(p.Nudge.Grade), Text: &p.Text, Buttons: labels(p.Buttons),
		Files: files(p.Files),
	})
}

// Failed implements Writer.
func (j *JSON) Failed(number int, err error) error {
	why := err.Error()
	return j.put(event{Kind: "error", Line: number, Text: &why})
}

// Ready implements Writer.
func (j *JSON) Ready(at time.Time) error {
	e := event{Kind: "ready"}
	if !at.IsZero() {
		e.At = stamp(at)
	}
	if err := j.put(e); err != nil {
		return err
	}
	return j.w.Flush()
}
