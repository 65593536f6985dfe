package bot

import (
	"fmt"

	"troughbell/bot/answer"
	"troughbell/bot/picture"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// Picture is a picture that was asked for, not drawn yet.
type Picture struct {
	picture.Drawing
	Voice wording.Voice
	Style picture.Style
}

// pictureOf is the picture of an answer, nil if it has none: in the colours that
// the text asks for, else in those that are set.
func (t *talk) pictureOf(a answer.Answer, ask reading.Ask) []Picture {
	if a.Picture == nil {
		return nil
	}
	dark := t.s.Herd.DarkPictures && !ask.Light || ask.Dark
	return []Picture{{Drawing: a.Picture, Voice: t.voice(), Style: picture.Style{Dark: dark}}}
}

// Name of the picture's file.
func (p Picture) Name() string {
	return fmt.Sprintf("%s-%s.png", p.Kind(), model.DayOf(p.Voice.Now))
}

// PNG draws the picture.
func (p Picture) PNG() ([]byte, error) { return picture.PNG(p.Drawing, p.Voice, p.Style) }

// Chart draws the picture with characters.
func (p Picture) Chart(s picture.Screen) string { return picture.Blocks(p.Drawing, p.Voice, s) }

// draw makes the files of a reply's pictures.
func (r *Reply) draw() error {
	for _, p := range r.Pictures {
		b, err := p.PNG()
		if err != nil {
			return err
		}
		r.Files = append(r.Files, File{Kind: store.Photo, Name: p.Name(), Bytes: b})
	}
	return nil
}
