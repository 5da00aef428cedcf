package fairpull.app.usecase.auditing;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** Takes the tables of a publication into it, point by point, so that it needs no file beside it. */
final class PointsOfTables {
    /** More digits than a table prints, and fewer than conversion to SI and back disturbs. */
    private static final MathContext DIGITS = new MathContext(10);

    private PointsOfTables() {
    }

    /** {@return the publication with all its curves as points; their files lie in a folder} */
    static Publication of(Publication publication, Path folder) throws IOException {
        List<Publication.Curves> curves = PublishedCurves.of(publication, folder).stream().map(PointsOfTables::curves).toList();
        return new Publication(publication.title(), publication.remark(), publication.source(), publication.changed(),
                publication.figures(), curves, publication.procedure(), publication.claims());
    }

    private static Publication.Curves curves(CurvePair pair) {
        Publication.Curves told = pair.published();
        return new Publication.Curves(told.name(), told.unit(), told.speedUnit(), points(pair.before(), told), points(pair.after(), told));
    }

    private static CurveSource points(CurveSeen seen, Publication.Curves told) {
        List<Printed> speeds = printed(seen.speedsRadPerS(), told.speedUnit());
        List<Printed> values = printed(seen.values(), told.unit());
        return new CurveSource.Points(IntStream.range(0, speeds.size())
                .mapToObj(place -> new CurveSource.Point(speeds.get(place), values.get(place))).toList());
    }

    /** All with the decimals of the longest one, as a table prints them. */
    private static List<Printed> printed(Samples si, Unit unit) {
        List<BigDecimal> numbers = IntStream.range(0, si.size())
                .mapToObj(place -> new BigDecimal(unit.fromSi(si.at(place))).round(DIGITS).stripTrailingZeros()).toList();
        int decimals = numbers.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        return numbers.stream().map(number -> new Printed(number.doubleValue(), Math.max(0, decimals), unit)).toList();
    }
}
