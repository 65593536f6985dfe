// Package model computes what a few outdoor pigs weigh, eat, drink and need,
// and when.
//
// A herd is the fold of its records ([Fold]); every figure is a function of a
// herd and a moment. The package reads no clock, opens no file, knows no chat
// and writes no sentences: a figure carries its reasons as codes with
// quantities ([Reason]), and words are made of them elsewhere.
//
// Quantities are SI, with the unit in the name: WeightKg, FeedKg, Litres,
// AreaM2. Days are calendar days of the herd ([Day]); moments are time.Time in
// the herd's zone, so that [DayOf] needs nothing else. Figures are intervals
// ([Interval], 80 % unless said otherwise), never bare points.
package model
