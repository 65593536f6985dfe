package reading

// sense is one thing that a word can mean. A word may have several; the frames
// decide between them.
type sense uint8

const (
	sNone sense = iota
	// Who.
	sPigs
	sAll
	sBoth
	sEach
	sRest
	sBut
	sBarrow
	sGilt
	sBoar
	sSow
	sYoung
	sOld
	sPronoun
	// How it is meant.
	sNot
	sPlan
	sIf
	sHearsay
	sForeign
	sAbout
	sAnd
	sAgo
	sFiller
	sAsk     // opens a question at the start of a clause
	sAskSure // opens a question anywhere
	sWhatIf
	// Small words that steer.
	sFrom
	sTo
	sOn
	sAt
	sOf
	sPer
	sBy
	sIs
	sMore
	sFewer
	sNow
	sHere
	// Weighing.
	sGirth
	sLength
	sTape
	sWeigh
	sCrate
	sEmptyCrate
	sGain
	sDitto
	// Feed.
	sFeed
	sFeeder
	sFill
	sPour
	sFull
	sEmpty
	sLeft
	sTook
	sLast
	sOpenBag
	sPartOf
	sWaste
	// Water.
	sWater
	sWatered
	sBarrel
	sWallow
	sHose
	sLook
	// Drugs.
	sWorm
	sTreat
	sGave
	sWithdraw
	sProduct
	// Land.
	sMove
	sPen
	sInUse
	sFence
	sDead
	// Health and danger.
	sSick
	sWell
	sOut
	sDown
	sNoWater
	sNoFeed
	sBackIn
	// Weather.
	sWeather
	sHigh
	sLow
	sHumid
	// Shed.
	sMixed
	sRecipe
	sIngredient
	sBuy
	sShed
	// Money.
	sPay
	sReceived
	// Coming and going.
	sArrive
	sNamed
	sAge
	sBorn
	sDied
	sLost
	sSold
	sSlaughtered
	sHung
	sPackaged
	sTotal
	sButcher
	sBook
	sCancel
	sAway
	// Talk.
	sRemind
	sNote
	sHelp
	sUndo
	sDone
	sSnooze
	sStop
	sYes
	sNo
	sCorrect
	sDo
	sThanks
	// Set-up.
	sTarget
	sChore
	sTell
	sQuiet
	sZone
	sUnits
	sUS
	sMetric
	sHerd
	sCurrency
	sHolds
	sDeep
	sMute
	sNightly
	sTopic // speaks of a topic of questions, see topics
	sUndone
	numSenses
)

// senses is a set of them.
type senses [3]uint64

func (s senses) has(x sense) bool { return s[x>>6]&(1<<(x&63)) != 0 }

func (s *senses) add(x sense) { s[x>>6] |= 1 << (x & 63) }

func (s *senses) drop(x sense) { s[x>>6] &^= 1 << (x & 63) }

func (s senses) empty() bool { return s == senses{} }

func (s senses) any(of senses) bool { return s[0]&of[0] != 0 || s[1]&of[1] != 0 || s[2]&of[2] != 0 }

func setOf(xs ...sense) senses {
	var s senses
	for _, x := range xs {
		s.add(x)
	}
	return s
}
