/** The search for a day: what may be tried, what it may cost, and the days worth choosing among. JDK value types, plan, finding. */
package fairpull.domain.search;
