package main

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/model"
)

// hotDays is an answer of a weather service with three days of 38 °C.
func hotDays(from time.Time) string {
	var steps []string
	for i := range 72 {
		steps = append(steps, fmt.Sprintf(`{"time":%q,"data":{"instant":{"details":{"air_temperature":%.1f,"relative_humidity":40}}}}`,
			from.Add(time.Duration(i)*time.Hour).UTC().Format(time.RFC3339), 38.0))
	}
	return `{"properties":{"timeseries":[` + strings.Join(steps, ",") + `]}}`
}

// TestForecastReachesTheHerd shares a position with the running program and
// finds the forecast of that place, and no finer one, in the herd's records.
func TestForecastReachesTheHerd(t *testing.T) {
	t.Parallel()
	asked := make(chan *http.Request, 16)
	weather := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		asked <- r
		fmt.Fprint(w, hotDays(time.Now().Add(-24*time.Hour).Truncate(time.Hour)))
	}))
	defer weather.Close()
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	serve := func() *program {
		return startWith(t, []string{
			"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token, "TROUGHBELL_WEATHER_API=" + weather.URL,
		}, "serve", "--db", db, "--telegram-api", api.URL(), "--weather-contact", "ann@example.org", "--zone", "America/New_York")
	}
	p := serve()
	pair(t, api, p)
	api.Say(ann, setUp)
	id := api.Send(ann.ID, ann, map[string]any{"location": map[string]any{"latitude": 42.4412, "longitude": -76.4978}})
	eventually(t, func() bool { return len(answers(api, id)) == 1 }, p)
	require.Contains(t, answers(api, id)[0].Text, "MET Norway's forecast")
	p.stop(t, syscall.SIGTERM)
	p = serve() // its first round comes at once, the next only with the minute
	require.Equal(t, "ready", p.line(t))
	select {
	case r := <-asked:
		require.Equal(t, "lat=42.4&lon=-76.5", r.URL.RawQuery)
		require.Contains(t, r.UserAgent(), "ann@example.org")
	case <-time.After(30 * time.Second):
		t.Fatalf("no forecast was asked for: %s", p.said())
	}
	eventually(t, func() bool { return forecasts(t, db) == 1 }, p)
	p.stop(t, syscall.SIGTERM)
	require.NotContains(t, p.said(), "42.4")
}

func forecasts(t *testing.T, db string) (n int) {
	t.Helper()
	for _, e := range journal(t, db) {
		if f, ok := e.Fact.(model.Forecast); ok {
			n++
			require.Equal(t, 38.0, *f.Days[len(f.Days)-1].LowC)
		}
	}
	return n
}

func TestWeatherFlags(t *testing.T) {
	for _, c := range []struct {
		name  string
		flags weatherFlag
		asks  bool
		wrong string
	}{
		{"none", weatherFlag{}, false, ""},
		{"a contact", weatherFlag{WeatherContact: "ann@example.org"}, true, ""},
		{"a contact and a service", weatherFlag{WeatherContact: "example.org/ann", WeatherAPI: "http://127.0.0.1:1/x"}, true, ""},
		{"a service only", weatherFlag{WeatherAPI: "http://127.0.0.1:1/x"}, false, "--weather-contact you@example.org"},
		{"no contact", weatherFlag{WeatherContact: "ann"}, false, "no mail or web address"},
		{"a contact in two lines", weatherFlag{WeatherContact: "ann@example.org\nX: y"}, false, "no mail or web address"},
		{"no service", weatherFlag{WeatherContact: "ann@example.org", WeatherAPI: "weather"}, false, "no address of a weather service"},
	} {
		t.Run(c.name, func(t *testing.T) {
			source, err := c.flags.source()
			require.Equal(t, c.asks, source != nil)
			if c.wrong == "" {
				require.NoError(t, err)
				return
			}
			require.ErrorAs(t, err, &wrong{})
			require.ErrorContains(t, err, c.wrong)
		})
	}
}
