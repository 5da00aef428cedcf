package fairpull.domain;

/**
 * What to do about something, for each surface in its own words: a command line wants its options, a window says where to click.
 *
 * @param command on the command line
 * @param window in the window
 */
public record Remedy(String command, String window) {
    /** Where somebody reads it. */
    public enum Surface {
        COMMAND_LINE, WINDOW
    }

    /** {@return a remedy that is the same everywhere} */
    public static Remedy everywhere(String words) {
        return new Remedy(words, words);
    }

    /** {@return the words of a surface} */
    public String on(Surface surface) {
        return surface == Surface.WINDOW ? window : command;
    }
}
