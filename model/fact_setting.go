package model

import "errors"

// Keys of a Setting.
const (
	SetHerd     = "herd"
	SetZone     = "zone"
	SetUnits    = "units"
	SetCurrency = "currency"
	SetTarget   = "target_kg"
	SetChore    = "chore_days"
	SetHour     = "hour"
	SetQuiet    = "quiet"
	SetMute     = "mute"
	SetUnmute   = "unmute"
	SetFeeder   = "feeder"
	SetBarrel   = "barrel"
	SetPen      = "pen"
	SetWallow   = "wallow"
	SetSize     = "size" // of a bag, bucket, scoop or batch
	SetSkipped  = "skipped"
	SetPlace    = "place" // Text: a Place, or empty to take it back
	SetLevel    = "level" // Text: LevelMidweek, or empty to take it back
	SetEve      = "evening_before"
	SetShop     = "shop_hour"
	SetPictures = "pictures" // Text: DarkPictures or LightPictures
)

// LevelMidweek asks for a word on levelling the feed between two rounds.
const LevelMidweek = "midweek"

// How pictures are to look: light on dark, or dark on light as where nothing was
// said.
const (
	DarkPictures  = "dark"
	LightPictures = "light"
)

// Units of the person.
const (
	US     = "us"
	Metric = "metric"
)

// Setting is one thing set up or changed. Which of the other fields holds the
// value depends on the key: Text for herd, zone, units, currency, mute,
// unmute (a topic of nudges, or All) and skipped (a set-up question passed over); Number for target_kg; List for
// chore_days ("sat"), hour ("07:00"), quiet ("21:00", "06:00") evening_before
// ("19:00", empty to take it back) and shop_hour ("17:00", empty for the usual one); Thing for the rest.
type Setting struct {
	Key    string   `json:"key"`
	Text   string   `json:"text,omitempty"`
	Number *float64 `json:"number,omitempty"`
	List   []string `json:"list,omitempty"`
	Thing  *Thing   `json:"thing,omitempty"`
}

// Thing is a feeder, barrel, pen, wallow or measure as set up. Nil is unknown.
type Thing struct {
	Name       string   `json:"name,omitempty"`
	CapacityKg *float64 `json:"capacity_kg,omitempty"`
	CapacityL  *float64 `json:"capacity_l,omitempty"`
	Nipples    *int     `json:"nipples,omitempty"`
	AreaM2     *float64 `json:"area_m2,omitempty"`
	DepthM     *float64 `json:"depth_m,omitempty"`
	InUse      *bool    `json:"in_use,omitempty"`
	Soil       Soil     `json:"soil,omitempty"`    // of a pen
	FeedKg     *float64 `json:"feed_kg,omitempty"` // one bag, bucket, scoop or batch holds
	Gone       bool     `json:"gone,omitempty"`    // no longer there
}

func (Setting) Kind() Kind   { return "settings" }
func (Setting) Version() int { return 1 }

func (s Setting) Check() error {
	if s.Key == "" {
		return errors.New("a setting needs a key")
	}
	if t := s.Thing; t != nil {
		for _, v := range []*float64{t.CapacityKg, t.CapacityL, t.AreaM2, t.DepthM, t.FeedKg} {
			if v != nil && *v <= 0 {
				return errors.New("a size must be more than nothing")
			}
		}
	}
	if s.Key == SetPlace && s.Text != "" {
		if _, err := ParsePlace(s.Text); err != nil {
			return err
		}
	}
	if t := s.Thing; t != nil && !t.Soil.known() {
		return errors.New("soil is sand, loam or clay")
	}
	if s.Key == SetTarget && (s.Number == nil || *s.Number < 20 || *s.Number > 400) {
		return errors.New("a target weight lies between 20 and 400 kg")
	}
	return nil
}

func (s Setting) fold(h *Herd, r Record) { h.apply(s, r) }
