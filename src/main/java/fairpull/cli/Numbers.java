package fairpull.cli;

import fairpull.app.usecase.UsageException;

/** Numbers typed as options. */
final class Numbers {
    private Numbers() {
    }

    /** {@return a finite number} */
    static double number(String option, String text) {
        try {
            double value = Double.parseDouble(text.strip());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw new UsageException(option, "expected a number, found “" + text + "”");
        }
        throw new UsageException(option, "expected a finite number, found “" + text + "”");
    }

    /** {@return a number above zero} */
    static double positive(String option, String text) {
        double value = number(option, text);
        if (!(value > 0)) {
            throw new UsageException(option, "must be above 0, was " + text);
        }
        return value;
    }

    /** {@return a number that is not below zero} */
    static double notNegative(String option, String text) {
        double value = number(option, text);
        if (value < 0) {
            throw new UsageException(option, "must be 0 or more, was " + text);
        }
        return value;
    }

    /** {@return a whole number within its range} */
    static int whole(String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw new UsageException(option, "must lie between " + least + " and " + most + ", was " + value);
        }
        return value;
    }

    /** {@return a share between 0 and an upper end, both excluded} */
    static double share(String option, String text, double below) {
        double value = number(option, text);
        if (!(value > 0 && value < below)) {
            throw new UsageException(option, "must lie between 0 and " + below + ", was " + text);
        }
        return value;
    }
}
