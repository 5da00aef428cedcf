package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pulls from time, from the plan to the finding; all logs are invented and follow closed forms. */
class SweepVerbTest {
    private static final double RATIO = 10;

    @TempDir
    private Path folder;

    @Test
    void powerOutOfDrumSpeedComesToWhatTheRollerTook() {
        Path test = plan("inertia", "mean power 3000-6000 rpm in kW", "--moving-mass", "12.5±0.125kg·m²@0.25m", "--acceleration-window", "0.5s");
        take(test, drum(60, 1), drum(60.4, 1), drum(61, 1), drum(61.3, 1), drum(60.1, 1), drum(60.6, 1));

        JsonNode finding = Run.of("judge", test, "--json").json();
        // 200 kg at a = rate/10: P = 200·a·v, v = ω/10, whose mean over 3000 to 6000 rpm is at 4500 rpm = 471.24 rad/s: 56.5 kW for 60
        assertThat(values(finding).get(0)).isCloseTo(200 * 6 * 47.1239 / 1000, within(0.01));
        assertThat(warnings(finding)).anySatisfy(sentence -> assertThat(sentence).contains("200 kg accelerated", "smoothed over 0.5 s",
                "up to 1.00 %"));
        assertThat(warnings(finding)).noneMatch(sentence -> sentence.contains("sweep rate"));
        assertThat(Run.of("check", test).words()).contains("it comes from 200 kg accelerated, smoothed over 0.5 s");
    }

    @Test
    void aSweepAtAnotherRateAndOneWithSlipAreNamed() {
        Path test = plan("rates", "mean torque 3000-6000 rpm in N·m");
        take(test, measured(60, 1, 0), measured(61, 1, 0), measured(70, 1, 0), measured(60, 1, 0.03),
                measured(60.5, 1, 0), measured(61.5, 1, 0));

        List<String> warnings = warnings(Run.of("judge", test, "--json").json());
        assertThat(warnings).anySatisfy(sentence -> assertThat(sentence).contains("sweep rate differs", "+16.6", "at B1-1 "));
        assertThat(warnings).anySatisfy(sentence -> assertThat(sentence).contains("within the sweep of B1-2 "));
    }

    @Test
    void tipInIsDroppedAsThePlanSaysAndTheSealKnowsIt() {
        // torque bulges by 100 N·m in the first 300 rpm after full throttle, which comes at 2000 rpm
        Path whole = plan("whole", "mean torque 2010-6000 rpm in N·m");
        Path scored = plan("scored", "peak torque in N·m", "--tip-in", "300rpm", "--tip-in", "0.2s");
        Path narrow = plan("narrow", "mean torque 2010-6000 rpm in N·m", "--tip-in", "300rpm");
        Path log = SmallTest.write(folder.resolve("logs/A1-1.csv"), measured(60, 1, 0));

        assertThat(SmallTest.read(whole.resolve("plan.json"))).doesNotContain("curve", "movingMass");
        assertThat(SmallTest.read(scored.resolve("plan.json"))).contains("\"tipInRadPerS\"", "\"tipInS\" : 0.2");
        assertThat(Run.of("check", scored).words()).contains("Not scored of each sweep: the first 300 rpm, the first 0.2 s.");
        assertThat(Run.of("import", scored, log).words()).contains("200 N·m");
        Run.of("import", narrow, log).refused(3, "the sweep does not cover the band", "runs from 23");
        Run.of("import", plan("much", "peak torque in N·m", "--tip-in", "9s"), log).refused(3, "nothing of the sweep is left");
        Run.of("seal", scored).succeeded();
        Run.of("amend", scored, "--set", "curve.scored.liftOffS=0.5s", "--because", "agreed").succeeded();
        assertThat(Run.of("check", scored).words()).contains("the first 0.2 s, the last 0.5 s.");
    }

    @Test
    void responseIsAMeasureOfItsOwnAndLessIsBetter() {
        Path test = plan("response", "response of torque to 90 % in s");
        take(test, stepped(0.40), stepped(0.41), stepped(0.30), stepped(0.31), stepped(0.405), stepped(0.415));

        JsonNode finding = Run.of("judge", test, "--json").json();
        // first-order lag: 90 % after τ·ln 10
        assertThat(values(finding).get(0)).isCloseTo(0.40 * Math.log(10), within(0.002));
        assertThat(SmallTest.read(test.resolve("plan.json"))).contains("\"better\" : \"less\"", "\"kind\" : \"response\"");
        Run.of("report", test, "--out", folder.resolve("response.html")).succeeded();
        assertThat(SmallTest.read(folder.resolve("response.html")).replace('\u202f', ' ')).contains("time from the pedal step to 90 % of the torque then reached");
    }

    @Test
    void whatIsTypedWronglyIsRefusedInOneLine() {
        Object[] words = {"new", folder.resolve("x"), "--part-a", "a", "--part-b", "b", "--measure", "mean power 3000-6000 rpm in kW"};
        Run.of(with(words, "--tip-in", "300kg")).refused(2, "--tip-in", "300rpm");
        Run.of(with(words, "--tip-in", "0.2s", "--tip-in", "0.3s")).refused(2, "--tip-in", "two amounts of time");
        Run.of(with(words, "--moving-mass", "1480kg")).refused(2, "--acceleration-window");
        Run.of(with(words, "--moving-mass", "1480kg@0.3m", "--acceleration-window", "0.5s")).refused(2, "--moving-mass", "kg·m²");
        Run.of(with(words, "--coast-down", "1,2,3")).refused(2, "--moving-mass");
        Run.of(with(words, "--moving-mass", "1480±15kg", "--acceleration-window", "0.5s", "--coast-down", "1,2")).refused(2, "--coast-down");
        Run.of(with(words, "--further", "response of force to 50 % in s")).refused(2, "torque or power");
    }

    private Path plan(String name, String measure, Object... more) {
        Path test = folder.resolve(name);
        List<Object> words = new ArrayList<>(List.of("new", test, "--part-a", "short runners", "--part-b", "long runners", "--measure", measure,
                "--sequence", "ABA", "--pulls", "2", "--warm-ups", "0"));
        words.addAll(List.of(more));
        Run.of(words.toArray()).succeeded();
        return test;
    }

    private void take(Path test, String... logs) {
        String[] names = {"A1-1", "A1-2", "B1-1", "B1-2", "A2-1", "A2-2"};
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < logs.length; i++) {
            files.add(SmallTest.write(folder.resolve("pulls/" + names[i] + ".csv"), logs[i]));
        }
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();
    }

    /** Drum speed without power or torque: 1 s at 200 rad/s, then up at a constant rate to 700. */
    private static String drum(double rate, double opening) {
        return log("Time (s),Engine Speed (rad/s),Drum Speed (m/s),Throttle (%)", 1 + 500 / rate, t -> speed(rate, t),
                t -> speed(rate, t) / RATIO, t -> t < 1 ? 10 : 100 * opening);
    }

    /** Torque of 200 N·m, 300 in the first 300 rpm, beside the speed of the car, with slip growing through the sweep. */
    private static String measured(double rate, double opening, double slip) {
        double low = 2000 * Math.PI / 30;
        return log("Time (s),Engine Speed (rad/s),Roller Speed (m/s),Torque (N·m),Throttle (%)", 1 + 500 / rate, t -> low + rate * (t - 1),
                t -> (low + rate * (t - 1)) / RATIO * (1 - slip * t / 9), t -> rate * (t - 1) < 31.4 ? 300 : 200,
                t -> t < 1 ? 10 : 100 * opening);
    }

    private static String stepped(double tau) {
        return log("Time (s),Engine Speed (rad/s),Torque (N·m),Pedal (%)", 6, t -> 300 + t, t -> t < 2 ? 0 : 300 * -Math.expm1((2 - t) / tau),
                t -> Math.max(0, Math.min(100, 50 + (t - 2) * 1000)));
    }

    private static double speed(double rate, double time) {
        return 200 + Math.max(0, rate * (time - 1));
    }

    private static String log(String header, double untilS, DoubleUnaryOperator... columns) {
        StringBuilder text = new StringBuilder(header).append('\n');
        for (int row = 0; row * 0.02 <= untilS; row++) {
            text.append(String.format(Locale.ROOT, "%.2f", row * 0.02));
            for (DoubleUnaryOperator column : columns) {
                text.append(String.format(Locale.ROOT, ",%.6f", column.applyAsDouble(row * 0.02)));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** {@return the values of the pulls in their order, of the one measure there is} */
    private static List<Double> values(JsonNode finding) {
        List<Double> values = new ArrayList<>();
        finding.get("pulls").forEach(pull -> pull.properties().forEach(field -> {
            if (field.getKey().endsWith("]")) {
                values.add(field.getValue().asDouble());
            }
        }));
        return values;
    }

    private static List<String> warnings(JsonNode finding) {
        List<String> warnings = new ArrayList<>();
        finding.get("warnings").forEach(sentence -> warnings.add(sentence.asText().replace('\u202f', ' ').replace('\u00a0', ' ')));
        return warnings;
    }

    private static Object[] with(Object[] words, Object... more) {
        List<Object> all = new ArrayList<>(List.of(words));
        all.addAll(List.of(more));
        return all.toArray();
    }
}
