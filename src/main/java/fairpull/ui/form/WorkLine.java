package fairpull.ui.form;

import fairpull.app.task.Job;
import fairpull.app.task.Progress;
import fairpull.ui.theme.Words;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * One piece of long work at a time, with a bar that says how far it is and a button that stops it; out of sight while there is none. New
 * work stops the one before, and so does the end of the window.
 */
public final class WorkLine extends JPanel {
    private final JProgressBar progress = new JProgressBar(0, 100);
    private Optional<Job<?>> job = Optional.empty();

    /**
     * A line without work.
     *
     * @param name of what the line stands for: {@code name.progress} are the words of the bar, {@code name.cancel} those of the button
     */
    public WorkLine(String name) {
        super(new MigLayout("insets 0, gap 8 0, fillx", "[grow, fill][pref!]"));
        JButton cancel = Buttons.of(name + ".cancel", this::stop);
        setOpaque(false);
        progress.setName(name + ".progress");
        progress.getAccessibleContext().setAccessibleName(Words.of(name + ".progress"));
        add(progress);
        add(cancel);
        setVisible(false);
    }

    /**
     * Starts work.
     *
     * @param work does it, beside the thread of the window; is told when to stop and tells how far it is
     * @param then hears what it gave
     * @param failed hears of a fault
     */
    public <R> void start(Function<Progress, R> work, Consumer<? super R> then, Consumer<? super Throwable> failed) {
        stop();
        setVisible(true);
        job = Optional.of(Job.start(work, SwingUtilities::invokeLater, share -> progress.setValue((int) Math.round(100 * share)), ended -> {
            stop();
            ended.tell(then, failed);
        }));
    }

    /** Stops what is at work; nothing more is heard of it. */
    public void stop() {
        job.ifPresent(Job::cancel);
        job = Optional.empty();
        progress.setValue(0);
        setVisible(false);
    }

    @Override
    public void removeNotify() {
        stop();
        super.removeNotify();
    }
}
