package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.shelf.RigRecords;
import fairpull.domain.plan.Correction;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code rig}: the rig record, from repeated baselines. */
@Command(name = "rig", synopsisSubcommandLabel = "ACTION", subcommands = {RigVerb.Add.class, RigVerb.Show.class, RigVerb.Report.class},
        description = "Keeps what a rig is known to scatter: from baselines of an unchanged car, repeated over installs and sessions. "
                + "Records of one rig, measure, correction, bandwidth and manner of strapping pool; others stay apart.",
        footerHeading = "%nFor instance:%n", footer = {"  fairpull rig add baselines.csv --records my-rig --name "
                + "\"rollers 1\" \\",
            "      --measure \"mean power 3000-6500 rpm in hp\" --level 190hp --restrapped",
            "  fairpull rig show --records my-rig"})
final class RigVerb implements Runnable {
    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help and do nothing.")
    private boolean help;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "rig: name an action: add, show or report");
    }

    /** The folder of records. */
    static final class Folder {
        @Option(names = "--records", required = true, paramLabel = "FOLDER", description = "The folder of the rig records.")
        private Path records;
    }

    /** {@code rig add}: takes baselines in. */
    @Command(name = "add", description = "Adds baselines: a plain table (columns install and value; session, pull and part where known; "
            + "sessions named by dates such as 2026-03-14 are put in order), or the A installs of a test.",
            footer = {"  fairpull rig add baselines.csv --records my-rig --name \"rollers 1\" \\",
                "      --measure \"mean power 3000-6500 rpm in hp\" --level 190hp --restrapped"})
    static final class Add extends Verb {
        @Parameters(arity = "0..1", paramLabel = "TABLE", description = "The table, one row a pull, values in the unit of the measure.")
        private Path table;

        @Option(names = "--test", paramLabel = "TEST", description = "A test instead: its A installs, by its own plan.")
        private Path test;

        @CommandLine.Mixin
        private Folder folder;

        @Option(names = "--measure", paramLabel = "TEXT", description = "The measure with its unit, as in `fairpull new`.")
        private String measure;

        @Option(names = "--level", paramLabel = "AMOUNT",
                description = "The level of the measure that scatter is relative to; the same for every table of one car.")
        private String level;

        @Option(names = "--name", paramLabel = "TEXT", description = "Which rig, as in `fairpull new --rig-name`; default our rig.")
        private String name;

        @Option(names = "--correction", paramLabel = "STANDARD", description = "The standard that the values are brought to; default none.")
        private String correction;

        @Option(names = "--bandwidth", paramLabel = "RPM", description = "The bandwidth to which curves were smoothed, where they were.")
        private String bandwidth;

        @Option(names = "--restrapped", description = "The car was unstrapped and strapped down anew between installs.")
        private boolean restrapped;

        @Option(names = "--straps-stay", description = "The straps were left alone between installs.")
        private boolean strapsStay;

        @Override
        protected void work() throws IOException {
            if ((table == null) == (test == null)) {
                throw new UsageException("TABLE", table == null ? "is missing; name a table of baselines, or a test with --test TEST"
                        : "add a table or a test, not both; leave “" + table + "” or --test out");
            }
            if (test != null) {
                given().filter(option -> !option.matches("--json|--test|--records|--level")).findFirst().ifPresent(option -> {
                    throw new UsageException(option, "belongs to a table; a test is taken by its own plan");
                });
                answer(RigRecords.addTest(test, folder.records, level, now()));
                return;
            }
            if (restrapped == strapsStay) {
                throw new UsageException("--restrapped", restrapped ? "contradicts --straps-stay; the two are different records"
                        : "is missing, or --straps-stay: refits that unstrap the car and refits that leave it strapped are "
                                + "different records");
            }
            RigRecords.Key key = new RigRecords.Key(name == null ? "our rig" : name, required("--measure", measure),
                    correction == null ? Correction.NONE : JudgingOptions.constant("--correction", correction, Correction.values()),
                    bandwidth, required("--level", level), restrapped);
            answer(RigRecords.addTable(table, folder.records, key, now()));
        }

        private static String required(String option, String value) {
            if (value == null) {
                throw new UsageException(option, "is missing");
            }
            return value;
        }
    }

    /** {@code rig show}: says what is known. */
    @Command(name = "show", description = "Says what the records come to: scatter layer by layer, repeatability limits, the chart "
            + "in words, "
            + "and from when the rig looks changed.", footer = "  fairpull rig show --records my-rig")
    static final class Show extends Verb {
        @CommandLine.Mixin
        private Folder folder;

        @Override
        protected void work() throws IOException {
            answer(RigRecords.show(folder.records));
        }
    }

    /** {@code rig report}: the same as a page. */
    @Command(name = "report", description = "Writes what the records come to as one self-contained HTML file, with the chart of "
            + "install means.",
            footer = "  fairpull rig report --records my-rig --out my-rig.html")
    static final class Report extends Verb {
        @CommandLine.Mixin
        private Folder folder;

        @Option(names = "--out", required = true, paramLabel = "FILE", description = "Where to write it.")
        private Path out;

        @Override
        protected void work() throws IOException {
            answer(RigRecords.report(folder.records, out, now()));
        }
    }
}
