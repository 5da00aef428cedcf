/** The page of what was found: the cards of the report, drawn natively. */
package fairpull.ui.page.finding;
