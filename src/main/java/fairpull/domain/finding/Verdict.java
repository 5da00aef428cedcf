package fairpull.domain.finding;

/** What is said of the change. */
public sealed interface Verdict {

    /** {@return what {@code cases} makes of this verdict} */
    <R> R match(Cases<R> cases);

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
        public <R> R match(Cases<R> cases) {
            return cases.gain();
        }
    }

    /** The interval lies beyond zero on the worse side. */
    record Loss() implements Verdict {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.loss();
        }
    }

    /** Any change is smaller than the worthwhile gain. */
    record NoDifferenceThatMatters() implements Verdict {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noDifferenceThatMatters();
        }
    }

    /** Neither a change nor its absence is shown. */
    record Undecided(WhyUndecided why) implements Verdict {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undecided(why);
        }
    }

    /** No interval exists. */
    record CannotBeJudged(WhyNotJudged why) implements Verdict {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cannotBeJudged(why);
        }
    }
}
