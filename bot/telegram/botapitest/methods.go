package botapitest

import (
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"time"
	"unicode/utf16"
)

// came is how a call came in.
type came struct {
	via  string
	lost bool // its answer will not arrive
}

// do carries out a call.
func (s *Server) do(r *http.Request, method string, how came) (any, *Fault) {
	switch method {
	case "getMe":
		return map[string]any{"id": botID, "is_bot": true, "first_name": "bell", "username": BotName}, nil
	case "getUpdates":
		return s.getUpdates(r)
	case "getFile":
		return s.getFile(r.Form)
	case "sendMessage":
		return s.sendMessage(r.Form, how)
	case "sendPhoto":
		return s.sendFile(r, "photo", how)
	case "sendDocument":
		return s.sendFile(r, "document", how)
	case "editMessageText":
		return s.editMessage(r.Form, "text")
	case "editMessageCaption":
		return s.editMessage(r.Form, "caption")
	case "setMyDescription":
		s.mu.Lock()
		defer s.mu.Unlock()
		s.described = r.Form.Get("description")
		return true, nil
	case "getMyDescription":
		s.mu.Lock()
		defer s.mu.Unlock()
		return map[string]any{"description": s.described}, nil
	case "deleteMessage":
		return s.deleteMessage(r.Form)
	case "deleteWebhook":
		s.SetWebhook(false)
		return true, nil
	default:
		return true, nil
	}
}

// maxPoll bounds how long the server holds a poll, in seconds.
const maxPoll = 50

func (s *Server) getUpdates(r *http.Request) (any, *Fault) {
	offset, _ := strconv.ParseInt(r.Form.Get("offset"), 10, 64)
	limit, err := strconv.Atoi(r.Form.Get("limit"))
	if err != nil || limit < 1 || limit > 100 {
		limit = 100
	}
	seconds, _ := strconv.Atoi(r.Form.Get("timeout"))
	end := time.NewTimer(time.Duration(min(seconds, maxPoll)) * time.Second)
	defer end.Stop()

	s.mu.Lock()
	if s.webhook {
		s.mu.Unlock()
		return nil, &Fault{Status: http.StatusConflict, Description: "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first"}
	}
	if s.poll != nil {
		close(s.poll) // only one poll at a time: the later one ends the earlier
	}
	mine := make(chan struct{})
	s.poll = mine
	s.confirm(offset)
	s.mu.Unlock()
	defer func() {
		s.mu.Lock()
		if s.poll == mine {
			s.poll = nil
		}
		s.mu.Unlock()
	}()
	for {
		s.mu.Lock()
		out := s.take(limit)
		news := s.news
		s.mu.Unlock()
		if len(out) > 0 {
			return out, nil
		}
		select {
		case <-news:
		case <-end.C:
			return []json.RawMessage{}, nil
		case <-mine:
			return nil, &Fault{Status: http.StatusConflict, Description: "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running"}
		case <-r.Context().Done():
			return []json.RawMessage{}, nil
		}
	}
}

// confirm forgets what lies below the offset. An offset far beyond the tail is
// one of another count of ids, and is ignored.
func (s *Server) confirm(offset int64) {
	if offset == 0 || len(s.updates) == 0 {
		return
	}
	if offset < 0 {
		s.updates = s.updates[max(0, len(s.updates)+int(offset)):]
		return
	}
	if tail := s.updates[len(s.updates)-1].id; offset > tail+10 {
		return
	}
	kept := s.updates[:0]
	for _, u := range s.updates {
		if u.id >= offset {
			kept = append(kept, u)
		}
	}
	s.updates = kept
}

func (s *Server) take(limit int) []json.RawMessage {
	var out []json.RawMessage
	for _, u := range s.updates[:min(limit, len(s.updates))] {
		out = append(out, u.raw)
	}
	return out
}

func (s *Server) sendMessage(p url.Values, how came) (any, *Fault) {
	if p.Get("text") == "" {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message text is empty"}
	}
	if len(utf16.Encode([]rune(p.Get("text")))) > maxMessage {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message is too long"}
	}
	return s.show(p, p.Get("text"), nil, how)
}

// maxMessage is the longest text of a message, in UTF-16 units.
const maxMessage = 4096

// maxCaption is the longest text below a file, in UTF-16 units.
const maxCaption = 1024

func (s *Server) sendFile(r *http.Request, kind string, how came) (any, *Fault) {
	f, head, err := r.FormFile(kind)
	if err != nil {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: there is no " + kind + " in the request"}
	}
	defer func() { _ = f.Close() }()
	b, err := io.ReadAll(f)
	if err != nil || len(b) == 0 {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: file must be non-empty"}
	}
	caption := r.Form.Get("caption")
	if len(utf16.Encode([]rune(caption))) > maxCaption {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message caption is too long"}
	}
	return s.show(r.Form, caption, &File{Kind: kind, Name: head.Filename, Bytes: b}, how)
}

// show puts a message into its chat.
func (s *Server) show(p url.Values, text string, file *File, how came) (any, *Fault) {
	chat, err := strconv.ParseInt(p.Get("chat_id"), 10, 64)
	if err != nil {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: chat not found"}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.lastID++
	m := &Message{
		ID: s.lastID, Chat: chat, Text: text, File: file, ReplyTo: p.Get("reply_to_message_id"),
		Buttons: buttons(p), Silent: p.Get("disable_notification") == "true", ForceReply: forcesReply(p),
		Lost: how.lost, Via: how.via,
	}
	s.messages = append(s.messages, m)
	return map[string]any{
		"message_id": m.ID, "date": s.clock().Unix(), "text": m.Text, "chat": map[string]any{"id": chat, "type": "private"},
	}, nil
}

// editMessage changes the text of a message, or with "caption" that below a file.
func (s *Server) editMessage(p url.Values, field string) (any, *Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, m := range s.messages {
		if fmt.Sprint(m.ID) != p.Get("message_id") || fmt.Sprint(m.Chat) != p.Get("chat_id") {
			continue
		}
		if (m.File != nil) != (field == "caption") {
			return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: there is no " + field + " in the message to edit"}
		}
		b := buttons(p)
		if m.Text == p.Get(field) && len(b) == len(m.Buttons) {
			return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message is not modified"}
		}
		m.Text, m.Buttons = p.Get(field), b
		m.Edits++
		return map[string]any{"message_id": m.ID, "date": s.clock().Unix(), "text": m.Text, "chat": map[string]any{"id": m.Chat}}, nil
	}
	return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message to edit not found"}
}

func (s *Server) deleteMessage(p url.Values) (any, *Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for i, m := range s.messages {
		if fmt.Sprint(m.ID) == p.Get("message_id") && fmt.Sprint(m.Chat) == p.Get("chat_id") {
			s.messages = slices.Delete(s.messages, i, i+1)
			return true, nil
		}
	}
	return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message to delete not found"}
}

func forcesReply(p url.Values) bool {
	var markup struct {
		ForceReply bool `json:"force_reply"`
	}
	return json.Unmarshal([]byte(p.Get("reply_markup")), &markup) == nil && markup.ForceReply
}

func buttons(p url.Values) []Button {
	var markup struct {
		Rows [][]Button `json:"inline_keyboard"`
	}
	if json.Unmarshal([]byte(p.Get("reply_markup")), &markup) != nil {
		return nil
	}
	var out []Button
	for _, row := range markup.Rows {
		out = append(out, row...)
	}
	return out
}
