package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.TTest;
import fairpull.domain.pull.Samples;
import org.junit.jupiter.api.Test;

/** Paired against unpaired on published sets, each with its source. */
class PublishedValuesTest {
    /** Cushny and Peebles in Student (1908), The probable error of a mean, Biometrika 6; results as in R's help of t.test (from memory). */
    @Test
    void sleepDataOfStudent() {
        Samples one = Samples.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2);
        Samples other = Samples.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);
        TTest unpaired = PublishedValues.unpaired(one, other);
        TTest paired = PublishedValues.paired(one, other);

        assertThat(unpaired.t()).isCloseTo(1.8608, within(5e-5));
        assertThat(unpaired.degreesOfFreedom()).isCloseTo(17.776, within(5e-4));
        assertThat(unpaired.pValue()).isCloseTo(0.07939, within(5e-6));
        assertThat(unpaired.interval().high()).isCloseTo(3.3654832, within(5e-8));
        assertThat(paired.t()).isCloseTo(4.0621, within(5e-5));
        assertThat(paired.pValue()).isCloseTo(0.002833, within(5e-7));
        assertThat(paired.interval().low()).isCloseTo(0.7001142, within(5e-8));
    }

    /** Box, Hunter and Hunter (1978), Statistics for Experimenters, pages 97–101: mean difference 0.41, t 3.35, p 0.0085. */
    @Test
    void shoesOfTenBoys() {
        TTest paired = PublishedValues.paired(Samples.of(13.2, 8.2, 10.9, 14.3, 10.7, 6.6, 9.5, 10.8, 8.8, 13.3),
                Samples.of(14.0, 8.8, 11.2, 14.2, 11.8, 6.4, 9.8, 11.3, 9.3, 13.6));

        assertThat(paired.difference()).isCloseTo(0.41, within(0.005));
        assertThat(paired.t()).isCloseTo(3.35, within(0.005));
        assertThat(paired.pValue()).isCloseTo(0.0085, within(5e-5));
    }

    /** US National Bureau of Standards, report 2447 (1953), table 30, as in NIST's data set BATTADD3; t computed from it. */
    @Test
    void batteriesOf1953() {
        Samples control = Samples.of(6.12, 9.13, 12.16, 0.92, 10.07, 8.18, 8.69, 4.54, 0.10, 3.02, 6.48, 3.67);
        Samples additive = Samples.of(5.71, 11.64, 5.88, 0.78, 9.25, 10.04, 9.87, 10.07, 3.82, 3.30, 5.03, 2.13);
        Samples salts = Samples.of(8.03, 11.56, 11.57, 13.99, 10.58, 7.19, 8.10, 8.28, 10.49, 4.21, 7.19, 8.63);

        assertThat(PublishedValues.paired(control, additive).t()).isCloseTo(0.43, within(0.005));
        assertThat(PublishedValues.paired(control, salts).t()).isCloseTo(2.38, within(0.005));
    }
}
