package telegram

import (
	"context"
	"encoding/json"
	"fmt"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/bot/wording"
	"troughbell/store"
)

// identity is who the bot is at Telegram.
type identity struct {
	Username string `json:"username"`
}

// valueMe is the name of the value that keeps the identity, so that a message
// to the bot by name is known as one before the network is back.
const valueMe = "telegram.me"

// introduce finds out who the bot is and sets its menu, again and again until
// it works. Nothing waits for it.
func (b *Bot) introduce(ctx context.Context) {
	if err := b.rememberMe(ctx); err != nil {
		b.Log.Warn("the bot's name cannot be read", "err", err)
	}
	b.persist(ctx, "setting the menu", func() error {
		err := b.introduceOnce(ctx)
		if ctx.Err() != nil {
			return nil // cut off by the end
		}
		return err
	})
}

func (b *Bot) rememberMe(ctx context.Context) error {
	return b.Store.Read(ctx, func(tx *store.Tx) error {
		name, err := tx.Value(valueMe)
		if name != "" {
			b.me.Store(&identity{name})
		}
		return err
	})
}

func (b *Bot) introduceOnce(ctx context.Context) error {
	raw, err := b.client.call(ctx, "getMe", nil, sendLimit)
	if err != nil {
		return err
	}
	var me identity
	if err := json.Unmarshal(raw, &me); err != nil {
		return fmt.Errorf("getMe: %w", err)
	}
	b.me.Store(&me)
	if err := b.Store.Write(ctx, func(tx *store.Tx) error { return tx.SetValue(valueMe, me.Username) }); err != nil {
		return err
	}
	var menu []tgbotapi.BotCommand
	for _, c := range wording.Commands {
		menu = append(menu, tgbotapi.BotCommand{Command: c.Name, Description: c.Description})
	}
	params := tgbotapi.Params{}
	if err := params.AddInterface("commands", menu); err != nil {
		return err
	}
	_, err = b.client.call(ctx, "setMyCommands", params, sendLimit)
	return err
}

// userName is the bot's own name; empty until it is known.
func (b *Bot) userName() string {
	if me := b.me.Load(); me != nil {
		return me.Username
	}
	return ""
}
