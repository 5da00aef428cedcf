package fairpull.ui;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.ui.frame.AuditPane;
import fairpull.ui.page.audit.AuditDesk;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.page.audit.Auditing;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** The pages of an audit of an invented publication, for the gallery. */
final class AuditGallery {
    private static final AuditDesk.Opening NOTHING = new AuditDesk.Opening() {
        @Override
        public void choose() {
            // nothing is opened here
        }

        @Override
        public void example(String name) {
            // nothing is opened here
        }

        @Override
        public void choose(String key, Consumer<Path> then) {
            // nothing is chosen here
        }

        @Override
        public void beside(Consumer<Path> then) {
            // nothing is kept here
        }
    };

    private AuditGallery() {
    }

    /** {@return a pane of a publication, off screen} */
    static AuditPane pane(AuditDocument document, Settings settings) {
        return new AuditPane(document, settings, new Auditing(document), NOTHING);
    }

    /** Draws every page of an audit; {@code writing} is told its name when it is laid out. */
    static void draw(Mode mode, double type, int scale, int width, int height, BiConsumer<String, AuditPane> writing) throws IOException {
        Settings settings = Settings.in(Path.of("target/none"));
        AuditPane[] pane = new AuditPane[1];
        AuditDocument document = KeepAudit.example("silent");
        Waiting.onWindowThread(() -> {
            Look.install(mode, type);
            pane[0] = OffScreen.onScreenOf(scale, pane(document, settings));
            OffScreen.laidOut(pane[0], width, height);
        });
        Waiting.forQuiet();
        for (AuditPage page : pane[0].pages()) {
            Waiting.onWindowThread(() -> {
                pane[0].go(page);
                OffScreen.laidOut(pane[0], width, height);
            });
            Waiting.forQuiet();
            Waiting.onWindowThread(() -> writing.accept(page.key().replace("page.", "audit-").toLowerCase(Locale.ROOT), pane[0]));
        }
        AuditPane[] curves = new AuditPane[1];
        AuditDocument withCurves = KeepAudit.example("inlet");
        Waiting.onWindowThread(() -> {
            curves[0] = OffScreen.onScreenOf(scale, pane(withCurves, settings));
            curves[0].pages().stream().filter(CurvesPage.class::isInstance).forEach(curves[0]::go);
            OffScreen.laidOut(curves[0], width, height);
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> writing.accept("audit-curves-drawn", curves[0]));
        AuditPane[] blank = new AuditPane[1];
        Waiting.onWindowThread(() -> {
            blank[0] = OffScreen.onScreenOf(scale, pane(AuditDocument.blank(), settings));
            OffScreen.laidOut(blank[0], width, height);
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> writing.accept("audit-blank", blank[0]));
    }
}
