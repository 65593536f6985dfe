package answer

import (
	"strings"

	"troughbell/bot/picture"
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

// draw adds the picture that was asked for, with one line of words beside it.
func (a asked) draw(out Answer) Answer {
	make, ok := pictures[a.Topic]
	if !ok {
		return out
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
