package telegram

import (
	"context"

	"troughbell/bot"
	"troughbell/store"
)

// answer takes messages from the inbox that could not be handled as they came in,
// the oldest first: what each says is kept, its answer queued and it is marked as
// handled, or none of that. While the store fails the messages wait.
func (b *Bot) answer(ctx context.Context) {
	handling := trouble{bot: b, what: "handling a message"}
	for {
		more, err := b.answerSome(roundMessages)
		switch {
		case err != nil:
			if !sleep(ctx, handling.failed(err)) {
				return
			}
			continue
		case more:
			handling.passed()
			if ctx.Err() == nil {
				continue
			}
			return
		}
		handling.passed()
		select {
		case <-ctx.Done():
			return
		case <-b.inbox:
		}
	}
}

// answerSome handles messages that wait, at most so many. It is not cut off by
// the end of the bot: a transaction under way is finished.
func (b *Bot) answerSome(most int) (more bool, err error) {
	r := round{bot: b}
	err = b.Store.Write(context.Background(), func(tx *store.Tx) (err error) {
		more, err = r.handle(tx, most)
		return err
	})
	r.over(err)
	return more, err
}

// answerWith handles a message that waited for its file.
func (b *Bot) answerWith(in store.Incoming, file bot.Upload) error {
	r := round{bot: b, file: &file}
	err := b.Store.Write(context.Background(), func(tx *store.Tx) error {
		still, ok, err := tx.NextAwaiting(in.ID - 1)
		if err != nil || !ok || still.ID != in.ID { // it has gone with its herd
			return err
		}
		return r.handleWaiting(tx, in)
	})
	r.over(err)
	return err
}
