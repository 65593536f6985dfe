package telegram

import (
	"context"
	"encoding/json"
	"fmt"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/bot/wording"
)

// introduce asks who the bot is and sets its menu. It is repeated by the caller
// until it works; nothing waits for it.
func (b *Bot) introduce(ctx context.Context) error {
	raw, err := b.client.call(ctx, "getMe", nil, sendLimit)
	if err != nil {
		return err
	}
	var me struct {
		Username string `json:"username"`
	}
	if err := json.Unmarshal(raw, &me); err != nil {
		return fmt.Errorf("getMe: %w", err)
	}
	b.name.Store(&me.Username)
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

// keepIntroducing introduces the bot, again and again until it works.
func (b *Bot) keepIntroducing(ctx context.Context) {
	var wait backoff
	for {
		err := b.introduce(ctx)
		if err == nil || ctx.Err() != nil {
			return
		}
		b.Log.Debug("the menu is not set yet", "err", err)
		if !sleep(ctx, wait.next()) {
			return
		}
	}
}

// userName is the bot's own name; empty until it is known.
func (b *Bot) userName() string {
	if n := b.name.Load(); n != nil {
		return *n
	}
	return ""
}
