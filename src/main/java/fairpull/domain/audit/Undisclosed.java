package fairpull.domain.audit;

import java.util.OptionalDouble;

/**
 * Something that was not disclosed, and how much it could matter.
 *
 * @param item what
 * @param moves how far the near end of the interval falls on a rig of ordinary scatter where this alone is at its worst plausible value and
 *     all else that was not disclosed was done well; in SI, of the figure that the answer says; empty where no figure can be put on it
 */
public record Undisclosed(Item item, OptionalDouble moves) {
    /** What a publication may keep to itself. */
    public enum Item {
        /** Whether both figures are of one rig. */
        RIG,
        /** The corrections of both figures. */
        CORRECTIONS,
        /** Whether the pressure behind each correction is that at the rig, or one reduced to sea level. */
        BAROMETERS,
        /** Whether both were run on one day. */
        DAY,
        /** Whether the car stayed strapped down. */
        STRAP_DOWN,
        /** How many pulls were run, and what is quoted of them. */
        PULLS,
        /** Whether the figure was named before the test. */
        NAMED_BEFORE,
        /** How much the rig scatters. */
        SCATTER,
        /** Whether the state before was run again after the change. */
        RETURN,
        /** What each of the values published one by one is of. */
        VALUES,
        /** Whether all else stayed as it was. */
        OTHER_CHANGES,
        /** How both curves were smoothed, where figures are read off curves. */
        SMOOTHING,
        /** At which engine speed a figure stands, where it is of power or torque. */
        ENGINE_SPEED
    }
}
