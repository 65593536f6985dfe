package wording

import (
	"fmt"
	"strings"

	"troughbell/model"
)

// reportWords has the headings, column heads and fixed words of a report.
var reportWords = map[string]string{
	"title":        "Season report",
	"pigs":         "Pigs",
	"ready":        "Ready for the butcher",
	"feed":         "Feed",
	"water":        "Water",
	"costs":        "Costs",
	"drugs":        "Drugs and withdrawal",
	"health":       "Health and losses",
	"meat":         "Meat",
	"next":         "What comes",
	"pig":          "Pig",
	"came":         "Came",
	"weighed":      "Last weighed",
	"today":        "Today",
	"gain":         "Gain",
	"status":       "Where",
	"date":         "Date",
	"what":         "What",
	"amount":       "Amount",
	"product":      "Product",
	"days":         "Withdrawal",
	"clear":        "Clear from",
	"here":         "here",
	"died":         "died",
	"sold":         "sold",
	"butchered":    "butchered",
	"unnamed":      "without a name",
	"not_known":    "days not known",
	"not_clear":    "NOT CLEAR",
	"no_name":      "not named",
	"fed":          "Poured into feeders so far",
	"watered":      "Poured into barrels so far",
	"fed_over":     "Poured into feeders",
	"watered_over": "Poured into barrels",
	"footer":       "Weights, dates and stocks are computed from what was told, and are estimates. On drugs the label and the vet decide. Feed, health and heat: look in the pen.",
	"no_records":   "Nothing is recorded yet.",
	"calendar":     "Coming dates",
	"round":        "Pig round",
	"clear_event":  "Clear of withdrawal",
	"butcher":      "Butcher",
}

// Report gives a heading or fixed word of a report by its code; empty where
// there is none of that code.
func Report(code string) string { return reportWords[code] }

// ReportTitle is what a report is called.
func (v Voice) ReportTitle() string {
	title := Report("title")
	if v.Herd != nil && v.Herd.Name != "" {
		title = v.Herd.Name + ": " + strings.ToLower(title)
	}
	return title
}

// ReportDay is the day of the report, with its year.
func (v Voice) ReportDay(d model.Day) string {
	if v.otherYear(d) != "" {
		return v.Day(d)
	}
	y, _, _ := d.Date()
	return fmt.Sprintf("%s %d", v.Day(d), y)
}

// SeasonDays is the days of a season that is over, with the year.
func (v Voice) SeasonDays(s model.Season) string {
	days := v.DayRange(s.From, s.To)
	if v.otherYear(s.To) == "" {
		y, _, _ := s.To.Date()
		days += fmt.Sprintf(" %d", y)
	}
	return days
}

// SeasonPage says that the page of a season that is over comes along.
func (v Voice) SeasonPage(s model.Season) string {
	return v.say(partTalk, "do_season", Args{Names: []string{v.SeasonDays(s)}})
}

// Withdrawal says the withdrawal days of a treatment as they were told.
func (v Voice) Withdrawal(days *int) string {
	if days == nil {
		return Report("not_known")
	}
	return dayNoun(v.Quantity(N(*days), ""))
}
