package fairpull.io.json;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Contradiction;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.audit.Sweeping;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of a publication file, texts throughout. What the domain refuses of an object is refused while the file is read. */
record PublicationFile(int publicationVersion, String title, Optional<String> remark, Optional<String> source, String changed,
        List<FigureFields> figures, Optional<List<CurvesFields>> curves, Optional<ProcedureFields> procedure, List<ClaimFields> claims) {
    /** {@return the publication; an {@link IllegalArgumentException} says what cannot be} */
    Publication publication() {
        figures.forEach(figure -> FieldText.some(figure.name(), "a figure has a name, such as peak power"));
        claims.forEach(claim -> FieldText.some(claim.words(), "a claim has words; give them as they were published"));
        return new Publication(FieldText.plain(title), FieldText.given(remark).orElse(""), FieldText.given(source).orElse(""),
                FieldText.plain(changed),
                figures.stream().map(FigureFields::figure).toList(),
                FieldText.opt(curves).orElse(List.of()).stream().map(CurvesFields::curves).toList(),
                FieldText.opt(procedure).map(ProcedureFields::procedure).orElseGet(Procedure::notDisclosed),
                claims.stream().map(ClaimFields::claim).toList());
    }

    record FigureFields(String name, String before, String after, Optional<String> better, Optional<String> at,
            Optional<ValuesFields> values) {
        FigureFields {
            figure(name, before, after, better, at, values);
        }

        Publication.Figure figure() {
            return figure(name, before, after, better, at, values);
        }

        private static Publication.Figure figure(String name, String before, String after, Optional<String> better, Optional<String> at,
                Optional<ValuesFields> values) {
            return new Publication.Figure(FieldText.plain(name), FieldText.withUnit(before), FieldText.withUnit(after),
                    FieldText.given(better).map(word -> FieldText.constant(word, Better.values(), "better")).orElse(Better.MORE),
                    FieldText.given(at).map(FieldText::printed), FieldText.opt(values).map(ValuesFields::values));
        }
    }

    record ValuesFields(List<String> before, List<String> after, String paired, Optional<String> each) {
        ValuesFields {
            values(before, after, paired, each);
        }

        Publication.Values values() {
            return values(before, after, paired, each);
        }

        private static Publication.Values values(List<String> before, List<String> after, String paired, Optional<String> each) {
            return new Publication.Values(before.stream().map(FieldText::printed).toList(),
                    after.stream().map(FieldText::printed).toList(), FieldText.yes(paired),
                    FieldText.given(each).map(word -> FieldText.constant(word, Publication.Values.Each.values(), "what a value is of")));
        }
    }

    record CurvesFields(String name, String unit, Optional<String> speedUnit, CurveFields before, CurveFields after) {
        CurvesFields {
            curves(name, unit, speedUnit, before, after);
        }

        Publication.Curves curves() {
            return curves(name, unit, speedUnit, before, after);
        }

        private static Publication.Curves curves(String name, String unit, Optional<String> speedUnit, CurveFields before,
                CurveFields after) {
            String speeds = FieldText.given(speedUnit).orElse(Units.RPM.symbol());
            return new Publication.Curves(name, Units.findOrAsTyped(unit), Units.findOrAsTyped(speeds), before.source(unit, speeds),
                    after.source(unit, speeds));
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
        ClaimFields {
            claim(words, figure, gain);
        }

        Publication.Claim claim() {
            return claim(words, figure, gain);
        }

        private static Publication.Claim claim(String words, String figure, Optional<String> gain) {
            return new Publication.Claim(FieldText.plain(words), FieldText.plain(figure), FieldText.given(gain).map(FieldText::printed));
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
            try {
                return new Procedure(quoting(), keeping(),
                        new Returning(ITEMS.item("order", order, RunOrder::parse), ITEMS.item("returned", returned, FieldText::yes)),
                        correcting(),
                        new Sweeping(new BeforeAfter<>(FieldText.given(smoothingBefore), FieldText.given(smoothingAfter)), sweep()),
                        FieldText.opt(scatter).flatMap(ScatterFields::scatter));
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
        ScatterFields {
            scatter(pull, refit, day);
        }

        Optional<StatedScatter> scatter() {
            return scatter(pull, refit, day);
        }

        private static Optional<StatedScatter> scatter(Optional<LayerFields> pull, Optional<LayerFields> refit, Optional<LayerFields> day) {
            Optional<StatedScatter.Layer> ofPulls = FieldText.opt(pull).flatMap(LayerFields::layer);
            Optional<StatedScatter.Layer> ofRefits = FieldText.opt(refit).flatMap(LayerFields::layer);
            Optional<StatedScatter.Layer> ofDays = FieldText.opt(day).flatMap(LayerFields::layer);
            if (ofPulls.isEmpty() && (ofRefits.isPresent() || ofDays.isPresent())) {
                throw new IllegalArgumentException("a scatter of refits or days needs that of pulls beside it");
            }
            return ofPulls.map(known -> new StatedScatter(known, ofRefits, ofDays));
        }
    }

    record LayerFields(Optional<String> deviation, Optional<String> degreesOfFreedom) {
        LayerFields {
            layer(deviation, degreesOfFreedom);
        }

        Optional<StatedScatter.Layer> layer() {
            return layer(deviation, degreesOfFreedom);
        }

        private static Optional<StatedScatter.Layer> layer(Optional<String> deviation, Optional<String> degreesOfFreedom) {
            OptionalDouble freedom = FieldText.given(degreesOfFreedom).map(text -> OptionalDouble.of(FieldText.printed(text).value()))
                    .orElse(OptionalDouble.empty());
            return FieldText.given(deviation).map(text -> new StatedScatter.Layer(FieldText.printed(text), freedom));
        }
    }
}
