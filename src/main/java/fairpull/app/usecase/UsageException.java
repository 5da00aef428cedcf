package fairpull.app.usecase;

/** What was asked for contradicts itself or is not understood: the caller's words, not a file, must change. */
public final class UsageException extends RuntimeException {
    /**
     * Says which option is at fault.
     *
     * @param option the option as it is typed, such as {@code --measure}
     * @param problem what is wrong with it and what to do
     */
    public UsageException(String option, String problem) {
        super(option + ": " + problem);
    }
}
