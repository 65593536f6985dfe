package bot

// urgentPhrase is one way in which an emergency is told. Words are whole; "a/b"
// is either, "<x>" one of a group, "_" up to two words of any kind. What makes a
// vet come at once, and what the authority must hear of, is standard advice,
// from memory; the marks of erysipelas and the diseases that must be reported
// are as published by Farm and Dairy (quoting Kansas State) and by the Pork
// Information Gateway ("Recognizing and reporting foreign animal diseases").
type urgentPhrase struct {
	card   string
	phrase string
	// pig is set where the words alone say little: a pig must be spoken of, or
	// the text hold next to nothing else.
	pig bool
	// anyone is set where it does not matter who the words are about.
	anyone bool
	// unless are words that make the phrase harmless in its clause.
	unless string
}

// urgentGroups are the words that "<x>" stands for.
var urgentGroups = map[string]string{
	"foot":  "foot/feet/hoof/hooves/hoofs/trotter/trotters/snout/snouts/nose/noses/mouth/mouths/lip/lips/tongue/tongues/toe/toes/teat/teats",
	"cant":  "cant/cannot/couldnt/wont/unable/struggles/struggling/struggle/fights/fighting/hardly/barely",
	"ill":   "having/has/had/have/took/takes/getting/got/in",
	"dung":  "diarrhea/diarrhoea/diarea/diarrea/scours/scour/poop/poo/dung/manure/droppings/stool/stools/shit/crap/urine/pee/vomit/discharge/muck/feces/faeces",
	"skin":  "ear/ears/skin/belly/bellies/nose/snout/lips/gums/tongue/legs/flank/face",
	"turn":  "turned/turning/turns/went/going/gone/are/is/look/looks/looking/were/was/all",
	"blue":  "purple/blue/bluish/purplish/violet/lilac",
	"many":  "two/three/four/five/six/seven/eight/nine/ten/2/3/4/5/6/7/8/9/10/several/couple/few",
	"most":  "all/several/many/most/both/half/whole/everyone/two/three/four/five/six/2/3/4/5/6/7/8",
	"three": "three/four/five/six/seven/eight/nine/ten/3/4/5/6/7/8/9/10/several/many/most/all/half",
	"ate":   "ate/eaten/eating/eats/eat/swallowed/swallowing/chewed/chewing/drank/drunk/drinking/licked/into",
	"bad":   "bad/badly/heavily/lots/hard/everywhere/profusely/much/heavy/out",
	"bone":  "leg/legs/hip/hips/foot/pelvis/spine/hock/shoulder/ankle",
	"its":   "its/his/her/their/the",
	"toxin": "antifreeze/pesticide/insecticide/herbicide/weedkiller/rodenticide/warfarin/bleach/creosote/yew/oleander/hemlock/nightshade/rhododendron/cocklebur/toadstools/bracken",
	"fed":   "feed/feeding/fed/give/gave/giving/given/eat/eating/ate",
}

// urgentPhrases in the order in which their cards win.
var urgentPhrases = []urgentPhrase{
	{card: "shock", phrase: "electric/electrical shock/shocks/shocked", unless: "checks test tested reads"},
	{card: "shock", phrase: "electrocuted/electrocution/electrocuting"},
	{card: "shock", phrase: "stuck/caught/tangled/trapped in/on/under _ _ wire/fence/netting", pig: true, unless: "saw camera line charger"},
	{card: "shock", phrase: "live wire/cable", pig: true},

	{card: "notifiable", phrase: "blister/blisters/blistered/vesicles _ _ <foot>", unless: "my our"},
	{card: "notifiable", phrase: "<foot> _ _ blister/blisters/blistered/blistering/vesicles", unless: "my our"},
	{card: "notifiable", phrase: "blisters/vesicles", pig: true, unless: "my our hand hands pack"},
	{card: "notifiable", phrase: "sores/ulcers _ mouth/mouths/snout/snouts/tongue/tongues"},
	{card: "notifiable", phrase: "hooves/hoofs/claws _ sloughing/peeling"},
	{card: "notifiable", phrase: "swine/african/pig/hog fever", anyone: true},
	{card: "notifiable", phrase: "asf/csf/fmd", anyone: true},
	{card: "notifiable", phrase: "foot/hoof and mouth", anyone: true},
	{card: "notifiable", phrase: "swine vesicular", anyone: true},
	{card: "notifiable", phrase: "vesicular stomatitis", anyone: true},
	{card: "notifiable", phrase: "hog cholera", anyone: true},
	{card: "notifiable", phrase: "<most> _ _ fever/fevers/feverish", unless: "swine"},
	{card: "notifiable", phrase: "fevers", pig: true},
	{card: "notifiable", phrase: "<three> _ pigs/hogs died/dead/dying"},
	{card: "notifiable", phrase: "<three> died/dead/dying", pig: true, unless: "trees tree branches grass weight batteries flies rats mice chickens hens"},

	{card: "poison", phrase: "<ate> _ _ poison/poisons/bait", unless: "barrel station stations"},
	{card: "poison", phrase: "poison/bait _ eaten/swallowed/chewed/gone"},
	{card: "poison", phrase: "<ate> _ _ <toxin>"},
	{card: "poison", phrase: "poisoned/poisoning", unless: "food salt"},
	{card: "poison", phrase: "slug/rat/mouse pellets _ eaten/swallowed"},
	{card: "poison", phrase: "<ate> _ slug/rat/mouse pellets"},

	{card: "heat_stroke", phrase: "heat stroke/exhaustion"},
	{card: "heat_stroke", phrase: "heatstroke/sunstroke"},
	{card: "heat_stroke", phrase: "sun stroke"},
	{card: "heat_stroke", phrase: "overheated/overheating", pig: true, unless: "fencer charger pump"},
	{card: "heat_stroke", phrase: "panting _ drooling/foaming/collapsed/hard/heavily/heavy/badly", pig: true},
	{card: "heat_stroke", phrase: "drooling and panting", pig: true},

	{card: "vet_now", phrase: "<cant> _ breathe/breath/breathing"},
	{card: "vet_now", phrase: "not/isnt/stopped breathing"},
	{card: "vet_now", phrase: "trouble/difficulty/labored/laboured breathing"},
	{card: "vet_now", phrase: "breathing hard/heavily/badly/funny"},
	{card: "vet_now", phrase: "gasping/choking/suffocating", pig: true},
	{card: "vet_now", phrase: "<ill> _ fit/fits", pig: true, unless: "good better big"},
	{card: "vet_now", phrase: "having a fit"},
	{card: "vet_now", phrase: "pig/pigs _ fitting", unless: "the a new in into up through"},
	{card: "vet_now", phrase: "fitting", pig: true, unless: "the a an new in into up through pipe hose water barrel brass replaced bought leaking leaks loose he she it they"},
	{card: "vet_now", phrase: "fits", pig: true, unless: "one in into through that them under nicely well it all door gate if"},
	{card: "vet_now", phrase: "seizure/seizures/seizing/convulsion/convulsions/convulsing", unless: "motor pump engine"},
	{card: "vet_now", phrase: "bleeding _ <bad>"},
	{card: "vet_now", phrase: "stop/stops bleeding"},
	{card: "vet_now", phrase: "blood coming/running/dripping/pouring from/out", unless: "butcher"},
	{card: "vet_now", phrase: "losing/lost _ blood"},
	{card: "vet_now", phrase: "blood everywhere", unless: "butcher"},
	{card: "vet_now", phrase: "coughing/coughs/coughed/vomiting/throwing/spitting/passing/pooping/peeing _ blood"},
	{card: "vet_now", phrase: "blood in/with _ <dung>"},
	{card: "vet_now", phrase: "bloody/black <dung>", unless: "compost spread barrel drum"},
	{card: "vet_now", phrase: "<skin> <turn> <blue>", unless: "tag tags marker sprayed spray paint painted"},
	{card: "vet_now", phrase: "<skin> <turn> <turn> <blue>", unless: "tag tags marker sprayed spray paint painted"},
	{card: "vet_now", phrase: "<blue> ears/ear/belly/skin/lips/gums/nose", unless: "tag tags marker sprayed spray paint painted"},
	{card: "vet_now", phrase: "<skin> <blue>", unless: "tag tags marker sprayed spray paint painted"},
	{card: "vet_now", phrase: "diamond/diamonds shaped/shape _ patches/patch/spots/marks/mark/sores/welts/rash/blotches/lumps/red"},
	{card: "vet_now", phrase: "diamond/diamonds skin/marks/patches/spots/rash/welts"},
	{card: "vet_now", phrase: "red diamond/diamonds", unless: "plate tape"},
	{card: "vet_now", phrase: "shaped like diamond/diamonds"},
	{card: "vet_now", phrase: "erysipelas/meningitis"},
	{card: "vet_now", phrase: "not/isnt/arent/hasnt/havent/wont/didnt eating/eaten/eat/ate/drinking/drunk/drink _ _ <many> days"},
	{card: "vet_now", phrase: "not/isnt/arent/hasnt/havent/wont eating/eaten/eat/drinking/drunk/drink since"},
	{card: "vet_now", phrase: "off feed/food _ _ <many> days"},
	{card: "vet_now", phrase: "off <its> feed/food _ _ <many> days"},
	{card: "vet_now", phrase: "broke/broken/breaks/fractured/snapped/dislocated _ _ <bone>", unless: "free gate trough bench table chair feeder stand hut"},
	{card: "vet_now", phrase: "broke/broken <its> back/neck", unless: "barrel"},
	{card: "vet_now", phrase: "leg/legs/hip _ broken/broke/fractured/snapped"},
	{card: "vet_now", phrase: "bone/bones _ showing/sticking/out", unless: "butcher took"},
	{card: "vet_now", phrase: "prolapse/prolapsed/prolapses/prolapsing"},
	{card: "vet_now", phrase: "guts/intestines/insides/rectum/bowels/bowel _ hanging/sticking/poking/falling/coming/out", unless: "butcher took"},
	{card: "vet_now", phrase: "two/2/both _ died/dead/dying", pig: true, unless: "trees tree branches grass weight batteries flies rats mice chickens hens rat mouse"},
	{card: "vet_now", phrase: "dropped dead"},
	{card: "vet_now", phrase: "died suddenly/overnight", pig: true},
	{card: "vet_now", phrase: "sudden death/deaths"},
	{card: "vet_now", phrase: "staggering/staggers/staggered/stumbling/wobbly/wobbling", pig: true, unless: "price bill amount cost"},
	{card: "vet_now", phrase: "circling", pig: true},
	{card: "vet_now", phrase: "walking/running/going in circles", pig: true},
	{card: "vet_now", phrase: "head tilt/tilted"},
	{card: "vet_now", phrase: "paddling", pig: true, unless: "wallow pool"},
	{card: "vet_now", phrase: "paralyzed/paralysed/paralysis/unconscious/unresponsive"},
	{card: "vet_now", phrase: "dragging _ leg/legs/hind/back"},
	{card: "vet_now", phrase: "cant/cannot/wont/couldnt stand/rise/walk", unless: "wait"},
	{card: "vet_now", phrase: "cant/cannot/wont get up"},
	{card: "vet_now", phrase: "blind", pig: true, unless: "birth born duck spot spots window hunting deer"},
	{card: "vet_now", phrase: "foaming/frothing _ mouth"},
	{card: "vet_now", phrase: "heart attack", pig: true},
	{card: "vet_now", phrase: "collapsed", pig: true},
	{card: "vet_now", phrase: "keeled over", pig: true},
	{card: "vet_now", phrase: "bloat/bloated", pig: true, unless: "bag bags"},
	{card: "vet_now", phrase: "cant/cannot pee/urinate/poop"},
	{card: "vet_now", phrase: "mauled/attacked by"},
	{card: "vet_now", phrase: "hit/struck/run by/over _ car/truck/tractor/lightning"},
	{card: "vet_now", phrase: "swallowed _ wire/nail/nails/glass/battery/metal"},
	{card: "vet_now", phrase: "salt poisoning"},
	{card: "vet_now", phrase: "high/has/have/had/running/bad/a fever", pig: true},
	{card: "vet_now", phrase: "fever/feverish", pig: true},
	{card: "vet_now", phrase: "call/phone/ring/need/get/fetch the/a/our/my vet", unless: "bill wrap certificate cert receipt invoice check paid paper papers", anyone: true},
	{card: "vet_now", phrase: "need/call/get vet", unless: "bill wrap certificate cert receipt invoice check paid paper papers", anyone: true},
	{card: "vet_now", phrase: "vet now/immediately/asap", anyone: true},
	{card: "vet_now", phrase: "emergency vet", anyone: true},
	{card: "vet_now", phrase: "emergency/dying", pig: true, unless: "plan fund flies"},

	{card: "kitchen_waste", phrase: "kitchen/table/plate/meat/restaurant/household scraps/scrap/waste/slops/scrapings/leftovers/food", anyone: true},
	{card: "kitchen_waste", phrase: "scraps/waste/slops/leftovers/peelings from/off _ kitchen/table/plate/plates/restaurant/school/cafe", anyone: true},
	{card: "kitchen_waste", phrase: "food scraps/waste", anyone: true},
	{card: "kitchen_waste", phrase: "swill", anyone: true},
	{card: "kitchen_waste", phrase: "<fed> _ _ leftovers", unless: "batch bag bags", anyone: true},
	{card: "kitchen_waste", phrase: "<fed> _ _ scraps", unless: "wood metal lumber fence garden", anyone: true},
}
