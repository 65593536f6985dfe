package schedule

import (
	"time"

	"troughbell/model"
)

// stockVisit says a week ahead which ingredient will be short at the next
// visit, or is short at this one.
func stockVisit(v *view) []need {
	after := v.nextVisit(v.next)
	short, when := v.shortAt(v.visitAt(), []time.Time{v.visit, v.next, after})
	if len(short) == 0 {
		return nil
	}
	return []need{{Line: v.stockLine(short, when, CodeStockShort, aboutStock), quiet: 6 * day}}
}

// stockBetween says the same again on the day before the visit that lacks it, at an
// hour at which it can still be bought. It comes beside the routine message of the
// day, which keeps its own hour.
func stockBetween(v *view) []need {
	eve := (model.DayOf(v.next) - 1).At(v.h.Chore.ShopMinute, v.loc)
	if v.h.Quiet.Holds(v.h.Chore.ShopMinute) {
		eve = v.evening(model.DayOf(v.next) - 1)
	}
	if eve.Before(v.start) || !eve.Before(v.end) {
		return nil
	}
	short, when := v.shortAt(eve, []time.Time{v.next, v.nextVisit(v.next)})
	if len(short) == 0 {
		return nil
	}
	l := v.stockLine(short, when, CodeStockEve, stockEve)
	l.Earliest, l.Latest = eve, v.next
	return []need{{Line: l, token: token(stockEve, model.DayOf(when)), quiet: 4 * day, asked: true}}
}

const stockEve = "stock:eve"

func (v *view) stockLine(short []short, when time.Time, code, topic string) Line {
	l := Line{About: aboutStock, Topic: topic, Grade: Routine, Code: code, On: model.DayOf(when.In(v.loc))}
	for _, s := range short {
		l.Names = append(l.Names, s.name)
		l.Q = append(l.Q, model.Quantity{Value: s.haveKg, Unit: model.Kilograms}, model.Quantity{Value: s.need, Unit: model.Kilograms})
	}
	return l
}
