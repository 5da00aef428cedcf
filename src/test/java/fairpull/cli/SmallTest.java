package fairpull.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A small test of power over a band, and exports for it; all of it invented. */
final class SmallTest {
    private SmallTest() {
    }

    /** Makes a test with two counted pulls an install, where nothing else is said, and no warm-ups. */
    static Path make(Path folder, String sequence, Object... more) {
        List<Object> words = new ArrayList<>(List.of("new", folder, "--part-a", "belt pump", "--part-b", "electric pump", "--measure",
                "mean power 3000-6000 rpm in kW", "--sequence", sequence, "--warm-ups", "0"));
        words.addAll(List.of(more));
        if (!words.contains("--pulls")) {
            words.addAll(List.of("--pulls", "2"));
        }
        Run.of(words.toArray()).succeeded();
        return folder;
    }

    /** Writes an export whose power is flat over 2000 to 7000 rpm. */
    static Path export(Path file, double kilowatts) {
        StringBuilder text = new StringBuilder("Engine Speed (rpm),Power (kW)\n");
        for (int rpm = 2000; rpm <= 7000; rpm += 250) {
            text.append(rpm).append(',').append(String.format(Locale.ROOT, "%.3f", kilowatts)).append('\n');
        }
        return write(file, text.toString());
    }

    /** Writes one export a pull, named by its pull, the values in the order of the names. */
    static List<Path> exports(Path folder, String names, double... kilowatts) {
        List<Path> files = new ArrayList<>();
        String[] pulls = names.split(" ");
        for (int i = 0; i < pulls.length; i++) {
            files.add(export(folder.resolve(pulls[i] + ".csv"), kilowatts[i]));
        }
        return files;
    }

    static Path write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            return Files.writeString(file, text);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /** {@return a command line: a verb, a test, some files and further words} */
    static Object[] words(String verb, Path test, List<Path> files, Object... more) {
        List<Object> words = new ArrayList<>(List.of(verb, test));
        words.addAll(files);
        words.addAll(List.of(more));
        return words.toArray();
    }
}
