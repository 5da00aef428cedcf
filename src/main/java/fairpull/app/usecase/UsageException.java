package fairpull.app.usecase;

import fairpull.domain.Remedy;

/** What was asked for contradicts itself or is not understood: the caller's words, not a file, must change. */
public final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Remedy problem;

    /**
     * Says which option is at fault.
     *
     * @param option the option as it is typed, such as {@code --measure}
     * @param problem what is wrong with it and what to do
     */
    public UsageException(String option, String problem) {
        this(option, Remedy.everywhere(problem));
    }

    /**
     * Says it for each surface in its own words.
     *
     * @param option the option as it is typed
     * @param problem what is wrong with it and what to do; in the window it stands beside the field that the option is there
     */
    public UsageException(String option, Remedy problem) {
        super(option + ": " + problem.command());
        this.problem = problem;
    }

    /** {@return what is wrong and what to do, for places that show by themselves what it is about} */
    public String problem() {
        return problem.window();
    }
}
