package picture

import (
	"strings"

	"troughbell/bot/wording"
)

// Screen is what a chart of characters is for.
type Screen struct {
	Columns int  // of the terminal; below 40 counts as 40, above 100 as 100
	Plain   bool // ASCII only
	Colour  bool // with ANSI colours
}

// Blocks draws the figures with characters.
func Blocks(d Drawing, v wording.Voice, screen Screen) string {
	screen.Columns = min(max(screen.Columns, 40), 100)
	p := &page{v: v, Screen: screen}
	d.blocks(p)
	return p.out.String()
}

// page is what a chart of characters is written on.
type page struct {
	Screen
	v   wording.Voice
	out strings.Builder
}

// put writes a line, cut to the screen. Colours in it take no room.
func (p *page) put(line string) {
	p.out.WriteString(strings.TrimRight(line, " "))
	p.out.WriteByte('\n')
}

// words writes words in lines that fit the screen.
func (p *page) words(words string) {
	line := ""
	for _, w := range strings.Fields(p.say(words)) {
		if line != "" && len([]rune(line))+1+len([]rune(w)) > p.Columns {
			p.put(line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += w
	}
	p.put(line)
}

// ANSI colours that read on dark and on light grounds.
const (
	ansiFaint = "2"
	ansiPast  = "34" // blue
	ansiAhead = "36" // cyan
	ansiWarn  = "31" // red
	ansiGood  = "32" // green
)

func (p *page) coloured(code, words string) string {
	if !p.Colour || words == "" {
		return words
	}
	return "\x1b[" + code + "m" + words + "\x1b[0m"
}

// say gives words in characters that the screen has.
func (p *page) say(words string) string {
	if !p.Plain {
		return words
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r == '–' || r == '—':
			return '-'
		case r == '°':
			return -1
		case r == '…':
			return '.'
		case r > 126:
			return missing
		}
		return r
	}, words)
}

// fit gives words in just so many characters.
func (p *page) fit(words string, columns int) string {
	runes := []rune(p.say(words))
	if len(runes) > columns {
		runes = append(runes[:max(columns-1, 0)], '.')
	}
	return string(runes) + strings.Repeat(" ", max(columns-len(runes), 0))
}

// wide is how many characters words take.
func (p *page) wide(words string) int { return len([]rune(p.say(words))) }

// Eighths of a block, upright and lying.
var (
	upright = []rune(" ▁▂▃▄▅▆▇█")
	lying   = []rune(" ▏▎▍▌▋▊▉█")
	ascii   = []rune(" .:-=+*#%")
)

// column is the character for a share of its height, 0 to 1. Anything above
// nothing shows.
func (p *page) column(share float64) rune {
	set := upright
	if p.Plain {
		set = ascii
	}
	share = min(max(share, 0), 1)
	n := int(share*8 + 0.5)
	if n == 0 && share > 0 {
		n = 1
	}
	return set[n]
}

// bar is a lying bar of a share of so many columns, to an eighth.
func (p *page) bar(share float64, columns int) string {
	if !(share > 0) { // nor what is nothing of nothing
		return ""
	}
	eighths := int(min(share, 1)*float64(columns)*8 + 0.5)
	if p.Plain {
		return strings.Repeat("#", (eighths+4)/8)
	}
	out := strings.Repeat("█", eighths/8)
	if rest := eighths % 8; rest > 0 {
		out += string(lying[rest])
	}
	return out
}

// spark draws values, each a share of the height, a character each; those from
// ahead on are still to come.
func (p *page) spark(shares []float64, ahead int) string {
	var was, comes strings.Builder
	for i, x := range shares {
		if i < ahead {
			was.WriteRune(p.column(x))
		} else {
			comes.WriteRune(p.column(x))
		}
	}
	return p.coloured(ansiPast, was.String()) + p.coloured(ansiAhead, comes.String())
}
