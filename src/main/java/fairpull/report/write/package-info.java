/**
 * Findings and plans as files and texts: self-contained HTML pages, the run sheet also as PDF, and plain text for a terminal. The only
 * package that sees FreeMarker and the writer of PDF.
 */
package fairpull.report.write;
