package fairpull.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * How long the window takes from the start of its process to its first painted frame: {@code StartTime JAR RUNS}, on a display. Measured
 * with a class-data archive and without one, and beside it a bare window of the same look, which tells how loaded the machine is. The four
 * take turns, so that a busy spell hits all of them; what is given is the median of each.
 */
public final class StartTime {
    private static final String MARK = "painted after ";
    private static final int LONGEST_S = 60;

    private StartTime() {
    }

    /** Measures and prints. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(arguments[0]).toAbsolutePath();
        int runs = Integer.parseInt(arguments[1]);
        Path folder = Files.createTempDirectory("start-time");
        String path = jar + java.io.File.pathSeparator + jar.resolveSibling("lib") + java.io.File.separator + "*"
                + java.io.File.pathSeparator + testClasses(folder);
        List<Way> ways = new ArrayList<>();
        for (Class<?> main : List.of(FirstPaint.class, BareWindow.class)) {
            Path archive = folder.resolve(main.getSimpleName() + ".jsa");
            ways.add(new Way(main, path, folder, "", new ArrayList<>()));
            new Way(main, path, folder, "-XX:ArchiveClassesAtExit=" + archive, new ArrayList<>()).run();
            ways.add(new Way(main, path, folder, "-XX:SharedArchiveFile=" + archive, new ArrayList<>()));
        }
        for (int run = 0; run < runs; run++) {
            for (Way way : ways) {
                way.taken().add(way.run());
            }
        }
        for (int archived = 0; archived < 2; archived++) {
            double ours = ways.get(archived).median();
            double bare = ways.get(archived + 2).median();
            System.out.printf(Locale.ROOT, "%s archive: window %.0f ms, bare window %.0f ms, ratio %.2f (%d runs, medians)%n",
                    archived == 0 ? "without" : "with", ours, bare, ours / bare, runs);
        }
    }

    /** An archive is made of jars only, so the two mains below go into one. */
    private static Path testClasses(Path folder) throws IOException, InterruptedException {
        Path mains = folder.resolve("mains.jar");
        Path classes = Path.of("target", "test-classes");
        List<String> command = new ArrayList<>(List.of(tool("jar"), "--create", "--file", mains.toString(), "-C", classes.toString()));
        try (Stream<Path> files = Files.list(classes.resolve("fairpull/ui"))) {
            List<String> wanted = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches("(FirstPaint|BareWindow).*\\.class")).map(name -> "fairpull/ui/" + name).toList();
            command.add(wanted.get(0));
            wanted.stream().skip(1).forEach(name -> command.addAll(List.of("-C", classes.toString(), name)));
        }
        if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
            throw new IllegalStateException("no jar of the mains");
        }
        return mains;
    }

    private static String tool(String name) {
        return Path.of(System.getProperty("java.home"), "bin", name).toString();
    }

    /** One of the four ways to start. */
    private record Way(Class<?> main, String path, Path folder, String option, List<Double> taken) {
        double run() throws IOException, InterruptedException {
            List<String> command = new ArrayList<>(List.of(tool("java"), "-Xshare:auto", "-Dfairpull.home=" + folder.resolve("home")));
            if (!option.isEmpty()) {
                command.add(option);
            }
            command.addAll(List.of("-cp", path, main.getName()));
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes());
            if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS) || !said.contains(MARK)) {
                process.destroyForcibly();
                throw new IllegalStateException("it did not paint: " + said);
            }
            String figure = said.substring(said.indexOf(MARK) + MARK.length());
            return Double.parseDouble(figure.substring(0, figure.indexOf(' ')));
        }

        double median() {
            double[] sorted = taken.stream().mapToDouble(Double::doubleValue).toArray();
            Arrays.sort(sorted);
            return sorted[sorted.length / 2];
        }
    }
}
