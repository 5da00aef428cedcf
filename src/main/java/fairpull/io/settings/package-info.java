/** What the window remembers from one start to the next, and edits that were never saved, in the user's own folder. */
package fairpull.io.settings;
