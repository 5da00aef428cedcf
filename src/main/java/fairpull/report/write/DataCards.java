package fairpull.report.write;

import fairpull.domain.finding.Checks;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Measure;
import fairpull.report.wording.CautionWords;
import fairpull.report.wording.CorrectionWords;
import fairpull.report.wording.MethodWords;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.PlanWords;
import fairpull.report.wording.Said;
import fairpull.report.wording.Times;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The cards that hold the data and say how they were judged. */
final class DataCards {
    private DataCards() {
    }

    static List<Card> of(Judgement judgement) {
        Card methods = Card.plain("How it was judged, and how to redo it").asMethod()
                .stepping(MethodWords.spreadsheet(judgement.plan(), judgement.deciding()));
        for (String paragraph : MethodWords.paragraphs(judgement.plan(), judgement.deciding())) {
            methods = methods.saying(paragraph);
        }
        Card cautions = Card.plain("Cautions");
        for (String caution : CautionWords.of(judgement.plan().rig().kind())) {
            cautions = cautions.saying(caution);
        }
        List<Card> cards = new ArrayList<>(List.of(Card.plain("Installs").tabling(installs(judgement)),
                Card.plain("Every pull and its fate").tabling(pulls(judgement)), methods));
        cards.addAll(CurveCards.ground(judgement));
        cards.add(cautions);
        return cards;
    }

    static List<Said> excludedPulls(Judgement judgement) {
        return judgement.pulls().stream().filter(pull -> pull.fate() == Fate.EXCLUDED)
                .map(pull -> new Said(pull.pull().toString(), pull.reason())).toList();
    }

    private static Card.Table installs(Judgement judgement) {
        String unit = inUnit(judgement.deciding().unit());
        Numbers numbers = Numbers.of(judgement.deciding()).finer();
        boolean several = judgement.plan().sequence().sessions().size() > 1;
        List<String> columns = new ArrayList<>(several ? List.of("session", "install", "part") : List.of("install", "part"));
        int words = columns.size();
        columns.addAll(List.of("pulls used", "mean" + unit, "standard deviation" + unit));
        List<List<String>> rows = new ArrayList<>();
        for (Checks.InstallMean install : judgement.deciding().installs()) {
            List<String> row = new ArrayList<>(several ? List.of(install.session()) : List.of());
            row.addAll(List.of(install.install(), install.part().name(), Integer.toString(install.pulls()), numbers.bare(install.mean()),
                    numbers.bare(install.standardDeviation())));
            rows.add(row);
        }
        return new Card.Table("installs", columns, rows, words);
    }

    private static Card.Table pulls(Judgement judgement) {
        List<Condition> conditions = Stream.of(Condition.values())
                .filter(condition -> judgement.pulls().stream().anyMatch(pull -> pull.conditionsSi().containsKey(condition))).toList();
        Map<Measure, Numbers> measures = measures(judgement);
        List<String> columns = new ArrayList<>(List.of("pull", "fate", "start"));
        int words = columns.size();
        measures.forEach((measure, numbers) -> columns.add(measure.name() + inUnit(measure.unit().symbol())));
        boolean corrected = judgement.pulls().stream().anyMatch(pull -> pull.correction().isPresent());
        columns.addAll(corrected ? List.of("correction factor") : List.of());
        conditions.forEach(condition -> columns.add(condition.words() + inUnit(PlanWords.unitOf(condition).symbol())));
        List<List<String>> rows = new ArrayList<>();
        for (PullSeen pull : judgement.pulls()) {
            List<String> row = new ArrayList<>(List.of(pull.pull().toString(), fate(pull), start(pull)));
            measures.forEach((measure, numbers) -> row.add(value(pull.values().get(measure.name()), numbers)));
            row.addAll(corrected ? List.of(pull.correction().map(CorrectionWords::cell).orElse("")) : List.of());
            conditions.forEach(condition -> row.add(reading(pull, condition)));
            rows.add(row);
        }
        return new Card.Table("pulls", columns, rows, words);
    }

    private static Map<Measure, Numbers> measures(Judgement judgement) {
        Map<Measure, Numbers> measures = new LinkedHashMap<>();
        measures.put(judgement.plan().question().deciding(), Numbers.of(judgement.deciding()).finer());
        judgement.secondary().forEach(secondary -> measures.put(secondary.measure(), Numbers.of(secondary.finding()).finer()));
        return measures;
    }

    private static String inUnit(String unit) {
        return unit.isBlank() || unit.equals("1") ? "" : ", " + unit;
    }

    private static String fate(PullSeen pull) {
        return PlanWords.fate(pull.fate()) + (pull.reason().isBlank() ? "" : ": " + pull.reason());
    }

    private static String start(PullSeen pull) {
        return pull.startedAt().map(Times::clock).orElse(Double.isFinite(pull.minutes())
                ? Numbers.resolving(1, "min").with(pull.minutes()) : "");
    }

    private static String value(Double value, Numbers numbers) {
        return value == null ? "" : numbers.bare(value);
    }

    private static String reading(PullSeen pull, Condition condition) {
        Double si = pull.conditionsSi().get(condition);
        return si == null ? "" : PlanWords.reading(condition, si);
    }
}
