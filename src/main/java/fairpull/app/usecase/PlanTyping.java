package fairpull.app.usecase;

import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.unit.Unit;
import fairpull.report.wording.Numbers;
import java.util.OptionalDouble;

/** What people type into the fields of a plan, and how the plan's figures stand in them. What is not understood is said in words. */
public final class PlanTyping {
    private final Question question;

    private PlanTyping(Plan plan) {
        question = plan.question();
    }

    /** {@return typing in the fields of a plan: amounts may be in the unit of its deciding measure or in percent of its level} */
    public static PlanTyping in(Plan plan) {
        return new PlanTyping(plan);
    }

    /** {@return words that must not be empty} */
    public static String words(String text) {
        if (text.isBlank()) {
            throw new UsageException("", "say it in a few words");
        }
        return text.strip();
    }

    /** {@return the measure that a text describes} */
    public Measure measure(String text) {
        return MeasureText.parse(text, correction());
    }

    private Correction correction() {
        return question.deciding().correction();
    }

    /** {@return a measure as {@link #measure} reads it} */
    public static String text(Measure measure) {
        String typed = measure.definition() instanceof Definition.Typed ? "typed " : "";
        return typed + measure.name() + " in " + measure.unit().symbol();
    }

    /** {@return a level of the deciding measure in SI; empty for an empty text} */
    public OptionalDouble level(String text) {
        return text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(positive(Typed.levelSi("", text, question.deciding())));
    }

    /** {@return a difference of the deciding measure in SI; empty for an empty text} */
    public OptionalDouble difference(String text) {
        return text.isBlank() ? OptionalDouble.empty()
                : OptionalDouble.of(positive(new Typed(question.deciding(), question.expectedLevelSi()).differenceSi("", text)));
    }

    private static double positive(double value) {
        if (!(value > 0)) {
            throw new UsageException("", "it must be above 0");
        }
        return value;
    }

    /** {@return a level as it stands in its field} */
    public String level(OptionalDouble si) {
        Unit unit = question.deciding().unit();
        return si.isEmpty() ? "" : Numbers.given(unit.fromSi(si.getAsDouble()), unit.symbol());
    }

    /** {@return a difference as it stands in its field} */
    public String difference(OptionalDouble si) {
        Unit unit = question.deciding().unit();
        return si.isEmpty() ? "" : Numbers.given(unit.differenceFromSi(si.getAsDouble()), unit.symbol());
    }
}
