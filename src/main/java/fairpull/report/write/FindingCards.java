package fairpull.report.write;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.report.chart.Day;
import fairpull.report.chart.DayStrip;
import fairpull.report.chart.DaysOfTest;
import fairpull.report.chart.IntervalChart;
import fairpull.report.chart.TippingScale;
import fairpull.report.chart.ValueAxis;
import fairpull.report.wording.CheckWords;
import fairpull.report.wording.ClaimWords;
import fairpull.report.wording.FindingWords;
import fairpull.report.wording.HeadingWords;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.PlainChecks;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.Said;
import fairpull.report.wording.SealWords;
import fairpull.report.wording.SecondaryWords;
import fairpull.report.wording.Subject;
import fairpull.report.wording.TippingWords;
import fairpull.report.wording.WhyWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The cards that say what was found and what it rests on. */
final class FindingCards {
    private FindingCards() {
    }

    static List<Card> of(Judgement judgement, Surface surface) {
        List<Card> cards = new ArrayList<>();
        alarms(judgement, surface).ifPresent(cards::add);
        cards.add(verdict(judgement));
        cards.add(day(judgement));
        cards.addAll(CurveCards.found(judgement));
        cards.add(standing(judgement));
        notices(judgement, surface).ifPresent(cards::add);
        excluded(judgement).ifPresent(cards::add);
        said("Claims, held against the finding", ClaimWords.all(judgement)).map(card -> card.as("claims")).ifPresent(cards::add);
        said("Further measures", SecondaryWords.all(judgement)).map(card -> card.saying(SecondaryWords.caution(judgement)))
                .ifPresent(cards::add);
        cards.add(Card.plain(HeadingWords.amendments(judgement)).answering(SealWords.amendments(judgement)));
        return cards;
    }

    private static Optional<Card> alarms(Judgement judgement, Surface surface) {
        List<Said> alarms = words(judgement, notices(judgement, true), surface);
        return alarms.isEmpty() ? Optional.empty()
                : Optional.of(Card.plain("Read this first: something was changed by hand").as("alarm").answering(alarms));
    }

    private static Card verdict(Judgement judgement) {
        Finding finding = judgement.deciding();
        Card card = Card.plain(FindingWords.verdictHead(finding)).as("verdict")
                .saying(WhyWords.sentence(finding))
                .saying(FindingWords.paragraph(finding, Subject.of(judgement.plan(), judgement.plan().question().deciding())));
        return IntervalChart.of(finding).map(chart -> card.showing(List.of(new Figure("interval", chart)), "")).orElse(card);
    }

    private static Card day(Judgement judgement) {
        String measure = judgement.plan().question().deciding().name();
        List<Day> days = DaysOfTest.of(judgement, measure);
        ValueAxis axis = ValueAxis.of(measure, days, Numbers.of(judgement.deciding()), judgement.deciding().unit());
        List<Figure> strips = IntStream.range(0, days.size())
                .mapToObj(place -> new Figure("day" + (place + 1), DayStrip.draw(days.get(place), axis))).toList();
        return Card.plain(HeadingWords.day(judgement)).showing(strips, HeadingWords.marks(judgement));
    }

    private static Card standing(Judgement judgement) {
        Finding finding = judgement.deciding();
        Card card = Card.plain(HeadingWords.standing(finding)).as("standing").answering(CheckWords.all(finding))
                .answeringPlainly(PlainChecks.all(finding));
        Subject subject = Subject.of(judgement.plan().question().deciding().name());
        Card worded = TippingWords.sentence(finding, subject).map(card::saying).orElse(card);
        return TippingScale.of(finding).map(scale -> worded.showing(List.of(new Figure("tipping", scale)), "")).orElse(worded);
    }

    private static Optional<Card> notices(Judgement judgement, Surface surface) {
        List<Notice> others = notices(judgement, false);
        return said(HeadingWords.notices(others), words(judgement, others, surface));
    }

    private static List<Notice> notices(Judgement judgement, boolean alarms) {
        return Stream.concat(judgement.notices().stream(), judgement.deciding().notices().stream())
                .filter(notice -> (notice.code().severity() == Notice.Severity.ALARM) == alarms).distinct()
                .sorted(Comparator.comparing((Notice notice) -> notice.code().severity()).reversed()).toList();
    }

    private static List<Said> words(Judgement judgement, List<Notice> notices, Surface surface) {
        return notices.stream().map(notice -> new Said(switch (notice.code().severity()) {
            case ALARM -> "Alarm";
            case WARNING -> "Warning";
            case INFORMATION -> "Note";
        }, NoticeWords.sentence(notice, judgement.deciding().unit(), surface))).toList();
    }

    private static Optional<Card> excluded(Judgement judgement) {
        return judgement.withExcluded().map(with -> Card.plain(HeadingWords.excluded(judgement))
                .saying(FindingWords.withExcluded(judgement.deciding(), with)).answering(DataCards.excludedPulls(judgement)));
    }

    private static Optional<Card> said(String heading, List<Said> said) {
        return said.isEmpty() ? Optional.empty() : Optional.of(Card.plain(heading).answering(said));
    }
}
