package botapitest

import (
	"encoding/json"
	"fmt"
)

// Say queues a text from a person in their private chat, whose id is the
// person's own. It gives the id of the message.
func (s *Server) Say(person int64, name, text string) int64 {
	return s.message(person, person, "private", name, map[string]any{"text": text})
}

// SayIn queues a text from a person in a group.
func (s *Server) SayIn(group, person int64, name, text string) int64 {
	return s.message(group, person, "group", name, map[string]any{"text": text})
}

// Send queues a message of a person that is no text, such as a voice note:
// fields are those of the message.
func (s *Server) Send(person int64, name string, fields map[string]any) int64 {
	return s.message(person, person, "private", name, fields)
}

// Reply queues a text that replies to a message of the bot.
func (s *Server) Reply(person int64, name, text string, to int64) int64 {
	return s.message(person, person, "private", name, map[string]any{
		"text": text, "reply_to_message": map[string]any{
			"message_id": to, "date": 1, "chat": map[string]any{"id": person, "type": "private"},
			"from": map[string]any{"id": 7, "is_bot": true, "first_name": "bell"},
		},
	})
}

// Edit queues a new text of an earlier message of a person.
func (s *Server) Edit(person int64, name string, message int64, text string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	now := s.clock().Unix()
	s.queue("edited_message", map[string]any{
		"message_id": message, "date": now, "edit_date": now, "text": text,
		"chat": map[string]any{"id": person, "type": "private"},
		"from": map[string]any{"id": person, "first_name": name},
	})
}

// Press queues the press of a button below a message of the bot by its label.
// It gives the query's id, empty if there is no such button.
func (s *Server) Press(person int64, name string, message int64, label string) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, m := range s.messages {
		if m.ID != message {
			continue
		}
		for _, b := range m.Buttons {
			if b.Label == label {
				return s.press(m.Chat, person, name, message, b.Data)
			}
		}
	}
	return ""
}

// Forge queues a press with data of the caller's making.
func (s *Server) Forge(chat, person int64, name string, message int64, data string) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.press(chat, person, name, message, data)
}

func (s *Server) press(chat, person int64, name string, message int64, data string) string {
	kind := "private"
	if chat != person {
		kind = "group"
	}
	query := fmt.Sprintf("q%d", s.nextID)
	s.queue("callback_query", map[string]any{
		"id": query, "data": data, "from": map[string]any{"id": person, "first_name": name},
		"message": map[string]any{
			"message_id": message, "date": s.clock().Unix(), "chat": map[string]any{"id": chat, "type": kind},
		},
	})
	return query
}

// Membership queues that the bot's state in a person's chat changed: "kicked"
// where it was blocked, "member" where it was taken back.
func (s *Server) Membership(person int64, state string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.queue("my_chat_member", map[string]any{
		"chat": map[string]any{"id": person, "type": "private"}, "from": map[string]any{"id": person, "first_name": "x"},
		"date": s.clock().Unix(), "old_chat_member": map[string]any{"status": "member"},
		"new_chat_member": map[string]any{"status": state, "user": map[string]any{"id": 7, "is_bot": true}},
	})
}

func (s *Server) message(chat, person int64, kind, name string, fields map[string]any) int64 {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.lastID++
	m := map[string]any{
		"message_id": s.lastID, "date": s.clock().Unix(),
		"chat": map[string]any{"id": chat, "type": kind},
		"from": map[string]any{"id": person, "first_name": name},
	}
	for k, v := range fields {
		m[k] = v
	}
	s.queue("message", m)
	return s.lastID
}

// queue adds an update; the lock is held.
func (s *Server) queue(kind string, v map[string]any) {
	raw, err := json.Marshal(map[string]any{"update_id": s.nextID, kind: v})
	if err != nil { // plain maps of plain values
		panic(err)
	}
	s.updates = append(s.updates, queued{s.nextID, raw})
	s.nextID++
	close(s.news)
	s.news = make(chan struct{})
}
