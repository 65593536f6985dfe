package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// booking says when to call the butcher: the slot first, then the day the pigs are
// ready. Without pigs it is the usual lead.
func booking(a asked) Answer {
	if len(a.h.Alive(a.today)) == 0 {
		lead, _ := a.h.BookingLead()
		return Answer{Text: a.say("booking_ahead", wording.Args{Q: []model.Quantity{wording.Days(float64(lead))}})}
	}
	out := butcherDate(a)
	if first, rest, ok := strings.Cut(out.Text, "\n"); ok && !strings.Contains(rest, "\n") {
		out.Text = rest + "\n" + first
	}
	return out
}

// targetSize says what pigs should weigh for the butcher, and when they do.
func targetSize(a asked) Answer {
	args := wording.Args{Q: []model.Quantity{wording.Kg(a.endKg()), wording.Kg(leastButcherKg), wording.Kg(mostButcherKg)}}
	code := "size_usual"
	if a.h.TargetStated {
		code = "size_yours"
	}
	text := a.say(code, args)
	if len(a.h.Alive(a.today)) == 0 {
		return Answer{Text: text}
	}
	day := butcherDate(a)
	day.Text = text + "\n" + day.Text
	return day
}

// leastButcherKg and mostButcherKg are the live weights at which pigs mostly go to
// the butcher, about 230 to 290 lb: common practice, no source.
const leastButcherKg, mostButcherKg = 104.3, 131.5
