-- A danger goes before all else that waits for its chat, and the chats in which
-- one waits before all others.
ALTER TABLE outgoing ADD COLUMN urgent INTEGER NOT NULL DEFAULT 0;

DROP INDEX outgoing_pending;
CREATE INDEX outgoing_pending ON outgoing (chat, urgent DESC, id) WHERE state = 'pending';
