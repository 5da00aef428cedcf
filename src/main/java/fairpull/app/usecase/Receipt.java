package fairpull.app.usecase;

import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Seal;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.PlanJson;
import fairpull.io.json.ReceiptJson;
import fairpull.report.wording.ChangeWords;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** What the verbs that write answer: what was done, and what comes next. */
public final class Receipt {
    private static final MathContext SHOWN = new MathContext(5);

    private Receipt() {
    }

    /**
     * {@return the answer after a test was made}
     *
     * @param scatterSaid what there is to say of the scatter it was planned with
     * @param warnings what it cannot guard against
     */
    public static Answer made(Path folder, Plan plan, List<String> scatterSaid, List<String> warnings) {
        int pulls = plan.sequence().installs().mapToInt(Install::countedPulls).sum();
        String scatter = scatterSaid.isEmpty() ? "" : "\n" + String.join(" ", scatterSaid);
        return new Answer("Made " + folder + ": " + plan.sequence().letters() + ", " + pulls + " counted pulls. Next: fairpull check "
                + folder + scatter + warnings.stream().map(warning -> "\n" + warning).collect(Collectors.joining()),
                ReceiptJson.made(folder.toString(), plan, pulls, scatterSaid, warnings));
    }

    /** {@return the answer after a plan was sealed} */
    public static Answer sealed(Seal seal) {
        return new Answer("Sealed " + seal.at() + ", code " + seal.code() + ". Lodge the code with a third party before the day.",
                ReceiptJson.sealed(seal));
    }

    /** {@return a value as it is told where nothing is known yet of how it scatters} */
    public static String figure(Measure measure, double value) {
        return new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString() + " " + measure.unit().symbol();
    }

    /** {@return the answer after something was noted beside pulls, an install or the test} */
    public static Answer noted(List<String> subjects) {
        return new Answer("Noted" + (subjects.size() == 1 ? " at " + subjects.get(0) : ", " + subjects.size() + " pulls") + ".",
                ReceiptJson.noted(subjects));
    }

    /** {@return the answer after a plan was amended} */
    public static Answer amended(Path folder, LogEntry.Amended amended) throws IOException {
        List<LogEntry.Change> changes = PlanJson.fields(amended.changes());
        ChangeWords words = new ChangeWords(TestFolder.open(folder).read().plan(), changes);
        return new Answer(changes.stream().map(words::sentence)
                .collect(Collectors.joining("\n")), ReceiptJson.amended(amended));
    }

    /** {@return the answer after a pull was left out, or taken back in} */
    public static Answer counted(PullId pull, boolean counts) {
        return new Answer(pull + (counts ? " counts again." : " is left out."), ReceiptJson.counted(pull, counts));
    }

    /** {@return the answer after a run sheet was written} */
    public static Answer sheet(Path file, int pages) {
        return new Answer("Wrote " + file + ", " + pages + (pages == 1 ? " page." : " pages."), ReceiptJson.sheet(file.toString(), pages));
    }

    /**
     * {@return the answer after a report was written}
     *
     * @param files what was written, in that order
     * @param pages how many pages the PDF has, where there is one
     */
    public static Answer reported(List<Path> files, OptionalInt pages, Judgement judgement) {
        String text = files.stream().map(file -> "Wrote " + file).collect(Collectors.joining("\n"))
                + (pages.isPresent() ? "\n" + pages.getAsInt() + (pages.getAsInt() == 1 ? " page." : " pages.") : "");
        return new Answer(text, ReceiptJson.reported(files.stream().map(Path::toString).toList(), pages,
                judgement.deciding().verdict().words()));
    }
}
