/** A plan made of what was typed: its scatter and where that comes from, its size, days searched, hours, its proof by simulation. */
package fairpull.app.usecase.planning;
