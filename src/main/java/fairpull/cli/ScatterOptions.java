package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.domain.finding.ScatterRecord;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The scatter options, the same in every verb. */
final class ScatterOptions {
    @Option(names = "--refit-scatter", paramLabel = "X",
            description = "Scatter that refitting adds, a standard deviation in the unit of the values.")
    private String refitScatter;

    @Option(names = "--refit-df", paramLabel = "N",
            description = "Degrees of freedom behind it; inf: taken as known; 0: a planning value, no record.")
    private String refitDf;

    @Option(names = "--pull-scatter", paramLabel = "X", description = "Scatter of pulls within one install, in the unit of the values.")
    private String pullScatter;

    @Option(names = "--pull-df", paramLabel = "N", description = "Degrees of freedom behind it, likewise.")
    private String pullDf;

    /** {@return the refit scatter as typed; null where none was} */
    String refitTyped() {
        return refitScatter;
    }

    /** {@return the pull scatter as typed; null where none was} */
    String pullTyped() {
        return pullScatter;
    }

    /** Asks for both scatters where they were not typed. */
    void require(Missing missing) {
        missing.unless(pullScatter, "--pull-scatter", "1.2").unless(refitScatter, "--refit-scatter", "0.6");
    }

    /** {@return the refit scatter to plan with} */
    double refitToPlan() {
        double scatter = Numbers.notNegative("--refit-scatter", required("--refit-scatter", refitScatter));
        if (scatter == 0) {
            throw new UsageException("--refit-scatter", "is never 0: strapping down anew moves the figure of an unchanged car; where "
                    + "nothing is known of it, plan with half the pull scatter and with all of it, and take the worse");
        }
        return scatter;
    }

    /** {@return the pull scatter to plan with} */
    double pullToPlan() {
        return Numbers.positive("--pull-scatter", required("--pull-scatter", pullScatter));
    }

    double refitDfToPlan() {
        return refitDf == null ? 0 : degreesOfFreedom("--refit-df", refitDf);
    }

    double pullDfToPlan() {
        return pullDf == null ? 0 : degreesOfFreedom("--pull-df", pullDf);
    }

    /** {@return the record of refit scatter to judge with} */
    Optional<ScatterRecord> refitRecord() {
        return record("--refit-scatter", refitScatter, "--refit-df", refitDf);
    }

    /** {@return the record of pull scatter to judge with} */
    Optional<ScatterRecord> pullRecord() {
        return record("--pull-scatter", pullScatter, "--pull-df", pullDf);
    }

    private static Optional<ScatterRecord> record(String option, String scatter, String dfOption, String df) {
        if (scatter == null && df == null) {
            return Optional.empty();
        }
        double size = Numbers.positive(option, required(option, scatter));
        double freedom = df == null ? 0 : degreesOfFreedom(dfOption, df);
        if (freedom == 0) {
            throw new UsageException(option, "a scatter without degrees of freedom is a planning value, not a record; give " + dfOption
                    + " N too (inf to take it as known), or leave " + option + " out to judge by the data alone");
        }
        return Optional.of(new ScatterRecord(size, freedom));
    }

    private static String required(String option, String value) {
        if (value == null) {
            throw new UsageException(option, "is missing");
        }
        return value;
    }

    private static double degreesOfFreedom(String option, String text) {
        if (text.equalsIgnoreCase("inf")) {
            return Double.POSITIVE_INFINITY;
        }
        double value = Numbers.number(option, text);
        if (value < 0) {
            throw new UsageException(option, "must be 0 or more, or inf; was " + text);
        }
        return value;
    }
}
