/** Quantities and units: SI inside, converted only here, at the edge. Uses nothing but the JDK's value types. */
package fairpull.domain.unit;
