/** A test in its folder: made, opened, sealed, amended, checked, printed as a run sheet, and whether anything was changed by hand. */
package fairpull.app.usecase.keeping;
