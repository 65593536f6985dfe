package answer

import (
	"maps"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// abouts has one line for each thing that a question can be about within its topic
// and that other figures answer.
var abouts = map[string]func(asked) Answer{
	reading.AboutScraps:    scraps,
	reading.AboutFoods:     foods,
	reading.AboutSickCare:  sickCare,
	reading.AboutCold:      cold,
	reading.AboutHeatCare:  heatCare,
	reading.AboutHeatLine:  heatLine,
	reading.AboutWaterNeed: waterNeed,
	reading.AboutFlow:      flow,
	reading.AboutStraw:     straw,
	reading.AboutSpace:     space,
	reading.AboutGround:    ground,
	reading.AboutFeeder:    feederPlaces,
	reading.AboutFence:     fence,
	reading.AboutBooking:   booking,
	reading.AboutSize:      targetSize,
	reading.AboutSacks:     sacks,
	reading.AboutPigCost:   pigCost,
	reading.AboutBreakEven: breakEven,
	reading.AboutPigWorth:  pigWorth,
	reading.AboutFeedOff:   feedOff,
}

// meant is the pigs that a question of needs is about: those named by number, else
// the herd's, with their weight. Where neither is known it is one pig at the start.
func (a asked) meant() (n int, weightKg float64, ours bool) {
	n, weightKg = a.Count, weanedKg
	if a.WeightKg != nil {
		weightKg = *a.WeightKg
	}
	alive := a.h.Alive(a.today)
	if len(alive) == 0 || n > 0 && n != len(alive) && a.WeightKg != nil {
		return max(n, 1), weightKg, false
	}
	if n == 0 {
		n = len(alive)
	}
	if a.WeightKg == nil {
		w, err := a.h.MeanWeight(alive, a.today)
		if err != nil {
			return n, weightKg, false
		}
		weightKg = w.WeightKg.Mid
	}
	return n, weightKg, true
}

// endKg is the weight that the pigs are taken to have in the end: that asked about,
// the herd's target, or the usual one.
func (a asked) endKg() float64 {
	if kg := a.target(); kg > 0 {
		return kg
	}
	return model.DefaultTargetKg
}

// beside adds figures to the answer of the topic they belong to; none where that
// lacks something, since other programs rely on its figures.
func (a asked) beside(topic func(asked) Answer, more map[string]any) map[string]any {
	data := topic(a).Data
	if data == nil {
		return nil
	}
	maps.Copy(data, more)
	return data
}

func cm(x float64) model.Quantity { return model.Quantity{Value: x, Unit: model.Centimetres} }

func celsius(x float64) model.Quantity { return model.Quantity{Value: x, Unit: model.Celsius} }

// sickCare is a caution and no figure: what to look at, and when to call the vet.
func sickCare(a asked) Answer {
	return Answer{Text: a.say("sick_care", wording.Args{})}
}

// foods is a caution and no figure: what else pigs may eat.
func foods(a asked) Answer {
	return Answer{Text: a.say("foods", wording.Args{})}
}

// scraps is a caution and no figure: waste that went through a kitchen.
func scraps(a asked) Answer {
	return Answer{Text: a.say("scraps", wording.Args{})}
}
