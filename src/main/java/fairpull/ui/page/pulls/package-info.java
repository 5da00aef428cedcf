/** The page of pulls: exports come in, every pull stands in a table with its fate, and their curves lie over each other. */
package fairpull.ui.page.pulls;
