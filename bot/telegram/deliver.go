package telegram

import (
	"context"
	"encoding/json"
	"strconv"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/store"
)

// deliver makes the call for a message and gives the id that it has in its chat.
func (b *Bot) deliver(ctx context.Context, j job) (sent string, err error) {
	o := j.row
	params := tgbotapi.Params{"chat_id": j.chat.External, "text": o.Text}
	params.AddBool("disable_web_page_preview", true)
	if err := addButtons(params, o); err != nil {
		return "", err
	}
	if j.edits != "" {
		params["message_id"] = j.edits
		_, err := b.client.call(ctx, "editMessageText", params, sendLimit)
		return j.edits, err
	}
	params.AddBool("disable_notification", o.Quiet)
	if isNumber(o.ReplyTo) { // a press has an id too, but is no message
		params["reply_to_message_id"] = o.ReplyTo
		params["allow_sending_without_reply"] = "true"
	}
	result, err := b.client.call(ctx, "sendMessage", params, sendLimit)
	if err != nil {
		return "", err
	}
	var m struct {
		ID int64 `json:"message_id"`
	}
	if err := json.Unmarshal(result, &m); err != nil {
		return "", &callError{method: "sendMessage", what: unknown, err: err}
	}
	return strconv.FormatInt(m.ID, 10), nil
}

func addButtons(params tgbotapi.Params, o store.Outgoing) error {
	if len(o.Buttons) == 0 {
		return nil
	}
	var rows [][]tgbotapi.InlineKeyboardButton
	n := 0
	for _, row := range o.Buttons {
		var line []tgbotapi.InlineKeyboardButton
		for _, label := range row {
			line = append(line, tgbotapi.NewInlineKeyboardButtonData(label, pressData(o.ID, n)))
			n++
		}
		rows = append(rows, line)
	}
	return params.AddInterface("reply_markup", tgbotapi.InlineKeyboardMarkup{InlineKeyboard: rows})
}

func isNumber(s string) bool {
	_, err := strconv.ParseInt(s, 10, 64)
	return err == nil
}
