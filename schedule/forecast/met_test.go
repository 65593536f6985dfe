package forecast_test

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
	"troughbell/schedule/forecast"
)

// service is a weather service on loopback that answers as MET Norway documents
// its Locationforecast 2.0.
type service struct {
	*httptest.Server
	mu     sync.Mutex
	asked  []*http.Request
	answer func(http.ResponseWriter, *http.Request)
}

func newService(t *testing.T, answer func(http.ResponseWriter, *http.Request)) *service {
	s := &service{answer: answer}
	s.Server = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		s.mu.Lock()
		s.asked = append(s.asked, r)
		s.mu.Unlock()
		s.answer(w, r)
	}))
	t.Cleanup(s.Close)
	return s
}

func (s *service) calls() int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return len(s.asked)
}

const changed = "Fri, 10 Jul 2026 04:10:00 GMT"

// steps is an answer: hourly for 60 hours, then every six.
func steps(from time.Time) string {
	var b strings.Builder
	b.WriteString(`{"type":"Feature","geometry":{"type":"Point","coordinates":[-89.9,44.3,300]},"properties":{"meta":{"updated_at":"2026-07-10T04:10:00Z","units":{"air_temperature":"celsius","relative_humidity":"%"}},"timeseries":[`)
	for i := range 70 {
		at := from.Add(time.Duration(i) * time.Hour)
		if i >= 60 {
			at = from.Add(time.Duration(60+6*(i-60)) * time.Hour)
		}
		temp := 20 + 10*float64(at.Add(-5*time.Hour).Hour())/23
		if i > 0 {
			b.WriteByte(',')
		}
		fmt.Fprintf(&b, `{"time":%q,"data":{"instant":{"details":{"air_temperature":%.1f,"relative_humidity":55.5,"wind_speed":2.1}},"next_1_hours":{"summary":{"symbol_code":"fair_day"},"details":{"precipitation_amount":0.0}}}}`,
			at.Format(time.RFC3339), temp)
	}
	b.WriteString(`]}}`)
	return b.String()
}

var (
	here = model.Place{LatDeg: 44.3, LonDeg: -89.9}
	dawn = time.Date(2026, 7, 10, 10, 0, 0, 0, time.UTC) // 5 am there
)

func chicago(t *testing.T) *time.Location {
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	return zone
}

func TestMetAsksAndRemembers(t *testing.T) {
	now := dawn
	s := newService(t, func(w http.ResponseWriter, r *http.Request) {
		if r.Header.Get("If-Modified-Since") == changed {
			w.Header().Set("Expires", now.Add(time.Hour).Format(http.TimeFormat))
			w.WriteHeader(http.StatusNotModified)
			return
		}
		w.Header().Set("Expires", now.Add(30*time.Minute).Format(http.TimeFormat))
		w.Header().Set("Last-Modified", changed)
		fmt.Fprint(w, steps(dawn.Add(-6*time.Hour)))
	})
	m := forecast.NewMet(s.URL, "troughbell/test ann@example.org", func() time.Time { return now })
	days, err := m.Days(context.Background(), here, chicago(t))
	require.NoError(t, err)
	require.Len(t, days, 3)
	require.Equal(t, model.DateDay(2026, 7, 10), days[0].On)
	require.InDelta(t, 30, *days[0].HighC, 0.01)
	require.InDelta(t, 20, *days[1].LowC, 0.5)
	require.InDelta(t, 55.5, *days[1].RhPct, 0.01)
	require.Nil(t, days[2].HighC, "the third afternoon is told every six hours only")
	require.Equal(t, "lat=44.3&lon=-89.9", s.asked[0].URL.RawQuery)
	require.Equal(t, "troughbell/test ann@example.org", s.asked[0].Header.Get("User-Agent"))

	now = now.Add(29 * time.Minute)
	again, err := m.Days(context.Background(), here, chicago(t))
	require.NoError(t, err)
	require.Equal(t, days, again)
	require.Equal(t, 1, s.calls(), "the answer holds for half an hour")

	now = now.Add(2 * time.Minute)
	again, err = m.Days(context.Background(), here, chicago(t))
	require.NoError(t, err)
	require.Equal(t, days, again, "nothing changed")
	require.Equal(t, 2, s.calls())

	now = now.Add(50 * time.Minute)
	_, err = m.Days(context.Background(), here, chicago(t))
	require.NoError(t, err)
	require.Equal(t, 2, s.calls(), "what did not change holds as long as its new answer says")
}

func TestMetGoesWrong(t *testing.T) {
	for _, c := range []struct {
		name   string
		answer func(http.ResponseWriter, *http.Request)
		want   string
	}{
		{"server error", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(500) }, "answers 500"},
		{"bad question", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(400) }, "answers 400"},
		{"no JSON", func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, "<html>") }, "cannot be read"},
		{"cut short", func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, steps(dawn)[:500]) }, "cannot be read"},
		{"empty", func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, "{}") }, "no temperature"},
		{"fahrenheit", func(w http.ResponseWriter, _ *http.Request) {
			fmt.Fprint(w, strings.Replace(steps(dawn), `"celsius"`, `"fahrenheit"`, 1))
		}, "fahrenheit"},
		{"no such heat", func(w http.ResponseWriter, _ *http.Request) {
			fmt.Fprint(w, `{"properties":{"timeseries":[{"time":"2026-07-10T10:00:00Z","data":{"instant":{"details":{"air_temperature":98}}}}]}}`)
		}, "no temperature"},
		{"endless", func(w http.ResponseWriter, _ *http.Request) {
			junk := strings.Repeat(" ", 1<<20)
			for range 6 {
				fmt.Fprint(w, junk)
			}
		}, "cannot be read"},
		{"hangs up", func(w http.ResponseWriter, _ *http.Request) { panic(http.ErrAbortHandler) }, "EOF"},
		{"sends elsewhere", func(w http.ResponseWriter, r *http.Request) {
			http.Redirect(w, r, "http://192.0.2.1/", http.StatusFound)
		}, "sends elsewhere"},
		{"in circles", func(w http.ResponseWriter, r *http.Request) {
			http.Redirect(w, r, r.URL.String(), http.StatusFound)
		}, "in circles"},
		{"not modified since never", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(304) }, "nothing was known"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := newService(t, c.answer)
			m := forecast.NewMet(s.URL, "troughbell/test", func() time.Time { return dawn })
			days, err := m.Days(context.Background(), here, chicago(t))
			require.ErrorContains(t, err, c.want)
			require.Empty(t, days)
			require.NotContains(t, err.Error(), "44.3", "where the herd is stays out of the log")
		})
	}
}

func TestMetLeavesABusyServiceAlone(t *testing.T) {
	now, status := dawn, http.StatusTooManyRequests
	s := newService(t, func(w http.ResponseWriter, _ *http.Request) {
		if status != http.StatusOK {
			w.WriteHeader(status)
			return
		}
		fmt.Fprint(w, steps(dawn))
	})
	m := forecast.NewMet(s.URL, "troughbell/test", func() time.Time { return now })
	var busy *forecast.Busy
	_, err := m.Days(context.Background(), here, chicago(t))
	require.ErrorAs(t, err, &busy)
	require.Equal(t, dawn.Add(time.Hour), busy.Until)
	_, err = m.Days(context.Background(), model.Place{LatDeg: 50, LonDeg: 8}, chicago(t))
	require.ErrorAs(t, err, &busy)
	require.Equal(t, 1, s.calls(), "no place is asked for meanwhile")
	now, status = now.Add(time.Hour), http.StatusOK
	_, err = m.Days(context.Background(), here, chicago(t))
	require.NoError(t, err)
}

func TestMetGivesUpWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	s := newService(t, func(_ http.ResponseWriter, r *http.Request) {
		cancel()
		<-r.Context().Done()
	})
	m := forecast.NewMet(s.URL, "troughbell/test", func() time.Time { return dawn })
	_, err := m.Days(ctx, here, chicago(t))
	require.ErrorIs(t, err, context.Canceled)
}

func TestCheckBase(t *testing.T) {
	require.NoError(t, forecast.CheckBase(forecast.MetNorway))
	require.NoError(t, forecast.CheckBase("http://127.0.0.1:8080/compact"))
	for _, bad := range []string{"", "api.met.no", "ftp://x/y", "https://", "http://x/?lat=1", "::"} {
		require.Error(t, forecast.CheckBase(bad), bad)
	}
}

// FuzzMetAnswers feeds the client whatever a service might answer.
func FuzzMetAnswers(f *testing.F) {
	f.Add([]byte(steps(dawn)))
	f.Add([]byte(`{"properties":{"timeseries":[{"time":"x"}]}}`))
	f.Add([]byte(`[1,2`))
	zone, err := time.LoadLocation("America/Chicago")
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, body []byte) {
		s := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) { _, _ = w.Write(body) }))
		defer s.Close()
		days, err := forecast.NewMet(s.URL, "troughbell/fuzz", func() time.Time { return dawn }).Days(context.Background(), here, zone)
		if err != nil {
			return
		}
		for _, d := range days {
			raw, err := json.Marshal(model.Forecast{Days: []model.ForecastDay{d}})
			require.NoError(t, err)
			require.NoError(t, model.Forecast{Days: []model.ForecastDay{d}}.Check(), string(raw))
		}
	})
}
