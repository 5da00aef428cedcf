/** Air as it is read, and what correcting to reference air answers. SI inside; uses nothing but the JDK's value types. */
package fairpull.domain.air;
