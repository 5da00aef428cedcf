package fairpull.domain;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to do about something, for each surface in its own words: a command line wants its options, a window says where to click.
 *
 * @param command on the command line
 * @param window in the window
 */
public record Remedy(String command, String window) {
    private static final Pattern OF_COMMANDS = Pattern.compile("`fairpull|fairpull [a-z]|(^|[ (])--[a-z]");

    /** Where somebody reads it. */
    public enum Surface {
        COMMAND_LINE, WINDOW
    }

    /** {@return a remedy that is the same everywhere, but for what speaks of commands: a window has none} */
    public static Remedy everywhere(String words) {
        return new Remedy(words, withoutCommands(words));
    }

    /** {@return clauses parted by semicolons, each up to the first of its parts between commas that names a command or an option} */
    public static String withoutCommands(String words) {
        return Stream.of(words.split("; ")).map(clause -> Stream.of(clause.split(", "))
                .takeWhile(part -> !OF_COMMANDS.matcher(part).find()).collect(Collectors.joining(", ")))
                .filter(clause -> !clause.isEmpty()).collect(Collectors.joining("; "));
    }

    /** {@return the words of a surface} */
    public String on(Surface surface) {
        return surface == Surface.WINDOW ? window : command;
    }
}
