/** Plans, seals, logs, mappings and answers as JSON; the only place that sees Jackson. Uses the domain only. */
package fairpull.io.json;
