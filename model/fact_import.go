package model

import "errors"

// Import is a file taken in: so many records came with it. They are records of their
// own, each marked as come with a file.
type Import struct {
	File    string `json:"file"`
	Records int    `json:"records"`
}

func (Import) Kind() Kind   { return "import" }
func (Import) Version() int { return 1 }

func (i Import) Check() error {
	if i.Records < 1 {
		return errors.New("a file that was taken in brought a record")
	}
	return nil
}

func (i Import) fold(h *Herd, r Record) { h.Imports = append(h.Imports, dated(i, r)) }
