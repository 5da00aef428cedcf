package fairpull.domain.plan;

/** The checks that the records of a plan share; each says what, where and the allowed range. */
final class Checks {
    private Checks() {
    }

    static void named(String what, String name) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException(what + " needs a name");
        }
        if (name.length() > 500) {
            throw new IllegalArgumentException(what + " has a name of " + name.length() + " characters; at most 500 are allowed");
        }
    }

    static void inOpenUnitRange(String what, double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(what + " must lie between 0 and 1, was " + value);
        }
    }

    static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be above 0, was " + value);
        }
    }

    static void notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be 0 or more, was " + value);
        }
    }
}
