-- Who runs the server, and which chats are theirs, is asked for with each poll:
-- not to be looked for among all people and all chats.
CREATE INDEX person_operator ON person (id) WHERE operator = 1;
CREATE INDEX chat_person ON chat (person) WHERE person IS NOT NULL;
