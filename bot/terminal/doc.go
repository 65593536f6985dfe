// Package terminal is the same chat on a terminal.
package terminal
