package store

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"troughbell/model"
)

// recordColumns reads a record as six columns: each column of a row costs about
// as much as decoding a small fact. The first holds all that has no blanks in
// it, joined by blanks.
const recordColumns = "SELECT seq || ' ' || version || ' ' || at || ' ' || stated || ' ' || said_at || ' ' ||" +
	" coalesce(person, 0) || ' ' || coalesce(chat, 0) || ' ' || on_day || ' ' || id || ' ' || kind || ' ' || zone," +
	" said_by, message, text, judged, body FROM record "

// head is the first column, taken apart from the left; the first error stays.
type head struct {
	rest string
	err  error
}

func (h *head) word() string {
	w, rest, _ := strings.Cut(h.rest, " ")
	h.rest = rest
	return w
}

func (h *head) number() int64 {
	n, err := strconv.ParseInt(h.word(), 10, 64)
	if err != nil && h.err == nil {
		h.err = err
	}
	return n
}

// recordsOf reads records of the herd.
func recordsOf(herd HerdID) func(scanner) (Envelope, error) {
	return func(row scanner) (Envelope, error) {
		e := Envelope{Herd: herd}
		var h head
		var body string
		if err := row.Scan(&h.rest, &e.ByName, &e.Source.Message, &e.Text, &e.Judged, &body); err != nil {
			return e, err
		}
		if err := e.fill(&h, body); err != nil {
			return e, fmt.Errorf("record %s: %w", e.ID, err)
		}
		return e, nil
	}
}

func (e *Envelope) fill(h *head, body string) error {
	e.Seq = h.number()
	version := int(h.number())
	at := h.number()
	e.Stated = h.number() != 0
	saidAt := h.number()
	e.By, e.Source.Chat = PersonID(h.number()), ChatID(h.number())
	day := h.word()
	e.ID = h.word()
	kind := model.Kind(h.word())
	if h.err != nil {
		return h.err
	}
	loc, err := Zone(h.rest)
	if err != nil {
		return err
	}
	e.Zone = loc.String()
	e.At, e.SaidAt = time.UnixMilli(at).In(loc), time.UnixMilli(saidAt).In(loc)
	if e.On, err = model.ParseDay(day); err != nil {
		return err
	}
	e.Fact, err = decode(kind, version, []byte(body))
	return err
}
