package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JTable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values are typed down a column of the table as in a spreadsheet, and every key counts, the first one of a cell too. */
@Tag("window")
class ValuesTypedTest {
    @TempDir
    private Path home;

    private static Object at(JTable table, int row, int column) {
        return OnScreen.got(() -> table.getValueAt(row, column));
    }

    @Test
    void everyKeyOfAValueArrives() throws IOException {
        Path file = Files.copy(Path.of("demo-data/published/silent.json"), home.resolve("silent.json"));
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(file))) {
            JTable table = screen.find("audit.values", JTable.class);
            Rectangle cell = OnScreen.got(() -> table.getCellRect(0, 1, true));
            screen.clickIn("audit.values", new Point2D.Double(cell.getCenterX(), cell.getCenterY()));
            screen.typeAhead("214.1");
            screen.typeAhead("213.8 hp");
            assertThat(at(table, 0, 1)).isEqualTo("214.1 hp");
            assertThat(at(table, 1, 1)).isEqualTo("213.8 hp");
            // a second click there, soon after the first one, would be a double one and put the caret into what stands there
            screen.press(0, KeyEvent.VK_UP);
            screen.press(0, KeyEvent.VK_UP);
            screen.typeAhead("215");
            assertThat(at(table, 0, 1)).as("in place of what stood there").isEqualTo("215 hp");
            screen.press(0, KeyEvent.VK_DELETE);
            assertThat(at(table, 1, 1)).isEqualTo("");
        }
    }
}
