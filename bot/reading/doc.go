// Package reading turns a text sent from the pen into entries: facts to record,
// questions to answer, wishes to carry out, doubts to ask about.
//
// The steps are small and each can be tested alone: tokens, tags, frames filled
// together with the cuts between facts, decision by the chance of being wrong
// times its cost, judgement by the herd's own state. The package reads no
// clock and no disk; the same text with the same [Context] always reads the
// same. A text is read in time linear in its length.
package reading
