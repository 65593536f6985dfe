package health

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"strconv"
	"strings"
	"time"
)

// CheckAddress checks where the endpoint is to listen: on this machine alone.
// Whoever reads it reads no text and no name, but need not be known either.
func CheckAddress(address string) error {
	host, port, err := net.SplitHostPort(address)
	if err != nil {
		return errors.New("that is no address with a port; write it as 127.0.0.1:9310")
	}
	if n, err := strconv.ParseUint(port, 10, 16); err != nil || n == 0 {
		return fmt.Errorf("%q is no port; write the address as 127.0.0.1:9310", port)
	}
	if ip := net.ParseIP(host); ip == nil || !ip.IsLoopback() {
		return fmt.Errorf("%q is reached from elsewhere; the endpoint listens on a loopback address only, as in 127.0.0.1:9310", host)
	}
	return nil
}

// Endpoint answers /health and /metrics over HTTP.
type Endpoint struct {
	Signs   func(context.Context) (Signs, error)
	Process func() Process
	Now     func() time.Time
}

// exposition is the media type of the text format.
const exposition = "text/plain; version=0.0.4; charset=utf-8"

// Handler gives the pages.
func (e Endpoint) Handler() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /health", e.health)
	mux.HandleFunc("GET /metrics", e.metrics)
	return mux
}

func (e Endpoint) health(w http.ResponseWriter, r *http.Request) {
	v, err := e.Signs(r.Context())
	now := e.Now()
	ills := v.Ills(now)
	if err != nil {
		ills = []string{"the database cannot be read: " + err.Error()}
	}
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	page := "ok\n"
	if len(ills) > 0 {
		w.WriteHeader(http.StatusServiceUnavailable)
		page = strings.Join(ills, "\n") + "\n"
	}
	_, _ = io.WriteString(w, page+v.Page(now)) // who asked may have gone
}

func (e Endpoint) metrics(w http.ResponseWriter, r *http.Request) {
	v, err := e.Signs(r.Context())
	if err != nil {
		http.Error(w, "the database cannot be read", http.StatusServiceUnavailable)
		return
	}
	var page bytes.Buffer
	_ = Exposition(&page, v, e.Process()) // a buffer takes everything
	w.Header().Set("Content-Type", exposition)
	_, _ = page.WriteTo(w) // who asked may have gone
}

// Times of the endpoint's server: whoever asks is on this machine.
const (
	readLimit  = 5 * time.Second
	writeLimit = 10 * time.Second
	mostHead   = 8 << 10 // bytes
)

// Listen serves the endpoint at the address until it is stopped.
func (e Endpoint) Listen(address string) (stop func(context.Context) error, err error) {
	if err := CheckAddress(address); err != nil {
		return nil, err
	}
	l, err := net.Listen("tcp", address)
	if err != nil {
		return nil, fmt.Errorf("cannot listen for --metrics: %w; choose another port", err)
	}
	s := &http.Server{
		Handler: e.Handler(), ReadTimeout: readLimit, WriteTimeout: writeLimit, IdleTimeout: time.Minute, MaxHeaderBytes: mostHead,
	}
	done := make(chan error, 1)
	go func() { done <- s.Serve(l) }()
	return func(ctx context.Context) error {
		err := s.Shutdown(ctx)
		if served := <-done; !errors.Is(served, http.ErrServerClosed) {
			err = errors.Join(err, served)
		}
		return err
	}, nil
}
