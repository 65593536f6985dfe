package reading

import "troughbell/model"

// thingKind says which words and amounts belong to a kind of thing.
type thingKind struct {
	key     string
	generic senses
	names   func(it *item) int8
	old     func(r *reader, k int8) string
	size    func(r *reader, it *item) (t newThing, ok bool)
}

var feederKind = thingKind{
	key: model.SetFeeder, generic: setOf(sFeeder, sBarrel),
	names: func(it *item) int8 { return it.feeder },
	old:   func(r *reader, k int8) string { return r.c.Herd.Feeders[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		switch {
		case it.qty(mass):
			return newThing{kg: model.Float(it.si())}, true
		case it.qty(volume):
			return newThing{l: model.Float(it.si())}, true
		case it.qty(vessel) && it.unit != unitBale:
			if size, ok := r.sizeOf(it.unit); ok {
				return newThing{kg: model.Float(it.v * size)}, true
			}
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 20:
			return newThing{kg: model.Float(r.massUnit().si(it.v))}, true
		}
		return newThing{}, false
	},
}

var barrelKind = thingKind{
	key: model.SetBarrel, generic: setOf(sBarrel, sWater),
	names: func(it *item) int8 { return it.barrel },
	old:   func(r *reader, k int8) string { return r.c.Herd.Barrels[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		switch {
		case it.qty(volume):
			return newThing{l: model.Float(it.si())}, true
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 10:
			return newThing{l: model.Float(r.volumeUnit().si(it.v))}, true
		}
		return newThing{}, false
	},
}

var penKind = thingKind{
	key: model.SetPen, generic: setOf(sPen),
	names: func(it *item) int8 { return it.pen },
	old:   func(r *reader, k int8) string { return r.c.Herd.Pens[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		if m2, ok := r.areaOf(it); ok {
			return newThing{m2: model.Float(m2)}, true
		}
		return newThing{}, false
	},
}

// areaOf is the area of 50x80 ft, 400 m2 or half an acre, in square metres.
func (r *reader) areaOf(it *item) (float64, bool) {
	switch {
	case it.qty(area):
		return it.si(), true
	case it.kind == itDim:
		u := it.unit
		if u.dim() != length {
			u = unitFt
			if r.units == model.Metric {
				u = unitM
			}
		}
		return u.si(it.v) * u.si(it.v2), true
	}
	return 0, false
}
