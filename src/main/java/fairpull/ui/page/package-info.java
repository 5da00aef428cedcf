/** The pages of the work, in the order of the work, and what every page stands on. */
package fairpull.ui.page;
