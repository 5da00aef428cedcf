package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is typed and whatever the files hold: never a fault of the program, never a stack trace. Seeded; no two seeds alike. */
class AnyInputTest {
    private static final List<String> VERBS = List.of("size", "new", "check", "seal", "import", "note", "amend", "exclude", "judge", "report",
            "demo", "open", "");
    private static final List<String> OPTIONS = List.of("--json", "--table", "--drift", "--sides", "--better", "--alpha", "--worthwhile",
            "--covariate", "--drawn", "--unit", "--refit-scatter", "--refit-df", "--pull-scatter", "--pull-df", "--sequence", "--pulls",
            "--warm-ups", "--gain", "--power-wanted", "--interval", "--swap", "--set-up", "--title", "--remark", "--part-a", "--part-b",
            "--measure", "--further", "--correction", "--expected", "--claim", "--rig", "--rig-name", "--gear", "--draw", "--straps-stay",
            "--again", "--install", "--pull", "--warm-up", "--column", "--corrected", "--at", "--preview", "--condition", "--value",
            "--aborted", "--gate-overridden", "--set", "--plan", "--because", "--readmit", "--without-identity", "--help", "--version");
    private static final List<String> WORDS = List.of("", " ", "0", "1", "-1", "5", "1e9", "1e308", "1e-308", "1e999", "NaN", "inf", "∞", "−3",
            "0.05", "0,5", "99999999999999999999", "ABABA", "ABA|BAB", "A", "AB".repeat(200), "|", "none", "linear", "quadratic", "one", "less",
            "3hp", "2%", "12 parsec", "30C", "-500C", "9e99K", "mean power 3000-6000 rpm in kW", "peak torque in N·m", "power at 4000 rpm in hp",
            "time 60-100 km/h in s", "typed trap speed in mph", "typed x in x, less is better", "mean power 0-0 rpm in kW",
            "power at 1e999 rpm in kW", "A1", "B1", "A1-1", "B1-2", "A1-W1", "Z9-9", "A999-9999", "intake-air=24C", "coolant=hot", "=", "x=",
            "=x", "oil=because", "trap speed=3mph", "power=2:kW", "power=\"x\":", "engine-speed=-1", "iat_c", "value", "minutes", "part",
            "title=x", "title", ".", "..", ".=1", "question.errorRate=0.1", "question.errorRate=9", "sequence.sessions.0.installs.0=1",
            "sequence.sessions.99.installs=[]", "sequence.sessions=[]", "question.worthwhileGainSi=null", "rig.refitScatter={}",
            "question.deciding.definition={\"kind\":\"typed\",\"quantity\":\"time\"}", "checklist.0=" + "x".repeat(400), "schemaVersion=3",
            "2026-05-09T09:42:00+02:00", "+999999999-12-31T23:59:59-18:00", "-999999999-01-01T00:00:00+18:00", "noon", "2026-02-30T00:00:00Z",
            "@", "@/nothing", "%s%n", "${x}", "\u0000", "a\nb", "\u202e", "💨", "--", "-x", "--=", "x".repeat(5000), "[", "{\"a\":", "\\", "\"", "'");

    @TempDir
    private static Path made;

    @TempDir
    private Path folder;

    @BeforeAll
    static void aTestWithAllItsPulls() throws IOException {
        Path test = SmallTest.make(made.resolve("test"), "ABA", "--expected", "100kW", "--worthwhile", "2kW", "--further",
                "typed trap speed in mph", "--claim", "1kW", "--refit-scatter", "0.5kW", "--refit-df", "8", "--pull-scatter", "0.5kW");
        Run.of("seal", test).succeeded();
        Run.of("note", test, "A1-1", "--condition", "coolant=90C", "--at", "2026-05-09T09:42:00+02:00").succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(made.resolve("exports"), "A1-1 A1-2 B1-1 B1-2 A2-1",
                100.1, 100.4, 102.2, 102.0, 100.3), "--corrected", "none")).succeeded();
        Run.of("exclude", test, "A1-2", "--because", "slip").succeeded();
        Run.of("amend", test, "--set", "title=another", "--because", "x").succeeded();
        SmallTest.export(made.resolve("A2-2.csv"), 100.05);
        SmallTest.write(made.resolve("pulls.csv"), "install,part,pull,minutes,iat_c,value\nA1,A,1,0,20,100\nA1,A,2,5,21,101\nB1,B,1,30,20,103\n"
                + "B1,B,2,35,22,104\nA2,A,1,60,23,100.5\nA2,A,2,65,21,100.7\n");
        SmallTest.write(made.resolve("book.csv"), "pull,coolant (°C),time,trap speed (mph)\nA1-1,90,2026-05-09T09:42:00+02:00,104\n");
        byte[] noise = new byte[3000];
        new Random(3).nextBytes(noise);
        Files.write(made.resolve("noise.bin"), noise);
    }

    @Test
    void aFewRandomCommandLines() throws IOException {
        commandLines(1, 250);
    }

    @Test
    @Tag("slow")
    void twoThousandRandomCommandLines() throws IOException {
        commandLines(2, 2000);
    }

    @Test
    void aFewBytesThatWentWrong() throws IOException {
        wrongBytes(1, 60);
    }

    @Test
    @Tag("slow")
    void fiveHundredBytesThatWentWrong() throws IOException {
        wrongBytes(2, 500);
    }

    private void commandLines(long seed, int count) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < count; i++) {
            if (i % 10 == 0) {
                fresh();
            }
            Object[] words = commandLine(random).toArray();
            notAFault(Run.of(words));
        }
    }

    /** Half of the lines begin as a sound one of their verb; all end in random options and words. */
    private List<Object> commandLine(SplittableRandom random) {
        List<Object> words = new ArrayList<>();
        String verb = pick(VERBS, random);
        words.add(verb);
        if (verb.equals("demo") || random.nextBoolean()) {
            words.addAll(begun(verb));
        }
        for (int more = random.nextInt(6); more > 0; more--) {
            words.add(random.nextInt(3) == 0 ? pick(WORDS, random) : pick(OPTIONS, random));
            if (random.nextInt(4) > 0) {
                words.add(random.nextInt(3) == 0 ? file(random) : pick(WORDS, random));
            }
        }
        return words;
    }

    private List<Object> begun(String verb) {
        Path test = folder.resolve("test");
        return switch (verb) {
            case "size" -> List.of("--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "2");
            case "new" -> List.of(folder.resolve("new"), "--part-a", "a", "--part-b", "b", "--measure", "peak power in kW");
            case "import" -> List.of(test, folder.resolve("A2-2.csv"));
            case "note", "exclude" -> List.of(test, "A1-1");
            case "amend" -> List.of(test, "--because", "x");
            case "report" -> List.of(test, "--out", folder.resolve("report.html"));
            case "demo" -> List.of("--data", folder, "--into", folder);
            default -> List.of(test);
        };
    }

    private Path file(SplittableRandom random) {
        return folder.resolve(pick(List.of("test", "test/plan.json", "test/log.jsonl", "test/pulls", "pulls.csv", "book.csv", "A2-2.csv",
                "noise.bin", "none", "exports/A1-1.csv", "fresh/deep/down"), random));
    }

    private void wrongBytes(long seed, int count) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < count; i++) {
            fresh();
            Path file = folder.resolve("test").resolve(pick(List.of("plan.json", "log.jsonl", "mapping.json", "seal.json"), random));
            byte[] bytes = Files.readAllBytes(file);
            int place = random.nextInt(bytes.length);
            byte before = bytes[place];
            bytes[place] = random.nextBoolean() ? (byte) random.nextInt(256) : (byte) "{}[]\",:0123456789-eE.nul\n \\".charAt(random.nextInt(27));
            Files.write(file, bytes);
            String what = file.getFileName() + " byte " + place + " from " + before + " to " + bytes[place];
            for (Run run : List.of(Run.of("judge", folder.resolve("test")), Run.of("check", folder.resolve("test"), "--json"),
                    Run.of("note", folder.resolve("test"), "A1-1", "--remark", "x"),
                    Run.of("report", folder.resolve("test"), "--out", folder.resolve("report.html")))) {
                assertThat(run.status()).as(what + ": " + run).isIn(0, 3);
                notAFault(run);
            }
        }
    }

    private static void notAFault(Run run) {
        assertThat(run.status()).as("%s", run).isIn(0, 2, 3);
        assertThat(run.err()).as("%s", run.arguments()).doesNotContain("Exception", "\tat ", "fault of the program", "picocli");
        if (run.status() != 0) {
            assertThat(run.err().lines()).as("%s", run).hasSize(1);
            assertThat(run.out()).as("%s", run).satisfiesAnyOf(out -> assertThat(out).isEmpty(),
                    out -> assertThat(run.arguments().get(0)).isEqualTo("demo"));
        }
    }

    private void fresh() throws IOException {
        for (Path old : Folders.children(folder)) {
            Folders.remove(old);
        }
        Folders.copy(made, folder);
    }

    private static <T> T pick(List<T> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }
}
