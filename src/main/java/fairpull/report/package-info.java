/** Findings for people: sentences, charts as data, and the files and texts they are put into. Sees the domain only. */
package fairpull.report;
