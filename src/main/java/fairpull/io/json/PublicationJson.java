package fairpull.io.json;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Sameness;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.Samples;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A publication file: figures as they were printed, in texts with their unit, so that their rounding is known. An item that is left out,
 * or is “not disclosed”, was not disclosed.
 */
public final class PublicationJson {
    private static final String NOT_DISCLOSED = "not disclosed";
    private static final int VERSION = 1;

    private PublicationJson() {
    }

    /** {@return the publication in a text; {@code file} is for messages} */
    public static Publication read(String text, String file) {
        int version = JsonFiles.tree(text, file).path("publicationVersion").asInt(-1);
        if (version != VERSION) {
            throw new InputException(Place.of(file), "this is not a publication to be audited",
                    "it begins with \"publicationVersion\": " + VERSION + "; `fairpull audit --template` writes an empty one");
        }
        return JsonFiles.read(text, PublicationFile.class, file, 1).publication();
    }

    private record PublicationFile(int publicationVersion, String title, Optional<String> remark, Optional<String> source, String changed,
            List<FigureFile> figures, Optional<ProcedureFile> procedure, List<ClaimFile> claims) {
        /** What a publication refuses is refused while the file is read, so that its line is known. */
        PublicationFile {
            publication(title, remark, source, changed, figures, procedure, claims);
        }

        Publication publication() {
            return publication(title, remark, source, changed, figures, procedure, claims);
        }

        private static Publication publication(String title, Optional<String> remark, Optional<String> source, String changed,
                List<FigureFile> figures, Optional<ProcedureFile> procedure, List<ClaimFile> claims) {
            return new Publication(title, given(remark).orElse(""), given(source).orElse(""), changed,
                    figures.stream().map(FigureFile::figure).toList(),
                    opt(procedure).map(ProcedureFile::procedure).orElseGet(Procedure::notDisclosed),
                    claims.stream().map(ClaimFile::claim).toList());
        }
    }

    private record FigureFile(String name, String before, String after, Optional<String> better, Optional<ValuesFile> values) {
        FigureFile {
            figure(name, before, after, better, values);
        }

        Publication.Figure figure() {
            return figure(name, before, after, better, values);
        }

        private static Publication.Figure figure(String name, String before, String after, Optional<String> better,
                Optional<ValuesFile> values) {
            return new Publication.Figure(name, printed(before), printed(after),
                    given(better).map(word -> constant(word, Better.values(), "better")).orElse(Better.MORE),
                    opt(values).map(ValuesFile::values));
        }
    }

    private record ValuesFile(List<String> before, List<String> after, String paired) {
        ValuesFile {
            values(before, after, paired);
        }

        Publication.Values values() {
            return values(before, after, paired);
        }

        private static Publication.Values values(List<String> before, List<String> after, String paired) {
            if (before.size() < 2 || after.size() < 2 || yes(paired) && before.size() != after.size()) {
                throw new IllegalArgumentException("values need two or more on each side, and as many on both where they are paired");
            }
            return new Publication.Values(samples(before), samples(after), yes(paired));
        }

        private static Samples samples(List<String> values) {
            return Samples.of(values.stream().mapToDouble(value -> printed(value).si()).toArray());
        }
    }

    private record ClaimFile(String words, String figure, Optional<String> gain) {
        Publication.Claim claim() {
            return new Publication.Claim(words, figure, given(gain).map(PublicationJson::printed));
        }
    }

    private record ProcedureFile(Optional<String> pullsBefore, Optional<String> quotedBefore, Optional<String> pullsAfter,
            Optional<String> quotedAfter, Optional<String> rig, Optional<String> strapDown, Optional<String> day,
            Optional<String> correctionBefore, Optional<String> correctionAfter, Optional<String> allElse, Optional<String> namedBefore,
            Optional<String> returned) {
        Procedure procedure() {
            return new Procedure(quote(pullsBefore, quotedBefore), quote(pullsAfter, quotedAfter), same(rig), same(strapDown), same(day),
                    correction(correctionBefore), correction(correctionAfter), same(allElse), given(namedBefore).map(PublicationJson::yes),
                    given(returned).map(PublicationJson::yes));
        }

        private static Optional<Quote> quote(Optional<String> pulls, Optional<String> quoted) {
            Optional<Quote.Kind> kind = given(quoted).map(word -> constant(word, Quote.Kind.values(), "quoted"));
            if (kind.filter(Quote.Kind.SINGLE::equals).isPresent()) {
                return Optional.of(Quote.single());
            }
            return kind.flatMap(known -> given(pulls).map(number -> new Quote(known, whole(number))));
        }

        private static Optional<Sameness> same(Optional<String> word) {
            return given(word).map(known -> constant(known, Sameness.values(), "an item of the procedure"));
        }

        private static Optional<Correction> correction(Optional<String> word) {
            return given(word).map(known -> constant(known, Correction.values(), "a correction"));
        }
    }

    private static <T> Optional<T> opt(Optional<T> value) {
        return value == null ? Optional.empty() : value;
    }

    private static Optional<String> given(Optional<String> text) {
        return opt(text).map(String::strip).filter(known -> !known.isEmpty() && !known.equalsIgnoreCase(NOT_DISCLOSED));
    }

    private static Printed printed(String text) {
        return Printed.parse(text).orElseThrow(() -> new IllegalArgumentException("expected a figure as it was printed, such as "
                + "“214.3 hp”, found “" + text + "”"));
    }

    private static int whole(String text) {
        if (!text.matches("\\d{1,4}")) {
            throw new IllegalArgumentException("expected a number of pulls, found “" + text + "”");
        }
        return Integer.parseInt(text);
    }

    private static boolean yes(String text) {
        if (!text.equals("yes") && !text.equals("no")) {
            throw new IllegalArgumentException("expected yes or no, found “" + text + "”");
        }
        return text.equals("yes");
    }

    private static <T extends Enum<T>> T constant(String word, T[] values, String what) {
        return Arrays.stream(values).filter(value -> name(value).equals(word)).findFirst().orElseThrow(() -> new IllegalArgumentException(
                what + " is one of " + String.join(", ", Arrays.stream(values).map(PublicationJson::name).toList()) + ", was “" + word
                        + "”"));
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
