package bot

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
	"troughbell/store"
)

// aJournal is so many records of a herd, as the file gives them.
func aJournal(herd store.HerdID, records int) []store.Envelope {
	at := time.UnixMilli(1_780_000_000_000).In(time.UTC)
	out := make([]store.Envelope, records)
	for i := range out {
		out[i] = store.Envelope{
			ID: store.RecordID(int64(i + 1)), Seq: int64(i + 1), Herd: herd, On: model.DayOf(at), Zone: "UTC", At: at, SaidAt: at,
			Source: store.Source{Chat: 1, Message: fmt.Sprint(i / 2)}, Text: fmt.Sprint("fence ", i), Judged: "certain", Fact: model.Fence{Kv: float64(i)},
		}
		at = at.Add(time.Hour)
	}
	return out
}

func aState(herd store.HerdID, records int) *State {
	return &State{Row: store.HerdRow{ID: herd, Seq: int64(records)}, Journal: aJournal(herd, records)}
}

// However many herds speak, no more is remembered than there is room for, and what is
// remembered is what they told.
func TestMemoryIsBounded(t *testing.T) {
	m := newMemory()
	m.most = 20 * store.Pack(1, aJournal(1, 30)).Weight()
	known := 0
	for n := range 200 {
		herd, records := store.HerdID(n%24+1), 30+n/24
		had, seq := m.journal(herd, 1000)
		require.Equal(t, aJournal(herd, int(seq)), append([]store.Envelope{}, had...))
		if seq > 0 {
			known++
		}
		m.keep(herd, aState(herd, records))
		require.LessOrEqual(t, m.bytes, m.most)
		require.LessOrEqual(t, len(m.whole), rememberedWhole)
		weight := 0
		for _, p := range m.packed {
			weight += p.Weight()
		}
		require.Equal(t, weight, m.bytes)
	}
	require.Greater(t, known, 20, "of those that speak in turn some are remembered")
	for herd := range store.HerdID(25) {
		m.forget(herd)
	}
	require.Zero(t, m.bytes)
	require.Empty(t, m.packed)
	require.Empty(t, m.whole)
	require.Empty(t, m.turn)
}

// Who reads what the file held before others wrote to it neither gets what they
// wrote, nor takes it from them.
func TestMemoryOfAReaderBehind(t *testing.T) {
	m := newMemory()
	m.keep(1, aState(1, 3))
	m.more(1, aJournal(1, 5)[3:])
	m.more(1, aJournal(1, 9)[8:]) // what lies between is not known
	journal, seq := m.journal(1, 5)
	require.Equal(t, int64(5), seq)
	require.Equal(t, aJournal(1, 5), journal)
	require.Nil(t, m.state(1, 5))
	journal, seq = m.journal(1, 4)
	require.Empty(t, journal)
	require.Zero(t, seq)
	m.keep(1, aState(1, 4))
	_, seq = m.journal(1, 5)
	require.Equal(t, int64(5), seq)
	m.keep(1, aState(1, 6))
	require.NotNil(t, m.state(1, 6))
	_, seq = m.journal(1, 6)
	require.Equal(t, int64(6), seq)
}
