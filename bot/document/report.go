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
	r := report{h: h, now: now, today: model.DayOf(now), v: wording.Voice{Herd: h, Now: now, Own: true}}
	if all := h.Seasons(); len(all) > 0 {
		r.season = all[len(all)-1]
	}
	r.season.PaidTo = r.today // what is dated ahead is not part of it
	return r.page(r.v.ReportDay(r.today), r.pigs(), r.ready(), r.next(), r.feed(), r.water(), r.drugs(), r.health(), r.meat(), r.costs())
}

// SeasonReport writes a season that is over: what was.
func SeasonReport(h *model.Herd, s model.Season, now time.Time) ([]byte, error) {
	r := report{h: h, now: now, today: model.DayOf(now), v: wording.Voice{Herd: h, Now: now, Own: true}, season: s, over: true}
	r.season.PaidTo = min(s.PaidTo, r.today)
	r.at = r.season.PaidTo.At(24*60-1, now.Location())
	return r.page(r.v.SeasonDays(s), r.pigs(), r.feed(), r.water(), r.drugs(), r.health(), r.costs())
}

// page writes the sections that have something in them.
func (r report) page(day string, all ...section) ([]byte, error) {
	all = slices.DeleteFunc(all, func(s section) bool { return len(s.Lines)+len(s.Rows) == 0 })
	if len(all) == 0 {
		all = []section{{Lines: []string{wording.Report("no_records")}}}
	}
	var out bytes.Buffer
	err := pageTemplate.Execute(&out, map[string]any{
		"Title": r.v.ReportTitle(), "Day": day, "Sections": all, "Footer": wording.Report("footer"),
	})
	if err != nil {
		return nil, fmt.Errorf("season report: %w", err)
	}
	return out.Bytes(), nil
}

type report struct {
	h      *model.Herd
	now    time.Time
	today  model.Day
	season model.Season
	over   bool      // it is of a season that is over
	at     time.Time // of one that is over: the moment as of which its money is summed
	v      wording.Voice
}

// holds reports whether what is of the day belongs to the season.
func (r report) holds(on model.Day) bool { return on >= r.season.From && on <= r.season.PaidTo }

// ask gives the lines that answer a question about the herd. Where something
// needed is not known there are none: a report asks nothing.
func (r report) ask(topic string) []string {
	now := r.now
	if r.over {
		now = r.at
	}
	a := answer.To(r.h, now, reading.Ask{Topic: topic}, nil)
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
	if r.over {
		s.Head = words("pig", "came", "weighed", "status")
	} else if ws, err := r.h.Weights(r.today); err == nil { // else the columns stay empty
		for _, w := range ws {
			estimates[w.Animal] = w
		}
	}
	for _, p := range r.h.Animals {
		if !slices.Contains(r.season.Pigs, p) {
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
		if r.over { // what it weighs today, and gains, is no part of it
			row = slices.Delete(row, 3, 5)
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}

// weighed says the pig's last weighing.
func (r report) weighed(p *model.Animal) string {
	for i := len(r.h.Weighings) - 1; i >= 0; i-- {
		w := r.h.Weighings[i]
		if w.F.WeightKg == 0 && w.F.GirthCm == 0 || !slices.Contains(w.F.Animals, p.Name) || p.Name == "" || !r.holds(w.On) {
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
	s := section{Title: wording.Report("feed")}
	if !r.over {
		s.Lines = append(r.ask("feed_left"), r.ask("feed_need")...)
	}
	total := 0.0
	for _, f := range r.h.Refills {
		if r.holds(f.On) && f.F.FeedKg != nil {
			total += *f.F.FeedKg
		}
	}
	if total > 0 {
		s.Lines = append(s.Lines, r.soFar("fed")+": "+r.v.Quantity(wording.Kg(total), "")+".")
	}
	return s
}

// soFar is a word on a sum of the season.
func (r report) soFar(code string) string {
	if r.over {
		code += "_over"
	}
	return wording.Report(code)
}

func (r report) water() section {
	s := section{Title: wording.Report("water")}
	if !r.over {
		s.Lines = r.ask("water_left")
	}
	total := 0.0
	for _, w := range r.h.Waters {
		if r.holds(w.On) && w.F.Litres != nil && !w.F.Seen {
			total += *w.F.Litres
		}
	}
	if total > 0 {
		s.Lines = append(s.Lines, r.soFar("watered")+": "+r.v.Quantity(wording.L(total), "")+".")
	}
	return s
}

func (r report) drugs() section {
	s := section{Title: wording.Report("drugs"), Head: words("date", "pig", "product", "days", "clear")}
	if !r.over {
		s.Lines = r.ask("withdrawal")
	}
	for _, t := range r.h.Treatments {
		if !r.holds(t.On) {
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
		if r.holds(rec.On) {
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
		if x.On < r.season.PaidFrom || x.On > r.season.PaidTo {
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
