package telegram

import (
	"context"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
)

const (
	maxAsides    = 100 // waiting; more are let go
	asideWorkers = 2
	asideLimit   = 5 * time.Second
)

// aside has something said that is not kept and not repeated, and that no
// message may wait for: the end of a button's spinner, a word to a stranger.
func (b *Bot) aside(method string, params tgbotapi.Params) {
	b.beside(func(ctx context.Context) {
		if _, err := b.client.call(ctx, method, params, asideLimit); err != nil {
			b.Log.Debug("an aside was not said", "method", method, "err", err)
		}
	})
}

func (b *Bot) beside(call func(context.Context)) {
	select {
	case b.asides <- call:
	default:
		b.Log.Debug("an aside was let go")
	}
}

// doAsides says asides until ctx ends, and then those that wait still, as far
// as the calls' context lets it.
func (b *Bot) doAsides(ctx, calls context.Context) {
	for {
		select {
		case say := <-b.asides:
			say(calls)
			continue
		default:
		}
		select {
		case say := <-b.asides:
			say(calls)
		case <-ctx.Done():
			return
		}
	}
}

// answerPress ends the spinner on a button; the text may be empty.
func (b *Bot) answerPress(query, text string) {
	params := tgbotapi.Params{"callback_query_id": query}
	params.AddNonEmpty("text", text)
	b.aside("answerCallbackQuery", params)
}

// whisper says something in a chat that is not kept.
func (b *Bot) whisper(chat, text string) {
	b.aside("sendMessage", tgbotapi.Params{"chat_id": chat, "text": text})
}
