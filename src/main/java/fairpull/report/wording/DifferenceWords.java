package fairpull.report.wording;

import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Unit;

/** A published difference, with as many decimals as its figures were printed with. */
public final class DifferenceWords {
    private DifferenceWords() {
    }

    /** {@return the gain that the printed figures show, signed} */
    public static String gain(Publication.Figure figure) {
        Unit unit = figure.before().unit();
        int decimals = Math.max(figure.before().decimals(), figure.after().decimals());
        return Numbers.resolving(Math.pow(10, 1 - decimals) * 1.0001, unit.symbol()).signed(unit.differenceFromSi(figure.gainSi()));
    }
}
