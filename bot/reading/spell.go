package reading

// distance is the number of slips between two words: letters left out, added,
// changed, or swapped with their neighbour (Damerau's count, in the restricted
// form that edits no place twice). Words over 24 bytes count as far apart.
func distance(a, b string) int {
	const limit = 24
	if len(a) > limit || len(b) > limit {
		if a == b {
			return 0
		}
		return limit
	}
	var rows [3][limit + 1]int
	prev2, prev, cur := &rows[0], &rows[1], &rows[2]
	for j := range len(b) + 1 {
		prev[j] = j
	}
	for i := 1; i <= len(a); i++ {
		cur[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			d := min(prev[j]+1, cur[j-1]+1, prev[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d = min(d, prev2[j-2]+1)
			}
			cur[j] = d
		}
		prev2, prev, cur = prev, cur, prev2
	}
	return prev[len(b)]
}

// swapped reports whether two words have the same letters in another order.
func swapped(a, b string) bool {
	if len(a) != len(b) {
		return false
	}
	var count [256]int
	for i := range len(a) {
		count[a[i]]++
		count[b[i]]--
	}
	return count == [256]int{}
}

// doubled says that s is w with one of its letters typed twice.
func doubled(s, w string) bool {
	for i := 1; i < len(s); i++ {
		if s[i] == s[i-1] && s[:i]+s[i+1:] == w {
			return true
		}
	}
	return false
}
