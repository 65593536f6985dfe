package telegram

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"log"
	"net/http"
	"net/http/httptrace"
	"net/netip"
	"net/url"
	"strconv"
	"strings"
	"sync/atomic"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
)

// PublicAPI is the Bot API server that everybody uses.
const PublicAPI = "https://api.telegram.org"

// CheckAPI checks the base address of a Bot API server; empty is the public one.
func CheckAPI(base string) error {
	if base == "" {
		return nil
	}
	u, err := url.Parse(base)
	if err != nil || u.Scheme != "http" && u.Scheme != "https" || u.Host == "" || u.RawQuery != "" || u.Fragment != "" {
		return errors.New("that is no address of a server; write it as http://localhost:8081")
	}
	return nil
}

// CheckHaste checks how many times as fast as Telegram lets it the bot may send:
// once, but for a server on this machine.
func CheckHaste(base string, times float64) error {
	if times == 1 {
		return nil
	}
	if u, err := url.Parse(base); err != nil || !loopback(u.Hostname()) {
		return errors.New("only a Bot API server on this machine, as a test's, may be sent to faster than Telegram allows: leave it out")
	}
	if times < 1 || times > mostHaste {
		return fmt.Errorf("how many times as fast is a number from 1 to %d", mostHaste)
	}
	return nil
}

const mostHaste = 1000

func loopback(host string) bool {
	ip, err := netip.ParseAddr(host)
	return host == "localhost" || err == nil && ip.IsLoopback()
}

// Time limits of calls. The poll waits at the server for pollSeconds.
const (
	pollSeconds = 50
	pollLimit   = (pollSeconds + 15) * time.Second
	sendLimit   = 30 * time.Second
	uploadLimit = 2 * time.Minute  // a whole file goes over a farm's line
	fetchLimit  = time.Minute      // a file comes from Telegram's to the server's
	pingAfter   = 20 * time.Second // of silence on a connection
)

// mostAnswer is the longest answer read, in bytes: a hundred updates are far
// shorter.
const mostAnswer = 32 << 20

// client calls the Bot API. The token never leaves it: not in an error, not in
// a log.
type client struct {
	endpoint string // the library's pattern, with two %s
	files    string // the same for files
	token    string
	http     *http.Client
}

func newClient(base, token string) *client {
	// The library would print transport errors, token and all, by itself.
	quiet := log.New(io.Discard, "", 0)
	_ = tgbotapi.SetLogger(quiet) // it only refuses nil
	t := http.DefaultTransport.(*http.Transport).Clone()
	// Without a ping, calls would go on into a connection whose line has died.
	t.HTTP2 = &http.HTTP2Config{SendPingTimeout: pingAfter}
	base = strings.ReplaceAll(strings.TrimRight(base, "/"), "%", "%%")
	return &client{
		endpoint: base + "/bot%s/%s",
		files:    base + "/file/bot%s/%s",
		token:    token,
		http:     &http.Client{Transport: t},
	}
}

// call calls a method and gives the raw result. Every error is a *callError.
func (c *client) call(ctx context.Context, method string, params tgbotapi.Params, limit time.Duration) (json.RawMessage, error) {
	return c.request(ctx, method, limit, func(api *tgbotapi.BotAPI) (*tgbotapi.APIResponse, error) {
		return api.MakeRequest(method, params)
	})
}

// upload is call for a method that takes a file along.
func (c *client) upload(ctx context.Context, method string, params tgbotapi.Params, f tgbotapi.RequestFile) (json.RawMessage, error) {
	return c.request(ctx, method, uploadLimit, func(api *tgbotapi.BotAPI) (*tgbotapi.APIResponse, error) {
		return api.UploadFiles(method, params, []tgbotapi.RequestFile{f})
	})
}

func (c *client) request(ctx context.Context, method string, limit time.Duration,
	do func(*tgbotapi.BotAPI) (*tgbotapi.APIResponse, error),
) (json.RawMessage, error) {
	ctx, cancel := context.WithTimeout(ctx, limit)
	defer cancel()
	d := &doer{ctx: ctx, client: c}
	api := &tgbotapi.BotAPI{Token: c.token, Client: d}
	api.SetAPIEndpoint(c.endpoint)
	resp, err := do(api)
	if err != nil {
		return nil, sortOut(method, c.redact(err), d.wrote.Load())
	}
	return resp.Result, nil
}

// download gets a file that somebody sent, of at most so many bytes; nil where it has
// more. Every error is a *callError, as of the method getFile.
func (c *client) download(ctx context.Context, fileID string, most int64) ([]byte, error) {
	const method = "getFile"
	raw, err := c.call(ctx, method, tgbotapi.Params{"file_id": fileID}, sendLimit)
	if err != nil {
		return nil, err
	}
	var at struct {
		Path string `json:"file_path"`
		Size int64  `json:"file_size"`
	}
	switch err := json.Unmarshal(raw, &at); {
	case err != nil:
		return nil, &callError{method: method, what: unknown, err: err}
	case at.Size > most:
		return nil, nil
	case at.Path == "":
		return nil, &callError{method: method, what: gone, err: errors.New("it gave no path")}
	}
	ctx, cancel := context.WithTimeout(ctx, fetchLimit)
	defer cancel()
	b, err := c.get(ctx, fmt.Sprintf(c.files, c.token, at.Path), most)
	var call *callError
	switch {
	case err == nil && int64(len(b)) > most:
		return nil, nil
	case err == nil, errors.As(err, &call):
		return b, err
	}
	return nil, &callError{method: method, err: c.redact(err)}
}

// get reads what lies at an address, one byte more than the most at most.
func (c *client) get(ctx context.Context, address string, most int64) (b []byte, err error) {
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, address, nil)
	if err != nil {
		return nil, err
	}
	resp, err := c.http.Do(req)
	if err != nil {
		return nil, err
	}
	defer func() { err = errors.Join(err, resp.Body.Close()) }()
	if resp.StatusCode != http.StatusOK {
		return nil, c.refusal(resp)
	}
	return io.ReadAll(io.LimitReader(resp.Body, most+1))
}

// refusal is the error of an answer that brings no file. It is not the token's: that
// was good for the call before.
func (c *client) refusal(resp *http.Response) error {
	e := &callError{method: "getFile", err: fmt.Errorf("the file's address answers %s", resp.Status)}
	switch {
	case resp.StatusCode == http.StatusTooManyRequests:
		e.what = flood
		if n, err := strconv.Atoi(resp.Header.Get("Retry-After")); err == nil {
			e.wait = time.Duration(min(n, 3600)) * time.Second
		}
	case resp.StatusCode < http.StatusInternalServerError:
		e.what = gone
	}
	return e
}

// doer attaches a context to the library's requests, and notes whether a
// request went out: then its outcome is unknown until an answer is read.
type doer struct {
	ctx    context.Context
	client *client
	wrote  atomic.Bool
}

// Do implements the library's client.
func (d *doer) Do(req *http.Request) (*http.Response, error) {
	trace := &httptrace.ClientTrace{WroteRequest: func(i httptrace.WroteRequestInfo) {
		if i.Err == nil {
			d.wrote.Store(true)
		}
	}}
	resp, err := d.client.http.Do(req.WithContext(httptrace.WithClientTrace(d.ctx, trace)))
	if err != nil {
		return nil, d.client.redact(err)
	}
	resp.Body = http.MaxBytesReader(nil, resp.Body, mostAnswer)
	return resp, nil
}

// redact takes the token out of an error: transport errors quote the address,
// and the token is in it.
func (c *client) redact(err error) error {
	if err == nil {
		return nil
	}
	var u *url.Error
	if errors.As(err, &u) {
		err = fmt.Errorf("%s: %w", u.Op, u.Err)
	}
	if c.token != "" && strings.Contains(err.Error(), c.token) {
		return errors.New(strings.ReplaceAll(err.Error(), c.token, "<token>"))
	}
	return err
}
