package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.app.usecase.tracing.KeepCurves;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Unit;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Input;
import fairpull.ui.form.Teller;
import fairpull.ui.theme.Words;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;

/** Curves out of tables: two files, or one with both curves in it. */
final class TablesCard extends Card {
    private final AuditDesk desk;
    private final Consumer<Publication.Curves> taking;
    private final Side before = new Side(".before");
    private final Side after = new Side(".after");
    private final Entry<Optional<Unit>> unit;
    private Optional<Unit> known = Optional.empty();

    TablesCard(AuditDesk desk, Consumer<Publication.Curves> taking) {
        super(Words.of("audit.tables.head"), new MigLayout("insets 20, gap 8 8, fillx, hidemode 3, wrap 4",
                "[pref!][120:120:, grow 60, fill][pref!][80:80:, grow 40, fill]"));
        this.desk = desk;
        this.taking = taking;
        before.add();
        after.add();
        unit = new Entry<>("audit.tables.unit", AuditTyping::unit, typed -> known = typed, () -> { }).aside();
        add(unit.label());
        add(unit.field(), "growx, wmin 0");
        add(Buttons.of("audit.tables.take", this::take), "spanx, alignx right");
        add(unit.complaint(), "skip 1, spanx, growx, wmin 0");
    }

    void refresh() {
        unit.hintIn(desk.settings().units());
    }

    /** Takes a table into the first field that has none. */
    boolean take(Path file) {
        (before.file.isPresent() && after.file.isEmpty() ? after : before).show(file);
        return true;
    }

    private void take() {
        Input.flush(this);
        if (before.file.isEmpty() || known.isEmpty()) {
            desk.words().accept(Words.of("audit.tables.lacking"));
            return;
        }
        String name = known.get().quantity().words();
        KeepCurves.Table first = before.table(before.file.get());
        KeepCurves.Table second = after.table(after.file.orElse(before.file.get()));
        desk.opening().beside(publication -> Teller.around(this).onDisk(
                () -> KeepCurves.tables(name, known.get(), first, second, publication), taking));
    }

    /** The file of one curve, and the column in which it stands. */
    private final class Side {
        private final Entry<Optional<Path>> path;
        private final Entry<Optional<String>> column;
        private final String which;
        private Optional<Path> file = Optional.empty();
        private Optional<String> header = Optional.empty();

        Side(String which) {
            this.which = which;
            path = new Entry<>("audit.tables" + which, Side::path, typed -> file = typed, () -> { }).asWritten().aside();
            column = new Entry<>("audit.tables.column" + which, AuditTyping::words, typed -> header = typed, () -> { }).asWritten().aside();
        }

        private static Optional<Path> path(String text) {
            try {
                return AuditTyping.words(text).map(Path::of);
            } catch (InvalidPathException unreadable) {
                throw new IllegalArgumentException(Words.of("audit.tables.path"), unreadable);
            }
        }

        void add() {
            TablesCard.this.add(path.label());
            TablesCard.this.add(path.field(), "growx, wmin 0");
            TablesCard.this.add(Buttons.of("audit.tables.choose" + which, () -> desk.opening().choose("audit.tables.choose", this::show)));
            TablesCard.this.add(column.field(), "growx, wmin 0");
            TablesCard.this.add(path.complaint(), "skip 1, spanx, growx, wmin 0");
        }

        void show(Path chosen) {
            file = Optional.of(chosen);
            path.show(chosen.toString());
        }

        KeepCurves.Table table(Path at) {
            return new KeepCurves.Table(at, header);
        }
    }
}
