/** The rig record: scatter of repeated baselines layer by layer, pooling, and whether a rig holds still. Uses {@code stats} alone. */
package fairpull.engine.rig;
