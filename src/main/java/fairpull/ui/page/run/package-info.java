/** The page of the day: what is next in type to be read from three metres, gates, values so far, the watched folder. */
package fairpull.ui.page.run;
