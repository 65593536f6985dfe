package reading

// frame is a kind of thing that a text can say.
type frame uint8

const (
	fIdle frame = iota // nothing of ours
	fWeigh
	fFeed
	fWater
	fWallow
	fStock
	fMixed
	fRecipe
	fSpend
	fDrug
	fMove
	fSick
	fAlarm
	fFence
	fWeather
	fArrive
	fGone
	fBooked
	fAway
	fNote
	fRemind
	fAsk
	fDone
	fSnooze
	fUndo
	fHelp
	fDo
	fTarget
	fChore
	fQuiet
	fZone
	fUnits
	fHerd
	fCurrency
	fSetFeeder
	fSetBarrel
	fSetPen
	fSetWallow
	fSize
	fMute
	// Read by their sentences alone, see tellings.
	fSpill
	fRain
	fProtein
	fSoil
	fExpect
	fDitto
	numFrames
)

// feature is what an item shows to the frames: a sense, or one of these.
type feature int

const (
	kNum feature = feature(numSenses) + iota
	kSoft
	kFew // a number that can count pigs
	kMass
	kLength
	kVolume
	kArea
	kTemp
	kDays
	kHours
	kVolt
	kPct
	kVessel
	kMoney
	kHead
	kNipples
	kPair      // 38x42 in lengths or no unit, as a tape gives
	kSides     // 50x80 ft
	kDay       // any day
	kEvery     // a habit: saturdays
	kClock     // a time
	kSlash     // 94/71
	kFrac      // half
	kPig       // a pig by name
	kGroup     // a group of pigs by name
	kFeeder    // a feeder by name
	kBarrel    // a barrel by name
	kPen       // a pen by name
	kEither    // a word for a feeder or a water barrel
	kUnitWord  // a unit without a number
	kMoneyWord // a currency without a number
	kZoneName
	kOther // a known word without a sense
	kBlank // an unknown word
	numFeatures
)

// What a frame has of its parts.
const (
	bAnchor uint8 = 1 << iota // a word that is its own
	bAmount
	bWho
	bWhen
	bThing
	bLevel
)

// vote is what a feature says for a frame, before and after the frame's own
// word has been met, and which part it gives.
type vote struct {
	before, after float32
	part          uint8
	set           bool
}

// ballots are the votes of every feature for every frame.
type ballots struct {
	by    [numFeatures][]frameVote
	need  [numFrames][]uint8      // of each of these, one bit must be had
	lacks [numFrames][256]float32 // what a frame with the given parts lacks costs
}

// frameVote is a feature's vote for a frame.
type frameVote struct {
	frame frame
	vote
}

var votes = castVotes()

func castVotes() *ballots {
	b := &ballots{}
	var of [numFrames][numFeatures]vote
	give := func(f frame, part uint8, w float32, xs ...feature) {
		for _, x := range xs {
			of[f][x] = vote{w, w, part, true}
		}
	}
	late := func(f frame, part uint8, before, after float32, xs ...feature) {
		for _, x := range xs {
			of[f][x] = vote{before, after, part, true}
		}
	}
	word := func(f frame, part uint8, w float32, xs ...sense) {
		for _, x := range xs {
			give(f, part, w, feature(x))
		}
	}
	lateWord := func(f frame, part uint8, before, after float32, xs ...sense) {
		for _, x := range xs {
			late(f, part, before, after, feature(x))
		}
	}
	need := func(f frame, groups ...uint8) { b.need[f] = groups }

	for f := fWeigh; f < numFrames; f++ {
		give(f, bWhen, 0.3, kDay)
		give(f, bWhen, 0.2, kClock)
		word(f, 0, 0.02, sAbout, sPronoun, sNow)
		word(f, 0, 0.05, sNot, sPlan, sHearsay, sForeign, sIf)
	}
	castWeighing(give, late, word, lateWord, need)
	castFeed(give, late, word, lateWord, need)
	castEvents(give, late, word, lateWord, need)
	castHerd(give, late, word, lateWord, need)
	castTalk(give, late, word, lateWord, need)
	castSetup(give, late, word, lateWord, need)
	for _, f := range []frame{fSpill, fRain, fProtein, fSoil, fExpect, fDitto} { // no word votes for what only a whole sentence tells
		need(f, bAnchor)
	}
	b.settle(&of)
	return b
}

// settle lists the votes by what gives them, and counts what each frame may lack.
func (b *ballots) settle(of *[numFrames][numFeatures]vote) {
	for f := range numFrames {
		for x := range numFeatures {
			if v := of[f][x]; v.set {
				b.by[x] = append(b.by[x], frameVote{f, v})
			}
		}
		for parts := range b.lacks[f] {
			for _, group := range b.need[f] {
				if uint8(parts)&group == 0 {
					b.lacks[f][parts] += missingCost
				}
			}
		}
	}
}

type giveFunc func(f frame, part uint8, w float32, xs ...feature)

type lateFunc func(f frame, part uint8, before, after float32, xs ...feature)

type wordFunc func(f frame, part uint8, w float32, xs ...sense)

type lateWordFunc func(f frame, part uint8, before, after float32, xs ...sense)

type needFunc func(f frame, groups ...uint8)
