package fairpull.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A full disk, near enough: while it lasts this process writes no file beyond a number of bytes ({@code prlimit} of Linux). */
final class LimitedDisk {
    private LimitedDisk() {
    }

    /** Something tried on it. */
    interface Work {
        void run() throws IOException;
    }

    /** Does something while a file may not grow beyond so many bytes. */
    static void within(long bytes, Work work) throws IOException {
        String before = limit();
        set(String.valueOf(bytes));
        try {
            work.run();
        } finally {
            set(before);
        }
    }

    private static String limit() throws IOException {
        return asked(List.of("prlimit", "--pid", String.valueOf(ProcessHandle.current().pid()), "--fsize", "--output", "SOFT", "--noheadings",
                "--raw"));
    }

    private static void set(String soft) throws IOException {
        asked(List.of("prlimit", "--pid", String.valueOf(ProcessHandle.current().pid()), "--fsize=" + soft + ":"));
    }

    private static String asked(List<String> words) throws IOException {
        Process process;
        try {
            process = new ProcessBuilder(words).redirectErrorStream(true).start();
        } catch (IOException missing) {
            Assumptions.abort("no prlimit on this system");
            return "";
        }
        String said = new String(process.getInputStream().readAllBytes()).strip();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new IOException(words + ": " + said);
            }
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        return said;
    }
}
