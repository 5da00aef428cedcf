package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Publication;
import java.util.List;

/** All questions put to a publication, in the order in which they are told: figures, curves, what was said of the procedure. */
public final class Questions {
    private static final List<Question> ALL = List.of(new FiguresIdentity(), new ValuesAgainstFigures(), new ValuesScatter(),
            new CurvesIdentity(), new CurvesMeet(), new TextAgainstPlot(),
            new CurveLikeness(AuditCheck.Code.CURVE_PLATEAU), new CurveLikeness(AuditCheck.Code.CURVE_STRETCH_COPIED),
            new CurveLikeness(AuditCheck.Code.CURVE_IS_MULTIPLE), new GainAtStartOnly(), new CurveThinned(), new PickedPulls(),
            new SpeedPicked(), new UncorrectedDays(), new Barometers(), new Smoothing(), new NoReturn(), new Oddities());

    private Questions() {
    }

    /**
     * Puts all questions.
     *
     * @param publication what was published
     * @param curves its curves as they were read
     * @return one answer a question, in the order of their codes
     */
    public static List<AuditCheck> of(Publication publication, List<CurvePair> curves) {
        return ALL.stream().map(question -> question.put(publication, curves)).toList();
    }
}
