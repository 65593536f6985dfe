package telegram

import (
	"context"
	"errors"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
)

const (
	farewellTries = 4 // some seconds in all

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

// farewell says the last word in a chat of which nothing is kept, and tries it a
// few times: there is no outbox that it could wait in.
func (b *Bot) farewell(chat, text string) {
	b.beside(func(ctx context.Context) {
		for try := range farewellTries {
			_, err := b.client.call(ctx, "sendMessage", tgbotapi.Params{"chat_id": chat, "text": text}, sendLimit)
			var call *callError
			if err == nil || errors.As(err, &call) && call.what != passing && call.what != flood {
				return
			}
			b.Log.Debug("a last word was not said yet", "err", err)
			wait := b.pause(try)
			if call != nil {
				wait = max(wait, call.wait)
			}
			if !sleep(ctx, wait) {
				return
			}
		}
	})
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
