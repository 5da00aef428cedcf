/** A test as a folder: plan, seal, chained log, raw exports, mappings; atomic writes. Uses the domain and io.json. */
package fairpull.io.folder;
