package bot_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// BenchmarkText is one text from reading to the committed record and the queued
// reply, on a real file with synchronous=FULL, for a herd with as many records
// before it. Beside it, the bare cost of such a transaction.
func BenchmarkText(b *testing.B) {
	for _, records := range []int{20, 200} {
		b.Run(fmt.Sprintf("after%d", records), func(b *testing.B) {
			k := openBook(b, store.Options{})
			k.text(b, setUp)
			for i := range records {
				k.text(b, fmt.Sprintf("fence %d.%d", 5+i%3, i%10))
			}
			for b.Loop() {
				k.text(b, "spent 20 straw")
			}
		})
	}
	b.Run("bare", func(b *testing.B) {
		k := openBook(b, store.Options{})
		i := 0
		for b.Loop() {
			i++
			require.NoError(b, k.store.Write(context.Background(), func(tx *store.Tx) error {
				return tx.SetValue("bare", fmt.Sprint(i))
			}))
		}
	})
}
