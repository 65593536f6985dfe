// Package store keeps everything in one SQLite file: the records of each herd
// as a journal that is only added to, the people and their chats, what came in
// and what is to go out.
//
// One process writes at a time; readers are welcome beside it. Every write is
// one transaction with synchronous=FULL: what was answered is on the disk.
package store
