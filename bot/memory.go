package bot

import (
	"slices"
	"sync"

	"troughbell/store"
)

// What a desk remembers of herds: packed journals up to so many bytes, and so many
// herds whole, as they were made of their records last.
const (
	rememberedBytes = 48 << 20
	rememberedWhole = 128 // more than a poll brings: each is made ahead of its text
)

// memory is what a desk remembers of herds, so that a message need not read all that
// its herd ever told. It is never more than the file holds: what it lacks is read.
type memory struct {
	mu     sync.Mutex
	packed map[store.HerdID]*store.Packed
	bytes  int // of packed
	most   int // of bytes
	whole  map[store.HerdID]*State
	turn   []store.HerdID // those in whole, from the one that was made first
}

func newMemory() *memory {
	return &memory{packed: map[store.HerdID]*store.Packed{}, whole: map[store.HerdID]*State{}, most: rememberedBytes}
}

// state gives the herd as its record of that number left it; nil where that is not
// remembered.
func (m *memory) state(id store.HerdID, seq int64) *State {
	m.mu.Lock()
	defer m.mu.Unlock()
	if s := m.whole[id]; s != nil && s.Row.Seq == seq {
		return s
	}
	return nil
}

// journal gives the herd's records up to one that came no later than that of the
// number, and the number of the last of them; none where none are remembered.
func (m *memory) journal(id store.HerdID, seq int64) ([]store.Envelope, int64) {
	m.mu.Lock()
	defer m.mu.Unlock()
	p := m.packed[id]
	if p == nil || p.Seq() > seq {
		return nil, 0
	}
	return p.Journal(), p.Seq()
}

// keep remembers a herd whole, and the records that were not remembered yet.
func (m *memory) keep(id store.HerdID, s *State) {
	m.mu.Lock()
	defer m.mu.Unlock()
	p := m.packed[id]
	switch {
	case p == nil:
		p = store.Pack(id, s.Journal)
		m.packed[id] = p
		m.bytes += p.Weight()
	case p.Seq() > s.Row.Seq: // a reader's, from before what is written now
		return
	default:
		m.add(p, s.Journal)
	}
	m.makeRoom(id)
	if m.whole[id] == nil {
		m.turn = append(m.turn, id)
	}
	m.whole[id] = s
	for len(m.turn) > rememberedWhole {
		delete(m.whole, m.turn[0])
		m.turn = m.turn[1:]
	}
}

// more remembers records that were added to a herd's journal.
func (m *memory) more(id store.HerdID, added []store.Envelope) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if p := m.packed[id]; p != nil && len(added) > 0 && p.Seq() == added[0].Seq-1 {
		m.add(p, added)
		m.makeRoom(id)
	}
}

// add packs those records that are new.
func (m *memory) add(p *store.Packed, journal []store.Envelope) {
	m.bytes -= p.Weight()
	for i := range journal {
		if journal[i].Seq > p.Seq() {
			p.Add(journal[i:])
			break
		}
	}
	m.bytes += p.Weight()
}

// makeRoom drops other herds where more is remembered than is to be. Which of them is
// left to chance: where some more herds speak in turn than there is room for, the one
// that was silent longest would be just the one that speaks next.
func (m *memory) makeRoom(but store.HerdID) {
	for other := range m.packed {
		if m.bytes <= m.most {
			break
		}
		if other != but {
			m.drop(other)
		}
	}
}

func (m *memory) drop(id store.HerdID) {
	if p := m.packed[id]; p != nil {
		m.bytes -= p.Weight()
		delete(m.packed, id)
	}
}

// forget drops all that is remembered of a herd.
func (m *memory) forget(id store.HerdID) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.drop(id)
	if m.whole[id] != nil {
		delete(m.whole, id)
		m.turn = slices.DeleteFunc(m.turn, func(h store.HerdID) bool { return h == id })
	}
}
