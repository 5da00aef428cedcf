package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log over time with several sweeps is as many pulls, whether or not it has the throttle. All of it invented. */
class SweptLogImportTest {
    /** Kilowatts of each pull, two an install. */
    private static final double[] KILOWATTS = {100.1, 100.4, 102.2, 102.0, 100.3, 100.0};
    private static final double PERIOD = 12;

    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void sealATest() {
        test = SmallTest.make(folder.resolve("test"), "ABA", "--worthwhile", "2kW", "--refit-scatter", "0.5kW", "--refit-df", "8");
        Run.of("seal", test).succeeded();
    }

    /** Sweeps of 8 s from 2000 to 7000 rpm, each behind 1 s of idling and before 3 s of coasting down; a blip of half a second first. */
    private static String log(boolean throttle, double noiseRpm, boolean blip, double... kilowatts) {
        SplittableRandom random = new SplittableRandom(5);
        StringBuilder text = new StringBuilder("Time (s),Engine Speed (rpm),Power (kW)").append(throttle ? ",Throttle (%)\n" : "\n");
        double lead = blip ? 4 : 0;
        for (int row = 0; row * 0.05 < lead + PERIOD * kilowatts.length; row++) {
            double time = row * 0.05;
            boolean blipping = time < lead;
            double t = (time - lead) % PERIOD;
            boolean full = blipping ? time > 1 && time <= 1.5 : t >= 1 && t <= 9;
            double rpm = blipping ? 2000 + 5000 * Math.max(0, 1 - Math.abs(time - 1.5) / (time < 1.5 ? 0.5 : 2))
                    : t < 1 ? 2000 : t <= 9 ? 2000 + 625 * (t - 1) : 7000 - 5000 * (t - 9) / 3;
            double power = blipping ? 5 : full ? kilowatts[(int) ((time - lead) / PERIOD)] : -12;
            text.append(String.format(Locale.ROOT, "%.2f,%.0f,%.3f", time, rpm + noiseRpm * random.nextGaussian(), power))
                    .append(throttle ? full ? ",100\n" : ",12\n" : "\n");
        }
        return text.toString();
    }

    private Path file(String name, String text) {
        return SmallTest.write(folder.resolve(name), text);
    }

    private Run preview(Path file, Object... more) {
        return Run.of(SmallTest.words("import", test, List.of(file), Stream.concat(Stream.of("--preview"), Stream.of(more)).toArray()))
                .succeeded();
    }

    @Test
    void thePreviewSaysHowManyWhenAndByWhatEvidence() {
        Path told = file("told.csv", log(true, 0, false, 100, 101, 102));
        Path bare = file("bare.csv", log(false, 0, false, 100, 101, 102));

        assertThat(preview(told).words()).contains(
                "3 pulls: engine speed rises at full throttle at 1.0–9.0 s, 13.0–21.0 s, 25.0–33.0 s");
        assertThat(preview(bare).words()).contains("3 pulls: engine speed rises at ").doesNotContain("full throttle at");
        JsonNode json = preview(bare, "--json").json().get("files").get(0);
        assertThat(json.get("pulls").asInt()).isEqualTo(3);
        assertThat(json.get("pullsFound").asText()).startsWith("engine speed rises at");
        assertThat(preview(bare, "--one-pull").words()).contains("one pull").doesNotContain("3 pulls");
    }

    @Test
    void whatIsNoPullIsNamedAtThePreviewAndAtTheImport() {
        for (boolean throttle : new boolean[] {true, false}) {
            Path blip = file("blip" + throttle + "/A1-1.csv", log(throttle, 0, true, 100));
            String rises = throttle ? "engine speed rises at full throttle at 1." : "engine speed rises at ";

            assertThat(preview(blip).words()).contains("one pull", rises, "passed over");
        }
        Run taken = Run.of("import", test, folder.resolve("bliptrue/A1-1.csv"), "--corrected", "none").succeeded();
        assertThat(taken.words()).contains("A1-1", "100 kW", "too low, too quick or too slow beside the others for a pull");
    }

    @Test
    void pullsOfALogAreJudgedAsIfEachHadComeAlone() throws IOException {
        Path single = SmallTest.make(folder.resolve("single"), "ABA", "--worthwhile", "2kW", "--refit-scatter", "0.5kW", "--refit-df", "8");
        List<Path> files = SmallTest.exports(folder.resolve("exports"), "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2", KILOWATTS);
        Run.of(SmallTest.words("import", single, files, "--corrected", "none")).succeeded();
        for (int install = 0; install < 3; install++) {
            Path log = file("log" + install + ".csv", log(install % 2 == 0, 5, true, KILOWATTS[2 * install], KILOWATTS[2 * install + 1]));
            Run.of("import", test, log, "--install", List.of("A1", "B1", "A2").get(install), "--corrected", "none").succeeded();
            assertThat(Files.readAllBytes(test.resolve("pulls/" + List.of("A1", "B1", "A2").get(install) + "-1.csv")))
                    .isEqualTo(Files.readAllBytes(log));
        }

        assertThat(figures(test)).usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
                .containsExactlyElementsOf(figures(single));
        assertThat(figures(test).get(0)).isCloseTo((102.2 + 102.0) / 2 - (100.1 + 100.4 + 100.3 + 100.0) / 4, within(0.2));
        try (var kept = Files.list(test.resolve("pulls"))) {
            assertThat(kept).hasSize(3);
        }
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).contains("\"numberInFile\":1", "\"numberInFile\":2");
        assertThat(Run.of("check", test).succeeded().out()).doesNotContain("by hand", "not in the log");
    }

    private static List<Double> figures(Path test) {
        JsonNode finding = Run.of("judge", test, "--json").succeeded().json();
        List<Double> figures = new ArrayList<>();
        for (String figure : List.of("estimate", "standardError")) {
            figures.add(finding.get(figure).asDouble());
        }
        finding.get("installs").forEach(install -> figures.add(install.get("mean").asDouble()));
        return figures;
    }

    @Test
    void ofAThrottleAndAPedalThePlateTellsWhereItIsFull() {
        String both = log(true, 0, false, 100, 101).replaceAll("(?m)^(.*),(\\d+|Throttle \\(%\\))$", "$1,$2,$2").replaceFirst(
                "Throttle \\(%\\),Throttle \\(%\\)", "TPS (%),Pedal (%)").replaceAll(",12\n", ",9\n");
        Path named = file("named.csv", both);
        Path open = file("open.csv", both.replaceFirst("TPS \\(%\\),Pedal", "Throttle A (%),Throttle B"));

        assertThat(preview(named).words()).contains("“TPS (%)” tells where the throttle is full, not “Pedal (%)”", "at full throttle at");
        assertThat(preview(open).words()).contains("“Throttle A (%)”, “Throttle B (%)” could each be the throttle",
                "--column fraction=\"Throttle A (%)\"").doesNotContain("at full throttle at");
        Run.of("import", test, named, "--install", "A1", "--corrected", "none").succeeded();
        assertThat(SmallTest.read(test.resolve("mapping.json"))).contains("TPS (%)").doesNotContain("Pedal");
    }

    @Test
    void thePreviewSaysThatPowerColumnsCannotBePaired() {
        String text = "Engine Speed (rpm),Engine Power (kW),Wheel Power 2 (kW)\n2000,50.5,45\n3000,60.5,55\n4000,70.5,61\n";

        assertThat(preview(file("two.csv", text)).words()).contains("corrected twice or not at all cannot be checked");
        assertThat(preview(file("pair.csv", text.replace("Wheel Power 2", "Engine Power corr"))).words()).doesNotContain("cannot be checked");
    }

    @Test
    void pullsOfALogAreReadAnewOnTheSameBytes() {
        Path log = file("metric.csv", log(true, 0, false, 100, 103).replace("kW", "PS"));
        Run.of("import", test, log, "--install", "A1", "--corrected", "none").succeeded();
        Run.of("import", test, SmallTest.export(folder.resolve("B1-1.csv"), 102), "--corrected", "none").succeeded();
        Run.of("import", test, SmallTest.export(folder.resolve("A2-1.csv"), 101), "--corrected", "none").succeeded();
        assertThat(installMeans()).first().satisfies(mean -> assertThat(mean).isCloseTo(101.5 * 0.73549875, within(1e-3)));

        Run.of("import", test, log, "--install", "A1", "--column", "power=Power (PS):kW", "--because", "the unit was kW").succeeded();

        assertThat(installMeans()).first().satisfies(mean -> assertThat(mean).isCloseTo(101.5, within(1e-9)));
        String entries = SmallTest.read(test.resolve("log.jsonl"));
        assertThat(entries.lines().filter(line -> line.contains("pull-taken"))).hasSize(6);
        assertThat(entries.lines().filter(line -> line.contains("\"numberInFile\":2"))).hasSize(2);
    }

    private List<Double> installMeans() {
        List<Double> means = new ArrayList<>();
        Run.of("judge", test, "--json").json().get("installs").forEach(install -> means.add(install.get("mean").asDouble()));
        return means;
    }

    @Test
    void whichInstallTheyAreIsAskedAndOnePullIsTakenWhereThatIsSaid() {
        Path file = file("A1-1.csv", log(false, 0, false, 100, 103));

        Run.of("import", test, file).refused(3, "the file holds 2 pulls (engine speed rises at", "--install B1", "--one-pull");
        Run one = Run.of("import", test, file, "--one-pull", "--corrected", "none").succeeded();
        assertThat(one.words()).contains("A1-1", "Several sweeps in one log");
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).doesNotContain("numberInFile");
    }
}
