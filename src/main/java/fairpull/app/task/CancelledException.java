package fairpull.app.task;

/** Long work was stopped before its end; what was done of it is dropped. */
public final class CancelledException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * Says how far it had come.
     *
     * @param done parts done
     * @param all parts there were
     */
    public CancelledException(int done, int all) {
        super("stopped at " + Math.round(100.0 * done / all) + " %; nothing of it is kept");
    }
}
