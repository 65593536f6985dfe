package main

import (
	_ "embed"
	"fmt"
)

// licences are the texts that go along with the program: its own licence stands
// in LICENSE, these are those of all that is linked into it. TestLicences writes
// and checks the file.
//
//go:embed legal/licences.txt
var licences string

// licencesCmd says what the program is made of.
type licencesCmd struct{}

// Help of the command.
func (licencesCmd) Help() string {
	return `Prints the licence of each module that is compiled in, with its whole text, as
those who wrote them ask of whoever passes the program on.

Example: troughbell licences | less`
}

// Run prints the texts.
func (licencesCmd) Run(a *app) error {
	_, err := fmt.Fprint(a.stdout, licences)
	return err
}
