package fairpull.report.wording;

import java.util.List;

/** How an audit was reckoned, with the sources. */
public final class AuditMethodWords {
    private AuditMethodWords() {
    }

    /** {@return what the chart of published differences shows} */
    public static String intervals() {
        return "Dot: the published difference. Bars: 95" + Numbers.THIN + "% intervals of the true one, strong at ordinary scatter, "
                + "faint at "
                + "the worst. Broken line: what is claimed.";
    }

    /** {@return what the chart of chance alone shows} */
    public static String chance() {
        return "The curve is for a figure named before the test, with what is not disclosed done well; refit and day scatter move with "
                + "pull "
                + "scatter. Broken line: 5" + Numbers.THIN + "%.";
    }

    /** {@return how it was reckoned} */
    public static List<Said> all() {
        return List.of(
                new Said("Grades", "a claim with a number is read as “at least” that much, one without as any gain at all, each by itself. "
                        + "Contradicted: the whole interval at the worst lies below it. Not shown: rigs, corrections, barometers or "
                        + "anything else differs, the figures contradict each other or differ by less than is claimed, nothing is known "
                        + "of their scatter, or the interval at ordinary scatter reaches down to the claim. Plausible: that interval "
                        + "lies above it, but the one at the worst does not, or the state before was not run again, or that and "
                        + "whether all else stayed was not said. Shown: it stands at the worst."),
                new Said("Scatter", "one standard deviation of pulls, strap-downs and days as shares of the level: ordinary 0.7, 1.0 "
                        + "and 1.0, "
                        + "least 0.2, 0.3 and 0.3, most 1.6, 2.0 and 2.0" + Numbers.THIN + "%; common practice, no source. "
                        + "What is stated or known takes its place, with Student’s t for its degrees of freedom (Satterthwaite 1946, "
                        + "Biometrics Bulletin 2, 110–114)."),
                new Said("Best of several", "what the largest of n pulls gives without any change is taken off, by the distribution of a "
                        + "difference of maxima of normal values (expected maxima: Tippett 1925, Biometrika 17)."),
                new Said("Picked speed", "a figure picked afterwards is held against the largest difference of a whole sweep, hardly "
                        + "smoothed (Davies 1987, Biometrika 74, 33–43)."),
                new Said("Rounding", "half a unit of the last printed digit of both figures, spread evenly."),
                new Said("Mixed corrections", "the factors of both standards in the same air, 25" + Numbers.THIN + "°C and the pressure of "
                        + "the standard atmosphere where the elevation is known; of two barometers, in the U.S. Standard "
                        + "Atmosphere (1976)."),
                new Said("Wrong sign, too large", "Gelman and Carlin (2014), Perspectives on Psychological Science 9, 641–651."),
                new Said("Values one by one", "Student’s paired t test (1908), or Welch’s (1947) where they are not paired."),
                new Said("Fair repeat", "the shortest counterbalanced order among up to ten installs a day, three to eight counted pulls "
                        + "each, in A at both ends and with a linear drift modelled, that finds the gain by the "
                        + "non-central t distribution at the scatter stated there."));
    }
}
