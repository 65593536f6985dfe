package model

import (
	"fmt"
	"math/rand/v2"
)

// countedDraws are the same random numbers at each run.
type countedDraws struct{ r *rand.Rand }

func newCountedDraws(seed uint64) countedDraws {
	return countedDraws{rand.New(rand.NewPCG(seed, seed))}
}

func (c countedDraws) normal() float64 { return c.r.NormFloat64() }

func twoDigits(n int) string { return fmt.Sprintf("%02d", n) }
