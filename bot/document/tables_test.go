package document

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Texts that a spreadsheet would take for formulas are quoted; numbers are not,
// and what was quoted is read as it was.
func TestHarmless(t *testing.T) {
	for in, want := range map[string]string{
		"":                       "",
		"straw":                  "straw",
		"-5":                     "-5",
		"-5.25":                  "-5.25",
		"1.5e-05":                "1.5e-05",
		"=1+1":                   "'=1+1",
		"+1 555":                 "'+1 555",
		"@SUM":                   "'@SUM",
		"-":                      "'-",
		"-2+3+cmd|' /C calc'!A0": "'-2+3+cmd|' /C calc'!A0",
		"-1-1":                   "'-1-1",
		"\t=1":                   "'\t=1",
		"\r=1":                   "'\r=1",
		"\n=1":                   "'\n=1",
	} {
		require.Equal(t, want, harmless(in), "%q", in)
	}
}

func TestUSColumns(t *testing.T) {
	cols := []string{"id", "weight_kg", "girth_cm", "litres", "high_c", "area_m2", "depth_m", "days", "capacity_l"}
	vals := map[string]string{"weight_kg": "45.359237", "girth_cm": "76.2", "litres": "3.785411784", "high_c": "30", "area_m2": "", "depth_m": "0.3048", "capacity_l": "a, b"}
	got := map[string]string{}
	for _, x := range extras(cols) {
		got[x.name] = x.of(vals[cols[x.from]])
	}
	require.Equal(t, map[string]string{
		"weight_lb": "100.00", "girth_in": "30.00", "gallons": "1.00", "high_f": "86.00", "area_ft2": "", "depth_ft": "1.00", "capacity_gal": "",
	}, got)
}
