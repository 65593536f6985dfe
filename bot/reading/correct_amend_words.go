package reading

// The words by which a text puts a record right.

// amendWords say that what stands beside them puts something right.
var amendWords = setOfWords(split(`i mean, i meant, mean, meant, maen, ment, menat, mena, should be, should have been, that should be, it should be, should read, should say, make that, make it,
	correction, typo, wrong, rather, pala, actually, no, nope, nae, oops, whoops, woops, sorry, sry, soz, sori, my mistake, my bad, pardon, pardon me, excuse me, i misspoke, misspoke, scratch that, no wait, wait, oh wait,
	sorry that, no sorry, sorry meant, was meant to be, should've been, shouldve been, wait no, oops no, oh sorry, instead, mixed up, mistake, sorrow, correct that, change that, change, fix that, err, swap, not that, that was wrong, rectification, erratum, ay sorry`))

// amendSmall are the small words of such a text that stand in no lexicon as such.
var amendSmall = setOfWords(split(`ay, po, ho, opo, kasi, yun, yung, na, ah, aw, och, aye, eh, er, uhm, hm, hmm, ugh, argh, sir, maam, ma'am, boss, that was, it was, that's, thats, that is, it is, it's, its, was, were, those were, these are, these were, those are, they were, ones, one, number,
	tag, pig, pigs, lb, lbs, kg, record, reading, figure, weight, weighed, weighs, scale, said, says, had, put, wrote, told, typed, entered, told you, i said, i had, i put, i wrote, i told you, the last one, the last, last one, last, first, that one, this one, the one, you, by the way, way, btw, anyway, tho, though, for, of, in, on, at, to, and, but, from, it to, change, please, again, si, name, gave, i gave, entry, this is, i was, i am, afraid, forgive, forgive me, have, read, write, to write, not today, put in, lang, lng, only, just, straight, place, already, more like, like, tho, though, really, please`))

// excuseWords tell why the wrong value was told, and nothing else.
var excuseWords = setOfWords(split(`thumb, thumbs, finger, fingers, fat, slipped, slip, typo, typos, mistake, mistakes, misread, mistyped, forgot, i forgot, forgot to, glasses, specs, keyboard, key, keys, button, phone, autocorrect, auto correct, autocomplete, mixed up, mixed them up, mixed em up,
	confused, muddled, error, eyes, hands, gloves, apologies, pardon, beg, misspoke, i misspoke, mistaken, mishit, typing, wrong, miscounted, i miscounted, mismeasured, late, tired, head, brain, dark, handwriting, writing, writting, notebook, notes, sevens, blame, duh, dumb, stupid, silly, daft, mind, excuse, my fault, my error, my bad, my mistake, wrong one, wrong pig, wrong number, i misread, spelling, smudged, upside, forgive, in error, afraid`))

// saidOfRecord are words for what was told last.
var saidOfRecord = setOfWords(split(`that, those, it, these, they, this, feed, refill, fill, weights, weighing, numbers, readings`))

// standsWords say of a value that it was right.
var standsWords = setOfWords(split(`stands, is right, is correct, right, correct, is ok, ok, is fine, fine, is good, good, unchanged, stays, stay, still stands, same, was right, was correct, was ok, was fine, are right, are fine, ok as is`))

// amendSigns are all the words that may put something right.
var amendSigns = func() map[string]bool {
	all := setOfWords(split(`came to, was, were, that was, it was, those were, these were, they were, these are, those are, took place, took, happened, yesterday's, yesterdays, instead of, rather than, hindi, di`))
	for _, words := range []map[string]bool{amendWords, excuseWords, standsWords} {
		for w := range words {
			all[w] = true
		}
	}
	return all
}()

// vagueExcuses tell that something may have gone wrong, and of no slip.
var vagueExcuses = setOfWords(split(`tired, dark, late, head, brain, eyes, hands, mind, forgot, i forgot, forgot to, phone, writing, notes, notebook, gloves, glasses`))

// earTagWords speak of what pigs wear in their ears.
var earTagWords = phrasesOf("tag, tags, ear, ears, eartag, eartags")
