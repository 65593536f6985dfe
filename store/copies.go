package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"troughbell/model"
)

// Copies is the folder in which copies of one database are kept, each named for
// its day: herd-2026-11-30.db of herd.db.
type Copies struct {
	path   string // of the database
	folder string
}

// Copy is a copy of the database that lies in a file of its own, with all that
// the database held on that day.
type Copy struct {
	Path string
	On   model.Day
	// Schema is set for the copy made before the database was brought up from
	// that schema; it lies beside the database and is no daily one.
	Schema int
}

// CopiesOf names the copies of the database at path; no folder is the folder
// "backups" beside it.
func CopiesOf(path, folder string) (Copies, error) {
	path, err := filepath.Abs(path)
	if err != nil {
		return Copies{}, fmt.Errorf("path of the database: %w", err)
	}
	if folder == "" {
		return Copies{path, filepath.Join(filepath.Dir(path), "backups")}, nil
	}
	folder, err = filepath.Abs(folder)
	if err != nil {
		return Copies{}, fmt.Errorf("folder of the backups: %w", err)
	}
	return Copies{path, folder}, nil
}

// Folder is where the copies lie.
func (c Copies) Folder() string { return c.folder }

// stem is what the names of the copies begin and end with.
func (c Copies) stem() (before, after string) {
	base := filepath.Base(c.path)
	after = filepath.Ext(base)
	return strings.TrimSuffix(base, after) + "-", after
}

// fileOf is the file of a day's copy.
func (c Copies) fileOf(on model.Day) string {
	before, after := c.stem()
	return filepath.Join(c.folder, before+on.String()+after)
}

// List gives the daily copies, the oldest first. A folder that is not there
// holds none.
func (c Copies) List() ([]Copy, error) {
	entries, err := os.ReadDir(c.folder)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, problem(Unusable, err, "The folder %s for backups cannot be read; check the path and its permissions.", c.folder)
	}
	before, after := c.stem()
	var out []Copy
	for _, e := range entries {
		day, ok := strings.CutPrefix(e.Name(), before)
		day, ok2 := strings.CutSuffix(day, after)
		on, err := model.ParseDay(day)
		if ok && ok2 && err == nil && e.Type().IsRegular() {
			out = append(out, Copy{Path: filepath.Join(c.folder, e.Name()), On: on})
		}
	}
	slices.SortFunc(out, func(a, b Copy) int { return int(a.On) - int(b.On) })
	return out, nil
}

// All gives every copy that the program itself has made and that is there
// still: the daily ones, and those made before the schema was changed. Copies
// made by hand lie where their maker put them.
func (c Copies) All() ([]Copy, error) {
	out, err := c.List()
	if err != nil {
		return nil, err
	}
	entries, err := os.ReadDir(filepath.Dir(c.path))
	if errors.Is(err, fs.ErrNotExist) {
		return out, nil
	}
	if err != nil {
		return nil, fmt.Errorf("list the backups: %w", explain(c.path, err))
	}
	for _, e := range entries {
		number, ok := strings.CutPrefix(e.Name(), filepath.Base(c.path)+schemaMark)
		schema, err := strconv.Atoi(number)
		if !ok || err != nil {
			continue
		}
		info, err := e.Info()
		if errors.Is(err, fs.ErrNotExist) {
			continue // it went just now
		}
		if err != nil {
			return nil, fmt.Errorf("list the backups: %w", err)
		}
		out = append(out, Copy{
			Path: filepath.Join(filepath.Dir(c.path), e.Name()), On: model.DayOf(info.ModTime()), Schema: schema,
		})
	}
	return out, nil
}

// Make makes the day's copy of the database that s has open, also while it is
// written. The copy is checked from end to end before it takes the place of one
// that the day has already.
func (c Copies) Make(ctx context.Context, s *Store, now time.Time) (Copy, error) {
	on := model.DayOf(now)
	made := Copy{Path: c.fileOf(on), On: on}
	if err := os.MkdirAll(c.folder, 0o700); err != nil {
		return Copy{}, problem(Unusable, err, "There is no folder %s for backups, and it cannot be made; check the path and its permissions.", c.folder)
	}
	if err := c.clearParts(); err != nil {
		return Copy{}, err
	}
	if err := roomFor(s.path, c.folder); err != nil {
		return Copy{}, err
	}
	part, err := copyOf(ctx, s.path, copying, made.Path)
	if err != nil {
		return Copy{}, err
	}
	if err := rename(part, made.Path); err != nil {
		return Copy{}, errors.Join(explain(made.Path, err), os.Remove(part))
	}
	return made, nil
}

// clearParts removes what a copy that was cut off has left.
func (c Copies) clearParts() error {
	before, after := c.stem()
	entries, err := os.ReadDir(c.folder)
	if err != nil {
		return explain(c.folder, err)
	}
	for _, e := range entries {
		name, ok := strings.CutPrefix(e.Name(), before)
		day, _, unfinished := strings.Cut(name, after+partMark)
		if _, err := model.ParseDay(day); !ok || !unfinished || err != nil {
			continue
		}
		if err := os.Remove(filepath.Join(c.folder, e.Name())); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return explain(c.folder, err)
		}
	}
	return nil
}

// Prune lets go the copies that are not to be kept any longer, after a new one
// was made and checked.
func (c Copies) Prune(today model.Day) error {
	all, err := c.List()
	if err != nil {
		return err
	}
	var days []model.Day
	for _, k := range all {
		days = append(days, k.On)
	}
	var failed error
	for _, day := range outlived(days, today) {
		if err := os.Remove(c.fileOf(day)); err != nil && !errors.Is(err, fs.ErrNotExist) {
			failed = errors.Join(failed, explain(c.fileOf(day), err))
		}
	}
	return failed
}
