package fairpull.app.usecase.judging;

import fairpull.app.task.Progress;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Judgement;
import fairpull.report.chart.Chart;
import fairpull.report.wording.Said;
import fairpull.report.write.Card;
import fairpull.report.write.Figure;
import fairpull.report.write.ReportCards;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The finding of a test as the window shows it: the cards of the report, as data.
 *
 * @param sections in the order in which they are read
 */
public record FindingView(List<Section> sections) {
    /**
     * One card.
     *
     * @param kind {@code verdict}, {@code alarm}, {@code change}, {@code standing}, {@code claims} or {@code plain}
     * @param heading what was found
     * @param paragraphs sentences under it
     * @param charts charts, in the width that there is
     * @param caption what the marks of the charts mean
     * @param answers a few words each, with their figures
     * @param table its heads first, then its rows; empty for none
     * @param words how many columns of the table hold words
     * @param steps numbered steps
     * @param plainly what the answers say without their figures; empty where they need none
     * @param method whether it is the method behind other cards
     */
    public record Section(String kind, String heading, List<String> paragraphs, List<Chart> charts, String caption,
            List<Answered> answers, List<List<String>> table, int words, List<String> steps,
            List<Answered> plainly, boolean method) {
        public Section {
            paragraphs = List.copyOf(paragraphs);
            charts = List.copyOf(charts);
            answers = List.copyOf(answers);
            table = List.copyOf(table);
            steps = List.copyOf(steps);
            plainly = List.copyOf(plainly);
        }
    }

    /** A few words and what they rest on. */
    public record Answered(String head, String text) {
    }

    public FindingView {
        sections = List.copyOf(sections);
    }

    /** {@return the finding of the test in a folder} */
    public static FindingView of(Path folder) throws IOException {
        return of(folder, Progress.none());
    }

    /** {@return the same; {@code progress} hears how far its exports are read} */
    public static FindingView of(Path folder, Progress progress) throws IOException {
        return of(JudgeFolder.judge(folder, progress));
    }

    /** {@return what tells whether a test may have changed since it was judged: size and time of its plan and its log} */
    public static String stamp(Path folder) {
        return Stream.of("plan.json", "log.jsonl").map(name -> folder.resolve(name).toFile())
                .map(file -> file.length() + " " + file.lastModified()).collect(Collectors.joining(" "));
    }

    public static FindingView of(Judgement judgement) {
        return new FindingView(ReportCards.of(judgement, Surface.WINDOW).stream().map(FindingView::section).toList());
    }

    public static Section section(Card card) {
        List<List<String>> table = card.table().columns().isEmpty() ? List.of()
                : Stream.concat(Stream.of(card.table().columns()), card.table().rows().stream()).toList();
        return new Section(card.kind(), card.heading(), card.paragraphs(), card.figures().stream().map(Figure::chart).toList(),
                card.caption(), answered(card.said()), table, card.table().words(), card.steps(), answered(card.plainly()), card.method());
    }

    private static List<Answered> answered(List<Said> said) {
        return said.stream().map(one -> new Answered(one.head(), one.text())).toList();
    }
}
