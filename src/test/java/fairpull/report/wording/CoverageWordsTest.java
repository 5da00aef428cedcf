package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.pull.Samples;
import fairpull.report.CurveExamples;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CoverageWordsTest {
    private static final CurveFinding GAIN = CurveExamples.gain();

    /** The curves without their first two speeds. */
    private static CurveTable late() {
        CurveTable table = GAIN.curves();
        return new CurveTable(table.unit(), table.grid(), table.bandwidthRadPerS(), table.covariateNames(), table.rows().stream()
                .map(row -> {
                    double[] values = row.values().stream().toArray();
                    values[0] = Double.NaN;
                    values[1] = Double.NaN;
                    return new CurveRow(row.session(), row.install(), row.part(), row.pull(), row.minutes(), Samples.of(values),
                            row.covariates());
                }).toList());
    }

    /** Curves that rise to the end. */
    private static CurveTable rising() {
        CurveTable table = GAIN.curves();
        double[] speeds = IntStream.range(0, table.grid().size()).mapToDouble(table.grid()::at).toArray();
        return new CurveTable(table.unit(), table.grid(), table.bandwidthRadPerS(), table.covariateNames(), table.rows().stream()
                .map(row -> new CurveRow(row.session(), row.install(), row.part(), row.pull(), row.minutes(), Samples.of(speeds),
                        row.covariates())).toList());
    }

    @Test
    void headingSentenceAndTableNameTheSameSpeeds() {
        String heading = plain(CoverageWords.heading(late()));

        assertThat(heading).startsWith("All 25 pulls cover the speeds from 2").endsWith("none of them every speed from 2500 to 6800 rpm");
        assertThat(plain(CoverageWords.sentence(late()))).startsWith(heading);
        assertThat(plain(CoverageWords.covered(late().rows().get(0), late().grid()))).isEqualTo("2550 to 6800 rpm");
        assertThat(plain(CoverageWords.sentence(GAIN.curves()))).contains("20 of 25 pulls cover every speed from 2500", "the shortest, ");
    }

    @Test
    void aPeakStatesItsSpeedAndWhetherItIsTheEndOfTheRange() {
        assertThat(plain(PeakWords.where(GAIN.curves()))).contains(" rpm with A and at ", " rpm with B, on average.");
        assertThat(PeakWords.where(rising())).contains("In 25 of 25 pulls that is an end of those speeds");
        assertThat(plain(PeakWords.where(rising()))).contains("at 6800 rpm with A and at 6800 rpm with B");
        assertThat(CoverageWords.peaks(GAIN).orElseThrow()).endsWith(PeakWords.where(GAIN.curves())).doesNotContain("noise");
    }

    private static String plain(String words) {
        return words.replace('\u202f', ' ');
    }
}
