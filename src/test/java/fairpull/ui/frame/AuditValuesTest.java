package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Publication.Values;
import fairpull.domain.audit.ValuesDraft;
import fairpull.ui.Waiting;
import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values one by one, typed and pasted in the window, held against the file of the same publication. */
class AuditValuesTest {
    @TempDir
    private Path folder;

    private AuditSeat blank() {
        return new AuditSeat(folder.resolve("home"), AuditDocument.blank());
    }

    private static JTable table(AuditSeat seat) {
        return seat.find("audit.values", JTable.class);
    }

    private static void type(AuditSeat seat, int row, int column, String text) {
        done(() -> table(seat).setValueAt(text, row, column));
    }

    private static ValuesDraft values(AuditSeat seat, int figure) {
        return got(() -> seat.audit.document().draft().figures().get(figure).values());
    }

    private static void paste(AuditSeat seat, int row, int column, String text) {
        done(() -> {
            table(seat).changeSelection(row, column, false, false);
            assertThat(table(seat).getTransferHandler().importData(new TransferHandler.TransferSupport(table(seat),
                    new StringSelection(text)))).isTrue();
        });
    }

    private static String complaint(AuditSeat seat) {
        return seat.complaint("audit.values");
    }

    private static void figure(AuditSeat seat) {
        seat.type("audit.figure.name.0", "capacity with the additive");
        seat.type("audit.figure.before.0", "6.09 W·h");
        seat.type("audit.figure.after.0", "6.46 W·h");
    }

    @Test
    void aTrialPastedFromASpreadsheetIsTheOneInItsFileAndIsUndoneAsOne() throws IOException {
        Publication.Figure known = AuditPublication.read(Path.of("demo-data/published/battery-trial-1953.json")).figures().get(0);
        Values printed = known.values().orElseThrow();
        AuditSeat seat = blank();
        figure(seat);
        String copied = IntStream.range(0, printed.printedBefore().size()).mapToObj(row -> printed.printedBefore().get(row).number()
                + "\t" + printed.printedAfter().get(row).number()).collect(Collectors.joining("\n")).replace('.', ',');
        paste(seat, 0, 1, "before\tafter\n" + copied);
        seat.choose("audit.values.each", 3);
        seat.choose("audit.values.paired", 1);
        assertThat(got(() -> seat.audit.document().draft().figures().get(0).figure())).contains(known);
        assertThat(table(seat).getValueAt(2, 2)).isEqualTo("5.88 W·h");
        done(seat.audit.actions()::undo);
        done(seat.audit.actions()::undo);
        done(seat.audit.actions()::undo);
        assertThat(values(seat, 0)).isEqualTo(ValuesDraft.NONE);
        done(seat.audit.actions()::redo);
        assertThat(values(seat, 0).rows()).hasSize(12);
        seat.press("audit.values.clear");
        assertThat(values(seat, 0)).isEqualTo(ValuesDraft.NONE);
    }

    @Test
    void twoListsOfUnequalLengthAreTypedAndPastedAndSaved() throws IOException {
        AuditSeat seat = blank();
        figure(seat);
        type(seat, 0, 1, "6.0");
        type(seat, 1, 1, "6.2 W·h");
        paste(seat, 0, 2, "6,4\n6,5\n6,6\n6,7\n6,8\n");
        assertThat(table(seat).getRowCount()).as("one more row to type in").isEqualTo(6);
        Path file = folder.resolve("lists.json");
        seat.frame().chosen = Optional.of(file);
        done(seat.audit.actions()::save);
        Values saved = AuditPublication.read(file).figures().get(0).values().orElseThrow();
        assertThat(saved.printedBefore()).hasSize(2);
        assertThat(saved.printedAfter()).extracting(value -> value.words()).containsExactly("6.4 W·h", "6.5 W·h", "6.6 W·h", "6.7 W·h",
                "6.8 W·h");
        assertThat(saved.each()).isEmpty();
        assertThat(saved.paired()).isFalse();
    }

    @Test
    void whatIsNotUnderstoodStaysInItsCellIsSaidBeneathTheTableAndNothingIsWritten() {
        AuditSeat seat = blank();
        figure(seat);
        paste(seat, 0, 1, "6.0\t6.4\n6.1\tsix\n6.2\t6.6");
        assertThat(complaint(seat)).contains("Row 2, After", "214.3 hp");
        assertThat(table(seat).getValueAt(1, 2)).isEqualTo("six");
        assertThat(values(seat, 0).rows()).hasSize(3);
        Path file = folder.resolve("not.json");
        seat.frame().chosen = Optional.of(file);
        done(seat.audit.actions()::save);
        assertThat(seat.said()).contains("Row 2, After");
        assertThat(file).doesNotExist();
        type(seat, 1, 2, "6.5 N·m");
        assertThat(complaint(seat)).contains("a value in W·h");
        type(seat, 1, 2, "");
        assertThat(complaint(seat)).isEmpty();
        seat.choose("audit.values.paired", 1);
        done(seat.audit.actions()::save);
        assertThat(seat.said()).contains("each before needs its after");
        assertThat(file).doesNotExist();
        type(seat, 1, 2, "6.5");
        done(seat.audit.actions()::save);
        assertThat(file).exists();
        paste(seat, 0, 1, "1\t2\t3\t4");
        assertThat(complaint(seat)).contains("4 columns wide");
    }

    @Test
    void everyFigureHasItsOwnValuesAndHalfOfThemIsFoundAgainAfterAKill() throws IOException {
        AuditSeat seat = blank();
        figure(seat);
        seat.press("audit.figures.add");
        seat.choose("audit.values.figure", 1);
        type(seat, 0, 1, "180.2 hp");
        type(seat, 2, 2, "184.1");
        seat.choose("audit.values.each", 2);
        assertThat(values(seat, 0)).isEqualTo(ValuesDraft.NONE);
        assertThat(values(seat, 1).rows()).hasSize(3);
        Waiting.until(() -> folder.resolve("home").resolve("recovery").toFile().isDirectory());
        done(() -> { });
        AuditDocument found = Unsaved.in(Settings.in(folder.resolve("home"))).audits().get(0).document();
        assertThat(found.draft()).isEqualTo(got(() -> seat.audit.document().draft()));
        seat.press("audit.figures.remove.1");
        assertThat(seat.find("audit.values.figure", JComboBox.class).getSelectedItem()).isEqualTo("capacity with the additive");
    }
}
