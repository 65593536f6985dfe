package reading

import "troughbell/model"

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
	{"wheat middlings", "middlings, wheat middlings, midds, wheat midds, mids, wheat mids"},
	{"wheat bran", "bran, wheat bran, kleie, weizenkleie"},
	{"lupins", "lupin, lupins, lupin meal, lupinen"},
	{"palm kernel meal", "palm kernel meal, palm kernel cake, palm kernel"},
	{"maize bran", "maize bran, corn bran"},
	{"broken rice", "broken rice, brewers rice"},
	{"sesame meal", "sesame meal, sesame cake"},
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
	{"rice bran", "rice bran, darak"},
	{"copra meal", "copra, copra meal"},
	{"cassava", "cassava, cassava meal, cassava chips"},
	{"brewers grains", "brewers grains, brewers grain, spent grain, spent grains"},
	{"millet", "millet"},
	{"flax meal", "flax meal, flaxseed, linseed meal, flax"},
	{"cottonseed meal", "cottonseed meal, cottonseed"},
	{"peanut meal", "peanut meal, groundnut meal"},
	{"bakery meal", "bakery meal, bakery waste, stale bread"},
	{model.CompleteFeed, "complete feed"},
}

// productWords names what pigs are treated with, by active ingredient or by
// what people call it. No trade names.
var productWords = []struct{ name, words string }{
	{"ivermectin", "ivermectin, ivermec, ivermectn, ivermection, ivermecton, iver"},
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
	{"phenylbutazone", "phenylbutazone"},
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
	{"worm paste", "worm paste, worming paste, dewormer paste, wormer paste"},
}

// productSlips are the spellings among these that are no names but slips.
var productSlips = setOfWords(split("ivermectn, ivermection, ivermecton, fenbendozole, fenbenzadole, doramectn, penicilin, amoxicilin"))

// wormProducts are the products that make a treatment a worming by themselves.
var wormProducts = map[string]bool{
	"ivermectin": true, "fenbendazole": true, "doramectin": true, "levamisole": true,
	"flubendazole": true, "piperazine": true, "pyrantel": true, "moxidectin": true, "albendazole": true,
}
