package reading

// saidNotOurs says that the items from i to j tell of pigs that they are not the person's:
// "2 hogs loose on the county road, not mine".
func (r *reader) saidNotOurs(i, j int) bool {
	a, b := r.tokenRange(span{fAlarm, i, j})
	for k := a; k+1 < b; k++ {
		if !denyWords[r.toks[k].s] {
			continue
		}
		for n := k + 1; n < b && n <= k+2; n++ {
			switch w := r.toks[n].s; {
			case w == "ours", w == "mine", (w == "my" || w == "our") && n+1 < b && (r.toks[n+1].s == "pigs" || r.toks[n+1].s == "hogs" || r.toks[n+1].s == "pig"):
				return true
			case w != "even" && w != "any" && w != "of" && w != "be":
				n = b
			}
		}
	}
	return false
}

var denyWords = listed("not, aren't, arent, ain't, aint, isn't, isnt, wasn't, wasnt, weren't, werent, none, never")
