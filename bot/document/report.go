package document

import (
	"bytes"
	_ "embed" // the page
	"fmt"
	"html/template"
	"slices"
	"sort"
	"strings"
	"time"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

//go:embed report.html
var page string

var pageTemplate = template.Must(template.New("report").Parse(page))

// section is a part of the report: sentences, then a table, either may be empty.
type section struct {
	Title string
	Lines []string
	Head  []string
	Rows  [][]string
}

// Report writes the season in one page that needs no other file: what was, what
// is and what comes, in the person's words and units.
func Report(h *model.Herd, now time.Time) ([]byte, error) {
	r := report{h: h, now: now, today: model.DayOf(now), v: wording.Voice{Herd: h, Now: now}}
	r.from = seasonFrom(h, r.today)
	var kept []section
	for _, s := range []section{r.pigs(), r.ready(), r.next(), r.feed(), r.water(), r.drugs(), r.health(), r.meat(), r.costs()} {
		if len(s.Lines)+len(s.Rows) > 0 {
			kept = append(kept, s)
		}
	}
	if len(kept) == 0 {
		kept = []section{{Lines: []string{wording.Report("no_records")}}}
	}
	var out bytes.Buffer
	err := pageTemplate.Execute(&out, map[string]any{
		"Title": r.v.ReportTitle(), "Day": r.v.ReportDay(r.today), "Sections": kept, "Footer": wording.Report("footer"),
	})
	if err != nil {
		return nil, fmt.Errorf("season report: %w", err)
	}
	return out.Bytes(), nil
}

type report struct {
	h     *model.Herd
	now   time.Time
	today model.Day
	from  model.Day // the season's first
	v     wording.Voice
}

// seasonBack is how long before the latest arrival another belongs to the same
// season, where no pig is left to tell.
const seasonBack = 120

// seasonFrom is the day on which the season began: the arrival of the first pigs
// that are here still; where none are, of those that came with the latest.
func seasonFrom(h *model.Herd, today model.Day) model.Day {
	from, found := model.Day(0), false
	for _, p := range h.Alive(today) {
		if !found || p.Group.Arrived < from {
			from, found = p.Group.Arrived, true
		}
	}
	if found {
		return from
	}
	var last model.Day
	for _, g := range h.Groups {
		last = max(last, g.Arrived)
	}
	for _, g := range h.Groups {
		if g.Arrived >= last-seasonBack && (!found || g.Arrived < from) {
			from, found = g.Arrived, true
		}
	}
	return from
}

// ask gives the lines that answer a question about the herd. Where something
// needed is not known there are none: a report asks nothing.
func (r report) ask(topic string) []string {
	a := answer.To(r.h, r.now, reading.Ask{Topic: topic}, nil)
	if a.Data == nil {
		return nil
	}
	return strings.Split(a.Text, "\n")
}

func words(codes ...string) (out []string) {
	for _, c := range codes {
		out = append(out, wording.Report(c))
	}
	return out
}

func (r report) pigs() section {
	s := section{Title: wording.Report("pigs"), Head: words("pig", "came", "weighed", "today", "gain", "status")}
	estimates := map[*model.Animal]model.PigWeight{}
	if ws, err := r.h.Weights(r.today); err == nil { // else the columns stay empty
		for _, w := range ws {
			estimates[w.Animal] = w
		}
	}
	for _, p := range r.h.Animals {
		if p.Group.Arrived < r.from {
			continue
		}
		row := []string{p.Name, r.v.Day(p.Group.Arrived), r.weighed(p), "", "", wording.Report("here")}
		if p.Name == "" {
			row[0] = wording.Report("unnamed")
		}
		if w, ok := estimates[p]; ok {
			row[3] = r.v.Quantity(wording.Kg(w.WeightKg.Mid), "") + " (" + r.v.Range(wording.Kg(w.WeightKg.Low), wording.Kg(w.WeightKg.High), "") + ")"
			row[4] = r.v.Quantity(wording.KgD(w.GainKgD.Mid), "")
		}
		if p.Gone != nil {
			row[5] = wording.Report(p.Gone.F.How) + " " + r.v.Day(p.Gone.On)
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}

// weighed says the pig's last weighing.
func (r report) weighed(p *model.Animal) string {
	for i := len(r.h.Weighings) - 1; i >= 0; i-- {
		w := r.h.Weighings[i]
		if w.F.WeightKg == 0 && w.F.GirthCm == 0 || !slices.Contains(w.F.Animals, p.Name) || p.Name == "" {
			continue
		}
		q := wording.Kg(w.F.WeightKg)
		if w.F.WeightKg == 0 {
			q = model.Quantity{Value: w.F.GirthCm, Unit: model.Centimetres}
		}
		return r.v.Quantity(q, "") + ", " + r.v.Day(w.On)
	}
	return ""
}

func (r report) ready() section {
	return section{Title: wording.Report("ready"), Lines: r.ask("butcher_date")}
}

func (r report) next() section {
	if len(r.h.Animals) == 0 {
		return section{}
	}
	return section{Title: wording.Report("next"), Lines: r.ask("today")}
}

func (r report) meat() section {
	return section{Title: wording.Report("meat"), Lines: r.ask("yield")}
}

func (r report) feed() section {
	s := section{Title: wording.Report("feed"), Lines: append(r.ask("feed_left"), r.ask("feed_need")...)}
	total := 0.0
	for _, f := range r.h.FeedFills() {
		if model.DayOf(f.At) >= r.from {
			total += f.TookKg
		}
	}
	if total > 0 {
		s.Lines = append(s.Lines, wording.Report("fed")+": "+r.v.Quantity(wording.Kg(total), "")+".")
	}
	return s
}

func (r report) water() section {
	s := section{Title: wording.Report("water"), Lines: r.ask("water_left")}
	total := 0.0
	for _, w := range r.h.Waters {
		if w.On >= r.from && w.F.Litres != nil && !w.F.Seen {
			total += *w.F.Litres
		}
	}
	if total > 0 {
		s.Lines = append(s.Lines, wording.Report("watered")+": "+r.v.Quantity(wording.L(total), "")+".")
	}
	return s
}

func (r report) drugs() section {
	s := section{Title: wording.Report("drugs"), Lines: r.ask("withdrawal"), Head: words("date", "pig", "product", "days", "clear")}
	for _, t := range r.h.Treatments {
		if t.On < r.from {
			continue
		}
		product := t.Product
		if product == "" {
			product = wording.Report("no_name")
		}
		clear := wording.Report("not_clear")
		if t.WithdrawalDays != nil {
			if at, err := model.ClearMoment(t.At, t.Said, *t.WithdrawalDays); err == nil {
				clear = r.v.Moment(at.In(r.now.Location()))
			}
		}
		s.Rows = append(s.Rows, []string{r.v.Day(t.On), r.v.Names(t.Animals), product, r.v.Withdrawal(t.WithdrawalDays), clear})
	}
	return s
}

func (r report) health() section {
	s := section{Title: wording.Report("health"), Head: words("date", "what")}
	var all []model.Record
	add := func(rec model.Record) {
		if rec.On >= r.from {
			all = append(all, rec)
		}
	}
	for _, x := range r.h.Sicks {
		add(x.Record)
	}
	for _, x := range r.h.Alarms {
		add(x.Record)
	}
	for _, x := range r.h.Gones {
		add(x.Record)
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].On < all[j].On })
	for _, rec := range all {
		e := reading.Entry{Act: reading.Fact{Fact: rec.Fact}, On: r.today}
		s.Rows = append(s.Rows, []string{r.v.Day(rec.On), r.v.Echo(e)})
	}
	return s
}

func (r report) costs() section {
	s := section{Title: wording.Report("costs"), Lines: r.ask("cost"), Head: words("date", "what", "amount")}
	for _, x := range r.h.Spends {
		if x.On < r.from {
			continue
		}
		amount := r.v.Amount(x.F.Amount, x.F.Currency)
		if x.F.Income {
			amount = "+" + amount
		}
		s.Rows = append(s.Rows, []string{r.v.Day(x.On), x.F.What, amount})
	}
	return s
}
