package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The other end of {@link WindowByLines}: a window in another process, which can be killed. */
final class FarWindow implements AutoCloseable {
    private final Process process;
    private final BufferedReader answers;
    private final PrintWriter orders;

    /** Starts the program on a test and waits for its window. */
    FarWindow(Path home, Path test, String clock) throws IOException {
        process = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfairpull.clock=" + clock, "-cp", System.getProperty("java.class.path"), WindowByLines.class.getName(), home.toString(),
                test.toString())).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        answers = process.inputReader(StandardCharsets.UTF_8);
        orders = new PrintWriter(process.outputWriter(StandardCharsets.UTF_8), true);
        answer("start");
    }

    private String answer(String order) throws IOException {
        List<String> said = new ArrayList<>();
        for (String line = answers.readLine(); line != null; line = answers.readLine()) {
            if (line.startsWith(WindowByLines.DONE)) {
                return line.substring(WindowByLines.DONE.length());
            }
            if (line.startsWith(WindowByLines.FAILED)) {
                throw new AssertionError(order + ": " + line.substring(WindowByLines.FAILED.length()));
            }
            said.add(line);
        }
        throw new AssertionError(order + ": the program ended, and said " + said);
    }

    /** Does one thing; {@return what was asked for} */
    String act(Object... words) throws IOException {
        String order = String.join("\t", List.of(words).stream().map(Object::toString).toList());
        orders.println(order);
        return answer(order);
    }

    /** Takes it away as a power cut does. */
    void kill() throws InterruptedException {
        assertThat(process.isAlive()).isTrue();
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws IOException {
        orders.close();
        process.destroyForcibly();
    }
}
