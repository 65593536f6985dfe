package reading

// plainWords are common English that is never a slip for a word of the trade.
const plainWords = `
spotty spotted swung swings wore wears wear wearing tore tear wired
scored lake laid company companies guests miles dentist overtime
scraps scrap leftovers swill straw bedding frost freezing stocking width wide tipped tipping tips tipsy
coon coons racoon racoons raccoon raccoons badger badgers skunk skunks starling starlings possum possums opossum rat rats mice crow crows bear bears dogs goat goats cow cows geese sparrows pigeons turkeys sandy loam loamy soils soaker protein proteins tag tags
hose hoses mouse quote quoted estimate able accept across action add afraid after afternoon again age agree ahead air alive almost alone along alright always amount angry another answer
anybody anymore anyone anything anyway apart apple apples area arm army arrow ask asked asks asleep ate auto autumn average awake awful baby
bad band bank bark base basket bath beach bean beans bear beat beautiful bed been beer began begin behind bell below belly belt bench best bet better beyond
bike bird birds birthday black blade bless block blood blow blue board boat body bone book boot boots border bored boss bottle bottom bought bowl box boy brain branch brave bread
break breakfast breath brick bridge bright bring broke broken brother brought brown brush build building built bump burn bus bush bushes busy butter button buy cake call called calls calm camera camp
cans car card care careful cars case cash catch cause caught center chain chair chance change cheap check cheese cherry child children choice choose church circle city class clay clean clever climb cloud cloudy
coat coffee coin cold color come comes coming common cook cookie corner cost count country couple course cousin cover crazy cream creek cross crowd cry cup curly current curtain cute daddy damn dance danger dark date dead deal
deep deer dinner dirt dirty dish doctor doctors dollar donkey door double doubt draw dream dress drink drive driver drop drove dust duck ear early earth easy eat eaten eating edge egg eggs either else emergency end enjoy enough
entire evening every everyday except excited expect explain eye eyes face fact fair fall family far farm farmer fast fat father favorite fear feed feel feels feet fell felt fence few field fifth fight figure fill film final find fine finger finish fire first
fish fix flag flat flies flood floor flower fly follow food fool foot forest forever forget forgot fork form forward found fox free freeze fresh friday friend frog front frost fruit fun funny garage garden gate gave gentle gets getting giant gift girl give
glad glass goat goes going gold gone good gonna got grab grand grandma grandpa grass gray great green grew grey ground group grow growing grown guess guest gun guy hail hair half hall ham hand hands handle hang happen happened happens happy hard hate
having hay head hear heard heart heavy help hens hide hill hills hit hold hole home honest honey hope horse hospital hot hotel house huge hundred hungry hunt hurry hurt husband ice idea inside instead interesting job join joke jump keep keeps kept key kick kids kill kind king
kitchen knee knew knife knock know known lady lake land large late later laugh lazy lead leaf leak leaking leaks learn leather leave left less letter level library lid lie life light lightning liked line lion list listen live lives load loaf local lock
log lonely look looked looking looks lose lost loud love lovely luck lucky lunch machine mad mail main make makes making man map march market mate matter maybe mean means meat meet meeting melon men mess messy middle might mile miles milk mind mine minute miss mix
mom moment monday money monkey month moon morning most mother mouse mouth move movie much muddy music must nail name near neat neck need needs neighbor neighbors never new news next nice night noise none noon north nose nothing notice number
ocean odd offer office often old once onion open opened orange order other ought outside over owe own pack page paid pain paint pair paper parent park part party pass past path pay peace pear people pepper person phone photo pick picked piece pile pink
pipe place plain plan plane plant plants plate play playing please plenty plum pocket point pond pool poor pop popped post pot potato pretty price pull pulled pump pumpkin pumpkins push quarter queen question quick quiet quite rabbit race rain rained raining rains rainy raise ran reach
read ready real really reason red remember rest rich ride ridge right ring river road rock roof room root roots rose rough row rule run running rush sad safe said salad same sand sandwich save saw says scale school sea season seat second see seem seems seen sell send sense
set seven several shade shadow shady shake shape share sharp shed sheep sheet shelter ship shirt shoe shop short shot should shoulder shout show shower shut sick side sign silly silver simple since sing sister sit size skin sky sleep sleeping slept slip slope slow small smart smell smile smoke snack
snake snow snowing soap soccer soft soil sold some son song soon sorry sort sound soup south space speak spend spoke spoon spot spring square stand star start state stay stays steak steal step stick still stone stood stop store storm stormy story straight strange straw
stream street string strong stuck stuff stupid such sugar suit summer sun sunday sunny sunset super supper sure surprise sweet swim table tail take talk tall taste tasty taught tea teach team tell ten tennis tent test than thank that their them then there these they
thick thing think third this those though thought thousand three threw throat through throw thumb thunder thursday tie tight till time tiny tired today together toilet told tomorrow tongue tonight took tool tools top total touch tough toward town toy track tractor traffic trailer train
trash treat tree trees trick trip trouble truck true trust truth try trying turn turned twice under until upset upstairs use used useful usual vegetable very visit visitor voice wait walk walked walking wall walnut wander want warm wash waste watch watched water watermelon wave weak wear weather wedding wednesday
week weekend weeks weird well went were west wet whatever wheel when where white whole whose why wide wife wild win wind window windy wine winter wish within woke woke wolf woman women won wonder wood woods word work worked working works world worn worry worse worst worth would write wrong
dug location unnamed weeds weed split duroc hampshire yorkshire berkshire landrace tamworth crossbred usa uk canada cleared rake raked brush bedded bedding nettle nettles puddle mosquito mosquitoes
runt runts ruff dad dads mum mums nan gran lane lanes lam hopped hurdled wrote yard year years yellow yesterday yet young zero zoo game games played score team teams won lost yards inches tv show episode birthday meeting school bus dentist appointment mortgage rent taxes insurance oil gas tires tire engine battery
drive drove miles exit highway speed ticket flight hotel beach swim party beer wine dinner lunch breakfast recipe book page chapter verse movie song album playlist channel password code number phone email address street zip
zucchini tomatoes tomato potatoes garlic onions lettuce beans cucumbers squash berries peaches plums pears harvest garden mower mowed mowing lawn fence post posts bale hay straw manure compost pile cement lumber nails screws paint roof barn
falling fallen eating drinking sleeping playing running looking coming going getting doing making taking having saying calling telling asking seeing rolling billing
mailing nailing sailing failing pulling selling shipping shopping stopping dropping hopping chopping popping tapping mapping napping wrapping hoped hopes hoping roped rope
battle battles cattle bottle bottles settle kettle little metal petal pedal medal model modem mover lover cover covers covered river rivers liver fever clever lever
barn barns born corn horn horns torn worn warn warned yarn fern ferns tank thank tanked banks ranks drank drink drinks pound round found bound hound mound sound wound
grain brain train trains rain gains chain plain stain strain walls halls balls calls falls tells bells sells smells shells pellet bullet wallet ballet
burrow borrow barrow arrow narrow sparrow tomorrow sorrow meadow window shadow willow pillow yellow mellow fellow fellows follow hollow wallaby
crates grates crane crape scrape shape shades shades spade blade trade grade graded loaded coated treated greeted seated heated heats cheats beats meats seats
fencing dancing glance chance france prince since pence penny pencil pens hens tens dens vent vents went bent rent cent cents dent tent tents lent sent
weekly weekdays eights eighth heights height freight fright bright knight flight light lights lighter fighter tighter sighted
mower tower towers flower flowers power powers shower showers lower slower blower grower growers
holidays birthdays anniversary celebration concert festival museum theater theatre
laundry dishes sweep vacuum clean cleaned fixed repaired painted built hung moved parked shipped posted called emailed texted wrote answered asked talked spoke met visited stayed slept woke rested napped hiked biked fished hunted camped
file files command commands token tokens package packages example return returns types changed match create created per char event events allow allows
print printed prints removed remove removes prefix label stack update updated updates system systems setting settings merge shell core cores width
locale failed remote targets manager managers caller handler handlers report reports packet packets fleet stat node nodes reset process processes
manage managed manages instruction instructions folder folders leading padding refer timer timers escape escapes receive receives received parsed abort
shown thus backup backups counter cast casts freed task tasks pour pours pending languages language chars exports sending older locking latter placed
placing stats bare hint computed notification notifications remain remains receiver loops spelling writer prime usable scheduler theme mistakes nicer
layer layers former ratio ratios corrections owned combine combined wording typed collapse whatis noted act acts reminder stale nesting revert reverts
wasted manuals sale sales restored supposed switches switched processors escapees calculated completes completed checker checked rounded posture
shorter sock socks extras alter forced schedules threat claim claims stacks edits edit timed intro cells dumps restores arena recommended formed
computer computers skips quilt rotate recommend quirk looker menus uploaded yields solid solids bother bothered bothers hosted started reserve texts
spill delays delay click clicked noting limbs runs download downloads lease names spell crafted fourth pinned arising boxes arrives sitter quic ponds
looping badly sites site considers prefers reschedule rescheduled resumed hiding waiter clocks misses missed regard paused passed latex combines headed
brand alice restarts restart fetches shorten finishes forth surge shame usage correct sober infos hover singly supplies supplied believed believe
rooted reserves charter relocate homed reword calculates dispatcher deliver retains era charmed talking steven articles article formulas depths rewind
finer chose expert filler fired waited tiles booted slack geared linter cased graphs sine coder framing chat resumes handed enters enter informs
sealing forged staff padlock negatives grave carrier broker tablets tablet resort labs lab lites rotates spelled treaty sealed shred advise quant goals
tend tends tended tending goal decay guesses guessed choke thunk skill stall likes painting sniff scoring pictures picture seventh website websites panning planning reeds sizes
stuart loca probable loosen lengthy sport chord coupled among math maths quits wired messages message bills bill stitched slowing gran neater frome
cheat cure cured puff pretends sucht liner naked stark supplier status meteor unity salts sat switcher thorn trent joiner deg heirs wipes wipe fenced
botch greet stomp stile mango cerca pasting pasted mistaken oversight smarter poke poked sixth charges charge forming forms delivers refreshes complete
thorough bloom toady blind blinds itch recorder recorded handing sped excerpt changer gnats gnat yours munge ender messed misused silence insist fees
clamping bucks packed leftover leftovers begun tone laten cheaper shorted postponed camel whine unsure dozens snap dried drier fried tried tries cried
cries spied pried buried married hurried worried carried studied varied emptied bridged latched latch rusted rusty cracked tipped chewed chewing
rooting nosing nosed wagging tails snored snoring barking burped farted licked licking sniffed grunting grunts squealed squealing squeal rolled digs
digging plowed tilled planted mulch mulched pruned sprayed weeded tarp tarps strap straps bolt bolts bolted hinge hinges screw drill drilled welded
weld wiring panel panels gateway shovel forkful wheelbarrow cart sawed chopped stacked solo sole soul sour sofa sodas soda slid slide sliding slate
slated skilled spilled grilled chilled thrilled frilled trilled wheeled shelled smelled dwelled swelled jelled belled yelled celled felled welled
lulled culled mulled dulled billed quiche quince quarrel jumpy dumpy lumpy grumpy frumpy humpty bumpy stumpy fluffy snuggle snuggled cuddle cuddled
sprinkler sprinklers mister misters splitter splitters dawn dusk daybreak sunup sunrise sundown sunset sticky turd turds cutest gut guts gutted creak creaks creaky adorable sweetest goofy sleepy playful friendly curious shy bossy spoiled mood moody moods broody brood blooded flooded floods wooded hooded
loved loves loving fighting fought fights fitting petted petting begged begging barged barging chased chasing napping yawned yawning danced climbing climbed jumped jumping
nodded nodding sunburnt tanned tanning panned canned banned fanned manned scanned spanned planned
chili chilli salsa kraut sauerkraut kimchi fudge brownies brownie muffins muffin pancakes waffles biscuits jerky brine stew gravy meatballs lasagna tamales dumplings applesauce granola cider mead candles candle playdough flu epoxy grout mortar concrete cookies jam jelly sausage sausages tacos burritos pies pie buns rolls pickles preserves
`
