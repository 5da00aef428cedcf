package fairpull.domain.rig;

import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a rig record holds for. Two records that differ in any of it are different records.
 *
 * @param rig which rig, in the shop's own words
 * @param definition kind of measure with its band or speed
 * @param typedName what was read off, for a value typed by hand; empty otherwise
 * @param correction the standard that values were brought to
 * @param bandwidthRadPerS the bandwidth to which curves were smoothed; empty where they are taken as exported
 * @param unstrapped whether a refit meant unstrapping
 */
public record RigKey(String rig, Definition definition, String typedName, Correction correction, OptionalDouble bandwidthRadPerS,
        boolean unstrapped) {
    /** The parts in which two keys can differ. */
    public enum Part {
        RIG, MEASURE, CORRECTION, BANDWIDTH, STRAPS
    }

    public RigKey {
        Objects.requireNonNull(definition, "definition");
        Objects.requireNonNull(correction, "correction");
        if (rig.isBlank() || rig.length() > 200) {
            throw new IllegalArgumentException("a rig needs a name of at most 200 characters");
        }
        if (definition instanceof Definition.Typed == typedName.isBlank() || typedName.length() > 200) {
            throw new IllegalArgumentException("a value typed by hand, and no other, has a name in the key");
        }
        boolean isAir = definition.quantity() == Quantity.POWER || definition.quantity() == Quantity.TORQUE;
        if (!isAir && correction != Correction.NONE) {
            throw new IllegalArgumentException("only power and torque are corrected for air");
        }
        bandwidthRadPerS.ifPresent(width -> {
            if (!(width > 0) || Double.isInfinite(width)) {
                throw new IllegalArgumentException("a bandwidth must be above 0, was " + width);
            }
        });
    }

    /** {@return the key of a measure on a rig; a measure that is not read off a curve has no bandwidth} */
    public static RigKey of(String rig, Measure measure, OptionalDouble bandwidthRadPerS, boolean unstrapped) {
        String typed = measure.definition() instanceof Definition.Typed ? measure.name().strip() : "";
        return new RigKey(rig.strip(), measure.definition(), typed, measure.correction(),
                measure.definition().isReadOffCurve() ? bandwidthRadPerS : OptionalDouble.empty(), unstrapped);
    }

    /** {@return the parts in which this key differs from another; the case of letters in names does not matter} */
    public Set<Part> differences(RigKey other) {
        List<Part> parts = new ArrayList<>();
        differing(parts, Part.RIG, folded(rig), folded(other.rig));
        differing(parts, Part.MEASURE, List.of(definition, folded(typedName)), List.of(other.definition, folded(other.typedName)));
        differing(parts, Part.CORRECTION, correction, other.correction);
        differing(parts, Part.BANDWIDTH, bandwidthRadPerS, other.bandwidthRadPerS);
        differing(parts, Part.STRAPS, unstrapped, other.unstrapped);
        return parts.isEmpty() ? EnumSet.noneOf(Part.class) : EnumSet.copyOf(parts);
    }

    /** {@return whether a record of the other key is evidence for this one} */
    public boolean matches(RigKey other) {
        return differences(other).isEmpty();
    }

    private static void differing(List<Part> parts, Part part, Object one, Object other) {
        if (!one.equals(other)) {
            parts.add(part);
        }
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
