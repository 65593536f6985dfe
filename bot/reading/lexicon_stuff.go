package reading

// ingredientWords names feed ingredients by the canonical name the model knows
// them by.
var ingredientWords = []struct{ name, words string }{
	{"corn", "corn, ground corn, cracked corn, maize, shelled corn, corns, mais, crn, corn meal, cornmeal, cron"},
	{"soybean meal 48", "soy, soybean meal, soybean, soya, soymeal, soy meal, sbm, bean meal, beans meal, soybeans, soya meal, meal, 48 meal, soyabean meal, soja, sojaschrot, soybn meal, soy bean meal, soya bean meal, soybean meal 48, hi pro soy, soyabean, hi-pro soy"},
	{"soybean meal 44", "44 meal, soybean meal 44, 44 soy, low pro soy"},
	{"barley", "barley, ground barley, rolled barley, gerste, barly, crimped barley"},
	{"wheat", "wheat, ground wheat, weizen, rolled wheat, whaet"},
	{"oats", "oats, oat, rolled oats, hafer, ground oats, whole oats, crimped oats"},
	{"sorghum", "sorghum, milo, ground milo"},
	{"peas", "peas, field peas, pea, pea meal, erbsen, ground peas"},
	{"field beans", "field beans, faba beans, fava beans, ackerbohnen, beans"},
	{"fish meal", "fish meal, fishmeal, fischmehl"},
	{"wheat middlings", "middlings, wheat middlings, midds, wheat midds, mids, wheat mids, bran, wheat bran, kleie"},
	{"distillers grains", "distillers grains, ddgs, distillers, distillers grain, ddg"},
	{"alfalfa meal", "alfalfa, alfalfa meal, lucerne"},
	{"whey", "whey, dried whey, whey powder"},
	{"soybean oil", "soybean oil, oil, soy oil, vegetable oil"},
	{"limestone", "limestone, lime, calcium, feed lime"},
	{"salt", "salt"},
	{"mineral premix", "mineral, minerals, premix, mineral premix, vitamin premix, vitamins, vit min, supplement, min, base mix, mineral mix, mineralfutter, concentrate, premx, hog mineral, vitamin mix, min premix, vit premix, mineral and vitamin premix, vitamin mineral premix, swine premix"},
	{"monocalcium phosphate", "monocal, monocalcium phosphate, mono cal"},
	{"dicalcium phosphate", "dical, dicalcium phosphate, di cal"},
	{"lysine hcl", "lysine, lysine hcl, l lysine"},
	{"rye", "rye, roggen"},
	{"triticale", "triticale"},
	{"canola meal", "canola meal, rapeseed meal, canola, rapeseed, rapsschrot"},
	{"sunflower meal", "sunflower meal, sunflower"},
	{"molasses", "molasses"},
}

// productWords names what pigs are treated with, by active ingredient or by
// what people call it. No trade names.
var productWords = []struct{ name, words string }{
	{"ivermectin", "ivermectin, ivermec, ivermectn, ivermection, ivermecton, iver, ivomectin"},
	{"fenbendazole", "fenbendazole, fenben, fenbendazol, fenbendozole, fenbenzadole"},
	{"doramectin", "doramectin, doramectn"},
	{"levamisole", "levamisole, levamisol"},
	{"flubendazole", "flubendazole, flubendazol"},
	{"piperazine", "piperazine"},
	{"pyrantel", "pyrantel"},
	{"moxidectin", "moxidectin"},
	{"albendazole", "albendazole"},
	{"penicillin", "penicillin, penicilin, pen g, penicillin g, penn g, pen-g"},
	{"oxytetracycline", "oxytetracycline, oxytet, tetracycline"},
	{"amoxicillin", "amoxicillin, amoxicilin"},
	{"tylosin", "tylosin"},
	{"ceftiofur", "ceftiofur"},
	{"tulathromycin", "tulathromycin"},
	{"florfenicol", "florfenicol"},
	{"enrofloxacin", "enrofloxacin"},
	{"lincomycin", "lincomycin"},
	{"meloxicam", "meloxicam"},
	{"flunixin", "flunixin"},
	{"dexamethasone", "dexamethasone"},
	{"ketoprofen", "ketoprofen"},
	{"iron", "iron, iron shot, iron dextran"},
	{"vitamin", "vitamin shot, vitamin b, b complex, vitamin"},
	{"erysipelas vaccine", "erysipelas vaccine, erysipelas"},
	{"vaccine", "vaccine"},
	{"antibiotic", "antibiotic, antibiotics"},
	{"electrolytes", "electrolytes"},
	{"probiotic", "probiotic, probiotics"},
	{"aspirin", "aspirin"},
	{"garlic", "garlic"},
	{"diatomaceous earth", "diatomaceous earth"},
}

// wormProducts are the products that make a treatment a worming by themselves.
var wormProducts = map[string]bool{
	"ivermectin": true, "fenbendazole": true, "doramectin": true, "levamisole": true,
	"flubendazole": true, "piperazine": true, "pyrantel": true, "moxidectin": true, "albendazole": true,
}

// plainWords are common English that is never a slip for a word of the trade.
const plainWords = `
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
wrote yard year years yellow yesterday yet young zero zoo game games played score team teams won lost yards inches tv show episode birthday meeting school bus dentist appointment mortgage rent taxes insurance oil gas tires tire engine battery
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
`
