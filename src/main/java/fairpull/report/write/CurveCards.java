package fairpull.report.write;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Better;
import fairpull.domain.unit.Units;
import fairpull.report.chart.CurvesChart;
import fairpull.report.chart.DifferenceChart;
import fairpull.report.chart.ResidualsChart;
import fairpull.report.chart.Scale;
import fairpull.report.wording.CoverageWords;
import fairpull.report.wording.CurveMethodWords;
import fairpull.report.wording.CurveNumbers;
import fairpull.report.wording.CurveWords;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The cards about the curves over engine speed: what was found beside the verdict, and further down what it rests on. */
final class CurveCards {
    /** So many rows of the table of speeds can be taken in. */
    private static final int MOST_ROWS = 24;

    private final CurveFinding curve;
    private final Judgement judgement;
    private final CurveNumbers numbers;
    private final String settings;

    private CurveCards(CurveFinding curve, Judgement judgement) {
        this.curve = curve;
        this.judgement = judgement;
        this.numbers = CurveNumbers.of(curve);
        this.settings = CurveWords.settings(curve, judgement);
    }

    /** {@return what was found over engine speed; nothing where there are no curves to compare} */
    static List<Card> found(Judgement judgement) {
        return cards(judgement).map(cards -> Stream.concat(Stream.of(cards.change()), cards.figures().stream()))
                .orElse(Stream.empty()).toList();
    }

    /** {@return what the curves rest on, and how they were judged} */
    static List<Card> ground(Judgement judgement) {
        return cards(judgement).map(cards -> Stream.of(cards.points(), cards.residuals(), cards.methods()))
                .orElse(Stream.empty()).toList();
    }

    private static Optional<CurveCards> cards(Judgement judgement) {
        return judgement.curve().filter(judged -> !judged.points().isEmpty()).map(judged -> new CurveCards(judged, judgement));
    }

    private Card change() {
        Card card = Card.plain(CurveWords.heading(curve)).as("change");
        for (String sentence : CurveWords.paragraphs(curve)) {
            card = card.saying(sentence);
        }
        return card.showing(List.of(new Figure("difference", DifferenceChart.of(curve, worthwhile(), settings)),
                new Figure("curves", CurvesChart.of(curve, settings))), CurveWords.caption());
    }

    /** The worthwhile gain belongs to the deciding measure: it says nothing about a curve in another unit. */
    private OptionalDouble worthwhile() {
        JudgeSettings judged = judgement.deciding().settings();
        boolean same = judgement.deciding().unit().equals(curve.unit().symbol());
        return same && judged.worthwhileGain().isPresent()
                ? OptionalDouble.of((judged.better() == Better.MORE ? 1 : -1) * judged.worthwhileGain().getAsDouble())
                : OptionalDouble.empty();
    }

    private Optional<Card> figures() {
        if (curve.figures().isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = List.of("figure", "speeds, rpm", "A", "B", "change", Numbers.level(curve.level()) + " interval", "unit");
        List<List<String>> rows = new ArrayList<>();
        for (CurveFigure figure : curve.figures()) {
            Numbers own = Numbers.resolving(2 * figure.estimate().standardError(), "");
            rows.add(List.of(CurveWords.figure(figure.kind()), CurveNumbers.bareRange(figure.speeds()),
                    own.bare(figure.meanA()), own.bare(figure.meanB()),
                    own.signedBare(figure.estimate().change()), own.signedBare(figure.interval().low()) + " … "
                    + own.signedBare(figure.interval().high()), figure.unit()));
        }
        return Optional.of(Card.plain(CurveWords.figuresHeading()).tabling(new Card.Table("figures", columns, rows, 1))
                .saying(CurveWords.figuresNote(curve)));
    }

    private Card points() {
        SpeedGrid grid = curve.curves().grid();
        double low = Units.RPM.fromSi(grid.firstRadPerS());
        double high = Units.RPM.fromSi(grid.lastRadPerS());
        double step = new Scale(low, high, 0, 1).step(MOST_ROWS);
        String level = Numbers.level(curve.level());
        String unit = ", " + curve.unit().symbol();
        List<String> columns = List.of("rpm", "A" + unit, "B" + unit, "change" + unit, "standard error" + unit, level + " band",
                level + " interval of this speed", "shown");
        List<List<String>> rows = new ArrayList<>();
        double next = Double.NEGATIVE_INFINITY;
        for (CurvePoint point : curve.points()) {
            double rpm = Units.RPM.fromSi(point.speedRadPerS());
            if (rpm >= next) {
                rows.add(row(point));
                next = (Math.floor(rpm / step + 1e-6) + 1) * step - 1e-6;
            }
        }
        return Card.plain(CoverageWords.pointsHeading(step)).tabling(new Card.Table("points", columns, rows, 0))
                .saying(CoverageWords.pointsNote());
    }

    private List<String> row(CurvePoint point) {
        String shown = isIn(curve.gains(), point) ? "gain" : isIn(curve.losses(), point) ? "loss" : "";
        return List.of(CurveNumbers.bareRpm(point.speedRadPerS()), numbers.bare(point.meanA()), numbers.bare(point.meanB()),
                numbers.signedBare(point.estimate().change()), Numbers.resolving(point.estimate().standardError(), "")
                .bare(point.estimate().standardError()), numbers.ends(point.band()), numbers.ends(point.own()), shown);
    }

    private boolean isIn(List<SpeedRange> ranges, CurvePoint point) {
        double margin = curve.curves().grid().stepRadPerS() * 1e-6;
        return ranges.stream().anyMatch(range -> point.speedRadPerS() >= range.lowRadPerS() - margin
                && point.speedRadPerS() <= range.highRadPerS() + margin);
    }

    private Card residuals() {
        Card card = Card.plain(CoverageWords.heading(curve.curves()))
                .saying(CoverageWords.residuals(curve.curves(), ResidualsChart.MOST))
                .showing(List.of(new Figure("residuals", ResidualsChart.draw(curve, settings))), CoverageWords.residualCaption())
                .tabling(coverage());
        return CoverageWords.peaks(curve).map(card::saying).orElse(card);
    }

    private Card.Table coverage() {
        Map<String, PullOnGrid> resampled = curve.curves().resampled().stream()
                .collect(Collectors.toMap(pull -> pull.install() + "/" + pull.pull(), Function.identity()));
        List<String> columns = new ArrayList<>(List.of("pull", "part", "speeds covered", "speeds without a value"));
        if (!resampled.isEmpty()) {
            columns.addAll(List.of("speeds joined by a line", "peak as recorded, " + curve.unit().symbol(), "peak on the grid, "
                    + curve.unit().symbol()));
        }
        Numbers peaks = Numbers.resolving(numbers.halfWidth(), "").finer();
        List<List<String>> rows = new ArrayList<>();
        for (CurveRow row : curve.curves().rows()) {
            List<String> cells = new ArrayList<>(List.of(row.name(), row.part().name(), CoverageWords.covered(row, curve.curves().grid()),
                    CoverageWords.missing(row)));
            PullOnGrid pull = resampled.get(row.install() + "/" + row.pull());
            if (pull != null) {
                cells.addAll(List.of(Integer.toString(pull.interpolated()), peaks.bare(pull.rawPeak()), peaks.bare(pull.gridPeak())));
            }
            rows.add(cells);
        }
        return new Card.Table("coverage", columns, rows, 3);
    }

    private Card methods() {
        Card card = Card.plain("How the curves were judged, and how to redo it").asMethod().answering(CurveMethodWords.settings(curve));
        for (String paragraph : CurveMethodWords.paragraphs(curve)) {
            card = card.saying(paragraph);
        }
        return card;
    }
}
