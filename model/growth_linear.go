package model

import "math"

// lower is a lower triangular matrix, row after row.
type lower struct {
	n int
	a []float64
}

func newLower(n int) lower { return lower{n, make([]float64, n*(n+1)/2)} }

func (l lower) row(i int) []float64 { return l.a[i*(i+1)/2 : (i+1)*(i+2)/2] }

// factor replaces a symmetric positive definite matrix, given by its lower half,
// with its Cholesky factor. The matrices here carry measurement noise on their
// diagonals, so that none is near singular; a diagonal lost to rounding is
// held at a tiny positive value.
func (l lower) factor() {
	for i := range l.n {
		ri := l.row(i)
		for j := range i {
			rj := l.row(j)
			s := ri[j]
			for k := range j {
				s -= ri[k] * rj[k]
			}
			ri[j] = s / rj[j]
		}
		d := ri[i]
		for k := range i {
			d -= ri[k] * ri[k]
		}
		ri[i] = math.Sqrt(math.Max(d, 1e-12))
	}
}

// forward solves L x = b in place.
func (l lower) forward(b []float64) {
	for i := range l.n {
		r := l.row(i)
		s := b[i]
		for k := range i {
			s -= r[k] * b[k]
		}
		b[i] = s / r[i]
	}
}

// backward solves L' x = b in place.
func (l lower) backward(b []float64) {
	for i := l.n - 1; i >= 0; i-- {
		r := l.row(i)
		b[i] /= r[i]
		for k := range i {
			b[k] -= r[k] * b[i]
		}
	}
}

// sharedRoom is room for a vector of what is shared, so that the few unknowns of
// most herds cost no memory.
type sharedRoom [24]float64

// of gives n numbers, all nought.
func (r *sharedRoom) of(n int) []float64 {
	if n > len(r) {
		return make([]float64, n)
	}
	return r[:n]
}

func dot(a, b []float64) float64 {
	s := 0.0
	for i, x := range a {
		s += x * b[i]
	}
	return s
}

// forwardRows solves L X = B in place for a matrix of cols columns, row after
// row.
func (l lower) forwardRows(b []float64, cols int) {
	for i := range l.n {
		r := l.row(i)
		bi := b[i*cols : (i+1)*cols]
		for k := range i {
			x, bk := r[k], b[k*cols:(k+1)*cols]
			for c := range bi {
				bi[c] -= x * bk[c]
			}
		}
		inv := 1 / r[i]
		for c := range bi {
			bi[c] *= inv
		}
	}
}

// inverse is the inverse of the lower triangular matrix.
func (l lower) inverse() lower {
	inv := newLower(l.n)
	for i := range l.n {
		r, to := l.row(i), inv.row(i)
		for k := range i {
			x := r[k]
			for j, y := range inv.row(k) {
				to[j] -= x * y
			}
		}
		d := 1 / r[i]
		for j := range i {
			to[j] *= d
		}
		to[i] = d
	}
	return inv
}
