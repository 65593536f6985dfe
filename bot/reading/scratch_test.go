package reading_test

import (
	"bufio"
	"encoding/json"
	"os"
	"strings"
	"testing"
)

func TestScratch(t *testing.T) {
	f, _ := os.Open("/tmp/v/try.txt")
	in := bufio.NewScanner(f)
	herds := map[string]*talk{}
	herd, now := "orchard", "2026-07-11T18:30"
	for in.Scan() {
		s := in.Text()
		if strings.HasPrefix(s, "herd ") {
			p := strings.Fields(s)
			herd, now = p[1], p[2]
			continue
		}
		if s == "" {
			continue
		}
		if herds[herd] == nil {
			if strings.HasPrefix(herd, "+") {
				base := play(t, herd[1:])
				r := rename(t, herd[1:], base, 0)
				herds[herd] = r.talk
				var ns []string
				for _, a := range r.talk.herd.Animals {
					ns = append(ns, a.Name)
				}
				t.Log(herd, ns)
			} else {
				herds[herd] = play(t, herd)
			}
		}
		l := &labelled{Now: now, talk: herds[herd]}
		b, _ := json.Marshal(l.read(t, strings.ReplaceAll(s, `\n`, "\n")))
		t.Logf("%s\n      %s", s, b)
	}
}
