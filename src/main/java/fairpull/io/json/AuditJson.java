package fairpull.io.json;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.Undisclosed;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** An audit as JSON; gains and intervals are in the unit of the figure before. */
public final class AuditJson {
    private AuditJson() {
    }

    /** {@return the answer with its fair repeat as a document; {@code words} says an item that was not disclosed} */
    public static String document(AuditAnswer answer, Repeat repeat, Function<Undisclosed.Item, String> words) {
        return Tree.empty().text("title", answer.publication().title())
                .trees("claims", answer.claims(), (tree, claim) -> claim(tree, claim, answer.publication().figure(claim.claim().figure())))
                .trees("figures", answer.figures(), AuditJson::figure)
                .trees("checks", answer.checks(), AuditCheckJson::fill)
                .trees("notDisclosed", answer.undisclosed(), (tree, gap) -> gap(tree, gap, answer, words))
                .tree("repeat", RepeatJson.tree(repeat)).document();
    }

    private static void claim(Tree tree, AuditAnswer.OfClaim claim, Publication.Figure figure) {
        GradedClaim graded = claim.graded();
        Unit unit = figure.before().unit();
        tree.text("words", claim.claim().words()).text("figure", figure.name()).text("unit", unit.symbol())
                .text("grade", words(graded.grade())).text("reason", words(graded.reason()))
                .number("claimed", PlainNumber.withoutNoise(unit.differenceFromSi(graded.claimed()))).number("published", figure.gain());
        graded.ends().ifPresent(ends -> tree.tree("ordinary", interval(ends.ordinary(), unit)).tree("worst", interval(ends.worst(), unit)));
    }

    private static void gap(Tree tree, Undisclosed gap, AuditAnswer answer, Function<Undisclosed.Item, String> words) {
        Optional<Unit> unit = answer.measured().map(figure -> figure.before().unit());
        double moves = unit.isPresent() ? unit.get().differenceFromSi(gap.moves().orElse(Double.NaN)) : Double.NaN;
        tree.text("item", words(gap.item())).text("words", words.apply(gap.item())).number("moves", moves)
                .text("unit", unit.map(Unit::symbol).orElse(""));
    }

    private static Tree interval(Interval interval, Unit unit) {
        return Tree.empty().number("level", interval.level()).number("low", unit.differenceFromSi(interval.low()))
                .number("high", unit.differenceFromSi(interval.high()));
    }

    private static void figure(Tree tree, AuditAnswer.OfFigure figure) {
        Unit unit = figure.figure().before().unit();
        tree.text("name", figure.figure().name()).text("unit", unit.symbol()).number("chanceAlone", figure.chance().ordinary())
                .number("chanceLeast", figure.chance().least()).number("chanceMost", figure.chance().most())
                .number("tippingPullScatter", figure.chance().tippingPull())
                .number("t", optional(figure.test().map(test -> test.t())))
                .number("pValue", optional(figure.test().map(test -> test.pValue())))
                .number("exaggeration", optional(figure.errors().map(errors -> errors.exaggeration())))
                .number("wrongSign", optional(figure.errors().map(errors -> errors.wrongSign())))
                .number("explainingElevationM", figure.mixes().barometers());
        if (figure.chance().tippingPull().isPresent()) {
            tree.tree("scatter", scatter(figure.scatter()));
        } else {
            tree.nothing("scatter");
        }
        tree.trees("budget", figure.budget(), (term, part) -> term.text("kind", Mapper.word(part.kind()))
                        .number("ordinary", unit.differenceFromSi(part.ordinary())).number("worst", unit.differenceFromSi(part.worst())));
    }

    private static Tree scatter(ScatterRange range) {
        return Tree.empty().flag("pullStated", range.pullStated()).flag("refitStated", range.refitStated())
                .number("pull", range.ordinary().pull()).number("refit", range.ordinary().refit()).number("day", range.ordinary().day());
    }

    private static OptionalDouble optional(Optional<Double> figure) {
        return figure.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
