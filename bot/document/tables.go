package document

import (
	"archive/zip"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"regexp"
	"strings"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Tables writes a ZIP with one CSV file for each kind that the herd has records
// of, and says how many records they hold. Columns are in SI with the unit in
// their names; where the person's units are US each has another in those behind
// them. The last column holds the record itself, for reading it back exactly.
func Tables(tx *store.Tx, herd store.HerdID, us bool, w io.Writer) (rows int, err error) {
	journal, err := tx.Journal(herd)
	if err != nil {
		return 0, err
	}
	t := tables{tx: tx, herd: herd, us: us, zip: zip.NewWriter(w), records: map[string]store.Envelope{}}
	for _, e := range journal {
		t.records[e.ID] = e
	}
	for _, f := range model.Facts() {
		n, err := t.table(f.Kind())
		if err != nil {
			return rows, fmt.Errorf("table of %s: %w", f.Kind(), err)
		}
		rows += n
	}
	return rows, t.zip.Close()
}

type tables struct {
	tx      *store.Tx
	herd    store.HerdID
	us      bool
	zip     *zip.Writer
	records map[string]store.Envelope
}

// recordColumn is the name of the column that holds the record itself.
const recordColumn = "record"

// exact is a record as its column holds it: what the other columns do not say,
// or not to the last digit.
type exact struct {
	Kind    model.Kind      `json:"kind"`
	Version int             `json:"version"`
	On      model.Day       `json:"on"`
	By      string          `json:"by,omitempty"`
	Zone    string          `json:"zone"`
	At      time.Time       `json:"at"`
	Said    time.Time       `json:"said"`
	Stated  bool            `json:"stated,omitempty"`
	Body    json.RawMessage `json:"body"`
}

func (t *tables) table(kind model.Kind) (rows int, err error) {
	var out *csv.Writer
	var more []extra
	err = t.tx.ViewRows(kind, t.herd, func(cols, vals []string) error {
		if out == nil {
			f, err := t.zip.Create(string(kind) + ".csv")
			if err != nil {
				return err
			}
			out = csv.NewWriter(f)
			if t.us {
				more = extras(cols)
			}
			head := append([]string(nil), cols...)
			for i, c := range head {
				if c == recordColumn {
					head[i] = string(kind) + "_" + c
				}
			}
			for _, x := range more {
				head = append(head, x.name)
			}
			if err := out.Write(append(head, recordColumn)); err != nil {
				return err
			}
		}
		line := make([]string, 0, len(vals)+len(more)+1)
		id := ""
		for i, v := range vals {
			if cols[i] == "id" {
				id = v
			}
			line = append(line, harmless(v))
		}
		for _, x := range more {
			line = append(line, x.of(vals[x.from]))
		}
		raw, err := exactly(t.records[id])
		if err != nil {
			return err
		}
		rows++
		return out.Write(append(line, raw))
	})
	if err != nil || out == nil {
		return rows, err
	}
	out.Flush()
	return rows, out.Error()
}

func exactly(e store.Envelope) (string, error) {
	body, err := json.Marshal(e.Fact)
	if err != nil {
		return "", err
	}
	b, err := json.Marshal(exact{
		Kind: e.Fact.Kind(), Version: e.Fact.Version(), On: e.On, By: e.ByName, Zone: e.Zone, At: e.At, Said: e.SaidAt, Stated: e.Stated, Body: body,
	})
	return string(b), err
}

// number is a plain number as the tables write it.
var number = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?(e[+-]?[0-9]+)?$`)

// formulaSigns begin what a spreadsheet takes for a formula; the quote keeps it
// from that, and so is quoted itself.
const formulaSigns = "=+-@\t\r\n'"

// harmless keeps a spreadsheet from taking a text for a formula; asItWas takes that
// back.
func harmless(v string) string {
	if v == "" || strings.IndexByte(formulaSigns, v[0]) < 0 || number.MatchString(v) {
		return v
	}
	return "'" + v
}

// asItWas is the text that harmless made a cell of.
func asItWas(cell string) string {
	if len(cell) > 1 && cell[0] == '\'' && strings.IndexByte(formulaSigns, cell[1]) >= 0 {
		return cell[1:]
	}
	return cell
}
