// Package season plays whole simulated seasons against the program: keepers who
// text as people do and act on the nudges they get, over pigs, weather, feeders
// and barrels whose truth the program is never told. All of it is in the tests;
// the program needs nothing of it.
package season
