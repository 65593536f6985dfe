package botapitest

import (
	"encoding/json"
	"fmt"
)

// Person is somebody who texts. The private chat has the person's own id; any
// other chat is a group.
type Person struct {
	ID   int64
	Name string
}

// Say queues a text in the person's private chat and gives the message's id.
func (s *Server) Say(p Person, text string) int64 { return s.SayIn(p.ID, p, text) }

// SayIn queues a text in a chat.
func (s *Server) SayIn(chat int64, p Person, text string) int64 {
	return s.Send(chat, p, map[string]any{"text": text})
}

// Reply queues a text that replies to a message of the bot.
func (s *Server) Reply(chat int64, p Person, text string, to int64) int64 {
	return s.Send(chat, p, map[string]any{
		"text": text, "reply_to_message": map[string]any{
			"message_id": to, "date": 1, "chat": chatOf(chat, p),
			"from": map[string]any{"id": botID, "is_bot": true, "first_name": "bell", "username": BotName},
		},
	})
}

// Send queues any message: fields are those of the message beside its sender,
// date and chat.
func (s *Server) Send(chat int64, p Person, fields map[string]any) int64 {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.lastID++
	m := s.message(chat, p, s.lastID)
	for k, v := range fields {
		m[k] = v
	}
	s.queue("message", m)
	return s.lastID
}

// Edit queues a new text of an earlier message.
func (s *Server) Edit(chat int64, p Person, message int64, text string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	m := s.message(chat, p, message)
	m["text"], m["edit_date"] = text, s.clock().Unix()
	s.queue("edited_message", m)
}

// Press queues the press of a button below a message of the bot by its label,
// and gives the query's id; empty if there is no such button.
func (s *Server) Press(p Person, message int64, label string) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, m := range s.messages {
		if m.ID != message {
			continue
		}
		for _, b := range m.Buttons {
			if b.Label == label {
				return s.press(m.Chat, p, message, b.Data)
			}
		}
	}
	return ""
}

// Forge queues a press with data of the caller's making.
func (s *Server) Forge(chat int64, p Person, message int64, data string) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.press(chat, p, message, data)
}

func (s *Server) press(chat int64, p Person, message int64, data string) string {
	s.queries++
	query := fmt.Sprintf("q%d", s.queries)
	s.queue("callback_query", map[string]any{
		"id": query, "data": data, "from": from(p), "message": map[string]any{
			"message_id": message, "date": s.clock().Unix(), "chat": chatOf(chat, p),
		},
	})
	return query
}

// Membership queues that the bot's state in a chat changed: "kicked" where it
// was blocked or removed, "member" where it was taken in.
func (s *Server) Membership(chat int64, p Person, state string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	bot := map[string]any{"id": botID, "is_bot": true}
	s.queue("my_chat_member", map[string]any{
		"chat": chatOf(chat, p), "from": from(p), "date": s.clock().Unix(),
		"old_chat_member": map[string]any{"status": "member", "user": bot},
		"new_chat_member": map[string]any{"status": state, "user": bot},
	})
}

// Repeat queues the latest update once more, as a server that lost count does.
func (s *Server) Repeat() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.queue(s.last.kind, s.last.body)
}

func (s *Server) message(chat int64, p Person, id int64) map[string]any {
	return map[string]any{"message_id": id, "date": s.clock().Unix(), "chat": chatOf(chat, p), "from": from(p)}
}

func chatOf(chat int64, p Person) map[string]any {
	if chat == p.ID {
		return map[string]any{"id": chat, "type": "private", "first_name": p.Name}
	}
	return map[string]any{"id": chat, "type": "group", "title": "pigs"}
}

func from(p Person) map[string]any { return map[string]any{"id": p.ID, "first_name": p.Name} }

// Hold keeps back what is queued from now on, until Release.
func (s *Server) Hold() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.held = &[]event{}
}

// Release queues what was kept back in the order given, by its numbers from 0: a
// server under load mixes up what came close together, and repeats some of it.
func (s *Server) Release(order ...int) {
	s.mu.Lock()
	defer s.mu.Unlock()
	held := *s.held
	s.held = nil
	for _, i := range order {
		s.queue(held[i].kind, held[i].body)
	}
}

// queue adds an update; the lock is held.
func (s *Server) queue(kind string, v map[string]any) {
	if s.held != nil {
		*s.held = append(*s.held, event{kind, v})
		return
	}
	raw, err := json.Marshal(map[string]any{"update_id": s.nextID, kind: v})
	if err != nil { // plain maps of plain values
		panic(err)
	}
	s.last = event{kind, v}
	s.updates = append(s.updates, queued{s.nextID, raw})
	s.nextID++
	close(s.news)
	s.news = make(chan struct{})
}
