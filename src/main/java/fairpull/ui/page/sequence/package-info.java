/** The page of the order of installs, their pulls, the clock, and other days that would do. */
package fairpull.ui.page.sequence;
