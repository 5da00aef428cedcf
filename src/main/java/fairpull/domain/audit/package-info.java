/** A published comparison as it was printed, what is claimed of it, and what an audit answers. JDK value types, units, air, finding. */
package fairpull.domain.audit;
