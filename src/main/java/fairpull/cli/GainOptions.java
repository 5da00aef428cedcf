package fairpull.cli;

import picocli.CommandLine.Option;

/** The gain that a sequence is to find, and the chance wanted of finding it. */
final class GainOptions {
    @Option(names = "--gain", paramLabel = "X", description = "The gain to be found, needed, in the unit of the scatter.")
    private String gain;

    @Option(names = "--power-wanted", defaultValue = "0.8", paramLabel = "P",
            description = "Chance wanted of finding it; default ${DEFAULT-VALUE}.")
    private String powerWanted;

    void require(Missing missing) {
        missing.unless(gain, "--gain", "3");
    }

    double gain() {
        return Numbers.positive("--gain", gain);
    }

    double powerWanted() {
        return Numbers.share("--power-wanted", powerWanted, 1);
    }
}
