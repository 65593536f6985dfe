package document

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"path"
	"path/filepath"
	"strings"
)

// locked is the bit of a ZIP entry's flags that says that it needs a password
// (PKWARE APPNOTE, 4.4.4).
const locked = 0x1

// unzip reads the tables of a ZIP. Nothing of it is ever written to a disk; a name
// that leads out of a folder is refused all the same.
func (in *intake) unzip(b []byte) error {
	z, err := zip.NewReader(bytes.NewReader(b), int64(len(b)))
	switch {
	case err != nil:
		return unreadable("zip_broken")
	case len(z.File) > maxEntries:
		return unreadable("zip_many")
	}
	left := int64(maxUnpacked)
	seen := map[string]bool{}
	for _, f := range z.File {
		name := strings.ReplaceAll(f.Name, `\`, "/")
		base := path.Base(name)
		switch {
		case !filepath.IsLocal(strings.TrimSuffix(name, "/")) || len(name) > 2 && name[1] == ':' || strings.ContainsRune(name, 0):
			return unreadable("zip_path")
		case strings.HasSuffix(name, "/"), strings.HasPrefix(base, "."), strings.HasPrefix(name, "__MACOSX/"):
			continue // folders, and what systems leave in them
		case !isTable(base):
			in.unread(base)
			continue
		case seen[strings.ToLower(base)]:
			return unreadable("zip_twice", shown(base))
		case f.Flags&locked != 0:
			return unreadable("zip_locked")
		case f.UncompressedSize64 > maxUnpacked:
			return unreadable("zip_large")
		case f.UncompressedSize64 > ratioFrom && f.UncompressedSize64 > maxRatio*max(f.CompressedSize64, 1):
			return unreadable("zip_large")
		}
		seen[strings.ToLower(base)] = true
		if err := in.entry(shown(base), f, &left); err != nil {
			return err
		}
	}
	if len(seen) == 0 {
		return unreadable("zip_empty")
	}
	return nil
}

// entry reads one table. What its head says of its size is not believed.
func (in *intake) entry(name string, f *zip.File, left *int64) error {
	r, err := f.Open()
	if err != nil {
		return unreadable("zip_broken")
	}
	counted := &io.LimitedReader{R: r, N: *left + 1}
	err = errors.Join(in.sheet(name, counted), r.Close())
	*left = counted.N - 1
	if *left < 0 {
		return unreadable("zip_large")
	}
	var u *Unreadable
	if err != nil && !errors.As(err, &u) {
		return unreadable("zip_broken")
	}
	return err
}

func isTable(name string) bool {
	switch strings.ToLower(path.Ext(name)) {
	case ".csv", ".tsv", ".txt":
		return true
	}
	return false
}

// mostUnread is how many things that were not looked at are named.
const mostUnread = 10

// unread notes what was not looked at; a name that nobody should read is not named.
func (in *intake) unread(name string) {
	if len(in.out.Unread) < mostUnread && name != "" && soundText(name, longestName) == nil {
		in.out.Unread = append(in.out.Unread, name)
	}
}
