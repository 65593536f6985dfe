package botapitest

import (
	"fmt"
	"net/http"
	"net/url"
	"strings"
)

// MaxDownload is the largest file that the server gives out, in bytes (Bot API
// manual, getFile).
const MaxDownload = 20 << 20

// Download is the name under which the calls of a file's address are kept, and fail
// on demand; one that is lost breaks off in the middle.
const Download = "download"

// SendFile queues a document in the person's private chat, with a caption or without,
// and gives the message's id.
func (s *Server) SendFile(p Person, name string, b []byte, caption string) int64 {
	return s.SendFileIn(p.ID, p, name, b, caption)
}

// SendFileIn queues a document in a chat.
func (s *Server) SendFileIn(chat int64, p Person, name string, b []byte, caption string) int64 {
	s.mu.Lock()
	id := fmt.Sprintf("file-%d", len(s.files)+1)
	s.files[id] = b
	s.mu.Unlock()
	fields := map[string]any{"document": map[string]any{
		"file_id": id, "file_unique_id": "u" + id, "file_name": name, "file_size": len(b),
	}}
	if caption != "" {
		fields["caption"] = caption
	}
	return s.Send(chat, p, fields)
}

func (s *Server) getFile(p url.Values) (any, *Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	id := p.Get("file_id")
	b, ok := s.files[id]
	switch {
	case !ok:
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: wrong file_id or the file is temporarily unavailable"}
	case len(b) > MaxDownload:
		return nil, &Fault{Status: http.StatusBadRequest, Description: "Bad Request: file is too big"}
	}
	return map[string]any{"file_id": id, "file_unique_id": "u" + id, "file_size": len(b), "file_path": "documents/" + id}, nil
}

// serveFile gives a file out by its address.
func (s *Server) serveFile(w http.ResponseWriter, r *http.Request, path string) {
	token, path, _ := strings.Cut(path, "/")
	id := strings.TrimPrefix(path, "documents/")
	s.mu.Lock()
	s.calls = append(s.calls, Call{Method: Download, Params: url.Values{"path": {path}}})
	f := s.fault(Download, "")
	b, ok := s.files[id]
	s.mu.Unlock()
	if !f.waited(r, s.closed) {
		return
	}
	switch {
	case f.HangUp:
		hangUp(w)
		return
	case f.Lost: // in the middle
		w.Header().Set("Content-Length", fmt.Sprint(len(b)))
		_, _ = w.Write(b[:len(b)/2])
		if flush, ok := w.(http.Flusher); ok {
			flush.Flush()
		}
		hangUp(w)
		return
	case f.Status != 0:
		if f.RetryAfter != 0 {
			w.Header().Set("Retry-After", fmt.Sprint(f.RetryAfter))
		}
		http.Error(w, f.Description, f.Status)
		return
	case token != s.Token || !ok:
		http.NotFound(w, r)
		return
	}
	_, _ = w.Write(b)
}
