// Package botapitest is a Bot API server on loopback for tests: it queues
// updates with the offset semantics of the real one, keeps what is sent the way
// a chat would show it, and fails on demand.
package botapitest

import (
	"encoding/json"
	"fmt"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"sync"
	"time"
)

// Server is a running server.
type Server struct {
	Token string
	http  *httptest.Server

	mu       sync.Mutex
	updates  []queued
	nextID   int64
	poll     chan struct{} // closed when the poll under way is to end
	news     chan struct{} // closed and renewed when an update is queued
	messages []*Message
	lastID   int64
	calls    []Call
	faults   map[string][]Fault
	clock    func() time.Time
	webhook  bool
}

type queued struct {
	id  int64
	raw json.RawMessage
}

// Message is a message as its chat shows it.
type Message struct {
	ID      int64
	Chat    int64
	Text    string
	ReplyTo string
	Buttons []Button
	Silent  bool
	Edits   int
}

// Button is an inline button of a message.
type Button struct {
	Label string `json:"text"`
	Data  string `json:"callback_data"`
}

// Call is a call of a method as it came in.
type Call struct {
	Method string
	Params url.Values
}

// Fault is how one call fails. The zero value does not.
type Fault struct {
	Status      int    // of an API error
	Description string // of an API error
	RetryAfter  int    // seconds, with 429
	MigrateTo   int64
	Page        string // a body that is no JSON, with Status
	HangUp      bool   // the connection breaks before anything is done
	Lost        bool   // it is done, and the connection breaks before the answer
	Delay       time.Duration
}

// New starts a server for a bot with the token. Close ends it.
func New(token string) *Server {
	s := &Server{
		Token: token, nextID: 1000, lastID: 5000, news: make(chan struct{}),
		faults: map[string][]Fault{}, clock: time.Now,
	}
	s.http = httptest.NewServer(http.HandlerFunc(s.serve))
	return s
}

// URL is the base address, without a trailing slash.
func (s *Server) URL() string { return s.http.URL }

// Close ends the server and breaks its connections.
func (s *Server) Close() {
	s.http.CloseClientConnections()
	s.http.Close()
}

// SetClock sets the clock that dates messages.
func (s *Server) SetClock(now func() time.Time) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.clock = now
}

// Fail makes the next calls of a method fail, one fault a call.
func (s *Server) Fail(method string, faults ...Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.faults[method] = append(s.faults[method], faults...)
}

// SetWebhook sets or removes a webhook, which forbids to poll.
func (s *Server) SetWebhook(on bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.webhook = on
}

// RestartIDs makes the ids of updates go on from n, as the real server's do
// after a week of silence.
func (s *Server) RestartIDs(n int64) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.nextID = n
}

// Calls lists the calls of a method so far, failed ones included.
func (s *Server) Calls(method string) []Call {
	s.mu.Lock()
	defer s.mu.Unlock()
	var out []Call
	for _, c := range s.calls {
		if c.Method == method {
			out = append(out, c)
		}
	}
	return out
}

// Messages lists what the bot sent to a chat, as the chat shows it now.
func (s *Server) Messages(chat int64) []Message {
	s.mu.Lock()
	defer s.mu.Unlock()
	var out []Message
	for _, m := range s.messages {
		if m.Chat == chat {
			out = append(out, *m)
		}
	}
	return out
}

// Pending is how many updates are not confirmed yet.
func (s *Server) Pending() int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return len(s.updates)
}

func (s *Server) serve(w http.ResponseWriter, r *http.Request) {
	token, method, ok := strings.Cut(strings.TrimPrefix(r.URL.Path, "/bot"), "/")
	if !ok || token != s.Token {
		fail(w, Fault{Status: http.StatusUnauthorized, Description: "Unauthorized"})
		return
	}
	if err := r.ParseForm(); err != nil {
		fail(w, Fault{Status: http.StatusBadRequest, Description: "Bad Request: " + err.Error()})
		return
	}
	s.mu.Lock()
	s.calls = append(s.calls, Call{Method: method, Params: r.Form})
	var f Fault
	if q := s.faults[method]; len(q) > 0 {
		f, s.faults[method] = q[0], q[1:]
	}
	s.mu.Unlock()
	if f.Delay > 0 {
		select {
		case <-time.After(f.Delay):
		case <-r.Context().Done():
			return
		}
	}
	switch {
	case f.HangUp:
		hangUp(w)
		return
	case f.Status != 0:
		fail(w, f)
		return
	}
	result, refusal := s.do(r, method)
	switch {
	case f.Lost:
		hangUp(w)
	case refusal != nil:
		fail(w, *refusal)
	default:
		answer(w, map[string]any{"ok": true, "result": result})
	}
}

func (s *Server) do(r *http.Request, method string) (any, *Fault) {
	switch method {
	case "getMe":
		return map[string]any{"id": 7, "is_bot": true, "first_name": "bell", "username": "bell_test_bot"}, nil
	case "getUpdates":
		return s.getUpdates(r)
	case "sendMessage":
		return s.sendMessage(r.Form)
	case "editMessageText":
		return s.editMessage(r.Form)
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

func (s *Server) sendMessage(p url.Values) (any, *Fault) {
	chat, err := strconv.ParseInt(p.Get("chat_id"), 10, 64)
	if err != nil || p.Get("text") == "" {
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message text is empty"}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.lastID++
	m := &Message{
		ID: s.lastID, Chat: chat, Text: p.Get("text"), ReplyTo: p.Get("reply_to_message_id"),
		Buttons: buttons(p), Silent: p.Get("disable_notification") == "true",
	}
	s.messages = append(s.messages, m)
	return map[string]any{
		"message_id": m.ID, "date": s.clock().Unix(), "text": m.Text, "chat": map[string]any{"id": chat, "type": "private"},
	}, nil
}

func (s *Server) editMessage(p url.Values) (any, *Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, m := range s.messages {
		if fmt.Sprint(m.ID) != p.Get("message_id") || fmt.Sprint(m.Chat) != p.Get("chat_id") {
			continue
		}
		b := buttons(p)
		if m.Text == p.Get("text") && len(b) == len(m.Buttons) {
			return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message is not modified"}
		}
		m.Text, m.Buttons = p.Get("text"), b
		m.Edits++
		return map[string]any{"message_id": m.ID, "date": s.clock().Unix(), "text": m.Text, "chat": map[string]any{"id": m.Chat}}, nil
	}
	return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: message to edit not found"}
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

func fail(w http.ResponseWriter, f Fault) {
	if f.Page != "" {
		w.WriteHeader(f.Status)
		_, _ = w.Write([]byte(f.Page))
		return
	}
	params := map[string]any{}
	if f.RetryAfter != 0 {
		params["retry_after"] = f.RetryAfter
	}
	if f.MigrateTo != 0 {
		params["migrate_to_chat_id"] = f.MigrateTo
	}
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(f.Status)
	_ = json.NewEncoder(w).Encode(map[string]any{
		"ok": false, "error_code": f.Status, "description": f.Description, "parameters": params,
	})
}

func answer(w http.ResponseWriter, v any) {
	w.Header().Set("Content-Type", "application/json")
	_ = json.NewEncoder(w).Encode(v)
}

func hangUp(w http.ResponseWriter) {
	c, _, err := w.(http.Hijacker).Hijack()
	if err != nil {
		panic(http.ErrAbortHandler)
	}
	if t, ok := c.(*net.TCPConn); ok {
		_ = t.SetLinger(0)
	}
	_ = c.Close()
}
