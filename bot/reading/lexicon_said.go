package reading

// saidWords are turns of everyday talk, apart from the words of the trade.
var saidWords = []entryWords{
	{sWeather, "cooled off to, cooled down to, cooled to, warmed up to, warmed to, heated up to, cooled off, cooled down, warmed up"},
}
