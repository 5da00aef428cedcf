package fairpull.cli;

import fairpull.domain.finding.SizeQuestion;
import picocli.CommandLine.Option;

/** What every install of a sequence holds, and the times between pulls. */
final class InstallOptions {
    @Option(names = "--pulls", defaultValue = "5", paramLabel = "N", description = "Counted pulls per install; default ${DEFAULT-VALUE}.")
    private int pulls;

    @Option(names = "--warm-ups", defaultValue = "0", paramLabel = "N",
            description = "Warm-up pulls per install; default ${DEFAULT-VALUE}.")
    private int warmUps;

    @Option(names = "--interval", defaultValue = "5", paramLabel = "MIN",
            description = "Minutes from pull to pull; default ${DEFAULT-VALUE}.")
    private String interval;

    @Option(names = "--swap", defaultValue = "20", paramLabel = "MIN", description = "Minutes that a swap adds; default ${DEFAULT-VALUE}.")
    private String swap;

    int pulls() {
        return Numbers.whole("--pulls", pulls, 1, 1000);
    }

    int warmUps() {
        return Numbers.whole("--warm-ups", warmUps, 0, 100);
    }

    SizeQuestion.Clock clock(double setUpMinutes) {
        return new SizeQuestion.Clock(Numbers.positive("--interval", interval), Numbers.notNegative("--swap", swap), setUpMinutes);
    }
}
