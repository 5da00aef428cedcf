/** The data of Fairpull: records, enums and sealed types only, built from JDK value types. Sees no other package of the program. */
package fairpull.domain;
