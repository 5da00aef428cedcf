/** A day while it is run: acts, exports as they come, where it stands, what may be told of it already. */
package fairpull.app.usecase.running;
