package bot

import "context"

// Waiting is how many herds wait for their forecast.
func (s *Sky) Waiting() int { return len(s.wanted) }

// Next fetches the forecast of the herd that has waited longest.
func (s *Sky) Next(ctx context.Context) error { return s.serve(ctx, <-s.wanted) }

// Outcome is what was foreseen.
func (f *Foreseen) Outcome() Outcome { return f.out }
