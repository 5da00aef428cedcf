package fairpull.app.usecase.judging;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.KeepFile;
import fairpull.app.usecase.TargetFile;
import fairpull.app.usecase.UsageException;
import fairpull.io.folder.Outputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes a finding that is in view: byte for byte what {@code report} writes and what {@code judge --json} prints. */
public final class KeepReport {
    private KeepReport() {
    }

    /** What a finding can be written as. */
    public enum Kind {
        /** One self-contained page. */
        HTML(".html"),
        /** The same on paper. */
        PDF(".pdf"),
        /** A folder of tables, from which the finding can be reckoned again. */
        CSV("-tables"),
        /** Everything, for programs. */
        JSON(".json");

        private final String ending;

        Kind(String ending) {
            this.ending = ending;
        }

        /** {@return how the name of such a file, or of the folder of tables, usually ends} */
        public String ending() {
            return ending;
        }
    }

    /**
     * What is wanted.
     *
     * @param kind what to write
     * @param target the file, or the folder of tables
     * @param paper {@code a4} or {@code letter}, for the PDF
     * @param withoutIdentity whether to leave out what identifies customer, car and shop
     */
    public record Wish(Kind kind, Path target, String paper, boolean withoutIdentity) {
        /** {@return the wish for a file whose name has the ending of its kind} */
        public Wish named() {
            return kind == Kind.CSV ? this : new Wish(kind, KeepFile.named(target, kind.ending()), paper, withoutIdentity);
        }

        /** {@return the files there are already that would be replaced} */
        public List<Path> inTheWay() {
            List<Path> written = kind == Kind.CSV ? ReportTables.NAMES.stream().map(target::resolve).toList() : List.of(target);
            return written.stream().filter(Files::exists).toList();
        }

        private ReportRequest request() {
            return new ReportRequest(of(Kind.HTML), of(Kind.PDF), of(Kind.CSV), paper, withoutIdentity);
        }

        private Optional<Path> of(Kind one) {
            return kind == one ? Optional.of(target) : Optional.empty();
        }
    }

    /**
     * Judges the test and writes what is wanted, unless the test has changed since it was seen.
     *
     * @param seen the {@link FindingView#stamp} of the test when what is in view was judged
     * @return whether it was written; not where the test has changed
     */
    public static boolean write(Path folder, String seen, Wish wish) throws IOException {
        if (!FindingView.stamp(folder).equals(seen)) {
            return false;
        }
        if (wish.kind() == Kind.JSON) {
            json(folder, wish);
        } else {
            WriteReport.write(folder, wish.request());
        }
        return true;
    }

    private static void json(Path folder, Wish wish) throws IOException {
        if (wish.withoutIdentity()) {
            throw new UsageException("--without-identity", "JSON holds names of test and sessions as they are; write it with them, or "
                    + "write HTML, PDF or tables");
        }
        TargetFile.check(folder, wish.target(), "finding.json");
        Outputs.write(wish.target(), Answer.printed(Answer.of(JudgeFolder.judge(folder)).json()));
    }
}
