/** The pages of an audit: what was published, how it came about, its curves, how its claims stand. */
package fairpull.ui.page.audit;
