package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.ui.Waiting;
import fairpull.ui.form.ScaledChart;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.page.tracing.TracedExample;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Curves of a publication that lies in no file yet: they are taken, audited, found again after a kill, and written with it. */
class HeldCurvesTest {
    private static final String TRACE = "invented-chart-trace.json";
    private static final String TABLE = "invented-chart-trace.csv";

    @TempDir
    private Path folder;
    private AuditSeat seat;

    /** Types a publication and takes curves of a picture into it. */
    @BeforeEach
    void take() throws IOException {
        seat = new AuditSeat(folder.resolve("home"), AuditDocument.blank());
        seat.type("audit.figure.before.0", "150 kW");
        seat.type("audit.figure.after.0", "158 kW");
        seat.type("audit.claim.words.0", "more power");
        seat.go("page.curves");
        CurvesPage page = (CurvesPage) seat.audit.pane().pages().get(2);
        TracedExample.trace(page.tracing(), Files.createDirectories(folder.resolve("pictures")));
        seat.press("tracing.take");
    }

    private Stream<String> held() {
        File[] folders = folder.resolve("home").resolve("held").toFile().listFiles();
        return folders == null ? Stream.empty() : Stream.of(folders).flatMap(held -> Stream.of(held.list()));
    }

    @Test
    void theyAreAuditedAtOnceAndWrittenWithThePublication() throws IOException {
        assertThat(got(() -> seat.audit.document().draft().curves())).hasSize(1);
        assertThat(got(() -> seat.audit.auditing().view()).orElseThrow().answer().curves()).hasSize(1);
        assertThat(held()).containsExactlyInAnyOrder(TRACE, TABLE);
        ScaledChart chart = seat.find("audit.taken.chart.0", ScaledChart.class);
        assertThat(chart.getAccessibleContext().getAccessibleName()).contains("Published curves of power");
        assertThat(chart.getAccessibleContext().getAccessibleDescription()).contains("standard reading error");
        Path file = Files.createDirectories(folder.resolve("mine")).resolve("published.json");
        seat.frame().chosen = Optional.of(file);
        done(seat.audit.actions()::save);
        assertThat(file.resolveSibling(TRACE)).exists();
        assertThat(file.resolveSibling(TABLE)).exists();
        assertThat(held()).isEmpty();
        assertThat(AuditPublication.audit(file).curves()).hasSize(1);
        assertThat(seat.grades()).hasSize(1);
    }

    @Test
    void savedElsewhereTheyGoWithItAndNothingIsWrittenOver() throws IOException {
        Path first = Files.createDirectories(folder.resolve("one")).resolve("published.json");
        seat.frame().chosen = Optional.of(first);
        done(seat.audit.actions()::save);
        Path second = Files.createDirectories(folder.resolve("two")).resolve("published.json");
        Files.writeString(second.resolveSibling(TABLE), "somebody else's");
        seat.frame().chosen = Optional.of(second);
        done(seat.audit.actions()::saveAs);
        assertThat(seat.said()).contains(TABLE, "another file of that name");
        assertThat(second).doesNotExist();
        assertThat(second.resolveSibling(TRACE)).doesNotExist();
        Files.delete(second.resolveSibling(TABLE));
        done(seat.audit.actions()::saveAs);
        assertThat(AuditPublication.audit(second).curves()).hasSize(1);
    }

    @Test
    void theyAreFoundAgainAfterAKill() throws IOException {
        Waiting.until(() -> folder.resolve("home").resolve("recovery").toFile().isDirectory());
        Unsaved found = Unsaved.in(Settings.in(folder.resolve("home")));
        Seat again = new Seat(folder.resolve("home"));
        done(() -> again.windows.begin(Optional.empty(), found, List.of()));
        AuditSeat after = new AuditSeat(again);
        assertThat(got(() -> after.audit.document().file())).isEmpty();
        assertThat(got(() -> after.audit.document().draft())).isEqualTo(got(() -> seat.audit.document().draft()));
        assertThat(got(() -> after.audit.auditing().view()).orElseThrow().answer().curves()).hasSize(1);
        Path file = folder.resolve("found.json");
        after.frame().chosen = Optional.of(file);
        done(after.audit.actions()::save);
        assertThat(KeepAudit.open(file).draft().curves()).hasSize(1);
        assertThat(folder.resolve(TRACE)).exists();
    }

    @Test
    void whenTheyAreGivenUpTheirFilesGo() {
        done(seat.audit.actions()::close);
        seat.press("close.drop");
        Waiting.until(() -> held().findAny().isEmpty());
        assertThat(folder.resolve("home").resolve("held")).isEmptyDirectory();
    }
}
