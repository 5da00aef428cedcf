package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.PreviewExport;
import fairpull.app.usecase.pulls.TakenPulls;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.plan.Correction;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import}: takes exports into a test. */
@Command(name = "import",
        description = "Takes exports into a test, kept byte for byte: all of the files or none. A file named like B1-3.csv (A1-W2.csv for "
                + "a warm-up) says itself which pull it holds. Of a file with several pulls, side by side or one below the other, "
                + "headings like “A1-2 power (kW)” say where each belongs; otherwise --install does, in their order.",
        footer = {"  fairpull import pump-test exports/*.csv --corrected none",
            "  fairpull import pump-test run17.csv --install B1 --pull 3 --column power=\"P wheel\":kW",
            "  fairpull import pump-test session.csv --install A2",
            "  fairpull import pump-test run17.csv --install B1 --pull 3 --column power=\"P wheel\":hp \\",
            "      --because \"the unit was hp\"",
            "  fairpull import pump-test run17.csv --preview --column power=\"P wheel\":kW"})
final class ImportVerb extends Verb {
    @Parameters(index = "0", paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Exports.")
    private List<Path> files;

    @Option(names = "--install", paramLabel = "LABEL", description = "The install that the files belong to, in the order given.")
    private String install;

    @Option(names = "--pull", paramLabel = "N", description = "The number of the first of them; default: the next free one.")
    private Integer pull;

    @Option(names = "--warm-up", description = "They are warm-ups, which never count.")
    private boolean warmUp;

    @Option(names = "--one-pull", description = "Each file is one pull, even where it looks like several.")
    private boolean onePull;

    @Option(names = "--column", paramLabel = "QUANTITY=NAME[:UNIT]",
            description = "Which column is read as what, where the guess is not wanted: power=\"P wheel\":kW, "
            + "engine-speed=3; torque=none reads no column as torque.")
    private List<String> columns = List.of();

    @Option(names = "--corrected", paramLabel = "STANDARD", description = "What the values are corrected to: none, sae-j1349 …, unknown; "
            + "default: as remembered for this header, else unknown.")
    private String corrected;

    @Option(names = "--because", paramLabel = "WHY", description = "Why the exports of pulls that are there already are read anew, with "
            + "other columns, units or correction: the same bytes again. Every finding lists it.")
    private String because;

    @Mixin
    private DecimalOption decimal;

    @Option(names = "--at", paramLabel = "TIME", description = "When the pull started, such as 2026-05-09T09:42:00+02:00.")
    private String at;

    @Option(names = "--preview", description = "Say how the files would be read and what the measures of the test lack, and "
            + "take nothing.")
    private boolean preview;

    @Override
    protected void work() throws IOException {
        if (preview) {
            answer(PreviewExport.preview(folder, files, columns, decimal.mark(), onePull));
            return;
        }
        checkOptions();
        answer(TakenPulls.answer(ImportPulls.run(new ImportPulls.Request(folder, files, Optional.ofNullable(install),
                pull == null ? OptionalInt.empty() : OptionalInt.of(pull), warmUp,
                new ImportPulls.Reading(columns, correction(), decimal.mark(), onePull, Optional.ofNullable(because)),
                Optional.ofNullable(at).map(ImportVerb::time)), now())));
    }

    private void checkOptions() {
        if (install == null && pull != null) {
            throw new UsageException("--pull", "needs --install");
        }
        if (install == null && warmUp) {
            throw new UsageException("--warm-up", "needs --install");
        }
        if (because != null && because.isBlank()) {
            throw new UsageException("--because", "needs a reason");
        }
        if (pull != null && pull < 1) {
            throw new UsageException("--pull", "pulls are counted from 1, was " + pull);
        }
    }

    private StatedCorrection correction() {
        if (corrected == null) {
            return StatedCorrection.nothing();
        }
        return corrected.equals("unknown")
                ? StatedCorrection.unknown()
                : StatedCorrection.of(JudgingOptions.constant("--corrected", corrected, Correction.values()));
    }

    /** {@return a point in time with its offset} */
    static OffsetDateTime time(String text) {
        try {
            return OffsetDateTime.parse(text.strip().replace(' ', 'T'));
        } catch (DateTimeParseException malformed) {
            throw new UsageException("--at", "expected a time with its offset, such as 2026-05-09T09:42:00+02:00; found “" + text + "”");
        }
    }
}
