// Package store keeps everything in one SQLite file: the records of each herd
// as a journal that is only added to, the people and their chats, what came in
// and what is to go out. Only a herd as a whole, or who said what in it, can be
// taken out again (Tx.EraseHerd, Tx.Forget), and then nothing of it is left in
// the file.
//
// One process writes at a time; readers are welcome beside it. Every write is
// one transaction with synchronous=FULL: what was answered is on the disk. The
// log that it goes to is folded into the file beside the writer (checkpoint.go),
// never by a commit.
//
// Beside herd.db lie herd.db-wal and herd.db-shm while it is in use, which
// belong to it; herd.db-lock, which the writing process holds locked; and
// herd.db.schema-N, a copy from before the schema was last changed. A view for
// each kind of record (weighing, refill, water, ...) lets any SQLite tool read
// the herd's data.
//
// The package reads no clock: moments come in as values.
package store
