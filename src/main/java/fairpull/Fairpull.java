package fairpull;

import fairpull.cli.CommandLineProgram;

/** The only main: a verb goes to the command line. */
public final class Fairpull {
    private Fairpull() {
    }

    /** Starts the program. */
    public static void main(String[] arguments) {
        System.exit(CommandLineProgram.run(arguments));
    }
}
