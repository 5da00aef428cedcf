package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.cli.CommandLineProgram;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.plan.Plan;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.page.tracing.TracedExample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window of an audit, worked as a keyboard would, and held against what the command line says of the same publication. */
class AuditWindowTest {
    @TempDir
    private Path folder;

    private AuditSeat blank() {
        return new AuditSeat(folder.resolve("home"), AuditDocument.blank());
    }

    private AuditSeat example(String name) throws IOException {
        return new AuditSeat(folder.resolve("home"), KeepAudit.example(name));
    }

    private static String printed(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true), Clock.systemUTC())
                .runVerb(Stream.of(words).map(Object::toString).toList());
        assertThat(status).as(err.toString()).isZero();
        return out.toString();
    }

    /** Types the sound publication of {@code demo-data}, item by item. */
    private static void typeSound(AuditSeat seat) {
        seat.type("audit.figure.name.0", "power at 5500 rpm");
        seat.type("audit.figure.before.0", "201.4 hp");
        seat.type("audit.figure.after.0", "217.9");
        seat.type("audit.figure.at.0", "5500");
        seat.press("audit.figures.add");
        seat.type("audit.figure.name.1", "torque at 5500 rpm");
        seat.type("audit.figure.before.1", "192.3 lbf·ft");
        seat.type("audit.figure.after.1", "208.1 lbf·ft");
        seat.type("audit.figure.at.1", "5500 rpm");
        seat.type("audit.claim.words.0", "a gain at 5500 rpm");
        seat.press("audit.claims.add");
        seat.type("audit.claim.words.1", "20 hp more");
        seat.type("audit.claim.gain.1", "20 hp");
        seat.type("audit.title", "An intake manifold, published with all that matters");
        seat.type("audit.changed", "intake manifold");
        seat.type("audit.source", "invented for this project");
        seat.type("audit.remark", "Invented: no such part, car or publication exists.");
        seat.go("page.procedure");
        for (String side : List.of("before", "after")) {
            seat.choose("audit.quoted." + side, 1);
            seat.type("audit.pulls." + side, "5");
            seat.choose("audit.correction." + side, 2);
            seat.choose("audit.barometer." + side, 1);
            seat.type("audit.smoothing." + side, "100 rpm");
        }
        seat.type("audit.order", "A/B/A");
        seat.type("audit.sweep", "2500-6500 rpm");
        seat.type("audit.scatter.pull", "0.6 % df 12");
        seat.type("audit.scatter.refit", "0.9 % (df 6)");
        for (String item : List.of("audit.rig", "audit.strapDown", "audit.day", "audit.allElse", "audit.namedBefore", "audit.returned")) {
            seat.choose(item, 1);
        }
    }

    @Test
    void whatIsTypedFromNothingIsAuditedAsTheCommandAuditsTheSavedFile() throws IOException {
        AuditSeat seat = blank();
        typeSound(seat);
        Publication sound = AuditPublication.read(Path.of("demo-data/published/sound.json"));
        assertThat(got(() -> seat.audit.document().draft().publication())).contains(sound);
        assertThat(seat.grades()).hasSize(2).first().isEqualTo("Shown");

        Path file = folder.resolve("typed.json");
        seat.frame().chosen = Optional.of(folder.resolve("typed"));
        done(seat.audit.actions()::save);
        assertThat(AuditPublication.read(file)).isEqualTo(sound);
        assertThat(got(seat.audit.document()::isChanged)).isFalse();

        for (AuditExport kind : AuditExport.values()) {
            seat.frame().chosen = Optional.of(folder.resolve("ours" + kind.ending()));
            done(() -> seat.audit.actions().export(kind));
        }
        String json = printed("audit", file, "--json", "--html", folder.resolve("theirs.html"), "--pdf", folder.resolve("theirs.pdf"));
        assertThat(Files.readString(folder.resolve("ours-audit.json"))).isEqualTo(json);
        assertThat(folder.resolve("ours.html")).hasSameBinaryContentAs(folder.resolve("theirs.html"));
        assertThat(folder.resolve("ours.pdf")).hasSameBinaryContentAs(folder.resolve("theirs.pdf"));
    }

    @Test
    void everythingIsUndoneAndDoneAgain() {
        AuditSeat seat = blank();
        typeSound(seat);
        AuditDocument document = seat.audit.document();
        PublicationDraft typed = got(document::draft);
        while (got(document::undoLabel).isPresent()) {
            done(seat.audit.actions()::undo);
        }
        assertThat(got(document::draft)).isEqualTo(PublicationDraft.blank());
        assertThat(seat.grades()).isEmpty();
        assertThat(seat.text("audit.pulls.before")).isEmpty();
        while (got(document::redoLabel).isPresent()) {
            done(seat.audit.actions()::redo);
        }
        assertThat(got(document::draft)).isEqualTo(typed);
        assertThat(seat.grades()).hasSize(2);
    }

    @Test
    void whatIsNotUnderstoodStaysInItsFieldAndNothingIsWritten() {
        AuditSeat seat = blank();
        seat.type("audit.figure.before.0", "about two hundred");
        assertThat(seat.complaint("audit.figure.before.0")).contains("214.3 hp");
        assertThat(seat.text("audit.figure.before.0")).isEqualTo("about two hundred");
        seat.type("audit.figure.before.0", "214 hp");
        assertThat(seat.complaint("audit.figure.before.0")).isEmpty();
        seat.type("audit.figure.after.0", "220 N·m");
        assertThat(seat.complaint("audit.figure.after.0")).contains("hp", "N·m");
        seat.frame().chosen = Optional.of(folder.resolve("not.json"));
        done(seat.audit.actions()::save);
        assertThat(seat.said()).contains("After");
        assertThat(folder.resolve("not.json")).doesNotExist();
        seat.type("audit.figure.after.0", "");
        done(seat.audit.actions()::save);
        assertThat(seat.said()).contains("lacks its figure after");
        seat.go("page.procedure");
        seat.type("audit.pulls.before", "many");
        assertThat(seat.complaint("audit.pulls.before")).contains("whole number");
        seat.type("audit.order", "BBB");
        assertThat(seat.complaint("audit.order")).contains("ABA");
        seat.type("audit.scatter.refit", "1 %");
        assertThat(seat.complaint("audit.scatter.refit")).contains("pulls");
        seat.type("audit.sweep", "6500-2000 rpm");
        assertThat(seat.complaint("audit.sweep")).contains("2000-6500 rpm");
    }

    @Test
    void rowsComeAndGoWithWhatIsTypedInThem() {
        AuditSeat seat = blank();
        seat.press("audit.figures.add");
        seat.press("audit.figures.add");
        seat.type("audit.figure.before.2", "not yet known");
        seat.press("audit.figures.remove.0");
        assertThat(seat.text("audit.figure.before.1")).isEqualTo("not yet known");
        assertThat(seat.complaint("audit.figure.before.1")).isNotEmpty();
        assertThat(got(() -> seat.audit.document().draft().claims())).as("claims about it go with it").isEmpty();
        done(seat.audit.actions()::undo);
        assertThat(got(() -> seat.audit.document().draft().figures())).hasSize(3);
        seat.type("audit.figure.name.1", "figure 1");
        assertThat(seat.complaint("audit.figure.name.1")).contains("another figure");
    }

    @Test
    void aFigureThatWasTakenAwayComesBackWithAllThatItHad() throws IOException {
        for (AuditSeat seat : List.of(blank(), example("sound"))) {
            seat.type("audit.figure.name.0", "power at the wheels");
            seat.type("audit.figure.before.0", "184.2 hp");
            seat.type("audit.figure.after.0", "190");
            PublicationDraft before = got(() -> seat.audit.document().draft());
            seat.press("audit.figures.remove.0");
            assertThat(got(() -> seat.audit.document().draft())).isNotEqualTo(before);
            done(seat.audit.actions()::undo);
            assertThat(got(() -> seat.audit.document().draft())).isEqualTo(before);
            assertThat(seat.text("audit.figure.before.0")).isEqualTo("184.2 hp");
            assertThat(seat.text("audit.figure.after.0")).startsWith("190");
        }
    }

    @Test
    void whatIsLackingIsSaidBeneathItsFieldWhenItIsToBeSavedAndNoLongerOnceItIsTyped() {
        AuditSeat seat = blank();
        seat.type("audit.figure.before.0", "184.2 hp");
        assertThat(seat.complaint("audit.figure.after.0")).isEmpty();
        done(seat.audit.actions()::save);
        assertThat(seat.complaint("audit.figure.after.0")).contains("lacking");
        assertThat(seat.complaint("audit.figure.before.0")).isEmpty();
        assertThat(seat.said()).contains("figure after");
        seat.type("audit.figure.after.0", "190.1 hp");
        assertThat(seat.complaint("audit.figure.after.0")).isEmpty();
        Path file = folder.resolve("kept.json");
        seat.frame().chosen = Optional.of(file);
        done(seat.audit.actions()::save);
        assertThat(file).exists();
        assertThat(seat.audit.document().isChanged()).isFalse();
    }

    @Test
    void theExampleWithCurvesIsAuditedAsItsFileIs() throws IOException {
        Path demo = Path.of("demo-data/published");
        Publication example = KeepAudit.example("inlet").draft().publication().orElseThrow();
        assertThat(example.curves()).hasSize(2);
        AuditAnswer ofExample = AuditPublication.audit(example, folder);
        AuditAnswer ofFile = AuditPublication.audit(demo.resolve("inlet.json"));
        assertThat(AuditPublication.said(ofExample, AuditPublication.repeat(ofExample)).text())
                .isEqualTo(AuditPublication.said(ofFile, AuditPublication.repeat(ofFile)).text());
        AuditSeat seat = blank();
        seat.press("audit.example.inlet");
        assertThat(seat.last().grades()).hasSize(2);
    }

    @Test
    void anExampleShowsItsGradeAndItsFairRepeatOpensAsAPlan() throws IOException {
        AuditSeat seat = blank();
        seat.press("audit.example.sound");
        assertThat(seat.frame().ended).as("a blank window gives way").isTrue();
        AuditSeat opened = seat.last();
        assertThat(opened.grades()).hasSize(2);
        opened.press("audit.repeat");
        OpenTest test = opened.seat.only();
        Plan plan = test.document().plan();
        assertThat(plan.title()).contains("An intake manifold");
        assertThat(plan.sequence().letters()).contains("A", "B");
        assertThat(test.document().folder()).isEmpty();
        done(test.actions()::close);
        assertThat(Seat.said(test)).as("it was made for somebody, and is not saved").contains("not saved");
        assertThat(Seat.frame(test).ended).isFalse();
        assertThat(Unsaved.in(Settings.in(folder.resolve("home"))).tests()).as("safe from a kill").singleElement()
                .satisfies(found -> assertThat(found.document().plan()).isEqualTo(plan));
        Seat.click(test, "close.drop");
        assertThat(Seat.frame(test).ended).isTrue();
    }

    @Test
    void theStandingSaysAllThatTheReportSays() throws IOException {
        AuditSeat seat = example("silent");
        seat.go("page.standing");
        done(() -> { });
        assertThat(seat.grades()).containsExactly("Not shown");
        assertThat(seat.read()).contains("The claim is not shown", "Chance alone");
    }

    @Test
    void aPublicationWithCurvesIsAuditedWithThemFromItsFolder() throws IOException {
        Path file = Path.of("demo-data/published/inlet.json");
        AuditSeat seat = new AuditSeat(folder.resolve("home"), KeepAudit.open(file));
        seat.go("page.curves");
        assertThat(seat.read()).contains("inlet-before.csv", "inlet-after.csv");
        seat.frame().chosen = Optional.of(folder.resolve("ours.json"));
        done(() -> seat.audit.actions().export(AuditExport.JSON));
        assertThat(Files.readString(folder.resolve("ours.json"))).isEqualTo(printed("audit", file, "--json"));
        assertThat(seat.grades()).hasSize(2);
    }

    @Test
    void curvesOfTablesAreKeptBesideThePublicationAndAudited() throws IOException {
        AuditSeat seat = example("silent");
        Path table = Files.writeString(Files.createDirectories(folder.resolve("elsewhere")).resolve("curves.csv"),
                "speed [rpm],before [hp],after [hp]\n" + "3000,100.0,101.0\n3500,120.0,121.0\n4000,140.0,141.5\n4500,160.0,161.0\n");
        seat.go("page.curves");
        done(() -> seat.audit.pane().take(table, opened -> {
            throw new AssertionError("opened as a publication");
        }));
        seat.type("audit.tables.column.before", "before");
        seat.type("audit.tables.column.after", "after");
        seat.type("audit.tables.unit", "hp");
        seat.press("audit.tables.take");
        assertThat(got(() -> seat.audit.document().draft().curves())).hasSize(1);
        assertThat(seat.read()).contains("curves.csv, column before");
        Path file = folder.resolve("with-curves.json");
        seat.frame().chosen = Optional.of(file);
        done(seat.audit.actions()::save);
        assertThat(folder.resolve("curves.csv")).hasSameBinaryContentAs(table);
        seat.frame().chosen = Optional.of(folder.resolve("ours.json"));
        done(() -> seat.audit.actions().export(AuditExport.JSON));
        assertThat(Files.readString(folder.resolve("ours.json"))).isEqualTo(printed("audit", file, "--json"));
        seat.press("audit.taken.remove.0");
        assertThat(got(() -> seat.audit.document().draft().curves())).isEmpty();
    }

    @Test
    void curvesThatAreTracedAreKeptBesideThePublication() throws IOException {
        Path file = Files.copy(Path.of("demo-data/published/silent.json"), folder.resolve("silent.json"));
        AuditSeat seat = new AuditSeat(folder.resolve("home"), KeepAudit.open(file));
        seat.go("page.curves");
        CurvesPage page = (CurvesPage) seat.audit.pane().pages().get(2);
        TracedExample.trace(page.tracing(), Files.createDirectories(folder.resolve("pictures")));
        seat.go("page.published");
        done(seat.audit.actions()::close);
        assertThat(seat.said()).contains("are not taken");
        seat.press("close.trace.back");
        assertThat(seat.frame().ended).as("a trace is somebody's work").isFalse();
        seat.press("tracing.take");
        assertThat(folder.resolve("invented-chart-trace.json")).exists();
        Publication publication = got(() -> seat.audit.document().draft().publication()).orElseThrow();
        assertThat(publication.curves()).singleElement().satisfies(curves -> assertThat(curves.name()).isEqualTo("power"));
        assertThat(seat.grades()).as("audited with its curves").hasSize(1);
        assertThat(got(page.tracing().document()::isChanged)).as("the trace is saved").isFalse();
    }

    @Test
    void aWindowWithEditsAsksBeforeItEndsAndAFileOpensOnce() throws IOException {
        Path file = Files.copy(Path.of("demo-data/published/silent.json"), folder.resolve("silent.json"));
        AuditSeat seat = new AuditSeat(folder.resolve("home"), KeepAudit.open(file));
        seat.type("audit.figure.after.0", "218 hp");
        done(() -> seat.audit.pane().take(folder.resolve(".").resolve("silent.json"), seat.audit.actions()::open));
        assertThat(got(seat.seat.windows::audits)).hasSize(1);
        assertThat(seat.frame().front).isPositive();
        done(seat.audit.actions()::close);
        assertThat(seat.frame().ended).isFalse();
        assertThat(seat.said()).contains("not saved");
        seat.press("close.save");
        assertThat(seat.frame().ended).isTrue();
        assertThat(AuditPublication.read(file).figures().get(0).after().words()).isEqualTo("218 hp");
    }

    @Test
    void aPublicationThatIsDroppedOnATestIsAuditedBesideIt() {
        Seat seat = new Seat(folder.resolve("home"));
        done(() -> seat.windows.begin(Optional.empty(), Unsaved.none(), List.of()));
        OpenTest test = seat.only();
        done(() -> test.pane().take(Path.of("demo-data/published/sound.json"), test.actions()::open));
        assertThat(got(seat.windows::audits)).singleElement()
                .satisfies(audit -> assertThat(audit.document().draft().title()).startsWith("An intake manifold"));
        done(test.actions()::audit);
        assertThat(got(seat.windows::audits)).hasSize(2);
        assertThat(Seat.frame(test).ended).isFalse();
    }

    @Test
    void everyLineOfTheMenusHasALetterOfItsOwn() {
        AuditSeat seat = blank();
        JMenuBar bar = got(() -> AuditMenu.of(seat.audit.actions(), seat.seat.settings));
        for (int menu = 0; menu < bar.getMenuCount(); menu++) {
            JMenu of = bar.getMenu(menu);
            List<Integer> letters = IntStream.range(0, of.getItemCount()).mapToObj(of::getItem).filter(Objects::nonNull)
                    .map(JMenuItem::getMnemonic).toList();
            assertThat(letters).as(of.getText()).isNotEmpty().doesNotHaveDuplicates().doesNotContain(0);
        }
    }

    @Test
    void aCommaIsADecimalMarkInFiguresAndACommaInWords() {
        Locale before = Locale.getDefault(Locale.Category.FORMAT);
        Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
        try {
            AuditSeat seat = blank();
            seat.type("audit.figure.before.0", "201,4 hp");
            seat.go("page.procedure");
            seat.type("audit.alsoChanged", "tyres, 5,5 inch");
            seat.go("page.published");
            assertThat(seat.text("audit.figure.before.0")).isEqualTo("201,4 hp");
            PublicationDraft draft = got(() -> seat.audit.document().draft());
            assertThat(draft.figures().get(0).before().orElseThrow().words()).isEqualTo("201.4 hp");
            assertThat(draft.procedure().keeping().alsoChanged()).contains("tyres, 5,5 inch");
        } finally {
            Locale.setDefault(Locale.Category.FORMAT, before);
        }
    }

    @Test
    void aFileThatIsNoPublicationIsSaidInPlace() throws IOException {
        AuditSeat seat = blank();
        Path other = Files.writeString(folder.resolve("other.json"), "{\"title\": 3}", StandardCharsets.UTF_8);
        done(() -> seat.audit.pane().take(other, seat.audit.actions()::open));
        assertThat(seat.said()).contains("not a publication");
        assertThat(got(seat.seat.windows::audits)).hasSize(1);
    }
}
