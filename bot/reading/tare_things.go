package reading

// What small pigs are weighed in beside a crate: "ulan 41 minus the basin, 3 kg".

// tareThings are such things.
var tareThings = setOfWords(split("basin, box, sling, harness, wheelbarrow, cart, basket, tray, rope, blanket, towel, carrier, dog crate, dog carrier, tub, bucket, sack, bag, board, pallet, hammock, net"))

// basinForCrate takes such a thing, told to be taken off a weight, for the empty crate.
func (r *reader) basinForCrate() {
	for k := 2; k < len(r.items); k++ {
		it := &r.items[k]
		if !tareThings[it.s] || it.kind != itWord || it.quest {
			continue
		}
		n := k - 1
		for n > 0 && r.items[n].s == "the" && r.items[n+1].gap == gapNone {
			n--
		}
		if !tareLess[r.items[n].s] || r.items[n+1].gap != gapNone {
			continue
		}
		pig := false
		for m := r.sentenceStart(k); m < n; m++ {
			pig = pig || r.items[m].pig >= 0
		}
		if !pig || k+1 >= len(r.items) {
			continue
		}
		it.sense, it.unit, it.either = setOf(sEmptyCrate), 0, false
		for m := n; m < k; m++ {
			r.blank(m)
		}
		for m := k + 1; m < len(r.items) && m <= k+3; m++ { // "the basin, thats 3 kilo"
			x := &r.items[m]
			if x.qty(mass) || x.kind == itNum && !x.soft {
				x.gap = gapNone
				break
			}
			if x.gap >= gapStop || x.kind != itWord || x.pig >= 0 {
				break
			}
			r.blank(m)
			x.gap = gapNone
		}
	}
}

// tareLess lead up to what is to be taken off.
var tareLess = setOfWords(split("minus, less, without, not counting, subtract"))
