package reading

// moreCame takes pigs told by their count as more, and by what each weighs, for pigs that
// came: "3 more pigs off my uncle tonight, about 45 lb apiece".
func (r *reader) moreCame() {
	for k := 0; k+2 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord || k > 0 && it.gap < gapStop || r.items[k+1].gap != gapNone || it.quest || it.v > mostPigs {
			continue
		}
		pigs := k + 1
		if w := r.items[pigs].s; w == "more" || w == "new" || w == "another" {
			pigs++
		} else if w != "more pigs" && w != "new pigs" {
			continue
		}
		p := &r.items[pigs]
		if !p.is(sPigs) || p.gap != gapNone {
			continue
		}
		s := span{fArrive, k, r.sentenceEnd(k)}
		if r.firstQty(s, mass) < 0 || !r.has(s, sEach) && !apiece(r.said(s)) || r.has(s, sPlan) || r.has(s, sNot) || r.has(s, sArrive) || r.has(s, sHung) || r.has(s, sSold) || r.has(s, sWeigh) {
			continue
		}
		p.sense.add(sArrive)
		for n := pigs + 1; n+1 < s.j; n++ {
			if w := r.items[n].s; w != "off" && w != "from" && w != "off of" {
				continue
			}
			for m := n; m < s.j && (m == n || r.items[m].gap == gapNone) && r.items[m].kind == itWord; m++ {
				r.blank(m) // whom they came from
			}
			break
		}
	}
}

// apiece says that a text tells what is so of each.
func apiece(said string) bool { return saysAny(said, eachWords) }

var eachWords = phrasesOf("each, apiece, a piece, a peace, a peice, ea, every one, per pig")

// shockNotAsked takes two marks and more behind what ails a pig for no question: "ulan has
// red spots everywhere???".
func (r *reader) shockNotAsked() {
	for k := 0; k < len(r.items); {
		i, j := k, r.sentenceEnd(k)
		k = j
		if !r.items[i].quest || r.items[j-1].to+1 >= len(r.text) || r.text[r.items[j-1].to] != '?' || r.text[r.items[j-1].to+1] != '?' {
			continue
		}
		s := span{fSick, i, j}
		if r.items[i].pig < 0 || !r.has(s, sSick) || r.has(s, sAskSure) || r.has(s, sTopic) {
			continue
		}
		for n := i; n < j; n++ {
			r.items[n].quest = false
		}
	}
}
