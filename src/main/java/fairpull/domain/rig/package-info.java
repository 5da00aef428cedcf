/** What a rig record is: repeated baselines, the scatter they show layer by layer, and what it holds for. */
package fairpull.domain.rig;
