package health

import (
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"
)

// metric is one line of the page that a Prometheus server reads, with what goes
// above it.
type metric struct {
	name, help string
	counter    bool
	labels     [][2]string
	value      float64
}

// Counts are what has happened since the process started.
type Counts struct {
	Updates   uint64 // taken from Telegram
	TurnedOff uint64 // of strangers, beyond what is let in
	Sent      uint64 // messages that Telegram took
	Failures  uint64 // calls for a message that failed
}

// Process is what is known of the process itself.
type Process struct {
	Version string
	Started time.Time
	Memory  uint64 // bytes taken from the system
	Counts
}

// Exposition writes the signs and the process in the text format of Prometheus,
// version 0.0.4 (prometheus.io, "Exposition formats"). A moment that never was
// is 0, as that format's users expect of timestamps.
func Exposition(w io.Writer, v Signs, p Process) error {
	stamp := func(t time.Time) float64 {
		if t.IsZero() {
			return 0
		}
		return float64(t.Unix())
	}
	all := []metric{
		{"troughbell_build_info", "The version that runs; the value is always 1.", false, [][2]string{{"version", p.Version}}, 1},
		{"troughbell_start_time_seconds", "When the process started, in Unix seconds.", false, nil, stamp(p.Started)},
		{"troughbell_memory_bytes", "Memory that the program took from the system.", false, nil, float64(p.Memory)},
		{"troughbell_updates_total", "Updates taken from Telegram.", true, nil, float64(p.Updates)},
		{"troughbell_strangers_turned_off_total", "Updates of strangers beyond what is let in.", true, nil, float64(p.TurnedOff)},
		{"troughbell_sent_total", "Messages that Telegram took.", true, nil, float64(p.Sent)},
		{"troughbell_send_failures_total", "Calls for a message that failed.", true, nil, float64(p.Failures)},
		{"troughbell_last_poll_timestamp_seconds", "When Telegram answered a poll last, in Unix seconds.", false, nil, stamp(v.Polled)},
		{"troughbell_last_send_timestamp_seconds", "When Telegram took a message last, in Unix seconds.", false, nil, stamp(v.Sent)},
		{"troughbell_last_round_timestamp_seconds", "When the herds were gone through last, to some ten minutes, in Unix seconds.", false, nil, stamp(v.Round)},
		{"troughbell_inbox_messages", "Messages that wait to be handled.", false, nil, float64(v.Inbox)},
		{"troughbell_outbox_messages", "Messages that wait to be sent.", false, nil, float64(v.Outbox)},
		{"troughbell_herds", "Herds in the database.", false, nil, float64(v.Herds)},
		{"troughbell_database_bytes", "Size of the database file.", false, nil, float64(v.Bytes)},
	}
	if v.FreeKnown {
		all = append(all, metric{"troughbell_disk_free_bytes", "Room left on the disk of the database.", false, nil, float64(v.Free)})
	}
	if v.Backups && v.Backup.Path != "" {
		all = append(all, metric{
			"troughbell_last_backup_timestamp_seconds", "Midnight UTC of the day of the newest nightly copy, in Unix seconds.",
			false, nil, stamp(v.Backup.On.At(0, time.UTC)),
		})
	}
	if v.Backups {
		all = append(all, metric{
			"troughbell_backup_failing_since_timestamp_seconds", "Since when no nightly copy could be made, in Unix seconds; 0 while all is well.",
			false, nil, stamp(v.NoBackup),
		})
	}
	for _, m := range all {
		if err := m.write(w); err != nil {
			return err
		}
	}
	return nil
}

var (
	helpEscapes  = strings.NewReplacer(`\`, `\\`, "\n", `\n`)
	labelEscapes = strings.NewReplacer(`\`, `\\`, "\n", `\n`, `"`, `\"`)
)

func (m metric) write(w io.Writer) error {
	kind := "gauge"
	if m.counter {
		kind = "counter"
	}
	var labels []string
	for _, l := range m.labels {
		labels = append(labels, fmt.Sprintf(`%s="%s"`, l[0], labelEscapes.Replace(l[1])))
	}
	braces := ""
	if len(labels) > 0 {
		braces = "{" + strings.Join(labels, ",") + "}"
	}
	_, err := fmt.Fprintf(w, "# HELP %[1]s %[2]s\n# TYPE %[1]s %[3]s\n%[1]s%[4]s %[5]s\n",
		m.name, helpEscapes.Replace(m.help), kind, braces, strconv.FormatFloat(m.value, 'g', -1, 64))
	return err
}
