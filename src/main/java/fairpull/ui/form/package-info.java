/** The few widgets that every page is built from: cards, and inputs that keep what is typed and say beside it what is wrong. */
package fairpull.ui.form;
