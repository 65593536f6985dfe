// Package replay plays a timed log in virtual time: a season in a moment, with
// the nudges that fall due on the way.
package replay
