package fairpull.domain.finding;

import java.util.Optional;

/** What is said of the change. */
public sealed interface Verdict {

    /** {@return what {@code cases} makes of this verdict} */
    <R> R match(Cases<R> cases);

    /** {@return the verdict in the words of the trade, such as “no difference that matters”} */
    String words();

    /** {@return why there is no better answer; empty for a gain, a loss and no difference that matters} */
    default Optional<Enum<?>> why() {
        return Optional.empty();
    }

    /** One answer a verdict. */
    interface Cases<R> {
        R gain();

        R loss();

        R noDifferenceThatMatters();

        R undecided(WhyUndecided why);

        R cannotBeJudged(WhyNotJudged why);
    }

    /** Why nothing could be decided. */
    enum WhyUndecided {
        /** The interval holds zero, and is too wide to rule out a change that matters. */
        INTERVAL_TOO_WIDE,
        /** Pulls are unequal in number and the test on install means does not agree. */
        INSTALL_MEANS_DISAGREE
    }

    /** Why there is nothing to judge by. */
    enum WhyNotJudged {
        /** Too few installs for the scatter of refitting to show, and no rig record. */
        TOO_FEW_INSTALLS,
        /** Too few pulls for the scatter of pulls to show, and no rig record. */
        TOO_FEW_PULLS
    }

    /** The interval lies beyond zero on the better side. */
    record Gain() implements Verdict {
        @Override
        public String words() {
            return "gain";
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gain();
        }
    }

    /** The interval lies beyond zero on the worse side. */
    record Loss() implements Verdict {
        @Override
        public String words() {
            return "loss";
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.loss();
        }
    }

    /** Any change is smaller than the worthwhile gain. */
    record NoDifferenceThatMatters() implements Verdict {
        @Override
        public String words() {
            return "no difference that matters";
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noDifferenceThatMatters();
        }
    }

    /** Neither a change nor its absence is shown. */
    record Undecided(WhyUndecided reason) implements Verdict {
        @Override
        public String words() {
            return "undecided";
        }

        @Override
        public Optional<Enum<?>> why() {
            return Optional.of(reason);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undecided(reason);
        }
    }

    /** No interval exists. */
    record CannotBeJudged(WhyNotJudged reason) implements Verdict {
        @Override
        public String words() {
            return "cannot be judged";
        }

        @Override
        public Optional<Enum<?>> why() {
            return Optional.of(reason);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cannotBeJudged(reason);
        }
    }
}
