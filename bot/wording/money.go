package wording

import "math"

// signs of currencies that stand before the amount.
var signs = map[string]string{"USD": "$", "EUR": "€", "GBP": "£"}

// Currency is the ISO 4217 code of the person's currency: the stated one, else the
// one of the units.
func (v Voice) Currency() string {
	if v.Herd != nil && v.Herd.Currency != "" {
		return v.Herd.Currency
	}
	if v.Metric() {
		return "EUR"
	}
	return "USD"
}

// Amount writes money of a currency; an empty one is the person's own.
func (v Voice) Amount(amount float64, currency string) string {
	if currency == "" {
		currency = v.Currency()
	}
	decimals := 2
	if amount == math.Trunc(amount) {
		decimals = 0
	}
	minus := ""
	if amount < 0 {
		minus, amount = "-", -amount
	}
	if sign, ok := signs[currency]; ok {
		return minus + sign + fixed(amount, decimals)
	}
	return minus + fixed(amount, decimals) + " " + currency
}

// money writes a computed amount: whole from a hundred on, cents below.
func (v Voice) money(amount float64, style string) string {
	switch {
	case style == stylePer && v.Metric():
		return v.Amount(cents(amount), "") + "/kg"
	case style == stylePer:
		return v.Amount(cents(amount*kgPerLb), "") + "/lb"
	case style == styleExact:
		return v.Amount(cents(amount), "")
	case math.Abs(amount) >= 100:
		return v.Amount(math.Round(amount), "")
	}
	return v.Amount(cents(amount), "")
}

func cents(x float64) float64 { return math.Round(x*100) / 100 }
