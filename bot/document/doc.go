// Package document makes the files that a herd is given out as, and reads those
// that it is taken in from: tables of its records, a report to read, a calendar.
package document
