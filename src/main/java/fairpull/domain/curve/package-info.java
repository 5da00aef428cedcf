/** Curves over engine speed: every pull on one grid, and the difference curve that the judge answers with. */
package fairpull.domain.curve;
