/** The page on which it is said what is compared and which gain would matter. */
package fairpull.ui.page.question;
