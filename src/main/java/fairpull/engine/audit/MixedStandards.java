package fairpull.engine.audit;

import fairpull.domain.air.AirState;
import fairpull.domain.air.Standard;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.StandardsMixed;
import fairpull.domain.plan.Correction;
import fairpull.engine.air.Factor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The gain that appears where an unchanged car is quoted by one correction before and by another after: f_after ÷ f_before − 1, in one
 * air. Compression ignition needs the fuel rate, which no publication gives, and is left out.
 *
 * <p>Checked against: the reference airs of the standards (PairIdentityTest).
 */
public final class MixedStandards {
    /** 25 °C, 990 hPa of dry air and 10 hPa of vapour: the reference of SAE J1349 and ISO 1585, where their factors are 1. */
    public static final AirState REFERENCE = new AirState(298.15, 100_000, 1_000);

    /** A twentieth of a percent: less is told as none. */
    private static final double NOTHING = 0.0005;
    private static final List<Correction> TRIED = List.of(Correction.NONE, Correction.SAE_J1349, Correction.ISO_1585,
            Correction.EEC_80_1269, Correction.DIN_70020, Correction.SAE_J607);

    private MixedStandards() {
    }

    /** {@return the apparent gain of one pair in an air, relative} */
    public static double apparentGain(Correction before, Correction after, AirState air) {
        return Factor.of(Standard.plain(after), air) / Factor.of(Standard.plain(before), air) - 1;
    }

    /** {@return all pairs of different corrections, those with the largest apparent gain first} */
    public static List<StandardsMixed> all(AirState air) {
        List<StandardsMixed> pairs = new ArrayList<>();
        for (Correction before : TRIED) {
            for (Correction after : TRIED) {
                if (before != after) {
                    pairs.add(new StandardsMixed(before, after, apparentGain(before, after, air)));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(StandardsMixed::apparentGain).reversed());
        return List.copyOf(pairs);
    }

    /** {@return those pairs of different corrections that what was disclosed leaves open, or the one that was disclosed} */
    static List<StandardsMixed> open(BeforeAfter<Correction> disclosed, AirState air) {
        return all(air).stream().filter(pair -> disclosed.allows(pair.before(), pair.after())).toList();
    }

    /**
     * {@return of the pairs that are open, the one whose apparent gain is nearest to a published relative gain; empty where that makes
     * nothing, as it explains nothing}
     */
    static Optional<StandardsMixed> nearest(double gain, BeforeAfter<Correction> disclosed, AirState air) {
        return open(disclosed, air).stream().min(Comparator.comparingDouble(pair -> Math.abs(pair.apparentGain() - gain)))
                .filter(pair -> Math.abs(pair.apparentGain()) >= NOTHING);
    }
}
