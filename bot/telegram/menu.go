package telegram

import (
	"context"
	"encoding/json"
	"errors"
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
	for menu, scope := range map[wording.Menu]scope{
		wording.PrivateMenu: {Type: "all_private_chats"}, wording.GroupMenu: {Type: "all_group_chats"},
	} {
		if err := b.setMenu(ctx, menu, scope); err != nil {
			return err
		}
	}
	if err := b.setOperatorMenus(ctx); err != nil {
		return err
	}
	return b.describe(ctx)
}

// scope is whose menu one is, in Telegram's terms: the closest one is shown.
type scope struct {
	Type string `json:"type"`
	Chat string `json:"chat_id,omitempty"`
}

// setMenu sets the commands that a scope is offered, in every language.
func (b *Bot) setMenu(ctx context.Context, menu wording.Menu, s scope) error {
	for _, language := range wording.Languages {
		var commands []tgbotapi.BotCommand
		for _, c := range wording.Offered(menu, language) {
			commands = append(commands, tgbotapi.BotCommand{Command: c.Name, Description: c.Description})
		}
		params := tgbotapi.Params{}
		if err := params.AddInterface("commands", commands); err != nil {
			return err
		}
		if err := params.AddInterface("scope", s); err != nil {
			return err
		}
		params.AddNonEmpty("language_code", language)
		if _, err := b.client.call(ctx, "setMyCommands", params, sendLimit); err != nil {
			return err
		}
	}
	return nil
}

// setOperatorMenus gives the operator's own chat the commands of the server. A
// chat that Telegram does not know any more is passed over.
func (b *Bot) setOperatorMenus(ctx context.Context) error {
	var chats []store.Chat
	err := b.Store.Read(ctx, func(tx *store.Tx) (err error) {
		chats, err = tx.OperatorChats()
		return err
	})
	if err != nil {
		return err
	}
	for _, c := range chats {
		if c.Transport != transport {
			continue
		}
		err := b.setMenu(ctx, wording.OperatorMenu, scope{Type: "chat", Chat: c.External})
		var call *callError
		if errors.As(err, &call) && (call.what == unreachable || call.what == refused) {
			b.Log.Warn("the operator's menu was refused", "err", err)
			continue
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// offerOperator sets the menu of an operator who has just come; should that fail
// it is set at the next start.
func (b *Bot) offerOperator() {
	b.beside(func(ctx context.Context) {
		if err := b.setOperatorMenus(ctx); err != nil {
			b.Log.Warn("the operator's menu could not be set", "err", err)
		}
	})
}

// describe says what the bot is to who has not started it yet, where whoever made
// the bot has not said so in words of their own.
func (b *Bot) describe(ctx context.Context) error {
	raw, err := b.client.call(ctx, "getMyDescription", nil, sendLimit)
	if err != nil {
		return err
	}
	var now struct {
		Description string `json:"description"`
	}
	if err := json.Unmarshal(raw, &now); err != nil {
		return fmt.Errorf("getMyDescription: %w", err)
	}
	if now.Description != "" {
		return nil
	}
	_, err = b.client.call(ctx, "setMyDescription", tgbotapi.Params{"description": wording.Description()}, sendLimit)
	return err
}

// userName is the bot's own name; empty until it is known.
func (b *Bot) userName() string {
	if me := b.me.Load(); me != nil {
		return me.Username
	}
	return ""
}
