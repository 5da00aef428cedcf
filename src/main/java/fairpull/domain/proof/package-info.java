/** A plan proved by simulation: what is asked, what is counted, what is answered. */
package fairpull.domain.proof;
