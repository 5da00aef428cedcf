package fairpull.app.usecase;

/** What was asked for contradicts itself or is not understood: the caller's words, not a file, must change. */
public final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String problem;

    /**
     * Says which option is at fault.
     *
     * @param option the option as it is typed, such as {@code --measure}
     * @param problem what is wrong with it and what to do
     */
    public UsageException(String option, String problem) {
        super(option + ": " + problem);
        this.problem = problem;
    }

    /** {@return what is wrong and what to do, for places that show by themselves what it is about} */
    public String problem() {
        return problem;
    }
}
