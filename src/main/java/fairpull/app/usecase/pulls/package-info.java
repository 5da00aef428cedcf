/** Exports, tables and notes into a test; its pulls out of it, with values, air, fate and doubts. */
package fairpull.app.usecase.pulls;
