package fairpull.app.usecase;

import fairpull.domain.InputException;
import java.util.regex.Pattern;

/** What is wrong with input, for who sees the means to put it right beside it and has no use for options of the command line. */
final class InWindow {
    private static final Pattern COMMAND = Pattern.compile("(?s); (?:[^;]*)(?: --\\p{L}|`fairpull|fairpull (?:note|import|exclude)).*");
    private static final String REMEDY = "; choose below";

    private InWindow() {
    }

    /** {@return place, problem and remedy in one line} */
    static String words(InputException unusable) {
        return words(unusable.oneLine());
    }

    /** {@return a sentence whose remedy, where it is a command, is to be found in the window} */
    static String words(String sentence) {
        return COMMAND.matcher(sentence).replaceFirst(REMEDY);
    }
}
