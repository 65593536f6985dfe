package telegram

import (
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"
)

// mostPressData is how much of it Telegram takes, in bytes.
const mostPressData = 64

// FuzzReadPress: a button's data is what we wrote, or it is not taken.
func FuzzReadPress(f *testing.F) {
	for _, s := range []string{"b:1:0", "b:-1:2", "b:9223372036854775807:3", "b:1:0:2", "b:+1:0", "b:01:0", "c:1:1", "b::", "", "b:1:99999999999999999999"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, data string) {
		if row, n, ok := readPress(data); ok && (pressData(row, n) != data || n < 0 || len(data) > mostPressData) {
			t.Fatalf("%q is taken as button %d of %d", data, n, row)
		}
	})
}

// FuzzReadUpdate: any update is read, refused or passed over; what is read has a
// key of its own, an honest name and no exact place, and reads the same again
// from the inbox.
func FuzzReadUpdate(f *testing.F) {
	f.Add([]byte(rawText(1, 101, "Ann", "Dot 38 girth")))
	for _, s := range []string{
		`{"update_id":2,"callback_query":{"id":"5","from":{"id":101,"first_name":"A\u202en"},"data":"b:1:0","message":{"message_id":3,"chat":{"id":101,"type":"private"}}}}`,
		`{"update_id":3,"my_chat_member":{"chat":{"id":-5,"type":"group"},"from":{"id":1},"date":1,"new_chat_member":{"status":"left"}}}`,
		`{"update_id":4,"edited_message":{"message_id":1,"date":1,"edit_date":2,"chat":{"id":1,"type":"private"},"text":"x"}}`,
		`{"update_id":5,"message":{"message_id":1,"chat":{"id":1,"type":"group"},"migrate_to_chat_id":-100}}`,
		`{"update_id":6,"message":{"message_id":1,"chat":{"id":1,"type":"private"},"location":{"latitude":42.4412,"longitude":-76.4978}}}`,
		`{"update_id":7,"message":{"message_id":1,"chat":{"id":1},"reply_to_message":{"message_id":2,"from":{"is_bot":true,"username":"b"}},"photo":[{}]}}`,
		`{"update_id":1,"message":{"message_id":2,"date":3,"chat":{"id":4,"type":"private"},"from":{"id":4,"first_name":"Ann"},"text":"fed"}}`,
		`{"edited_message":{"message_id":2,"edit_date":9,"chat":{"id":-4,"type":"group"},"text":"@bell fed","reply_to_message":{"message_id":1}}}`,
		`{"callback_query":{"id":"q"}}`, `{"message":null}`, `{"message":{"chat":null,"text":"x"}}`,
		`{}`, `null`, `[]`, `{"message":{}}`, `{"callback_query":{}}`, `{"my_chat_member":{}}`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		u, ok, err := readUpdate(raw)
		if err != nil || !ok {
			return
		}
		if u.key == "" {
			t.Fatal("no key")
		}
		if utf8.RuneCountInString(u.name) > maxName || strings.ContainsFunc(u.name, func(r rune) bool { return unicode.In(r, unicode.Cc, unicode.Cf) }) {
			t.Fatalf("the name %q", u.name)
		}
		kept, err := coarse(raw)
		if err != nil {
			t.Fatal(err)
		}
		again, ok, err := readUpdate(kept)
		if err != nil || !ok || again != u {
			t.Fatalf("kept as another: %v, %v %v, was %v", again, ok, err, u)
		}
	})
}
