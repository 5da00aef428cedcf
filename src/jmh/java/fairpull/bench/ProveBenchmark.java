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
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Campaigns per second of {@code prove}: whole command lines of 10,000 campaigns of A/B/A/B/A with five pulls an install, from the words
 * typed to the document printed. The first is the one there is a target for, 150,000 per second on two cores.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ProveBenchmark {
    private static final int CAMPAIGNS = 10_000;

    /** Judged by their own data: the closed form. */
    @Benchmark
    @OperationsPerInvocation(CAMPAIGNS)
    public String ownData() {
        return prove();
    }

    /** The same with a look after the third install. */
    @Benchmark
    @OperationsPerInvocation(CAMPAIGNS)
    public String ownDataWithALook() {
        return prove("--looks", "of:3,5");
    }

    /** A drift is modelled, so that the likelihood has to be searched for every campaign. */
    @Benchmark
    @OperationsPerInvocation(CAMPAIGNS)
    public String ownDataWithDrift() {
        return prove("--drift", "linear");
    }

    /** Judged with a record of refit scatter, the truth drawn from what it leaves open. */
    @Benchmark
    @OperationsPerInvocation(CAMPAIGNS)
    public String withARecord() {
        return prove("--refit-df", "11");
    }

    private static String prove(String... more) {
        List<String> words = new ArrayList<>(List.of("prove", "--sequence", "ABABA", "--pulls", "5", "--pull-scatter", "1.2",
                "--refit-scatter", "0.6", "--gain", "3", "--campaigns", String.valueOf(CAMPAIGNS), "--json"));
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
