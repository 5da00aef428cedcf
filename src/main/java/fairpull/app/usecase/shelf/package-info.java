/** Many tests in a folder, and what their rig did over time. */
package fairpull.app.usecase.shelf;
