package telegram

import (
	"archive/zip"
	"bytes"
	"database/sql"
	"fmt"
	"io"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
)

// The people of a second herd, in whose group one of the first herd is too.
var (
	eve = botapitest.Person{ID: 201, Name: "Evangelina"}
	fay = botapitest.Person{ID: 202, Name: "Fayruz"}
	gil = botapitest.Person{ID: 203, Name: "Gilgamesh"}
)

const loft = -600 // the second herd's group

// secrets are words and figures that only the second herd has, and that nobody of
// the first one types.
var secrets = []string{
	"Quillfern", "Xanthe", "wombat tub", "larkfield", "heirloom", "7341", "7,341", "210 lb", "60 gal", "Evangelina", "Gilgamesh",
}

// Two households on one server never see each other: whatever an owner, one of
// the family or a helper of one of them sends, presses, forges, edits or replies
// to, nothing of the other's is changed and no word of the other's is said.
func TestHerdsNeverSeeEachOther(t *testing.T) {
	r := newFarm(t, quick)
	r.eventually(func() bool { return r.bot.userName() != "" })
	r.ask(ann, "our herd is Long Acre. 3 pigs came today: Olive, Rufus and Gus, 45 lb each. one feeder holds 200 lb. one water barrel, 55 gal. "+
		"target 270 lb, chores saturday 7 am, eastern time, spent $40 on straw")
	r.invite(ben, "invite my wife")
	r.invite(cal, "invite a helper")
	r.answerTo(barn, r.api.SayIn(barn, ann, "/today"))

	r.ask(eve, codePattern.FindString(r.ask(ann, "/newherd").Text))
	r.ask(eve, "our herd is Stony Bank. 3 pigs came today: Zebulon, Quillfern and Xanthe, 45 lb each. ochre hopper holds 210 lb. wombat tub holds 60 gal water. "+
		"target 280 lb, chores sunday 7 am, central time")
	r.ask(eve, "spent $7341 on heirloom straw")
	r.ask(eve, "pen larkfield is 50x80 ft")
	for p, words := range map[botapitest.Person]string{fay: "invite my wife", gil: "invite a helper"} {
		r.ask(p, codePattern.FindString(r.ask(eve, words).Text))
	}
	r.answerTo(loft, r.api.SayIn(loft, eve, "/today"))
	question := r.ask(eve, "zebulon 47.5 girth")
	require.NotEmpty(t, question.Buttons, question.Text)
	r.told("standing 2026-05-16", r.bot.Now(), "refill")
	r.settled()

	own := r.ask(eve, "/cost").Text + r.ask(eve, "/weights").Text + r.ask(eve, "/feed").Text
	require.Contains(t, own, "7,341", "else this test would see nothing")
	require.Contains(t, own, "Zebulon")
	require.Contains(t, r.ask(eve, "what did I spend?").Text+r.ask(eve, "cost picture").Text, "7,341")
	r.settled()

	before := r.rowsOf(2)
	require.Greater(t, strings.Count(before, "\n"), 30)
	heard := map[int64]int{}
	for _, chat := range []int64{eve.ID, fay.ID, gil.ID, loft} {
		heard[chat] = len(r.api.Messages(chat))
	}
	theirs := r.theirMessages(t)

	for _, p := range []botapitest.Person{ann, ben, cal} {
		for _, c := range wording.Commands {
			r.api.Say(p, "/"+c.Name)
			r.api.SayIn(barn, p, "/"+c.Name+" zebulon")
			r.api.SayIn(loft, p, "@"+botapitest.BotName+" "+c.Name)
		}
		for _, text := range []string{
			"/herd Stony Bank", "/herd 2", "history", "history of spending", "what did zebulon weigh?", "undo", "undo the spending",
			"zebulon 181 lb", "zebulon died", "filled the ochre hopper 50 lb", "sitter sheet", "report", "calendar file", "settings",
			"done", "tomorrow", "stop", "37.5", "1", "yes", "keep",
			"who is here", "invite fayruz", "help pens", "help settings", "why?", "privacy",
		} {
			r.api.Say(p, text)
		}
		for _, m := range theirs {
			r.api.Reply(p.ID, p, "undo", m.ID)
			r.api.Reply(loft, p, "done", m.ID)
			r.api.Edit(p.ID, p, m.ID, "zebulon 199 lb")
			for _, data := range m.buttons {
				for _, chat := range []int64{p.ID, barn, loft, m.Chat} {
					r.api.Forge(chat, p, m.ID, data)
				}
			}
		}
		for _, data := range forgeries() {
			r.api.Forge(p.ID, p, theirs[0].ID, data)
		}
		r.settled()
	}
	for _, topic := range wording.Topics {
		for _, text := range topic.US {
			r.api.Say(ann, strings.NewReplacer("PIG", "zebulon", "FEEDER", "ochre hopper", "BARREL", "blue tub", "PEN", "south pen").Replace(text))
		}
	}
	r.settled()

	require.Equal(t, before, r.rowsOf(2))
	for chat, n := range heard {
		require.Len(t, r.api.Messages(chat), n, "nothing new is said there")
	}
	said := r.saidTo(t, ann.ID, ben.ID, cal.ID, barn)
	for _, c := range r.api.Calls("answerCallbackQuery") {
		said = append(said, c.Params.Get("text"))
	}
	require.Greater(t, len(said), 200)
	for _, text := range said {
		for _, secret := range secrets {
			require.NotContains(t, text, secret)
		}
	}
}

// theirs is a message of the second herd's with what its buttons carry.
type theirMessage struct {
	botapitest.Message
	buttons []string
}

func (r *rig) theirMessages(t *testing.T) (out []theirMessage) {
	for _, chat := range []int64{eve.ID, fay.ID, gil.ID, loft} {
		for _, m := range r.api.Messages(chat) {
			x := theirMessage{Message: m}
			for _, b := range m.Buttons {
				x.buttons = append(x.buttons, b.Data)
			}
			out = append(out, x)
		}
	}
	require.NotEmpty(t, out)
	require.True(t, slices.ContainsFunc(out, func(m theirMessage) bool { return len(m.buttons) > 0 }))
	return out
}

// forgeries is what a client may send that nobody offered: every row of the
// outbox there may be, and what is no button at all.
func forgeries() []string {
	out := []string{"", "b", "b:", "b:1", "b::", "b:1:0:0", "b:-1:0", "b:0:0", "B:1:0", "b:1:99999999999999999999", "b:1e3:0", "settled:1", "done", "b:1:0' OR 1=1 --"}
	for row := range 40 {
		out = append(out, pressData(int64(row), row%3))
	}
	chance := rand.New(rand.NewPCG(7, 11))
	for range 20 {
		b := make([]byte, chance.IntN(64))
		for i := range b {
			b[i] = byte(' ' + chance.IntN(95))
		}
		out = append(out, string(b))
	}
	return out
}

// rowsOf writes down all rows of the database that are a herd's, table by table.
func (r *rig) rowsOf(herd int) string {
	r.t.Helper()
	db, err := sql.Open("sqlite", "file:"+r.path+"?mode=ro&_busy_timeout=5000")
	require.NoError(r.t, err)
	defer func() { require.NoError(r.t, db.Close()) }()
	lines := func(query string, args ...any) (out []string) {
		rows, err := db.Query(query, args...)
		require.NoError(r.t, err)
		defer func() { require.NoError(r.t, rows.Close()) }()
		columns, err := rows.Columns()
		require.NoError(r.t, err)
		for rows.Next() {
			cells := make([]any, len(columns))
			for i := range cells {
				cells[i] = new(any)
			}
			require.NoError(r.t, rows.Scan(cells...))
			line := ""
			for i, c := range cells {
				line += fmt.Sprintf(" %s=%v", columns[i], *c.(*any))
			}
			out = append(out, line)
		}
		require.NoError(r.t, rows.Err())
		slices.Sort(out)
		return out
	}
	var all strings.Builder
	tables := lines("SELECT m.name FROM sqlite_master AS m JOIN pragma_table_info(m.name) AS c ON c.name = 'herd' WHERE m.type = 'table' ORDER BY m.name")
	require.GreaterOrEqual(r.t, len(tables), 4)
	for _, table := range tables {
		name := strings.TrimPrefix(table, " name=")
		for _, l := range lines("SELECT * FROM "+name+" WHERE herd = ?", herd) {
			fmt.Fprintln(&all, name, l)
		}
	}
	for _, l := range lines("SELECT * FROM herd WHERE id = ?", herd) {
		fmt.Fprintln(&all, "herd", l)
	}
	return all.String()
}

// saidTo is all that was said to chats, the texts of files included.
func (r *rig) saidTo(t *testing.T, chats ...int64) (out []string) {
	for _, chat := range chats {
		for _, m := range r.api.Messages(chat) {
			out = append(out, m.Text)
			for _, b := range m.Buttons {
				out = append(out, b.Label)
			}
			if m.File == nil {
				continue
			}
			out = append(out, m.File.Name)
			if !strings.HasSuffix(m.File.Name, ".zip") {
				out = append(out, string(m.File.Bytes))
				continue
			}
			z, err := zip.NewReader(bytes.NewReader(m.File.Bytes), int64(len(m.File.Bytes)))
			require.NoError(t, err)
			for _, f := range z.File {
				o, err := f.Open()
				require.NoError(t, err)
				b, err := io.ReadAll(o)
				require.NoError(t, err)
				out = append(out, string(b))
			}
		}
	}
	return out
}
