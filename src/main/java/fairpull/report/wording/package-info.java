/**
 * The only place with sentences about results. Takes codes and numbers of the domain, gives plain language; uses no other package
 * of the report.
 */
package fairpull.report.wording;
