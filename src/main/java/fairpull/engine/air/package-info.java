/** Air at the rig and the correction to reference air, with its uncertainty and the window in which it may be used. Uses engine.stats. */
package fairpull.engine.air;
