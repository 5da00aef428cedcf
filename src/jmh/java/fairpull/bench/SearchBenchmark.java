package fairpull.bench;

import fairpull.cli.CommandLineProgram;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Milliseconds of a whole {@code search} of up to ten installs, two to ten pulls, in hours that leave no day out, from the words typed to
 * the document printed. There is a target of one second on two cores.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SearchBenchmark {
    @Benchmark
    public String withoutDrift() {
        return search("--drift", "none");
    }

    /** More classes of orders than without. */
    @Benchmark
    public String withQuadraticDrift() {
        return search("--drift", "quadratic");
    }

    /** Breaks make every order a class of its own. */
    @Benchmark
    public String withDriftAndABreak() {
        return search("--drift", "linear", "--start", "6:00", "--break", "12:00+60");
    }

    private static String search(String... more) {
        List<String> words = new ArrayList<>(List.of("search", "--hours", "17", "--any-first", "--pull-scatter", "1.2",
                "--refit-scatter", "0.6", "--gain", "3", "--json"));
        words.addAll(List.of(more));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLineProgram(new PrintWriter(out), new PrintWriter(err), Clock.systemUTC()).runVerb(words);
        if (status != 0) {
            throw new IllegalStateException(err.toString());
        }
        return out.toString();
    }
}
