package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.ui.page.tracing.TracingPane;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** A window in which a chart is traced. */
final class TracingWindow extends JFrame {
    private final TracingPane pane;
    private final Banner banner = new Banner();

    TracingWindow(Settings settings) {
        super(Words.of("tracing.title") + " – Fairpull");
        pane = new TracingPane(settings);
        pane.onAsk(this::ask);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(banner, BorderLayout.NORTH);
        add(pane, BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 700));
        setSize(1280, 800);
        setLocationByPlatform(true);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                close();
            }
        });
    }

    private void ask(String question, Map<String, Runnable> answers) {
        Map<String, Runnable> all = new LinkedHashMap<>(answers);
        all.put("tracing.drop.no", () -> { });
        banner.ask(question, all);
    }

    private void close() {
        if (!pane.document().isChanged()) {
            dispose();
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("close.save", () -> pane.save(this::dispose));
        answers.put("close.drop", this::dispose);
        answers.put("close.stay", () -> { });
        banner.ask(Words.of("tracing.close.question"), answers);
    }
}
