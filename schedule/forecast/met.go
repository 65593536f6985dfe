package forecast

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"strings"
	"sync"
	"time"

	"troughbell/model"
)

// MetNorway is the address of MET Norway's Locationforecast 2.0 in its compact
// form.
const MetNorway = "https://api.met.no/weatherapi/locationforecast/2.0/compact"

const (
	askLimit   = 10 * time.Second // for one question, reading included
	answerSize = 4 << 20          // some forty times an answer's usual size
	placesKept = 1000             // answers remembered
	soonest    = 10 * time.Minute // a place is not asked again before, whatever the answer says
)

// Met is the service as a client sees it: it says who asks, asks no oftener than
// the service's answers allow, and remembers them. Safe for concurrent use.
type Met struct {
	base, agent string
	http        *http.Client
	now         func() time.Time

	mu    sync.Mutex
	kept  map[model.Place]*answer
	pause time.Time // the service asked to be left alone until then
}

// answer is what the service last said of a place.
type answer struct {
	hours    []Hour
	expires  time.Time
	modified string // for If-Modified-Since
}

// NewMet makes a client. agent names the program and whom to write to, which the
// service's terms ask for.
func NewMet(base, agent string, now func() time.Time) *Met {
	return &Met{
		base: base, agent: agent, now: now, kept: map[model.Place]*answer{},
		http: &http.Client{
			Timeout: askLimit,
			CheckRedirect: func(r *http.Request, via []*http.Request) error {
				if r.URL.Host != via[0].URL.Host {
					return errors.New("the weather service sends elsewhere")
				}
				if len(via) > 3 {
					return errors.New("the weather service sends in circles")
				}
				return nil
			},
		},
	}
}

// CheckBase says what is wrong with the address of a service.
func CheckBase(base string) error {
	u, err := url.Parse(base)
	if err != nil || u.Scheme != "https" && u.Scheme != "http" || u.Host == "" || u.RawQuery != "" {
		return fmt.Errorf("%q is no address of a weather service, as in %s", base, MetNorway)
	}
	return nil
}

// Busy says that the service wants to be left alone for a while.
type Busy struct{ Until time.Time }

func (b *Busy) Error() string {
	return "the weather service asks to be left alone until " + b.Until.UTC().Format("15:04 MST")
}

// Days implements Source.
func (m *Met) Days(ctx context.Context, at model.Place, zone *time.Location) ([]model.ForecastDay, error) {
	m.mu.Lock()
	have, pause := m.kept[at], m.pause
	m.mu.Unlock()
	now := m.now()
	if have != nil && now.Before(have.expires) {
		return ByDay(have.hours, zone), nil
	}
	if now.Before(pause) {
		return nil, &Busy{Until: pause}
	}
	got, err := m.ask(ctx, at, have)
	if err != nil {
		return nil, fmt.Errorf("ask for the weather: %w", err)
	}
	m.mu.Lock()
	if len(m.kept) >= placesKept {
		clear(m.kept)
	}
	m.kept[at] = got
	m.mu.Unlock()
	return ByDay(got.hours, zone), nil
}

func (m *Met) ask(ctx context.Context, at model.Place, have *answer) (*answer, error) {
	q := url.Values{"lat": {fmt.Sprintf("%.1f", at.LatDeg)}, "lon": {fmt.Sprintf("%.1f", at.LonDeg)}}
	r, err := http.NewRequestWithContext(ctx, http.MethodGet, m.base+"?"+q.Encode(), nil)
	if err != nil {
		return nil, err
	}
	r.Header.Set("User-Agent", m.agent)
	r.Header.Set("Accept", "application/json")
	if have != nil && have.modified != "" {
		r.Header.Set("If-Modified-Since", have.modified)
	}
	res, err := m.http.Do(r)
	if err != nil {
		return nil, unplaced(err)
	}
	defer res.Body.Close()
	now := m.now()
	switch res.StatusCode {
	case http.StatusOK, http.StatusNonAuthoritativeInfo: // 203 announces a later version
	case http.StatusNotModified:
		if have == nil {
			return nil, errors.New("the weather service says that nothing changed, but nothing was known")
		}
		return &answer{have.hours, expiry(res.Header, now), have.modified}, nil
	case http.StatusTooManyRequests, http.StatusForbidden, http.StatusServiceUnavailable:
		until := now.Add(time.Hour)
		m.mu.Lock()
		m.pause = until
		m.mu.Unlock()
		return nil, fmt.Errorf("%s: %w", res.Status, &Busy{Until: until})
	default:
		return nil, fmt.Errorf("the weather service answers %s", res.Status)
	}
	hours, err := readMet(io.LimitReader(res.Body, answerSize))
	if err != nil {
		return nil, err
	}
	return &answer{hours, expiry(res.Header, now), res.Header.Get("Last-Modified")}, nil
}

// unplaced takes the address, and with it the place, out of an error.
func unplaced(err error) error {
	if u := (*url.Error)(nil); errors.As(err, &u) {
		return u.Err
	}
	return err
}

// expiry is until when an answer holds.
func expiry(h http.Header, now time.Time) time.Time {
	until, err := http.ParseTime(h.Get("Expires"))
	if least := now.Add(soonest); err != nil || until.Before(least) {
		return least
	}
	return until
}

// readMet reads the service's GeoJSON. Steps without a temperature are passed
// over; what is no forecast at all is an error.
func readMet(body io.Reader) ([]Hour, error) {
	var doc struct {
		Properties struct {
			Meta struct {
				Units map[string]string `json:"units"`
			} `json:"meta"`
			Timeseries []struct {
				Time time.Time `json:"time"`
				Data struct {
					Instant struct {
						Details struct {
							TempC *float64 `json:"air_temperature"`
							RhPct *float64 `json:"relative_humidity"`
						} `json:"details"`
					} `json:"instant"`
				} `json:"data"`
			} `json:"timeseries"`
		} `json:"properties"`
	}
	if err := json.NewDecoder(body).Decode(&doc); err != nil {
		return nil, fmt.Errorf("the weather service's answer cannot be read: %w", err)
	}
	if u := doc.Properties.Meta.Units["air_temperature"]; u != "" && !strings.EqualFold(u, "celsius") {
		return nil, fmt.Errorf("the weather service tells temperatures in %q", u)
	}
	var out []Hour
	for _, step := range doc.Properties.Timeseries {
		t, rh := step.Data.Instant.Details.TempC, step.Data.Instant.Details.RhPct
		if t == nil || *t < -60 || *t > 60 {
			continue
		}
		if rh != nil && (*rh < 0 || *rh > 100) {
			rh = nil
		}
		out = append(out, Hour{step.Time, *t, rh})
	}
	if len(out) == 0 {
		return nil, errors.New("the weather service's answer has no temperature in it")
	}
	return out, nil
}
