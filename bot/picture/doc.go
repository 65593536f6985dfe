// Package picture draws figures where people would rather look than read: as
// PNG files made for the width of a phone, and as compact charts of block
// characters for a terminal. It is pure: the same figures, voice and style give
// the same picture.
//
// A picture is laid out as a sheet of marks (lines, areas, dots, texts) first.
// The marks are what tests look at; the PNG is made from them.
package picture
