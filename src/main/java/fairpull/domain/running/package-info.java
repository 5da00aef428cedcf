/** Where a day stands that is being run: what is next, what must hold before it, what to drop where the day is too short. */
package fairpull.domain.running;
