package fairpull.domain.plan;

import java.util.List;
import java.util.Optional;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The looks at the data that are planned: only these, with an error rate that is shared among them, so that one more install is honest.
 *
 * @param spending how the error rate is shared
 * @param afterInstalls after how many installs each look falls, counted over all sessions, rising; the last look is the end of the plan
 */
public record Looks(Spending spending, List<Integer> afterInstalls) {
    /** How the error rate is shared among the looks. */
    public enum Spending {
        /** Next to nothing early: the last look hardly differs from a single one. */
        OBRIEN_FLEMING,
        /** Much the same at every look. */
        POCOCK
    }

    public Looks {
        Objects.requireNonNull(spending, "spending");
        afterInstalls = List.copyOf(afterInstalls);
        if (afterInstalls.size() < 2) {
            throw new IllegalArgumentException("planned looks are two or more, the last one at the end of the plan");
        }
        int before = 1;
        for (int installs : afterInstalls) {
            if (installs <= before) {
                throw new IllegalArgumentException("looks come after more and more installs, two at least; were "
                        + afterInstalls.stream().map(String::valueOf).collect(Collectors.joining(", ")));
            }
            before = installs;
        }
    }

    /** {@return how many looks there are} */
    public int count() {
        return afterInstalls.size();
    }

    /**
     * Holds the looks against an order.
     *
     * @param letters the order, sessions parted by bars
     * @throws IllegalArgumentException if the last look is not at the end of the order, or an earlier one where the day is not back at A
     */
    public void requireFit(String letters) {
        misfit(letters).ifPresent(problem -> {
            throw new IllegalArgumentException(problem);
        });
    }

    /** {@return whether every look has its place in an order} */
    public boolean fits(String letters) {
        return misfit(letters).isEmpty();
    }

    private Optional<String> misfit(String letters) {
        int installs = letters.replace("|", "").length();
        int last = afterInstalls.get(count() - 1);
        if (last != installs) {
            return Optional.of("the last look is at the end of the order, after " + installs + " installs, not after " + last);
        }
        for (int after : afterInstalls.subList(0, count() - 1)) {
            String session = first(letters, after);
            session = session.substring(session.lastIndexOf('|') + 1);
            if (!session.matches(".*B+A")) {
                return Optional.of("a look falls only where the day is back at A; after " + after + " installs " + session + " was run");
            }
        }
        return Optional.empty();
    }

    /** {@return the first installs of an order in letters, with the bars between them} */
    public static String first(String letters, int installs) {
        int seen = 0;
        for (int i = 0; i < letters.length(); i++) {
            seen += letters.charAt(i) == '|' ? 0 : 1;
            if (seen == installs) {
                return letters.substring(0, i + 1);
            }
        }
        return letters;
    }
}
