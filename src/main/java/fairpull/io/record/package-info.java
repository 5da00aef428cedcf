/** Rig records on disk: one folder of the user's choice, one file a table of baselines. */
package fairpull.io.record;
