/** A test while it is edited: the one thing that changes, its undo stack, what an edit is, and what survives a kill. */
package fairpull.app.document;
