package telegram

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"strings"
	"testing"

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
