package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static fairpull.ui.frame.Seat.within;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.ui.CopiedTest;
import fairpull.ui.OffScreen;
import java.awt.Component;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A test whose title, parts and rig are written like pages of the web, with a picture to load: all of it is shown as text. */
class PlainTextTest {
    private static final String HOSTILE = "<html><img src='file:/nowhere.png'><b>x</b>";

    @TempDir
    private Path folder;

    private Path hostile() throws IOException {
        Path test = CopiedTest.of(Path.of("plans/panel-filter"), folder.resolve("panel"));
        Path plan = test.resolve("plan.json");
        String text = Files.readString(plan, StandardCharsets.UTF_8);
        for (String name : List.of("High-flow panel filter against the stock filter", "stock panel air filter", "rollers 1",
                "high-flow panel air filter")) {
            text = text.replace("\"" + name, "\"" + HOSTILE + name);
        }
        Files.writeString(plan, text, StandardCharsets.UTF_8);
        return test;
    }

    private static Stream<Component> laidOutAsPages(Component pane) {
        return within(pane).flatMap(part -> Stream.concat(Stream.of(part), cells(part)))
                .filter(part -> part instanceof JComponent component && component.getClientProperty(BasicHTML.propertyKey) != null);
    }

    /** What a table would paint; its renderers are parts that were put into it before. */
    private static Stream<Component> cells(Component part) {
        if (!(part instanceof JTable table)) {
            return Stream.empty();
        }
        Stream.Builder<Component> cells = Stream.builder();
        for (int row = 0; row < table.getRowCount(); row++) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                cells.add(table.prepareRenderer(table.getCellRenderer(row, column), row, column));
            }
        }
        return cells.build();
    }

    @Test
    void noPageShowsAPageOfTheWeb() throws IOException {
        Seat seat = new Seat(folder.resolve("home"));
        Document document = KeepTest.open(hostile());
        assertThat(document.plan().title()).startsWith("<html>");
        done(() -> seat.windows.begin(Optional.of(document), Unsaved.none(), List.of()));
        TestPane pane = seat.only().pane();
        for (var page : pane.pages()) {
            done(() -> {
                pane.go(page);
                OffScreen.laidOut(pane, 1280, 800);
                OffScreen.picture(pane, 1280, 800, 1);
            });
            assertThat(got(() -> laidOutAsPages(pane).map(part -> part.getClass().getSimpleName() + " " + part.getName()).toList()))
                    .as(page.key()).isEmpty();
        }
        assertThat(got(() -> within(pane).filter(JLabel.class::isInstance).map(part -> ((JLabel) part).getText())
                .toList())).as("the title is there, as text").anyMatch(text -> String.valueOf(text).startsWith("<html><img"));
    }
}
