package terminal

import (
	"fmt"
	"strings"

	"troughbell/bot"
	"troughbell/bot/wording"
)

// farewell shows the last word where this chat gets it, and how many others
// cannot be told from here. The chat is over where its herd is, or who sits here.
func (c *Chat) farewell(out bot.Outcome) error {
	c.Desk.Forget(c.Herd)
	c.over = out.Gone != ""
	var page strings.Builder
	others := 0
	for _, f := range out.Farewells {
		if f.Chat.ID != c.chat {
			others++
			continue
		}
		for _, l := range strings.Split(c.shown(f.Text), "\n") {
			for _, part := range wrap(l, c.width) {
				fmt.Fprintln(&page, part)
			}
		}
	}
	if others > 0 {
		fmt.Fprintln(&page, c.shown(wording.NotTold(others)))
	}
	_, err := fmt.Fprint(c.screen, page.String())
	return err
}
