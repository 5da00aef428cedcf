package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Measure;
import fairpull.domain.proof.Truth;
import fairpull.domain.unit.Amount;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is true in simulated campaigns, as people type it: in the unit of a plan's measure or in percent, or as bare numbers. */
public final class TypedTruth {
    private static final Pattern PER_HOUR = Pattern.compile("(.*?)\\s*/\\s*(?:h|hour)");

    private final Words typed;
    private final Optional<Measure> measure;
    private final OptionalDouble levelSi;

    /**
     * A truth in words; null where an option was not given.
     *
     * @param gain the true gain; by default the worthwhile one
     * @param pullScatter the true pull scatter; by default that of the plan
     * @param refitScatter the true refit scatter; by default that of the plan
     * @param drift what drifts in an hour, such as {@code 2hp/h}
     * @param outliers share and size of outliers, such as {@code 2%:5hp}
     * @param autocorrelation of neighbouring pulls
     */
    public record Words(String gain, String pullScatter, String refitScatter, String drift, String outliers, String autocorrelation) {
    }

    /**
     * How a simulation is run.
     *
     * @param campaigns how many
     * @param seed of the row of random numbers
     */
    public record Run(int campaigns, long seed) {
    }

    public TypedTruth(Words typed, Optional<Measure> measure, OptionalDouble levelSi) {
        this.typed = typed;
        this.measure = measure;
        this.levelSi = levelSi;
    }

    /**
     * A scatter that is planned with.
     *
     * @param size its standard deviation
     * @param isRecord whether it is a record, whose population the truth is drawn from, or a planning value
     */
    public record PlannedScatter(double size, boolean isRecord) {
    }

    /** {@return the truth; a scatter that is typed is fixed, one that rests on a record is drawn from what the record leaves open} */
    public Truth of(Optional<PlannedScatter> pull, Optional<PlannedScatter> refit, OptionalDouble worthwhile) {
        double pullScatter = typed.pullScatter() != null ? amount("--pull-scatter", typed.pullScatter())
                : pull.orElseThrow(() -> missing("--pull-scatter", "pull scatter")).size();
        double refitScatter = typed.refitScatter() != null ? amount("--refit-scatter", typed.refitScatter())
                : refit.orElseThrow(() -> missing("--refit-scatter", "refit scatter")).size();
        double gain = typed.gain() != null ? amount("--gain", typed.gain())
                : worthwhile.orElseThrow(() -> missing("--gain", "worthwhile gain"));
        boolean records = pull.filter(PlannedScatter::isRecord).isPresent() || refit.filter(PlannedScatter::isRecord).isPresent();
        boolean drawn = typed.pullScatter() == null && typed.refitScatter() == null && records;
        Outliers outliers = outliers();
        try {
            return new Truth(pullScatter, refitScatter, drawn, gain, drift(), outliers.share, outliers.size, autocorrelation());
        } catch (IllegalArgumentException outOfRange) {
            throw new UsageException("prove", outOfRange.getMessage());
        }
    }

    private static UsageException missing(String option, String what) {
        return new UsageException(option, "the plan names no " + what + "; give one to simulate with");
    }

    private double drift() {
        if (typed.drift() == null) {
            return 0;
        }
        Matcher parts = PER_HOUR.matcher(typed.drift().strip());
        if (!parts.matches()) {
            throw new UsageException("--true-drift", "expected an amount an hour, such as 2hp/h; found “" + typed.drift() + "”");
        }
        return amount("--true-drift", parts.group(1));
    }

    private record Outliers(double share, double size) {
    }

    private Outliers outliers() {
        if (typed.outliers() == null) {
            return new Outliers(0, 0);
        }
        String[] parts = typed.outliers().split(":", -1);
        Optional<Amount> share = parts.length == 2 ? Amount.parse(parts[0]) : Optional.empty();
        if (share.isEmpty()) {
            throw new UsageException("--outliers", "expected the share of pulls and the size, such as 2%:5hp; found “" + typed.outliers()
                    + "”");
        }
        return new Outliers(share.get().si(), amount("--outliers", parts[1]));
    }

    private double autocorrelation() {
        if (typed.autocorrelation() == null) {
            return 0;
        }
        return Amount.parse(typed.autocorrelation()).filter(Amount::isBare).orElseThrow(() -> new UsageException("--autocorrelation",
                "expected a number between -1 and 1, found “" + typed.autocorrelation() + "”")).value();
    }

    /** An amount in the unit of the measure, as a difference; a bare number where there is no measure. */
    private double amount(String option, String text) {
        if (measure.isPresent()) {
            return measure.get().unit().differenceFromSi(new Typed(measure.get(), levelSi).differenceSi(option, text));
        }
        return Amount.parse(text).filter(Amount::isBare).orElseThrow(() -> new UsageException(option,
                "expected a number in the unit of the scatter, found “" + text + "”; leave the unit out, or name it with --unit"))
                .value();
    }
}
