package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.judging.KeepReport;
import fairpull.app.usecase.judging.KeepReport.Kind;
import fairpull.app.usecase.judging.KeepReport.Wish;
import fairpull.ui.page.finding.FindingPage;
import fairpull.ui.page.finding.ReportOptions;
import fairpull.ui.theme.Words;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes findings. What is written is what is in view: not while the plan is amended, and not once the test has changed on disk. */
final class ReportActions {
    private static final String FOLDER = "report.folder";

    private final OpenTest test;

    ReportActions(OpenTest test) {
        this.test = test;
    }

    /** Brings the finding into view, then has it written. */
    void ask(Kind kind) {
        whenSettled(() -> test.pane().finding().write(kind));
    }

    private void whenSettled(Runnable work) {
        TestPane pane = test.pane();
        pane.flushed(() -> {
            if (!pane.showsComplaint()) {
                whyNot().ifPresentOrElse(pane::say, work);
            }
        });
    }

    private Optional<String> whyNot() {
        Document document = test.document();
        Optional<String> notYet = test.pane().pages().stream().filter(FindingPage.class::isInstance)
                .flatMap(page -> page.notYet(document).stream()).findFirst();
        return notYet.or(() -> document.folder().isEmpty() ? Optional.of(Words.of("finding.notYet"))
                : document.isAmending() ? Optional.of(Words.of("report.amending")) : Optional.empty());
    }

    /** Writes the finding that was judged when the test had the stamp {@code seen}. */
    void write(Kind kind, String seen) {
        whenSettled(() -> {
            Path folder = test.document().folder().orElseThrow();
            Settings settings = test.windows().settings();
            boolean without = ReportOptions.withoutIdentity(settings);
            if (kind == Kind.JSON && without) {
                test.pane().say(Words.of("report.json.identity"));
                return;
            }
            choose(kind, folder).ifPresent(target -> {
                Optional.ofNullable(target.toAbsolutePath().getParent()).ifPresent(where -> settings.set(FOLDER, where.toString()));
                write(folder, seen, new Wish(kind, target, ReportOptions.paper(settings), without).named());
            });
        });
    }

    private Optional<Path> choose(Kind kind, Path folder) {
        Path proposed = lastFolder().orElseGet(() -> folder.toAbsolutePath().normalize().getParent())
                .resolve(folder.toAbsolutePath().normalize().getFileName() + kind.ending());
        String key = "report." + kind.name().toLowerCase(Locale.ROOT);
        return kind == Kind.CSV ? test.shell().chooseFolder(key, proposed) : test.shell().chooseFile(key, proposed);
    }

    private Optional<Path> lastFolder() {
        try {
            return test.windows().settings().find(FOLDER).map(Path::of);
        } catch (InvalidPathException unreadable) {
            return Optional.empty();
        }
    }

    private void write(Path folder, String seen, Wish wish) {
        test.pane().onDisk(wish::inTheWay, there -> {
            if (there.isEmpty()) {
                make(folder, seen, wish);
                return;
            }
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("file.keep", () -> { });
            answers.put("file.replace", () -> make(folder, seen, wish));
            test.pane().ask(there(wish, there), answers);
        });
    }

    private static String there(Wish wish, List<Path> files) {
        return wish.kind() != Kind.CSV ? Words.of("file.there", wish.target()) : Words.of("report.there", wish.target(),
                files.stream().map(file -> file.getFileName().toString()).collect(Collectors.joining(", ")));
    }

    private void make(Path folder, String seen, Wish wish) {
        test.pane().say(Words.of("report.making"));
        test.pane().onDisk(() -> KeepReport.write(folder, seen, wish), written -> {
            test.pane().say(written ? Words.of("report.done", wish.target()) : Words.of("report.changed"));
            if (!written) {
                test.pane().finding();
            }
        });
    }
}
