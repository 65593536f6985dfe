package answer

import (
	"strings"

	"troughbell/bot/picture"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
)

// pictures has one line for each topic that can be drawn. The others have none,
// and are answered in words alone.
var pictures = map[string]func(asked) (picture.Drawing, error){
	"growth":       growthPicture,
	"weight":       growthPicture,
	"butcher_date": growthPicture,
	"target":       growthPicture,
	"feed_left":    feedPicture,
	"feed_need":    feedPicture,
	"water_left":   waterPicture,
	"heat":         heatPicture,
	"today":        calendarPicture,
	"worming":      calendarPicture,
	"move":         calendarPicture,
	"withdrawal":   calendarPicture,
	"history":      calendarPicture,
	"cost":         costPicture,
}

// drawnWhenOver are the topics that a season has a picture of when its pigs are gone.
var drawnWhenOver = map[string]bool{"growth": true, "weight": true, "today": true, "history": true}

// draw adds the picture that was asked for, with one line of words beside it.
func (a asked) draw(out Answer) Answer {
	make, ok := pictures[a.Topic]
	if !ok {
		return out
	}
	if drawnWhenOver[a.Topic] && !a.named && len(a.h.Alive(a.today)) == 0 {
		if over, _ := FindSeasons(a.h, reading.LastSeason, a.today); len(over) > 0 {
			a.Season = reading.LastSeason
			return a.ofSeason()
		}
	}
	d, err := make(a)
	switch {
	case err != nil && out.Data == nil: // the same lacks for the figures, and was said
		return out
	case err != nil:
		out.Text = a.missing(err).Text
		return out
	}
	out.Picture, out.Buttons = d, nil
	out.Text, _, _ = strings.Cut(out.Text, "\n")
	if cal, ok := d.(picture.Calendar); ok {
		out.Text = a.v.Caption("calendar", wording.Args{Days: dayPair(cal.From, cal.To)}) + "."
	} else if out.Data == nil { // there is something to see, though not of today
		out.Text = a.v.Caption(d.Kind(), wording.Args{}) + "."
	}
	return out
}
