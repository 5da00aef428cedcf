/** What is fixed before the day: question, measures, rig, order of installs, clock, gates, claims. Immutable, SI inside. */
package fairpull.domain.plan;
