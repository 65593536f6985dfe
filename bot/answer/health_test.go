package answer_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestWithdrawal(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600,
		model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}, Product: "penicillin", WithdrawalDays: model.Int(10)}},
	).herd()
	a := ask(h, reading.Ask{Topic: "withdrawal"})
	data := through(t, a.Data)
	require.Equal(t, "2026-07-21T10:00:00-05:00", data["clear_at"])
	require.Equal(t, "2026-07-21", data["clear"])
	require.Equal(t, "2026-07-21", data["animals"].(map[string]any)["Fern"].(map[string]any)["clear"])
	require.Equal(t, "2026-06-10", data["animals"].(map[string]any)["Clove"].(map[string]any)["clear"])
	require.True(t, strings.HasPrefix(a.Text, "NOT CLEAR: Fern, clear Tue Jul 21, 10 am"), a.Text)
	require.Contains(t, ask(h, reading.Ask{Topic: "withdrawal", Animals: []string{"Clove"}}).Text, "Clear since Wed Jun 10, 9 am")
	require.Contains(t, ask(nursery(t).herd(), reading.Ask{Topic: "withdrawal"}).Text, "Clear: no treatment on file.")

	on := day("2026-07-20")
	require.Contains(t, ask(h, reading.Ask{Topic: "withdrawal", On: &on}).Text, "On Mon Jul 20: NOT CLEAR.")

	h = orchard(t).add("2026-07-11", 600, model.Worm{Treatment: model.Treatment{Animals: all}}).herd()
	a = ask(h, reading.Ask{Topic: "withdrawal"})
	data = through(t, a.Data)
	require.Contains(t, data, "clear")
	require.Nil(t, data["clear"])
	require.Nil(t, data["clear_at"])
	require.Nil(t, data["animals"].(map[string]any)["Fern"].(map[string]any)["clear"])
	require.True(t, strings.HasPrefix(a.Text, "NOT CLEAR: all pigs. Withdrawal days unknown"), a.Text)
	for _, dose := range []string{"ml", "mg", "cc"} {
		require.NotContains(t, a.Text, " "+dose)
	}
}

func TestTasks(t *testing.T) {
	h := orchard(t).herd()
	for _, topic := range []string{"worming", "move", "wallow"} {
		data := through(t, ask(h, reading.Ask{Topic: topic}).Data)
		require.NotEmpty(t, data["why"], topic)
		_, err := model.ParseDay(data["date"].(string))
		require.NoError(t, err)
	}
	h = orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-07-20")}).herd()
	a := ask(h, reading.Ask{Topic: "worming"})
	require.Equal(t, true, a.Data["blocked"])
	require.True(t, strings.HasPrefix(a.Text, "No worming now"), a.Text)
}
