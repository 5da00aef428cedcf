/** The clock of a day: what is done when, whether it fits, and what would fit. JDK value types and {@code domain.plan} only. */
package fairpull.domain.day;
