/** Findings as files and texts: one self-contained HTML page, and plain text for a terminal. The only package that sees FreeMarker. */
package fairpull.report.write;
