package telegram

import (
	"context"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
)

// What the chat says while an answer is under way.
const (
	actionTyping   = "typing"
	actionPhoto    = "upload_photo"
	actionDocument = "upload_document"
)

// actionLasts is how long the chat says so; the manual has 5 s (sendChatAction).
const actionLasts = 4500 * time.Millisecond

// working has the chat say that an answer is under way, from when the person's
// patience ends until done is called. A quick answer needs no such word.
func (b *Bot) working(chat, action string) (done func()) {
	ctx, end := context.WithCancel(context.Background())
	patience := time.AfterFunc(b.Limits.Patience, func() {
		for wait := time.Duration(0); sleep(ctx, wait); wait = actionLasts {
			b.aside("sendChatAction", tgbotapi.Params{"chat_id": chat, "action": action})
		}
	})
	return func() {
		patience.Stop()
		end()
	}
}
