// Package botapitest is a Bot API server on loopback for tests: it queues
// updates with the offset semantics of the real one, keeps what is sent the way
// a chat would show it, and fails on demand.
package botapitest

import (
	"encoding/json"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"sync"
	"time"
)

// BotName is the user name of the bot that the server serves.
const BotName = "bell_test_bot"

const botID = 7

// Server is a running server.
type Server struct {
	Token string
	http  *httptest.Server
	// closed is closed when the server ends, so that no call hangs on.
	closed chan struct{}
	ending sync.Once

	mu       sync.Mutex
	updates  []queued
	nextID   int64
	poll     chan struct{} // closed when the poll under way is to end
	news     chan struct{} // closed and renewed when an update is queued
	messages []*Message
	files    map[string][]byte // that people sent, by id
	lastID   int64
	calls    []Call
	faults   map[string][]Fault
	luck     func(method string, chat int64) Fault // beside the faults; nil: none
	clock    func() time.Time
	webhook  bool
	queries  int64    // presses so far
	last     event    // the latest update queued
	held     *[]event // nil: updates are queued as they come
	// described is what the bot says of itself.
	described string
}

// event is what an update tells, before it has an id.
type event struct {
	kind string
	body map[string]any
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
	// ForceReply says that the person's next text is a reply to it.
	ForceReply bool
	Edits      int
	File       *File // nil: a text; else Text stands below it

	Lost bool   // the bot got no answer to the call that sent it
	Via  string // by which address it came
}

// File is what came with a message.
type File struct {
	Kind  string // "photo", "document"
	Name  string
	Bytes []byte
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
	Silent      bool   // it is done, and the answer does not come
	Delay       time.Duration
	Chat        int64 // only a call for this chat fails; 0: any
}

// Hangs is the delay of a call that no answer comes to.
const Hangs = time.Hour

// New starts a server for a bot with the token. Close ends it.
func New(token string) *Server {
	s := &Server{
		Token: token, nextID: 1000, lastID: 5000, news: make(chan struct{}), closed: make(chan struct{}),
		faults: map[string][]Fault{}, clock: time.Now, files: map[string][]byte{},
	}
	s.http = httptest.NewServer(http.HandlerFunc(s.serve))
	return s
}

// URL is the base address, without a trailing slash.
func (s *Server) URL() string { return s.http.URL }

// URLVia is an address of its own for one of several callers: a message tells by
// which it came.
func (s *Server) URLVia(name string) string { return s.http.URL + "/via/" + name }

// Close ends the server and breaks its connections.
func (s *Server) Close() {
	s.ending.Do(func() { close(s.closed) }) // a call that hangs may not see that its caller went
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

// Luck has each call fail as f says, where no other fault waits for it. f is
// called for one call at a time.
func (s *Server) Luck(f func(method string, chat int64) Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.luck = f
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

// AllMessages lists what the bot sent to all chats, in the order in which it
// was shown.
func (s *Server) AllMessages() []Message { return s.MessagesSince(0) }

// MessagesSince lists them but for the first n.
func (s *Server) MessagesSince(n int) []Message {
	s.mu.Lock()
	defer s.mu.Unlock()
	out := make([]Message, 0, len(s.messages)-n)
	for _, m := range s.messages[n:] {
		out = append(out, *m)
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
	via := ""
	if rest, ok := strings.CutPrefix(r.URL.Path, "/via/"); ok {
		via, rest, _ = strings.Cut(rest, "/")
		r.URL.Path = "/" + rest
	}
	if path, ok := strings.CutPrefix(r.URL.Path, "/file/bot"); ok {
		s.serveFile(w, r, path)
		return
	}
	token, method, ok := strings.Cut(strings.TrimPrefix(r.URL.Path, "/bot"), "/")
	if !ok || token != s.Token {
		fail(w, Fault{Status: http.StatusUnauthorized, Description: "Unauthorized"})
		return
	}
	if err := parse(r); err != nil {
		fail(w, Fault{Status: http.StatusBadRequest, Description: "Bad Request: " + err.Error()})
		return
	}
	s.mu.Lock()
	s.calls = append(s.calls, Call{Method: method, Params: r.Form})
	f := s.fault(method, r.Form.Get("chat_id"))
	s.mu.Unlock()
	if !f.waited(r, s.closed) {
		return
	}
	switch {
	case f.HangUp:
		hangUp(w)
		return
	case f.Status != 0:
		fail(w, f)
		return
	}
	result, refusal := s.do(r, method, came{via: via, lost: f.Lost || f.Silent})
	switch {
	case f.Lost:
		hangUp(w)
	case f.Silent:
		select {
		case <-r.Context().Done():
		case <-s.closed:
		}
	case refusal != nil:
		fail(w, *refusal)
	default:
		answer(w, map[string]any{"ok": true, "result": result})
	}
}

// inMemory is how much of an upload is held in memory, in bytes.
const inMemory = 16 << 20

func parse(r *http.Request) error {
	if strings.HasPrefix(r.Header.Get("Content-Type"), "multipart/") {
		return r.ParseMultipartForm(inMemory)
	}
	return r.ParseForm()
}

// fault takes the first fault that waits for such a call; the lock is held.
func (s *Server) fault(method, chat string) Fault {
	for i, f := range s.faults[method] {
		if f.Chat == 0 || strconv.FormatInt(f.Chat, 10) == chat {
			s.faults[method] = slices.Delete(s.faults[method], i, i+1)
			return f
		}
	}
	if s.luck == nil {
		return Fault{}
	}
	id, _ := strconv.ParseInt(chat, 10, 64) // 0 for a call that names no chat
	return s.luck(method, id)
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

// waited spends the time that a fault takes, and reports whether the caller is still
// there then.
func (f Fault) waited(r *http.Request, closed <-chan struct{}) bool {
	if f.Delay <= 0 {
		return true
	}
	select {
	case <-time.After(f.Delay):
		return true
	case <-r.Context().Done():
		return false
	case <-closed:
		return false
	}
}
