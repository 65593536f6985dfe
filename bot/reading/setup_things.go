package reading

// newThing is a feeder, barrel or pen that a text sets up.
type newThing struct {
	name    string
	at      int // where its name or size stands
	kg, l   *float64
	m2      *float64
	nipples *int
	inUse   bool
	said    bool // its size was said
}

// thingsIn reads what a span sets up of one kind: "two hoppers 300 lb each
// called north and south", "three barrels: shed 55 gal 2 nipples, hill 55 gal".
func (r *reader) thingsIn(s span, kind thingKind) []newThing {
	r.listedSizes(s)
	w := r.setUpSaid(s, kind)
	out := w.paired(r)
	if len(out) == 0 {
		return nil
	}
	w.giveNipples(out)
	w.callByWord(out)
	r.nameThings(out, w.word, kind)
	return out
}
