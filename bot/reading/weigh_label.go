package reading

import (
	"strings"
)

// label gives roles from words such as "girth" before or behind numbers: behind
// them where a number stands before the first label.
func (r *reader) label(s span, ms []measure) {
	type tag struct {
		at   int
		role role
	}
	var tags []tag
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sEmptyCrate), it.s == "crate" && k+1 < s.j && r.items[k+1].number() && r.find(s, sCrate) < k:
			tags = append(tags, tag{k, roleTare})
		case it.is(sGirth), (it.s == "around" || it.s == "round") && r.around(k, s):
			tags = append(tags, tag{k, roleGirth})
		case it.is(sLength), it.s == "l" && k > s.i && r.items[k-1].number():
			tags = append(tags, tag{k, roleLength})
		case it.s == "g" && k > s.i && r.items[k-1].number():
			tags = append(tags, tag{k, roleGirth})
		case it.is(sWeigh) && it.pig < 0 && !strings.HasPrefix(it.s, "av") && !strings.HasPrefix(it.s, "mean"):
			tags = append(tags, tag{k, roleWeight})
		default:
			continue
		}
		r.items[k].used = true
	}
	if len(tags) == 0 {
		return
	}
	if len(tags) == 1 && tags[0].role != roleTare && tags[0].role != roleLength {
		for k := range ms {
			if ms[k].role == roleOpen && (tags[0].role != roleWeight || ms[k].unit.dim() != length) {
				ms[k].role = tags[0].role
			}
		}
		return
	}
	if n := len(ms); n > 2 && n%2 == 0 && len(tags) == 2 && tags[0].role != tags[1].role && tags[1].at-tags[0].at <= 2 && (tags[1].at < ms[0].at || tags[0].at > ms[n-1].at) && tags[0].role != roleTare && tags[1].role != roleTare {
		for k := range ms { // "hazel 36 40 otis 37 41 girth and length"
			if ms[k].role == roleOpen {
				ms[k].role = tags[k%2].role
			}
		}
		return
	}
	before := len(ms) > 0 && ms[0].at < tags[0].at
	if len(tags) == 1 && tags[0].role == roleLength {
		for k := range ms { // "97 cm, length 108 cm"
			if d := ms[k].at - tags[0].at; d > 0 && d <= 2 && r.items[ms[k].at].gap < gapComma {
				before = false
			}
		}
	}
	for _, t := range tags {
		best, far := -1, 99
		for k := range ms {
			d := ms[k].at - t.at
			if before && t.role != roleTare {
				d = -d
			}
			if d < 0 {
				d = -d + 2
			}
			if ms[k].claimed || ms[k].role == rolePair || d >= far {
				continue
			}
			best, far = k, d
		}
		if best >= 0 && far <= 5 {
			ms[best].claimed = true
			if ms[best].role == roleOpen || t.role == roleTare || ms[best].role == roleGirth {
				ms[best].role = t.role
			}
		}
	}
	// One kind of label for all: "dot 38, moss 40 girths".
	if one := tags[0].role; one == roleGirth {
		for _, t := range tags {
			if t.role != one {
				return
			}
		}
		for k := range ms {
			if ms[k].role == roleOpen {
				ms[k].role = one
			}
		}
	}
}

// around says that "around" means the girth and not "about".
func (r *reader) around(k int, s span) bool {
	counts := k > s.i && r.items[k-1].kind == itNum && r.items[k-1].v <= float64(r.alive) && k+1 < s.j && r.items[k+1].number() // "all 4 around 220"
	return k > s.i && r.items[k-1].number() && !counts || r.has(s, sLength)
}

// subtractCrate takes the empty crate off the weights that were read with it.
func (r *reader) subtractCrate(ms []measure) []measure {
	tare := -1
	for k := range ms {
		if ms[k].role == roleTare {
			tare = k
		}
	}
	if tare < 0 {
		return ms
	}
	ms, tare = withoutDifference(ms, tare)
	for k := range ms {
		if k == tare || ms[k].role == roleLength || ms[k].role == rolePair {
			continue
		}
		u := ms[k].unit
		if u == 0 {
			u = r.massUnit()
		}
		t := ms[tare].unit
		if t == 0 {
			t = u
		}
		ms[k].unit, ms[k].role = u, roleWeight
		ms[k].v -= t.si(ms[tare].v) / units[u].factor
	}
	return ms
}

// joinTape makes one measure of a girth and a length that stand together.
func joinTape(r *reader, ms []measure) []measure {
	out := ms[:0]
	for k := 0; k < len(ms); k++ {
		m := ms[k]
		if k+1 < len(ms) {
			n := ms[k+1]
			gap := r.namesBetween(m.at, n.at)
			switch {
			case gap, n.same:
			case m.role == roleGirth && n.role == roleLength:
				m.v2, m.role = n.lengthIn(r, m), rolePair
				k++
			case m.role == roleLength && n.role == roleGirth:
				n.v2, n.role = m.lengthIn(r, n), rolePair
				n.at = m.at
				m = n
				k++
			case m.role == roleOpen && n.role == roleOpen && m.unit == 0 && n.unit == 0 && r.tapeLike(m.v) && r.tapeLike(n.v) && r.oneName(m.at, n.at),
				m.role == roleGirth && n.role == roleGirth && r.oneName(m.at, n.at),
				m.role == roleGirth && n.role == roleOpen && r.tapeLike(n.v) && r.oneName(m.at, n.at):
				m.v2, m.role = n.lengthIn(r, m), rolePair
				k++
			}
		}
		out = append(out, m)
	}
	return out
}

// lengthIn is the measure's value in the unit of another.
func (m measure) lengthIn(r *reader, of measure) float64 {
	u, v := m.unit, of.unit
	if u == 0 {
		u = v
	}
	if v == 0 {
		v = u
	}
	if u == v {
		return m.v
	}
	if u.dim() != length || v.dim() != length {
		return m.v
	}
	return u.si(m.v) / units[v].factor
}
