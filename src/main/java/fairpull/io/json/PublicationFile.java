package fairpull.io.json;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Contradiction;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.audit.Sweeping;
import fairpull.domain.audit.ValuesDraft;
import fairpull.domain.audit.ValuesDraft.Side;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of a publication file, texts throughout. What is refused of them is told with the field to blame. */
record PublicationFile(int publicationVersion, String title, Optional<String> remark, Optional<String> source, String changed,
        List<FigureFields> figures, Optional<List<CurvesFields>> curves, Optional<ProcedureFields> procedure, List<ClaimFields> claims) {
    /** {@return the publication; a {@link fairpull.domain.audit.RefusedPart} says what cannot be, and of which field} */
    Publication publication() {
        return new Publication(FieldText.plain(title), FieldText.given(remark).orElse(""), FieldText.given(source).orElse(""),
                FieldText.plain(changed),
                FieldText.each("figures", figures, FigureFields::figure),
                FieldText.each("curves", FieldText.opt(curves).orElse(List.of()), CurvesFields::curves),
                FieldText.opt(procedure).map(ProcedureFields::procedure).orElseGet(Procedure::notDisclosed),
                FieldText.each("claims", claims, ClaimFields::claim));
    }

    record FigureFields(String name, String before, String after, Optional<String> better, Optional<String> at,
            Optional<ValuesFields> values) {
        Publication.Figure figure(FieldText.Of here) {
            Printed first = here.field("before", before, FieldText::printed);
            return new Publication.Figure(FieldText.plain(name), first, here.field("after", after, FieldText::printed),
                    here.item("better", better, word -> FieldText.constant(word, Better.values(), "better"))
                            .orElse(Better.usual(first.unit().quantity())),
                    here.item("at", at, FieldText::printed),
                    FieldText.opt(values).map(given -> given.values(here.inner("values"))));
        }
    }

    record ValuesFields(List<String> before, List<String> after, String paired, Optional<String> each) {
        Publication.Values values(FieldText.Of here) {
            return here.whole(() -> new Publication.Values(here.list("before", before, FieldText::printed),
                    here.list("after", after, FieldText::printed), here.field("paired", paired, FieldText::yes), each(here)));
        }

        /** The same while it is typed, with empty texts where no value stands yet. */
        ValuesDraft draft(FieldText.Of here) {
            return new ValuesDraft(List.of(), here.field("paired", paired, FieldText::yes), each(here))
                    .with(0, Side.BEFORE, column(before)).with(0, Side.AFTER, column(after));
        }

        private static List<Optional<Printed>> column(List<String> texts) {
            return texts.stream().map(text -> Optional.of(text).filter(said -> !said.isEmpty()).map(FieldText::printed)).toList();
        }

        private Optional<Publication.Values.Each> each(FieldText.Of here) {
            return here.item("each", each, word -> FieldText.constant(word, Publication.Values.Each.values(), "what a value is of"));
        }
    }

    record CurvesFields(String name, String unit, Optional<String> speedUnit, CurveFields before, CurveFields after) {
        Publication.Curves curves(FieldText.Of here) {
            String speeds = FieldText.given(speedUnit).orElse(Units.RPM.symbol());
            return new Publication.Curves(FieldText.plain(name), Units.findOrAsTyped(unit), Units.findOrAsTyped(speeds),
                    here.inner("before").whole(() -> before.source(unit, speeds)),
                    here.inner("after").whole(() -> after.source(unit, speeds)));
        }
    }

    record CurveFields(Optional<String> file, Optional<String> column, Optional<String> trace, Optional<List<String>> points) {
        CurveSource source(String unit, String speedUnit) {
            Optional<String> table = FieldText.given(file);
            Optional<String> traced = FieldText.given(trace);
            Optional<List<String>> typed = FieldText.opt(points);
            if ((table.isPresent() ? 1 : 0) + (traced.isPresent() ? 1 : 0) + (typed.isPresent() ? 1 : 0) != 1) {
                throw new IllegalArgumentException("a curve has one source: file, trace or points");
            }
            if (typed.isPresent()) {
                return new CurveSource.Points(typed.get().stream().map(text -> point(text, unit, speedUnit)).toList());
            }
            return table.isPresent() ? new CurveSource.Table(table.get(), FieldText.given(column)) : new CurveSource.Traced(traced.get());
        }

        private static CurveSource.Point point(String text, String unit, String speedUnit) {
            String[] numbers = text.strip().split("\\s+");
            if (numbers.length != 2) {
                throw new IllegalArgumentException("a point is a speed and a value, such as “3000 101.2”, was “" + text + "”");
            }
            return new CurveSource.Point(FieldText.printed(numbers[0] + " " + speedUnit), FieldText.printed(numbers[1] + " " + unit));
        }
    }

    record ClaimFields(String words, String figure, Optional<String> gain) {
        Publication.Claim claim(FieldText.Of here) {
            return new Publication.Claim(FieldText.plain(words), FieldText.plain(figure), here.item("gain", gain, FieldText::printed));
        }
    }

    record ProcedureFields(Optional<String> pullsBefore, Optional<String> quotedBefore, Optional<String> pullsAfter,
            Optional<String> quotedAfter, Optional<String> order, Optional<String> returned, Optional<String> namedBefore,
            Optional<String> rig, Optional<String> strapDown, Optional<String> day, Optional<String> allElse, Optional<String> alsoChanged,
            Optional<String> correctionBefore, Optional<String> correctionAfter, Optional<String> barometerBefore,
            Optional<String> barometerAfter, Optional<String> elevation, Optional<String> smoothingBefore, Optional<String> smoothingAfter,
            Optional<String> sweepFrom, Optional<String> sweepTo, Optional<ScatterFields> scatter) {
        private static final FieldText.Of ITEMS = new FieldText.Of("procedure");

        Procedure procedure() {
            return ITEMS.whole(this::disclosed);
        }

        private Procedure disclosed() {
            try {
                return new Procedure(quoting(), keeping(),
                        new Returning(ITEMS.item("order", order, RunOrder::parse), ITEMS.item("returned", returned, FieldText::yes)),
                        correcting(),
                        new Sweeping(new BeforeAfter<>(FieldText.given(smoothingBefore), FieldText.given(smoothingAfter)), sweep()),
                        stated());
            } catch (Contradiction contradiction) {
                throw ITEMS.refused(contradicted(contradiction.item()), contradiction);
            }
        }

        private static String contradicted(Contradiction.Item item) {
            return switch (item) {
                case PULLS_BEFORE -> "pullsBefore";
                case PULLS_AFTER -> "pullsAfter";
                case RETURNED -> "returned";
                case STRAP_DOWN -> "strapDown";
                case DAY -> "day";
                case ALSO_CHANGED -> "alsoChanged";
            };
        }

        private Quoting quoting() {
            return new Quoting(new BeforeAfter<>(ITEMS.item("quotedBefore", quotedBefore, ProcedureFields::quoted),
                            ITEMS.item("quotedAfter", quotedAfter, ProcedureFields::quoted)),
                    new BeforeAfter<>(ITEMS.item("pullsBefore", pullsBefore, FieldText::pulls),
                            ITEMS.item("pullsAfter", pullsAfter, FieldText::pulls)),
                    ITEMS.item("namedBefore", namedBefore, FieldText::yes));
        }

        private Keeping keeping() {
            return new Keeping(same("rig", rig), same("strapDown", strapDown), same("day", day), same("allElse", allElse),
                    FieldText.given(alsoChanged));
        }

        private Correcting correcting() {
            return new Correcting(new BeforeAfter<>(ITEMS.item("correctionBefore", correctionBefore, ProcedureFields::correction),
                            ITEMS.item("correctionAfter", correctionAfter, ProcedureFields::correction)),
                    new BeforeAfter<>(ITEMS.item("barometerBefore", barometerBefore, ProcedureFields::barometer),
                            ITEMS.item("barometerAfter", barometerAfter, ProcedureFields::barometer)),
                    ITEMS.item("elevation", elevation, FieldText::elevation));
        }

        private Optional<StatedScatter> stated() {
            FieldText.Of here = ITEMS.inner("scatter");
            return FieldText.opt(scatter).flatMap(given -> here.whole(() -> given.scatter(here)));
        }

        private Optional<SpeedRange> sweep() {
            Optional<Double> from = ITEMS.item("sweepFrom", sweepFrom, FieldText::speed);
            Optional<Double> to = ITEMS.item("sweepTo", sweepTo, FieldText::speed);
            if (from.isPresent() != to.isPresent()) {
                throw new IllegalArgumentException("a sweep has two ends: sweepFrom and sweepTo");
            }
            return ITEMS.item("sweepTo", sweepTo, text -> new SpeedRange(from.orElseThrow(), to.orElseThrow()));
        }

        private static Quote.Kind quoted(String word) {
            return FieldText.constant(word, Quote.Kind.values(), "what is quoted");
        }

        private static Correction correction(String word) {
            return FieldText.constant(word, Correction.values(), "a correction");
        }

        private static Barometer.Kind barometer(String word) {
            return FieldText.constant(word, Barometer.Kind.values(), "a barometer");
        }

        private static Optional<Sameness> same(String field, Optional<String> word) {
            return ITEMS.item(field, word, known -> FieldText.constant(known, Sameness.values(), "the item"));
        }
    }

    record ScatterFields(Optional<LayerFields> pull, Optional<LayerFields> refit, Optional<LayerFields> day) {
        Optional<StatedScatter> scatter(FieldText.Of here) {
            Optional<StatedScatter.Layer> ofPulls = layer(here.inner("pull"), pull);
            Optional<StatedScatter.Layer> ofRefits = layer(here.inner("refit"), refit);
            Optional<StatedScatter.Layer> ofDays = layer(here.inner("day"), day);
            if (ofPulls.isEmpty() && (ofRefits.isPresent() || ofDays.isPresent())) {
                throw new IllegalArgumentException("a scatter of refits or days needs that of pulls beside it");
            }
            return ofPulls.map(known -> new StatedScatter(known, ofRefits, ofDays));
        }

        private static Optional<StatedScatter.Layer> layer(FieldText.Of here, Optional<LayerFields> fields) {
            return FieldText.opt(fields).flatMap(given -> here.whole(() -> given.layer(here)));
        }
    }

    record LayerFields(Optional<String> deviation, Optional<String> degreesOfFreedom) {
        Optional<StatedScatter.Layer> layer(FieldText.Of here) {
            OptionalDouble freedom = here.item("degreesOfFreedom", degreesOfFreedom, FieldText::number)
                    .map(number -> OptionalDouble.of(number.value())).orElse(OptionalDouble.empty());
            return here.item("deviation", deviation, FieldText::printed).map(known -> new StatedScatter.Layer(known, freedom));
        }
    }
}
