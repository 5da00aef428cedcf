package fairpull.report.wording;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.Undisclosed;
import fairpull.domain.audit.Undisclosed.Item;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.Optional;

/** What a publication does not disclose, what could matter most first. */
public final class UndisclosedWords {
    private static final double PERCENT = 100;
    /** What moves a figure by less moves it not at all. */
    private static final double LEAST_PERCENT = 0.005;

    private UndisclosedWords() {
    }

    /** {@return what stands over the list; empty where all is disclosed} */
    public static Optional<String> heading(AuditAnswer answer) {
        int gaps = answer.undisclosed().size();
        String sorted = answer.measured().isPresent() ? "; what could matter most stands first" : "";
        return gaps == 0 ? Optional.empty()
                : Optional.of(gaps == 1 ? "One thing is not disclosed" : gaps + " things are not disclosed" + sorted);
    }

    /** {@return what the figures of the list are} */
    public static String measure(AuditAnswer answer) {
        return answer.measured().map(figure -> "Beside each stands how far the lower end of the " + Numbers.level(0.95)
                + " interval of the gain in “" + figure.name() + "” (" + DifferenceWords.gain(figure) + " as published) would fall if that "
                + "alone were as bad as is plausible, and all else was done well.")
                .orElseGet(() -> "How much " + (answer.undisclosed().size() == 1 ? "it" : "each") + " could matter cannot be put in "
                        + "figures here: " + String.join("; ", answer.undisclosed().stream().map(gap -> item(gap.item())).toList())
                        + ".");
    }

    /** {@return each item with how much it could matter; none where nothing can be told in figures} */
    public static List<Said> all(AuditAnswer answer) {
        return answer.measured().map(figure -> answer.undisclosed().stream()
                .map(gap -> new Said(capital(item(gap.item())), size(gap, figure))).toList()).orElse(List.of());
    }

    /** {@return an item in a few words} */
    public static String item(Item item) {
        return switch (item) {
            case RIG -> "whether both were run on one rig";
            case CORRECTIONS -> "the corrections of both figures";
            case BAROMETERS -> "whether barometers were read at the rig or reduced to sea level";
            case DAY -> "whether both were run on one day";
            case STRAP_DOWN -> "whether the car stayed strapped down";
            case PULLS -> "how many pulls or runs stand behind each figure, and whether the best is quoted";
            case NAMED_BEFORE -> "whether the figure was named before the test";
            case RETURN -> "whether the state before was run again after the change";
            case VALUES -> "what each of the published values is of: a pull, an install or a specimen of its own";
            case OTHER_CHANGES -> "whether all else stayed as it was";
            case SCATTER -> "how much the rig scatters";
            case SMOOTHING -> "how both were smoothed";
            case ENGINE_SPEED -> "at which engine speed each figure stands";
        };
    }

    private static String size(Undisclosed gap, Publication.Figure figure) {
        if (gap.moves().isEmpty()) {
            return "not to be put in figures: " + worst(gap.item()) + ".";
        }
        Unit unit = figure.before().unit();
        double fall = unit.differenceFromSi(gap.moves().getAsDouble());
        double percent = PERCENT * gap.moves().getAsDouble() / figure.before().si();
        return percent < LEAST_PERCENT ? "nothing: no worse value is plausible."
                : "up to " + Numbers.resolving(fall, unit.symbol()).with(fall) + " (" + Numbers.resolving(percent, "%").with(percent)
                        + "): " + worst(gap.item()) + ".";
    }

    private static String worst(Item item) {
        return switch (item) {
            case RIG -> "rigs read 5 to 10" + Numbers.THIN + "% apart (common practice, no source)";
            case CORRECTIONS -> "of those left open the pair that air sets furthest apart, or no correction on two days";
            case BAROMETERS -> "a pressure reduced to sea level before, one read at the rig after";
            case DAY -> "another day, and the new strap-down that comes with it";
            case STRAP_DOWN -> "a new strap-down";
            case PULLS -> "a single pull before against the best of five after";
            case NAMED_BEFORE -> "the largest difference picked from the whole sweep";
            case RETURN -> "heat and weather that moved between the two would count as the change";
            case VALUES -> "pulls of one install repeat neither its strap-down nor its day";
            case OTHER_CHANGES -> "what else was changed would count as the change";
            case SCATTER -> "a rig that scatters as much as is plausible, its pulls by "
                    + Numbers.brief(PERCENT * ScatterShares.MOST.pull(), "%")
                    + " where " + Numbers.brief(PERCENT * ScatterShares.ORDINARY.pull(), "%")
                    + " is ordinary (one standard deviation; common practice, no source)";
            case SMOOTHING -> "smoothing that differs moves peaks and whatever is read where a curve is steep";
            case ENGINE_SPEED -> "two peaks need not stand at one speed, and power cannot be held against torque";
        };
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
