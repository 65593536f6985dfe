package reading

import (
	"strings"
	"sync"
)

// What a phone hears or puts in place of the words of the pen, and what people
// write short in a chat, is put right by the words beside it.

// chatSpelling are words written short, wherever they stand.
var chatSpelling = map[string]string{
	"wknd": "weekend", "wkend": "weekend", "wkends": "weekends", "wknds": "weekends", "wut": "what", "wat": "what", "wen": "when", "wil": "will", "wll": "will", "hwo": "how", "hw": "how", "mch": "much", "pls": "please", "plz": "please", "thru": "through",
	"cuz": "because", "cos": "because", "coz": "because", "bc": "because", "tho": "though", "ur": "your", "u": "you", "wth": "with", "abt": "about", "rly": "really",
	"til": "till", "untill": "until", "agian": "again", "al": "all", "agn": "again", "adn": "and", "nad": "and", "teh": "the", "nite": "night", "sez": "says", "hav": "have", "hte": "the", "thay": "they", "fo": "of", "theyr": "they're", "dat": "that", "dem": "them",
	"smth": "something", "sry": "sorry", "srry": "sorry", "soz": "sorry", "tae": "to", "whit's": "what's", "haud": "hold", "hauds": "holds", "twa": "two", "shud": "should", "wud": "would", "cud": "could", "wid": "would",
	"wan": "one", "ane": "one", "yin": "one", "fower": "four", "sax": "six", "seeven": "seven", "echt": "eight", "aicht": "eight", "eleeven": "eleven", "twal": "twelve", "hunner": "hundred", "hunder": "hundred", "dizzen": "dozen", "hauf": "half", "kwarter": "quarter",
	"zwei": "two", "drei": "three", "vier": "four", "fünf": "five", "sechs": "six", "sieben": "seven", "acht": "eight", "neun": "nine", "zehn": "ten", "isang": "one", "dalawang": "two", "dalawa": "two", "tatlong": "three", "tatlo": "three", "apat": "four", "limang": "five", "anim": "six",
	"mair": "more", "whit": "what", "gied": "gave", "wis": "was", "doon": "down", "dwn": "down", "doun": "down", "nae": "no", "dinna": "don't", "cannae": "can't", "didnae": "didn't", "wisnae": "wasn't", "rn": "now", "ful": "full", "fulll": "full", "fll": "full", "fukl": "full", "fukll": "full", "hooper": "hopper", "hoopers": "hoppers", "moar": "more",
}

// heardAs are runs of words that stand for others: what was heard, what was meant.
var heardAs = []struct{ heard, meant string }{
	{"weave got", "we've got"},
	{"wood you", "would you"},
	{"for point", "four point"},
	{"quarter of an hour", "fifteen minutes"},
	{"a quarter of an hour", "fifteen minutes"},
	{"quarter hour", "fifteen minutes"},
	{"three quarters of an hour", "forty five minutes"},
	{"half of an hour", "thirty minutes"},
	{"see me to", "last till"},
	{"see us to", "last till"},
	{"see them to", "last till"},
	{"see me through to", "last till"},
	{"see them through to", "last till"},
	{"see us through to", "last till"},
	{"see them through till", "last till"},
	{"see me through till", "last till"},
	{"carry them to", "last till"},
	{"carry them that long", "last that long"},
	{"carry them till", "last till"},
	{"tide them over till", "last till"},
	{"tide them over to", "last till"},
	{"do us till", "last till"},
	{"do them till", "last till"},
	{"hold them till", "last till"},
	{"hold them to", "last till"},
	{"went two a", "went to a"},
	{"went two the", "went to the"},
	{"went two my", "went to my"},
	{"sold two a guy", "sold to a guy"},
	{"forgot the hose in", "ran the hose in"},
	{"left the hose in", "ran the hose in"},
	{"forgot the hose running in", "ran the hose in"},
	{"left the hose running in", "ran the hose in"},
	{"bear metal", "bare metal"},
	{"bear wood", "bare wood"},
	{"bear boards", "bare boards"},
	{"howmuch", "how much"},
	{"howmany", "how many"},
	{"howlong", "how long"},
	{"weave had", "we've had"},
	{"quite hours", "quiet hours"},
	{"chores every day", "chores daily"},
	{"chores each day", "chores daily"},
	{"keep quite", "keep quiet"},
	{"quite from", "quiet from"},
	{"quite between", "quiet between"},
	{"much fed", "much feed"},
	{"more fed", "more feed"},
	{"of barely", "of barley"},
	{"bags barely", "bags barley"},
	{"lb barely", "lb barley"},
	{"lbs barely", "lbs barley"},
	{"kg barely", "kg barley"},
	{"a forth", "a fourth"},
	{"one forth", "one fourth"},
	{"three forths", "three fourths"},
	{"a quarter fool", "a quarter full"},
	{"half fool", "half full"},
	{"wait will be", "weight will be"},
	{"what wait", "what weight"},
	{"the wait of", "the weight of"},
	{"whey in", "weigh in"},
	{"way in", "weigh in"},
	{"the swallow", "the wallow"},
	{"the wallet", "the wallow"},
	{"allbut", "all but"},
	{"all bit", "all but"},
	{"every one but", "everyone but"},
	{"moved too", "moved to"},
	{"fences at", "fence at"},
	{"electric fence", "fence"},
	{"who long", "how long"},
	{"undue that", "undo that"},
	{"undue the", "undo the"},
	{"undue it", "undo it"},
	{"remained me", "remind me"},
	{"re mind me", "remind me"},
	{"mind me to", "remind me to"},
	{"wallet filled", "wallow filled"},
	{"wallet topped", "wallow topped"},
	{"wallet full", "wallow full"},
	{"hopper failed", "hopper filled"},
	{"feeder failed", "feeder filled"},
	{"barrel failed", "barrel filled"},
	{"tank failed", "tank filled"},
	{"how lung", "how long"},
	{"how log will", "how long will"},
	{"how log till", "how long till"},
	{"how log until", "how long until"},
	{"how log is", "how long is"},
	{"how log would", "how long would"},
	{"how log does", "how long does"},
	{"how log can", "how long can"},
	{"barrow full", "barrel full"},
	{"both thanks", "both tanks"},
	{"an our", "an hour"},
	{"half our", "half hour"},
	{"the thank", "the tank"},
	{"thank is", "tank is"},
	{"thank was", "tank was"},
	{"thank at", "tank at"},
	{"thank full", "tank full"},
	{"thank empty", "tank empty"},
	{"wall low", "wallow"},
	{"half a snack", "half a sack"},
	{"a snack in", "a sack in"},
	{"snacks in", "sacks in"},
	{"snack of", "sack of"},
	{"snacks of", "sacks of"},
	{"both tanx", "both tanks"},
	{"bth tanx", "both tanks"},
	{"tanx full", "tanks full"},
	{"tanx fll", "tanks full"},
	{"all battles", "all barrels"},
	{"all barrows full", "all barrels full"},
	{"the barrows full", "the barrels full"},
	{"barrels fool", "barrels full"},
	{"water fool", "water full"},
	{"i out", "i put"},
	{"too more came", "two more came"},
	{"too more pigs", "two more pigs"},
	{"to more came", "two more came"},
	{"to more pigs", "two more pigs"},
	{"lbs a peace", "lbs apiece"},
	{"lb a peace", "lb apiece"},
	{"kg a peace", "kg apiece"},
	{"pounds a peace", "pounds apiece"},
	{"kilos a peace", "kilos apiece"},
}

// levelHomophones are words that stand for a level behind a thing to be filled.
var levelHomophones = map[string]string{"fool": "full", "fill": "full", "fall": "full", "foll": "full", "dray": "dry", "drey": "dry", "try": "dry", "emptied": "empty", "hall": "half", "halve": "half", "fuel": "full", "dryy": "dry", "drry": "dry"}

// numberHomophones are words that stand for a number before what is counted.
var numberHomophones = map[string]string{"to": "two", "too": "two", "for": "four", "fore": "four", "won": "one", "ate": "eight", "tree": "three", "free": "three", "fife": "five", "sex": "six", "sicks": "six"}

// heardWrong puts right what was misheard, miswritten or written short.
func (r *reader) heardWrong() {
	r.figureTo()
	r.figureFor()
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind != tokWord {
			continue
		}
		if w := chatSpelling[t.s]; w != "" && !r.isName(i) {
			t.s = w
		}
		r.chatLetter(i)
		r.countHeard(i)
		r.hoursHeard(i)
		r.levelHeard(i)
		r.girthHeard(i)
	}
	for i := 0; i < len(r.toks); i++ { // a phrase may grow or shrink the text
		r.phraseHeard(i)
	}
	r.splitRuns()
	r.splitNames()
	r.bentThings()
	r.thingLetters()
}

// figureTo reads the figure that stands for "to": "2day", "what do i have 2 do".
func (r *reader) figureTo() {
	for i := 0; i+1 < len(r.toks); i++ {
		t, n := &r.toks[i], &r.toks[i+1]
		if n.s == "1" && n.kind == tokNum && pointsAt[t.s] && (i+2 == len(r.toks) || r.toks[i+2].kind == tokMark || r.toks[i+2].kind == tokBreak) {
			n.kind, n.s = tokWord, "one" // "not that 1, the creek"
		}
		if t.s != "2" || t.kind != tokNum || n.kind != tokWord {
			continue
		}
		switch {
		case n.spaced && i > 0 && r.toks[i-1].kind == tokWord && deedsBehindTo[n.s] && !(r.longestTag == 1 && asksOfOne[r.toks[i-1].s]):
			t.kind, t.s = tokWord, "to"
		case !n.spaced && behindTo[n.s] != "":
			t.kind, t.s, t.to = tokWord, behindTo[n.s], n.to
			r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
		}
	}
}

// pointsAt are words that a "one" follows which is no number.
var pointsAt = setOfWords(split("that, this, other, which, wrong, right, same, last"))

// asksOfOne are verbs of a question that a pig follows: "what does 2 weigh".
var asksOfOne = setOfWords(split("does, is, will, did, has, was, can"))

// behindTo are the words that a figure is written before for its sound.
var behindTo = map[string]string{"day": "today", "nite": "tonight", "night": "tonight", "morrow": "tomorrow", "moro": "tomorrow", "morro": "tomorrow"}

// deedsBehindTo are verbs that a "to" stands before.
var deedsBehindTo = setOfWords(split("do, get, go, be, see, feed, fill, move, buy, worm, weigh, check, book, mix, know, have, take, make"))

// isName says that one of the herd's names begins at token i.
func (r *reader) isName(i int) bool {
	_, n := r.nameAt(i)
	return n > 0
}

// chatLetter reads "r" as "are" and "b" as "be" where they stand as words.
func (r *reader) chatLetter(i int) {
	t := &r.toks[i]
	if t.s == "b" && i > 0 && (r.toks[i-1].s == "gonna" || r.toks[i-1].s == "will" || r.toks[i-1].s == "would" || r.toks[i-1].s == "can" || r.toks[i-1].s == "must") {
		t.s = "be"
		return
	}
	if t.s == "gig" && i+1 < len(r.toks) && r.toks[i+1].kind == tokNum {
		t.s = "pig"
		return
	}
	if t.s != "r" || i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord {
		return
	}
	switch r.toks[i+1].s {
	case "the", "they", "we", "you", "u", "all", "al", "pigs", "both", "my", "our", "these", "those", "there", "out", "in", "full", "empty", "dry", "sick", "ok", "fine", "good":
		t.s = "are"
	}
}

// countHeard reads "to buckets" as two of them, and "too batches".
func (r *reader) countHeard(i int) {
	t := &r.toks[i]
	w := numberHomophones[t.s]
	if w == "" || i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord {
		return
	}
	n := r.toks[i+1].s
	m := r.lex.of[n]
	if m == nil || m.unit == 0 || !strings.HasSuffix(n, "s") || m.unit.dim() != vessel && m.unit.dim() != mass && m.unit.dim() != volume && m.unit.dim() != length {
		return
	}
	for k := i - 1; k >= 0 && k > i-8 && r.toks[k].kind != tokBreak && r.toks[k].s != "," && r.toks[k].s != "."; k-- {
		if r.toks[k].kind == tokNum {
			return // "40 for bags of corn"
		}
		if x := r.lex.of[r.toks[k].s]; x != nil && (x.isNum || x.sense.any(setOf(sPay, sSold, sRemind, sAskSure))) {
			return
		}
	}
	t.s = w
}

// levelHeard reads "barrel fool" and "hopper fill" as levels.
func (r *reader) levelHeard(i int) {
	t := &r.toks[i]
	w := levelHomophones[t.s]
	if w == "" || i == 0 {
		return
	}
	ends := i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord && r.toks[i+1].kind != tokNum
	if !ends && i+1 < len(r.toks) && (r.toks[i+1].s == "too" || r.toks[i+1].s == "now" || r.toks[i+1].s == "also") {
		ends = true
	}
	if t.s == "fill" && !ends || t.s == "fall" && !ends || t.s == "try" && !ends {
		return
	}
	k := i - 1
	for k > 0 && (r.toks[k].s == "is" || r.toks[k].s == "was" || r.toks[k].s == "are" || r.toks[k].s == "now" || r.toks[k].s == "all" || r.toks[k].s == "bone") {
		k--
	}
	thing := genericThing[strings.TrimSuffix(r.toks[k].s, "s")]
	if thing == sFeeder || thing == sBarrel || thing == sWater {
		t.s = w
		return
	}
	for x := max(0, k-1); x <= k; x++ {
		if h, n := r.nameAt(x); n > 0 && (h.barrel >= 0 || h.feeder >= 0) && x+n == k+1 {
			t.s = w
		}
	}
}

// girthHeard reads "taped at 42 girls" as a girth.
func (r *reader) girthHeard(i int) {
	t := &r.toks[i]
	if t.s != "girls" && t.s != "birth" && t.s != "girt" && t.s != "dirt" || i == 0 || r.toks[i-1].kind != tokNum {
		return
	}
	for k := range r.toks {
		if m := r.lex.of[r.toks[k].s]; k != i && m != nil && m.sense.any(setOf(sTape, sLength)) {
			t.s = "girth"
			return
		}
	}
}

// heardRun is a run of words that stands for another.
type heardRun struct{ heard, meant []string }

// heardBy are the runs that a word begins.
var heardBy = sync.OnceValue(func() map[string][]heardRun {
	m := map[string][]heardRun{}
	for _, p := range heardAs {
		h := heardRun{strings.Fields(p.heard), strings.Fields(p.meant)}
		m[h.heard[0]] = append(m[h.heard[0]], h)
	}
	return m
})

// phraseHeard puts another run of words in the place of one that was misheard.
func (r *reader) phraseHeard(i int) {
next:
	for _, p := range heardBy()[r.toks[i].s] {
		if i+len(p.heard) > len(r.toks) {
			continue
		}
		for k, w := range p.heard {
			if r.toks[i+k].kind != tokWord || r.toks[i+k].s != w {
				continue next
			}
		}
		if extra := len(p.meant) - len(p.heard); extra > 0 {
			r.toks = append(r.toks, make([]token, extra)...)
			copy(r.toks[i+len(p.meant):], r.toks[i+len(p.heard):])
			for k := len(p.heard); k < len(p.meant); k++ {
				r.toks[i+k] = r.toks[i]
			}
		} else if extra < 0 {
			r.toks[i+len(p.meant)-1].to = r.toks[i+len(p.heard)-1].to
			r.toks = append(r.toks[:i+len(p.meant)], r.toks[i+len(p.heard):]...)
		}
		for k, w := range p.meant {
			r.toks[i+k].s = w
		}
		return
	}
}

// splitNames joins two words that make a name of the herd's own: "will ow".
func (r *reader) splitNames() {
	for i := 0; i+1 < len(r.toks); i++ {
		a, b := &r.toks[i], &r.toks[i+1]
		if a.kind != tokWord || b.kind != tokWord || len(a.s)+len(b.s) < 5 {
			continue
		}
		for k := range r.names {
			h := &r.names[k]
			if len(h.words) != 1 || len(h.words[0]) != len(a.s)+len(b.s) || h.words[0] != a.s+b.s || r.isName(i) {
				continue
			}
			a.s, a.to = a.s+b.s, b.to
			r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
			break
		}
	}
}

// bentThings puts a word right that stands before the word for a kind of thing,
// where one name of that kind is near to it: "sought feeder", "blew barrel".
func (r *reader) bentThings() {
	for i := 0; i+1 < len(r.toks); i++ {
		t := &r.toks[i]
		kind := genericThing[r.toks[i+1].s]
		if r.toks[i+1].s == "one" {
			kind = sFeeder
		}
		if kind == 0 || t.kind != tokWord || len(t.s) < 4 || r.isName(i) {
			continue
		}
		if m := r.lex.of[t.s]; m != nil && (m.isNum || m.isDay || m.sense.any(setOf(sWater, sFeed, sFeeder, sBarrel, sPigs, sFull, sEmpty, sAll, sBoth, sFill, sPour, sMove))) {
			continue
		}
		found, least, ties := "", 3, false
		for k := range r.names {
			h := &r.names[k]
			if len(h.words) == 0 || h.number || !r.ofKind(h, kind) {
				continue
			}
			w := h.words[0]
			d := distance(t.s, w)
			if len(w) < 3 || w[0] != t.s[0] || genericThing[w] != 0 || len(w) < 5 && d > 1 && consonants(w) != consonants(t.s) && w[:2] != t.s[:2] {
				continue
			}
			switch {
			case d < least:
				found, least, ties = w, d, false
			case d == least && found != w && d < 3:
				ties = true
			}
		}
		if found != "" && !ties {
			t.s = found
		}
	}
}

// ofKind says that a name is that of a thing of the kind.
func (r *reader) ofKind(h *herdName, kind sense) bool {
	switch kind {
	case sFeeder:
		return h.feeder >= 0
	case sBarrel, sWater:
		return h.barrel >= 0
	case sPen:
		return h.pen >= 0
	}
	return false
}
