// Package telegram is the edge to the Bot API: polling, sending, buttons, and
// who may speak. No type of the library leaves it.
package telegram
