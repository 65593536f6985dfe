package answer

import "troughbell/bot/picture"

// costPicture has what the season's money goes into.
func costPicture(a asked) (picture.Drawing, error) {
	parts, c, err := a.h.CostParts(a.now)
	if err != nil {
		return nil, err
	}
	return picture.Costs{
		Parts: parts, Spent: c.Spent, Forecast: c.Forecast, Received: c.Received, Pigs: a.h.SeasonPigs(a.now),
		PerKgLive: c.PerKgLive, PerKgHanging: c.PerKgHanging, PerKgPackaged: c.PerKgPackaged,
		UnpricedFeedKg: c.UnpricedFeedKg,
	}, nil
}
