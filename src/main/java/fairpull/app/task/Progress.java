package fairpull.app.task;

/** Watches long work, from whichever thread does a part of it, and may have it stopped. */
public interface Progress {
    /** Hears that {@code done} of {@code all} parts are done; calls may come from several threads. */
    void reached(int done, int all);

    /** {@return whether the work is to stop as soon as it can} */
    boolean isCancelled();

    /** {@return the watcher of one of several parts of the work, counted from 0, that take about as long as each other} */
    default Progress part(int part, int parts) {
        Progress whole = this;
        return new Progress() {
            @Override
            public void reached(int done, int all) {
                whole.reached(part * all + done, parts * all);
            }

            @Override
            public boolean isCancelled() {
                return whole.isCancelled();
            }
        };
    }

    /** {@return one that does not listen and never stops} */
    static Progress none() {
        return new Progress() {
            @Override
            public void reached(int done, int all) {
                // nobody asked
            }

            @Override
            public boolean isCancelled() {
                return false;
            }
        };
    }
}
