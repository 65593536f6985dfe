package document

import (
	"encoding/json"
	"math"
	"time"
	"unicode"
	"unicode/utf8"

	"troughbell/model"
	"troughbell/store"
)

// Bounds of what a record from a file may hold. Texts and numbers that were typed
// pass the reading, which takes nothing beyond them.
const (
	longestText = 4096 // characters, as of a message
	longestName = 100
	largest     = 100_000.0
	yearsAhead  = 5
)

// firstDay is the earliest day that a record may be of.
var firstDay = model.DateDay(2000, time.January, 1)

// sound refuses what no text of a person could have led to, and what would harm
// whoever reads or computes with it: signs that steer a screen, endless texts,
// numbers and days out of all bounds, a zone that does not exist.
func sound(r Row, now time.Time) *fault {
	for _, s := range []string{r.By, r.Text} {
		if f := soundText(s, longestText); f != nil {
			return f
		}
	}
	if s, ok := r.Fact.(model.Setting); ok && s.Key == model.SetZone {
		if _, err := store.Zone(s.Text); err != nil {
			return faulty("row_zone", s.Text)
		}
	}
	body, err := json.Marshal(r.Fact)
	if err != nil {
		return faulty("row_record")
	}
	var parts any
	if err := json.Unmarshal(body, &parts); err != nil {
		return faulty("row_record")
	}
	b := bounds{characters: longestName, number: largest, now: now}
	if _, ok := r.Fact.(model.Question); ok { // it asks whether something out of bounds is right
		b.characters, b.number = longestText, math.MaxFloat64
	}
	return b.judge(parts)
}

// bounds are how many characters a word in a list has at most, and how large a number
// is.
type bounds struct {
	characters int
	number     float64
	now        time.Time
}

// judge looks at a part of a fact.
func (b bounds) judge(v any) *fault {
	switch v := v.(type) {
	case string:
		if d, err := model.ParseDay(v); err == nil {
			if y, _, _ := d.Date(); d < firstDay || y > b.now.Year()+yearsAhead {
				return faulty("row_day", v)
			}
		}
		if t, err := time.Parse(time.RFC3339, v); err == nil && (t.Year() < 2000 || t.Year() > b.now.Year()+yearsAhead) {
			return faulty("row_day", v)
		}
		return soundText(v, longestText)
	case float64:
		if math.Abs(v) > b.number {
			return faulty("row_range", plain(v))
		}
	case []any:
		for _, part := range v {
			if s, ok := part.(string); ok {
				if f := soundText(s, b.characters); f != nil {
					return f
				}
			}
			if f := b.judge(part); f != nil {
				return f
			}
		}
	case map[string]any:
		for name, part := range v {
			if f := soundText(name, longestName); f != nil {
				return f
			}
			if f := b.judge(part); f != nil {
				return f
			}
		}
	}
	return nil
}

func soundText(s string, most int) *fault {
	if !utf8.ValidString(s) || utf8.RuneCountInString(s) > most {
		return faulty("row_long")
	}
	for _, r := range s {
		if unicode.IsControl(r) && r != '\n' && r != '\t' && r != '\r' {
			return faulty("row_signs")
		}
	}
	return nil
}
