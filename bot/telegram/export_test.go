package telegram

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"strconv"
	"strings"
	"testing"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
)

// "export" brings the records, the report and the calendar; a helper gets only
// what tells nothing of money.
func TestExportInChat(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "herd name is Long Acre. 4 pigs came today, 48 lb each. US units. chore day saturday 7 am")
	r.ask(ann, "spent $45 on straw")
	message := r.api.Say(ann, "export")
	r.eventually(func() bool { return len(r.answersTo(ann.ID, message)) == 3 })
	files := map[string]*botapitest.File{}
	for _, m := range r.answersTo(ann.ID, message) {
		require.Equal(t, "document", m.File.Kind)
		files[m.File.Name[strings.LastIndexByte(m.File.Name, '.'):]] = m.File
	}
	require.True(t, strings.HasPrefix(files[".zip"].Name, "Long Acre 20"), files[".zip"].Name)
	z, err := zip.NewReader(bytes.NewReader(files[".zip"].Bytes), int64(len(files[".zip"].Bytes)))
	require.NoError(t, err)
	f, err := z.Open("spend.csv")
	require.NoError(t, err)
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 2)
	require.Contains(t, rows[1], "spent $45 on straw")
	require.Contains(t, string(files[".html"].Bytes), "Long Acre: season report")
	require.Contains(t, string(files[".html"].Bytes), "$45")
	require.Contains(t, string(files[".ics"].Bytes), "SUMMARY:Pig round\r\n")
	r.settled()
	require.Zero(t, r.left())

	r.invite(cal, "invite helper")
	for _, text := range []string{"export", "report", "/export"} {
		m := r.ask(cal, text)
		require.Nil(t, m.File, text)
		require.Contains(t, m.Text, "Not sent", text)
	}
	m := r.ask(cal, "calendar file")
	require.Equal(t, "Long Acre.ics", m.File.Name)
}

// A calendar that took in one file after another shows each date once, where it is
// now, and lets go of what was taken back; also where another person got the first.
func TestCalendarFilesFollowOneAnother(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 45 lb each")
	r.ask(ann, "butcher booked sep 15 at 7 am")
	r.ask(ann, "remind me aug 3: order straw")
	r.invite(ben, "invite")
	dates := map[string]*ics.VEvent{}
	take := func(p botapitest.Person) {
		cal, err := ics.ParseCalendar(bytes.NewReader(r.ask(p, "calendar file").File.Bytes))
		require.NoError(t, err)
		for _, e := range cal.Events() {
			if have := dates[e.Id()]; have == nil || seq(t, e) > seq(t, have) {
				dates[e.Id()] = e
			}
		}
	}
	shown := func(word string) (out []string) {
		for _, e := range dates {
			if strings.Contains(e.GetProperty(ics.ComponentPropertySummary).Value, word) && e.GetProperty(ics.ComponentPropertyStatus).Value != "CANCELLED" {
				out = append(out, e.GetProperty(ics.ComponentPropertyDtStart).Value)
			}
		}
		return out
	}
	take(ann)
	require.Len(t, shown("Butcher"), 1)
	require.Len(t, shown("straw"), 1)
	r.ask(ann, "butcher moved to sep 22 at 8 am")
	take(ben)
	butcher := shown("Butcher")
	require.Len(t, butcher, 1)
	require.True(t, strings.HasSuffix(butcher[0], "0922T080000"), butcher)
	r.ask(ann, "cancel the butcher")
	take(ann)
	require.Empty(t, shown("Butcher"))
}

func seq(t *testing.T, e *ics.VEvent) int {
	t.Helper()
	n, err := strconv.Atoi(e.GetProperty(ics.ComponentPropertySequence).Value)
	require.NoError(t, err)
	return n
}
