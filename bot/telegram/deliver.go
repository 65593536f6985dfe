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
	params := tgbotapi.Params{"chat_id": j.chat.External}
	if err := addButtons(params, o); err != nil {
		return "", err
	}
	switch {
	case o.Kind == store.Removal:
		return j.edits, b.remove(ctx, j)
	case j.edits != "":
		return j.edits, b.edit(ctx, j, params)
	}
	params.AddBool("disable_notification", o.Quiet)
	if o.Kind == store.Question { // in a group the answer would not reach the bot otherwise
		if err := params.AddInterface("reply_markup", tgbotapi.ForceReply{ForceReply: true, Selective: true}); err != nil {
			return "", err
		}
	}
	if isNumber(o.ReplyTo) { // a press has an id too, but is no message
		params["reply_to_message_id"] = o.ReplyTo
		params["allow_sending_without_reply"] = "true"
	}
	method, result := "sendMessage", json.RawMessage(nil)
	if o.File != nil {
		method, result, err = b.upload(ctx, j, params)
	} else {
		params["text"] = o.Text
		params.AddBool("disable_web_page_preview", true)
		defer b.working(j.chat.External, actionTyping)()
		result, err = b.client.call(ctx, method, params, sendLimit)
	}
	if err != nil {
		return "", err
	}
	var m struct {
		ID int64 `json:"message_id"`
	}
	if err := json.Unmarshal(result, &m); err != nil {
		return "", &callError{method: method, what: unknown, err: err}
	}
	return strconv.FormatInt(m.ID, 10), nil
}

// edit makes the call for a message that takes the place of an earlier one's
// text: below a file that is another call.
func (b *Bot) edit(ctx context.Context, j job, params tgbotapi.Params) error {
	method, text := "editMessageText", "text"
	if j.below {
		method, text = "editMessageCaption", "caption"
	} else {
		params.AddBool("disable_web_page_preview", true)
	}
	params["message_id"], params[text] = j.edits, j.row.Text
	_, err := b.client.call(ctx, method, params, sendLimit)
	return err
}

// remove makes the call that takes a message away; one that after all was not
// sent is away already.
func (b *Bot) remove(ctx context.Context, j job) error {
	if j.edits == "" {
		return nil
	}
	params := tgbotapi.Params{"chat_id": j.chat.External, "message_id": j.edits}
	_, err := b.client.call(ctx, "deleteMessage", params, sendLimit)
	return err
}

// upload makes the call for a message with a file, which may take a while from a
// barn.
func (b *Bot) upload(ctx context.Context, j job, params tgbotapi.Params) (method string, result json.RawMessage, err error) {
	file := j.row.File
	method, field, action := "sendDocument", "document", actionDocument
	if file.Kind == store.Photo {
		method, field, action = "sendPhoto", "photo", actionPhoto
	}
	defer b.working(j.chat.External, action)()
	params.AddNonEmpty("caption", j.row.Text)
	result, err = b.client.upload(ctx, method, params, tgbotapi.RequestFile{
		Name: field, Data: tgbotapi.FileBytes{Name: file.Name, Bytes: j.file},
	})
	return method, result, err
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
