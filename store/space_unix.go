//go:build linux || darwin || freebsd

package store

import "golang.org/x/sys/unix"

// freeBytes is how much room a folder's disk has left for this program.
func freeBytes(folder string) (n uint64, known bool, err error) {
	var st unix.Statfs_t
	if err := unix.Statfs(folder, &st); err != nil {
		return 0, false, err
	}
	return uint64(max(st.Bavail, 0)) * uint64(st.Bsize), true, nil
}
