package schedule

import "strings"

// Renamed gives a topic, or the key of a nudge, with the records that it names called
// otherwise: name gives the new name of what may be one, and false where it is none.
func Renamed(topic string, name func(string) (string, bool)) string {
	var b strings.Builder
	for {
		i := strings.IndexAny(topic, tokenGap+snoozeMark+"@:")
		part := topic
		if i >= 0 {
			part = topic[:i]
		}
		if to, ok := name(part); ok {
			part = to
		}
		b.WriteString(part)
		if i < 0 {
			return b.String()
		}
		b.WriteByte(topic[i])
		topic = topic[i+1:]
	}
}
