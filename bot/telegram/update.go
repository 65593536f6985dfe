package telegram

import (
	"encoding/json"
	"fmt"
	"hash/fnv"
	"strconv"
	"strings"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/model"
)

// update is what one update says, in our own terms.
type update struct {
	id     int64  // the server's count
	key    string // what it is: the same message, edit or press has one key
	chat   string // external id
	group  bool
	sender string // external id of the person
	name   string
	at     time.Time

	message string // id of the message, or of the one pressed
	text    string
	edit    bool
	edited  int    // when, Unix seconds; 0: as it was first sent
	replyTo string // id of the message replied to
	// replyBot is the user name of whose message that is, where it is a bot's.
	replyBot string
	medium   string // what came instead of a text
	file     file   // to be taken in

	query string // of a press
	press string // data of the button

	member  string // new state of the bot in the chat: "member", "kicked", "left"
	newChat string // the group moved there
}

// readUpdate reads an update. ok is false for one that says nothing to us.
func readUpdate(raw []byte) (u update, ok bool, err error) {
	var t tgbotapi.Update
	if err := json.Unmarshal(raw, &t); err != nil {
		return u, false, fmt.Errorf("read an update: %w", err)
	}
	switch {
	case t.Message != nil:
		u, ok = ofMessage(t.Message, false)
	case t.EditedMessage != nil:
		u, ok = ofMessage(t.EditedMessage, true)
	case t.CallbackQuery != nil:
		u, ok = ofPress(t.CallbackQuery), true
	case t.MyChatMember != nil:
		u, ok = ofMembership(t.MyChatMember), true
	}
	u.id = int64(t.UpdateID)
	return u, ok, nil
}

func ofMembership(m *tgbotapi.ChatMemberUpdated) (u update) {
	u.key = fmt.Sprintf("member:%d:%d:%s", m.Chat.ID, m.Date, m.NewChatMember.Status)
	u.chat, u.group = id(m.Chat.ID), !m.Chat.IsPrivate()
	u.sender, u.at = id(m.From.ID), time.Unix(int64(m.Date), 0)
	u.member = m.NewChatMember.Status
	return u
}

func ofMessage(m *tgbotapi.Message, edit bool) (u update, ok bool) {
	if m.Chat == nil {
		return u, false
	}
	u.chat, u.group, u.edit = id(m.Chat.ID), !m.Chat.IsPrivate(), edit
	u.message, u.at = strconv.Itoa(m.MessageID), time.Unix(int64(m.Date), 0)
	u.edited = m.EditDate
	u.key = fmt.Sprint(u.versions(), m.EditDate)
	if m.From != nil {
		u.sender, u.name = id(m.From.ID), clean(m.From.FirstName)
	}
	if r := m.ReplyToMessage; r != nil {
		u.replyTo = strconv.Itoa(r.MessageID)
		if r.From != nil && r.From.IsBot {
			u.replyBot = r.From.UserName
		}
	}
	if m.Document != nil {
		u.file = file{id: m.Document.FileID, name: m.Document.FileName, size: m.Document.FileSize}
	}
	switch {
	case m.MigrateToChatID != 0:
		u.newChat = id(m.MigrateToChatID)
	case m.Text != "":
		u.text = m.Text
	case m.Caption != "": // what a picture shows is not read; what is said of it is
		u.text = m.Caption
	case m.Location != nil:
		p, err := model.CoarsePlace(m.Location.Latitude, m.Location.Longitude)
		if err != nil {
			u.medium = "other"
			break
		}
		u.text = "location " + p.String()
	default:
		if u.medium = medium(m); u.medium == "" {
			return u, false // a service message
		}
	}
	if edit { // two edits within a second differ by their texts only
		h := fnv.New64a()
		_, _ = h.Write([]byte(u.text)) // it never fails
		u.key += fmt.Sprintf(":%x", h.Sum64())
	}
	return u, true
}

// versions is what the keys of all versions of a message begin with; when it was
// edited follows.
func (u update) versions() string { return fmt.Sprintf("message:%s:%s:", u.chat, u.message) }

// superseded reports whether one of the keys is that of a later version of the
// message.
func (u update) superseded(keys []string) bool {
	for _, k := range keys {
		rest, _ := strings.CutPrefix(k, u.versions())
		edited, _, _ := strings.Cut(rest, ":")
		if n, err := strconv.Atoi(edited); err == nil && n > u.edited {
			return true
		}
	}
	return false
}

func ofPress(q *tgbotapi.CallbackQuery) (u update) {
	u.query, u.press, u.key = q.ID, q.Data, "press:"+q.ID
	if q.From != nil {
		u.sender, u.name = id(q.From.ID), clean(q.From.FirstName)
	}
	u.chat = u.sender
	if m := q.Message; m != nil && m.Chat != nil { // a stub, or nothing, where it is old
		u.chat, u.group = id(m.Chat.ID), !m.Chat.IsPrivate()
		u.message = strconv.Itoa(m.MessageID)
	}
	return u
}

// medium names what a message is where it is no text.
func medium(m *tgbotapi.Message) string {
	switch {
	case m.Voice != nil, m.Audio != nil, m.VideoNote != nil:
		return "voice"
	case len(m.Photo) > 0:
		return "photo"
	case m.Video != nil, m.Animation != nil:
		return "video"
	case m.Document != nil:
		return "file"
	case m.Sticker != nil:
		return "sticker"
	case m.Contact != nil, m.Poll != nil, m.Dice != nil:
		return "other"
	}
	return ""
}

func id(n int64) string { return strconv.FormatInt(n, 10) }
