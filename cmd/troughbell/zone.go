package main

import (
	"os"
	"strings"
	"time"
)

// machineZone is the zone of this machine by its IANA name, UTC where it has
// none.
func machineZone() *time.Location {
	if tz, ok := os.LookupEnv("TZ"); ok {
		tz = strings.TrimPrefix(tz, ":")
		if _, name, ok := strings.Cut(tz, "zoneinfo/"); ok { // a path, as it may be
			tz = name
		}
		if loc, err := time.LoadLocation(tz); err == nil {
			return loc
		}
	}
	if name, err := os.Readlink("/etc/localtime"); err == nil {
		if _, zone, ok := strings.Cut(name, "zoneinfo/"); ok {
			if loc, err := time.LoadLocation(zone); err == nil {
				return loc
			}
		}
	}
	if b, err := os.ReadFile("/etc/timezone"); err == nil {
		if loc, err := time.LoadLocation(strings.TrimSpace(string(b))); err == nil {
			return loc
		}
	}
	return time.UTC
}

// zoneFlag is the zone that holds until a herd states its own.
type zoneFlag struct {
	Zone string `placeholder:"ZONE" help:"Time zone until the herd states its own, as America/Chicago. Default: this machine's."`
}

func (f zoneFlag) location() (*time.Location, error) {
	if f.Zone == "" || f.Zone == "Local" { // which other machines would take for theirs
		return machineZone(), nil
	}
	loc, err := time.LoadLocation(f.Zone)
	if err != nil {
		return nil, wrongf("%q is no time zone; write it as America/Chicago or Europe/Berlin", f.Zone)
	}
	return loc, nil
}
