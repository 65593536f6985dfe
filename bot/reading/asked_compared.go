package reading

// whichOfTwo says that a sentence holds two pigs against each other: "moss or plum
// growing quicker".
func (r *reader) whichOfTwo(from, to int) bool {
	for k := from + 1; k+1 < to; k++ {
		if r.items[k].s == "or" && r.items[k-1].pig >= 0 && r.items[k+1].pig >= 0 {
			return r.compares(from, to) && r.amountless(from, to)
		}
	}
	return false
}

// compares says that a comparing word stands in the items from i to j.
func (r *reader) compares(i, j int) bool {
	from, to := r.tokenRange(span{fAsk, i, j})
	for k := from; k < to; k++ {
		if comparing[r.toks[k].s] {
			return true
		}
	}
	return false
}
