package reading

// Food and stuff of the house come by the bag and the pound as well, and are no feed: "5 lb
// sausage", "2 bags of ice", "mineral block 14.99" is a price.

// houseGoods blanks amounts of what is not for pigs.
func (r *reader) houseGoods() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.qty(vessel) && !it.qty(mass) || it.quest {
			continue
		}
		n := k + 1
		if r.items[n].s == "of" && n+1 < len(r.items) {
			n++
		}
		x := &r.items[n]
		if x.gap != gapNone || x.pig >= 0 || !houseStuff[x.s] || n+1 < len(r.items) && r.items[n+1].gap == gapNone && (r.items[n+1].isAny(setOf(sFeeder, sBarrel, sFeed)) && !r.items[n+1].is(sFiller) || r.items[n+1].number()) {
			continue
		}
		for m := k; m <= n; m++ {
			r.blank(m)
			r.items[m].s = "so"
		}
	}
}

// houseStuff is what a household buys by the bag or the pound.
var houseStuff = listed(`ice, chips, sausage, sausages, bacon, concrete, cement, quikrete, mortar, mulch, charcoal, potatoes, flour, sugar, coffee, butter, cheese, beef, hamburger, chicken, ham, rice for us, dog food, cat food, cat litter, dogfood, catfood, chicken feed,
	chicken scratch, hen feed, layer feed, layer pellets, horse feed, gravel, sand, topsoil, potting soil, peat, salt for the driveway, ice melt, pretzels, candy, groceries, trash, garbage, laundry, cans, marshmallows, popcorn`)

// blockPrices makes money of a price with its cents behind a block or a lick, which nobody
// buys by such a weight: "mineral block 14.99".
func (r *reader) blockPrices() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.quest || !it.decimals2() || it.gap > gapComma {
			continue
		}
		switch p := &r.items[k-1]; lastWord(p.s) {
		case "block", "blocks", "lick", "licks":
			from := k - 1
			if from > 0 && p.gap == gapNone && r.items[from-1].canon != "" {
				from--
				r.items[from].canon, r.items[from].sense = "", senses{}
			}
			p.canon, p.sense = "", senses{}
			r.payBare(k)
			r.settled = append(r.settled, span{fSpend, from, k + 1})
		}
	}
}
