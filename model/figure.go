package model

import "sync"

// Missing is the error of a figure that lacks something the person could tell.
// What is a code: "pigs", "weight", "feeder", "capacity", "level", "barrels",
// "water_level", "wallow", "pen", "pen_area", "recipe", "bag_size", "booking",
// "humidity", "temperature", "spend", "birth", "ingredient", "price",
// "protein_feed". Names say of which thing.
type Missing struct {
	What  string
	Names []string
}

func (m *Missing) Error() string { return "not known yet: " + m.What }

// OutOfRange is the error of an input outside the range that a formula holds
// for. Quantity says which, Value what it was, Low and High the range.
type OutOfRange struct {
	Quantity         string
	Value, Low, High float64
}

func (o *OutOfRange) Error() string { return o.Quantity + " is outside the range of the formula" }

// figures holds what is computed once for a herd and used by many figures.
type figures struct {
	growth once[*growthFit]
	feed   once[*feedFit]
	water  once[*waterFit]
	draw   once[*herdDraw]
}

type once[T any] struct {
	sync.Once
	v T
}

func (o *once[T]) get(make func() T) T {
	o.Do(func() { o.v = make() })
	return o.v
}
