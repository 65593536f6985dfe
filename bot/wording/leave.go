package wording

import (
	"strings"

	"troughbell/model"
)

// leave says a sentence about deleting, leaving and what is kept.
func (v Voice) leave(code string, a Args) string { return v.say(partLeave, code, a) }

// ofHerd says a sentence about a herd, which may have no name.
func (v Voice) ofHerd(code, herd string) string {
	if herd == "" {
		return v.leave(code+"_unnamed", Args{})
	}
	return v.leave(code, Args{Names: []string{herd}})
}

// AllOfIt is what is typed to delete a herd, or to be forgotten, where no name can
// be typed.
func AllOfIt() string { return "all of it" }

// Deleting is what deleting a herd would take.
type Deleting struct {
	Herd    string
	Records int
	Since   model.Day
	People  []string // an empty name is of who sits at the terminal
	Files   int      // that wait to be sent
	Copies  []string
	Minutes int // in which to confirm it
}

// Delete says what would go, what stays, and what to type.
func (v Voice) Delete(d Deleting) string {
	herd := d.Herd
	if herd == "" {
		herd = v.leave("this_herd", Args{})
	}
	lines := []string{v.leave("delete", Args{
		Names: []string{herd, v.everybody(d.People, nil)}, Days: []model.Day{d.Since},
		Q: []model.Quantity{N(d.Records), N(len(d.People)), N(d.Files)},
	})}
	if len(d.Copies) > 0 {
		lines = append(lines, v.leave("copies", Args{Names: d.Copies}))
	} else {
		lines = append(lines, v.leave("no_copies", Args{}))
	}
	lines = append(lines, v.leave("elsewhere", Args{}))
	if d.Records > 0 {
		lines = append(lines, v.leave("export_first", Args{}))
	}
	code, typed := "type_herd", d.Herd
	if typed == "" {
		code, typed = "type_unnamed_herd", AllOfIt()
	}
	return strings.Join(append(lines, v.leave(code, Args{Names: []string{typed}, Q: []model.Quantity{N(d.Minutes)}})), "\n")
}

// DailyCopies says how many copies lie in a folder.
func (v Voice) DailyCopies(folder string, count int, latest model.Day) string {
	return v.phrase(partLeave, "daily_copies", Args{Names: []string{folder}, Days: []model.Day{latest}, Q: []model.Quantity{N(count)}})
}

// Deleted is the last word on a herd to who deleted it.
func (v Voice) Deleted(herd string, copies []string) string {
	text := v.ofHerd("deleted", herd)
	if len(copies) > 0 {
		text += "\n" + v.leave("copies", Args{Names: copies})
	}
	return text
}

// DeletedByOwner is the last word on a herd to everybody else.
func (v Voice) DeletedByOwner(herd string) string { return v.ofHerd("deleted_by_owner", herd) }

// SpeaksOf says which herd the chat speaks of from now on.
func (v Voice) SpeaksOf(herd string) string { return v.leave("speaks_of", Args{Names: []string{herd}}) }

// StillOperator says what who runs the server can do without a herd.
func (v Voice) StillOperator() string { return v.leave("still_operator", Args{}) }

// NotTold says how many chats could not be told from here.
func NotTold(chats int) string {
	return Voice{}.leave("not_told", Args{Q: []model.Quantity{N(chats)}})
}

// Forget says what being forgotten takes, from which herds, and what to type; name
// is empty where it cannot be typed.
func (v Voice) Forget(herds []string, name string, operator bool, minutes int) string {
	lines := []string{v.leave("forget", Args{Names: herds})}
	if operator {
		lines = append(lines, v.leave("forget_operator", Args{}))
	}
	code := "type_name"
	if name == "" {
		code, name = "type_unnamed_person", AllOfIt()
	}
	return strings.Join(append(lines, v.leave(code, Args{Names: []string{name}, Q: []model.Quantity{N(minutes)}})), "\n")
}

// Forgotten is the last word to who was forgotten.
func (v Voice) Forgotten() string { return v.leave("forgotten", Args{}) }

// ForgottenNotice tells an owner that somebody was forgotten.
func (v Voice) ForgottenNotice() string { return v.leave("forgotten_notice", Args{}) }

// OwnerGoes says what an owner has to do first; heir is somebody who could own the
// herd, empty if there is nobody.
func (v Voice) OwnerGoes(herd, heir string) string {
	if herd == "" {
		herd = v.leave("this_herd", Args{})
	}
	if heir == "" {
		return v.leave("owner_alone", Args{Names: []string{herd}})
	}
	return v.leave("owner_goes", Args{Names: []string{herd, heir}})
}

// OwnerElsewhere says that the person owns another herd too.
func (v Voice) OwnerElsewhere(herd string) string {
	return v.leave("owner_elsewhere", Args{Names: []string{herd}})
}

// LetBe says that what was to be confirmed is let be.
func (v Voice) LetBe() string { return v.leave("let_be", Args{}) }

// TooLate says that a confirmation came too late.
func (v Voice) TooLate() string { return v.leave("too_late", Args{}) }

// People lists who belongs to a herd, with the role of each.
func (v Voice) People(herd string, names, roles []string, owner bool) string {
	all := v.everybody(names, roles)
	code := "people"
	if herd == "" {
		code = "people_unnamed"
	}
	out := v.leave(code, Args{Names: []string{herd, all}})
	if owner {
		out += "\n" + v.leave("people_owner", Args{})
	}
	return out
}

// everybody lists people, with the role of each where roles are given.
func (v Voice) everybody(names, roles []string) string {
	each := make([]string, len(names))
	for i := range names {
		name := names[i]
		if name == "" {
			name = v.phrase(partLeave, "no_name", Args{})
		}
		each[i] = name
		if roles != nil {
			each[i] = v.phrase(partLeave, "person", Args{Names: []string{name, roles[i]}})
		}
	}
	return v.Names(each)
}

// Nobody says that nobody of the herd goes by that name, and who there is.
func (v Voice) Nobody(name string, names, roles []string) string {
	return v.leave("nobody", Args{Names: []string{name, v.everybody(names, roles)}})
}

// OfPerson says something of a person by its code: "two_of_name", "not_owner",
// "removed", "owns_already", "handed_over".
func (v Voice) OfPerson(code, name string) string {
	return v.leave(code, Args{Names: []string{name}})
}

// NotYourself refuses to take out who asks.
func (v Voice) NotYourself() string { return v.leave("not_yourself", Args{}) }

// RemovedNotice is the last word to who was taken out.
func (v Voice) RemovedNotice(herd string) string { return v.ofHerd("removed_notice", herd) }

// HandOver says what handing the herd on means, and what to type.
func (v Voice) HandOver(to string, minutes int) string {
	return v.leave("hand_over", Args{Names: []string{to}, Q: []model.Quantity{N(minutes)}})
}

// HandedNotice tells who owns the herd now.
func (v Voice) HandedNotice(herd string) string { return v.ofHerd("handed_notice", herd) }

// Privacy says what is kept, where, who sees it, for how long, and how to take it
// along or end it. place is where the forecast is fetched for; empty if nowhere.
func (v Voice) Privacy(sentDays, failedDays int, place string) string {
	return v.leave("privacy", Args{Names: []string{place}, Q: []model.Quantity{N(sentDays), N(failedDays)}})
}
