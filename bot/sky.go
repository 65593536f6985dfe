package bot

import (
	"context"
	"errors"
	"fmt"
	"sync"
	"time"

	"troughbell/model"
	"troughbell/schedule/forecast"
	"troughbell/store"
)

// Forecasts are fetched before the evening's nudges are due, and once more
// before the day begins: minutes after midnight of the herd's clock.
var skyAt = [...]int{5 * 60, 17 * 60}

const (
	skyAhead = 2                // days after today that are kept
	skyRetry = 15 * time.Minute // after a failure
	skyQueue = 1024             // herds that can wait to be asked for
)

// Sky fetches the forecast for herds that said where they are. The desk tells it
// which herds want one; it asks outside of any transaction, and keeps what is new
// as a record of the herd.
type Sky struct {
	store  *store.Store
	desk   *Desk
	source forecast.Source
	now    func() time.Time
	report func(error)

	wanted chan store.HerdID
	mu     sync.Mutex
	queued map[store.HerdID]bool
	done   map[store.HerdID]time.Time // up to which of the day's times it was asked
}

// NewSky makes the fetcher of forecasts and has the desk use it. report is told
// what goes wrong, and must not block.
func NewSky(st *store.Store, d *Desk, source forecast.Source, now func() time.Time, report func(error)) *Sky {
	s := &Sky{
		store: st, desk: d, source: source, now: now, report: report,
		wanted: make(chan store.HerdID, skyQueue), queued: map[store.HerdID]bool{}, done: map[store.HerdID]time.Time{},
	}
	d.sky = s
	return s
}

// Run fetches until ctx ends.
func (s *Sky) Run(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case id := <-s.wanted:
			if err := s.serve(ctx, id); err != nil && ctx.Err() == nil {
				s.report(err)
			}
		}
	}
}

func (s *Sky) serve(ctx context.Context, id store.HerdID) error {
	err := s.fetch(ctx, id)
	if errors.Is(err, store.ErrNotFound) { // the herd was deleted meanwhile
		err = nil
	}
	if err != nil {
		err = errors.Join(fmt.Errorf("forecast for herd %d: %w", id, err), s.retry(ctx, id))
	}
	s.mu.Lock()
	delete(s.queued, id)
	s.mu.Unlock()
	return err
}

// want has a herd's forecast fetched where that has not been done since the
// day's latest time for it. It does not block: where too many wait, the herd's
// next look asks again.
func (s *Sky) want(id store.HerdID, now time.Time) {
	latest, _ := skyTimes(now)
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.queued[id] || !s.done[id].Before(latest) {
		return
	}
	select {
	case s.wanted <- id:
		s.queued[id] = true
	default:
	}
}

// skyTimes are the latest of the times for fetching, and the next.
func skyTimes(now time.Time) (latest, next time.Time) {
	today := model.DayOf(now)
	for day := today - 1; day <= today+1; day++ {
		for _, minute := range skyAt {
			at := day.At(minute, now.Location())
			if at.After(now) {
				return latest, at
			}
			latest = at
		}
	}
	return latest, now.Add(24 * time.Hour)
}

// wantsForecast reports whether there is a place to ask for, and pigs to ask for
// its sake.
func (s *State) wantsForecast(now time.Time) bool {
	return s.Herd.Place != nil && len(s.Herd.Alive(model.DayOf(now))) > 0
}

func (s *Sky) fetch(ctx context.Context, id store.HerdID) error {
	var st *State
	err := s.store.Read(ctx, func(tx *store.Tx) (err error) {
		st, err = s.desk.State(tx, id)
		return err
	})
	if err != nil {
		return err
	}
	now := s.now().In(st.Zone)
	latest, _ := skyTimes(now)
	if !st.wantsForecast(now) {
		return nil
	}
	place := *st.Herd.Place
	days, err := s.source.Days(ctx, place, st.Zone)
	if err != nil {
		return err
	}
	if err := s.keep(ctx, id, place, days, now); err != nil {
		s.desk.Forget(id)
		return err
	}
	s.mu.Lock()
	s.done[id] = latest
	s.mu.Unlock()
	return nil
}

// keep records what is new of a forecast, unless the herd has said since that it
// is elsewhere.
func (s *Sky) keep(ctx context.Context, id store.HerdID, place model.Place, days []model.ForecastDay, now time.Time) error {
	return s.store.Write(ctx, func(tx *store.Tx) error {
		st, err := s.desk.State(tx, id)
		if err != nil || st.Herd.Place == nil || *st.Herd.Place != place {
			return err
		}
		var ahead []model.ForecastDay
		for _, d := range days {
			if today := model.DayOf(now); d.On >= today && d.On <= today+skyAhead {
				ahead = append(ahead, d)
			}
		}
		news := model.Forecast{Days: st.Herd.ForecastNews(ahead)}
		if len(news.Days) == 0 {
			return nil
		}
		if err := news.Check(); err != nil {
			return err
		}
		if err := (&talk{s: st, now: now}).keep(tx, news); err != nil {
			return err
		}
		return tx.SetLookAgain(id, now)
	})
}

// retry has the herd looked at again soon after a failure.
func (s *Sky) retry(ctx context.Context, id store.HerdID) error {
	return s.store.Write(ctx, func(tx *store.Tx) error {
		row, err := tx.Herd(id)
		if again := s.now().Add(skyRetry); err == nil && row.LookAgain.After(again) {
			err = tx.SetLookAgain(id, again)
		}
		return err
	})
}
