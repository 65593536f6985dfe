package main

import (
	"context"
	"errors"
	"strings"
	"sync"
	"time"

	"troughbell/bot"
	"troughbell/schedule/forecast"
	"troughbell/store"
)

// weatherFlag says whether and where forecasts are fetched.
type weatherFlag struct {
	WeatherContact string `name:"weather-contact" env:"TROUGHBELL_WEATHER_CONTACT" placeholder:"ADDRESS" help:"Fetch forecasts for herds that said where they are, and tell the weather service to write to this mail or web address. Without it none is fetched."`
	WeatherAPI     string `name:"weather-api" env:"TROUGHBELL_WEATHER_API" placeholder:"URL" help:"Address of a service that speaks as MET Norway's Locationforecast does. Default: that one."`
}

// source is the weather service; nil where none is to be asked.
func (f weatherFlag) source() (forecast.Source, error) {
	contact := strings.TrimSpace(f.WeatherContact)
	if contact == "" {
		if f.WeatherAPI != "" {
			return nil, wrongf("--weather-api needs --weather-contact: the service wants to know who asks, as in --weather-contact you@example.org")
		}
		return nil, nil
	}
	if strings.ContainsFunc(contact, func(r rune) bool { return r < ' ' || r > '~' }) || !strings.ContainsAny(contact, "@.") {
		return nil, wrongf("--weather-contact: %q is no mail or web address, as in you@example.org", contact)
	}
	base := f.WeatherAPI
	if base == "" {
		base = forecast.MetNorway
	}
	if err := forecast.CheckBase(base); err != nil {
		return nil, wrongf("--weather-api: %w", err)
	}
	return forecast.NewMet(base, "troughbell/"+version()+" "+contact, time.Now), nil
}

// fetchForecasts fetches forecasts until it is stopped. Without a source it does
// nothing.
func fetchForecasts(a *app, st *store.Store, d *bot.Desk, source forecast.Source) (stop func()) {
	if source == nil {
		return func() {}
	}
	ctx, cancel := context.WithCancel(a.ctx)
	sky := bot.NewSky(st, d, source, time.Now, func(err error) {
		var busy *forecast.Busy
		if errors.As(err, &busy) {
			a.log.Debug("no forecast for now", "err", err)
			return
		}
		a.log.Warn("no forecast; asked again in a quarter of an hour", "err", err)
	})
	var running sync.WaitGroup
	running.Go(func() { sky.Run(ctx) })
	return func() {
		cancel()
		running.Wait()
	}
}
