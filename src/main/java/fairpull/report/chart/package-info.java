/**
 * Every chart once, as data: lists of shapes with roles, drawn by pure functions from the domain. Writers make SVG and PDF of them; the
 * colours of the roles stand in one palette, from which light, dark and print derive. Uses the wording for figures only.
 */
package fairpull.report.chart;
