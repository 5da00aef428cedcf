package fairpull;

import fairpull.cli.CommandLineProgram;
import fairpull.domain.InputException;
import fairpull.ui.Desktop;
import java.io.IOException;
import java.util.Optional;

/** The only main: a verb goes to the command line, none opens the window. */
public final class Fairpull {
    private Fairpull() {
    }

    /** Starts the program. */
    public static void main(String[] arguments) {
        if (arguments.length > 0 || !opened()) {
            int status = CommandLineProgram.run(arguments.length > 0 ? arguments : new String[] {"open"}, Desktop::open);
            if (status != CommandLineProgram.STAYS) {
                System.exit(status);
            }
        }
    }

    /** Opens the window without loading what reads command lines, which would take a tenth of the start. */
    private static boolean opened() {
        try {
            Desktop.open(Optional.empty());
            return true;
        } catch (IOException | InputException said) {
            // the verb `open` meets the same trouble again and finds the words for it
            return false;
        }
    }
}
