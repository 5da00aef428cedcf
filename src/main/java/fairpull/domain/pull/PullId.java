package fairpull.domain.pull;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a pull: {@code B1-3} is the third counted pull of install B1, {@code B1-W2} its second warm-up.
 *
 * @param install the label of the install
 * @param warmUp whether it is a warm-up, which never counts
 * @param number counted from 1 within its kind
 */
public record PullId(String install, boolean warmUp, int number) {
    private static final Pattern FORM = Pattern.compile("([AB][1-9]\\d{0,2})-(W?)([1-9]\\d{0,3})");

    private static final Pattern OF_FILE = Pattern.compile("([AB]\\d{1,3}-W?\\d{1,4})(?![\\dA-Za-z]).*");

    public PullId {
        if (number < 1) {
            throw new IllegalArgumentException("pulls are counted from 1, was " + number);
        }
    }

    /** {@return the pull that a text names, if it names one} */
    public static Optional<PullId> parse(String text) {
        Matcher parts = FORM.matcher(text);
        return parts.matches()
                ? Optional.of(new PullId(parts.group(1), !parts.group(2).isEmpty(), Integer.parseInt(parts.group(3))))
                : Optional.empty();
    }

    /** {@return the pull that a file says itself to hold: {@code B1-3.csv}, {@code A1-W2 second try.txt}} */
    public static Optional<PullId> ofFileName(String name) {
        Matcher named = OF_FILE.matcher(name);
        return named.matches() ? parse(named.group(1)) : Optional.empty();
    }

    @Override
    public String toString() {
        return install + "-" + (warmUp ? "W" : "") + number;
    }
}
