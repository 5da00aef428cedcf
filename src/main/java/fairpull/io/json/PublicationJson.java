package fairpull.io.json;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.audit.Sweeping;
import fairpull.domain.audit.ValuesDraft;
import fairpull.domain.audit.ValuesDraft.Side;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A publication file: figures as they were printed, in texts with their unit, so that their rounding is known. What was not disclosed is
 * written as that, so that a file shows what could be said.
 */
public final class PublicationJson {
    /** The version of the file format that this program writes, and the only one there is so far; fields were added to it. */
    public static final int VERSION = 1;

    private PublicationJson() {
    }

    /** {@return the publication in a text; {@code file} is for messages} */
    public static Publication read(String text, String file) {
        int version = JsonFiles.tree(text, file).path("publicationVersion").asInt(-1);
        if (version != VERSION) {
            throw new InputException(Place.of(file), "this is not a publication to be audited",
                    "it begins with \"publicationVersion\": " + VERSION + "; `fairpull audit --template` writes an empty one");
        }
        PublicationFile read = JsonFiles.read(text, PublicationFile.class, file, 1);
        try {
            return read.publication();
        } catch (IllegalArgumentException refused) {
            throw JsonTrouble.refused(refused, text, file);
        }
    }

    /** {@return the publication as a file: fields in the order of the template, ending in a line feed} */
    public static String write(Publication publication) {
        return fields(Tree.empty().whole("publicationVersion", VERSION), PublicationDraft.of(publication)).document();
    }

    /** Adds the fields of a publication, whether or not they are all known yet. */
    static Tree fields(Tree tree, PublicationDraft draft) {
        return tree.text("title", draft.title()).text("remark", draft.remark()).text("source", draft.source())
                .text("changed", draft.changed()).trees("figures", draft.figures(), PublicationJson::figure)
                .trees("curves", draft.curves(), PublicationJson::curves).tree("procedure", procedure(draft.procedure()))
                .trees("claims", draft.claims(), PublicationJson::claim);
    }

    private static void figure(Tree tree, FigureDraft figure) {
        tree.text("name", figure.name()).text("before", said(figure.before().map(Printed::words)))
                .text("after", said(figure.after().map(Printed::words)))
                .text("at", said(figure.at().map(Printed::words))).text("better", Mapper.word(figure.better()));
        ValuesDraft values = figure.values();
        if (!values.equals(ValuesDraft.NONE)) {
            tree.tree("values", Tree.empty().texts("before", words(values, Side.BEFORE)).texts("after", words(values, Side.AFTER))
                    .text("paired", yes(values.paired())).text("each", said(values.each().map(Mapper::word))));
        }
    }

    /** A column as it stands, down to its last value; only a draft has empty cells above it. */
    private static List<String> words(ValuesDraft values, Side side) {
        List<String> words = new ArrayList<>();
        for (int row = 0; row < values.rows().size(); row++) {
            words.add(values.at(row, side).map(Printed::words).orElse(""));
        }
        while (!words.isEmpty() && words.get(words.size() - 1).isEmpty()) {
            words.remove(words.size() - 1);
        }
        return words;
    }

    private static void curves(Tree tree, Publication.Curves curves) {
        tree.text("name", curves.name()).text("unit", curves.unit().symbol()).text("speedUnit", curves.speedUnit().symbol())
                .tree("before", curve(curves.before())).tree("after", curve(curves.after()));
    }

    private static Tree curve(CurveSource source) {
        return source.match(new CurveSource.Cases<Tree>() {
            @Override
            public Tree table(CurveSource.Table table) {
                Tree tree = Tree.empty().text("file", table.name());
                table.column().ifPresent(column -> tree.text("column", column));
                return tree;
            }

            @Override
            public Tree traced(CurveSource.Traced traced) {
                return Tree.empty().text("trace", traced.name());
            }

            @Override
            public Tree points(CurveSource.Points points) {
                return Tree.empty().texts("points", points.points().stream()
                        .map(point -> point.speed().number() + " " + point.value().number()).toList());
            }
        });
    }

    private static void claim(Tree tree, Publication.Claim claim) {
        tree.text("words", claim.words()).text("figure", claim.figure()).text("gain", said(claim.gain().map(Printed::words)));
    }

    private static Tree procedure(Procedure procedure) {
        Quoting quoting = procedure.quoting();
        Keeping keeping = procedure.keeping();
        Tree tree = Tree.empty().text("pullsBefore", said(quoting.pulls().before().map(String::valueOf)))
                .text("quotedBefore", word(quoting.kinds().before()))
                .text("pullsAfter", said(quoting.pulls().after().map(String::valueOf)))
                .text("quotedAfter", word(quoting.kinds().after()))
                .text("order", said(procedure.returning().order().map(RunOrder::letters)))
                .text("returned", said(procedure.returning().said().map(PublicationJson::yes)))
                .text("namedBefore", said(quoting.namedBefore().map(PublicationJson::yes))).text("rig", word(keeping.rig()))
                .text("strapDown", word(keeping.strapDown())).text("day", word(keeping.day()))
                .text("allElse", word(keeping.otherChanges())).text("alsoChanged", said(keeping.alsoChanged()));
        air(tree, procedure.correcting());
        curves(tree, procedure.sweeping());
        Optional<StatedScatter> scatter = procedure.scatter();
        return tree.tree("scatter", Tree.empty().tree("pull", layer(scatter.map(StatedScatter::pull)))
                .tree("refit", layer(scatter.flatMap(StatedScatter::refit))).tree("day", layer(scatter.flatMap(StatedScatter::day))));
    }

    private static void air(Tree tree, Correcting correcting) {
        tree.text("correctionBefore", word(correcting.corrections().before()))
                .text("correctionAfter", word(correcting.corrections().after()))
                .text("barometerBefore", word(correcting.barometers().before()))
                .text("barometerAfter", word(correcting.barometers().after()))
                .text("elevation", said(correcting.elevation().map(Printed::words)));
    }

    private static void curves(Tree tree, Sweeping sweeping) {
        tree.text("smoothingBefore", said(sweeping.smoothing().before())).text("smoothingAfter", said(sweeping.smoothing().after()))
                .text("sweepFrom", said(sweeping.speeds().map(sweep -> speed(sweep.lowRadPerS()))))
                .text("sweepTo", said(sweeping.speeds().map(sweep -> speed(sweep.highRadPerS()))));
    }

    private static Tree layer(Optional<StatedScatter.Layer> layer) {
        OptionalDouble freedom = layer.map(StatedScatter.Layer::degreesOfFreedom).orElse(OptionalDouble.empty());
        return Tree.empty().text("deviation", said(layer.map(known -> known.deviation().words())))
                .text("degreesOfFreedom", freedom.isPresent() ? plain(freedom.getAsDouble()) : FieldText.NOT_DISCLOSED);
    }

    private static String speed(double radPerS) {
        double rpm = Units.RPM.fromSi(radPerS);
        double whole = Math.rint(rpm);
        return plain(Units.RPM.toSi(whole) == radPerS ? whole : rpm) + " " + Units.RPM.symbol();
    }

    private static String plain(double value) {
        return PlainNumber.shortest(value).toPlainString();
    }

    private static String word(Optional<? extends Enum<?>> constant) {
        return said(constant.map(Mapper::word));
    }

    private static String said(Optional<String> words) {
        return words.orElse(FieldText.NOT_DISCLOSED);
    }

    private static String yes(boolean isSo) {
        return isSo ? "yes" : "no";
    }
}
