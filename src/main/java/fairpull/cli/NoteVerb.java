package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.pulls.NotePull;
import fairpull.app.usecase.pulls.NoteTable;
import fairpull.app.usecase.running.RunDay;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code note}: what stands beside a pull. */
@Command(name = "note",
        description = "Writes down what stands beside a pull: its time, conditions, typed values, an abort, a gate that did not hold, "
                + "a remark; or a whole notebook as a table (columns pull, time, conditions and measures with their units in the header).",
        footer = {"  fairpull note pump-test B1-3 --at 2026-05-09T11:20:00+02:00 \\",
            "      --condition intake-air=24C --condition coolant=88C",
            "  fairpull note pump-test B1-4 --aborted \"wheel slip\"",
            "  fairpull note pump-test --table notebook.csv"})
final class NoteVerb extends Verb {
    @Parameters(index = "0", paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PULL",
            description = "The pull, such as B1-3 or A1-W2; for a remark also an install.")
    private String subject;

    @Option(names = "--table", paramLabel = "FILE", description = "A notebook as a table.")
    private Path table;

    @Option(names = "--at", paramLabel = "TIME", description = "When the pull started, such as 2026-05-09T09:42:00+02:00.")
    private String at;

    @Option(names = "--condition", paramLabel = "NAME=READING",
            description = "A reading with its unit: intake-air=24C, coolant=88C, oil=95C, gearbox=70C, barometer=1003hPa, "
            + "humidity=45%%, tyre-pressure=30psi.")
    private List<String> conditions = List.of();

    @Option(names = "--value", paramLabel = "[MEASURE=]VALUE",
            description = "A typed value with its unit: 13.42s, or \"trap speed=104.1mph\".")
    private List<String> values = List.of();

    @Option(names = "--corrected", paramLabel = "STANDARD",
            description = "What a typed power or torque is corrected to; none: as measured.")
    private String corrected;

    @Option(names = "--aborted", paramLabel = "WHY", description = "The pull was started and not finished.")
    private String aborted;

    @Option(names = "--gate-overridden", paramLabel = "CONDITION=WHY", description = "The pull was run although this gate did not hold.")
    private List<String> overridden = List.of();

    @Option(names = "--remark", paramLabel = "TEXT", description = "Anything else.")
    private String remark;

    @Option(names = "--run", description = "The pull was run; its export comes later. It started at --at, or now.")
    private boolean run;

    @Option(names = "--swap", paramLabel = "started|finished", description = "The swap to the install named in place of the pull.")
    private String swap;

    @Option(names = "--end-day", paramLabel = "WHY",
            description = "The day ends before all of its pulls were run; what is missing will not come any more.")
    private String endOfDay;

    @Option(names = "--take-back", paramLabel = "ENTRY",
            description = "An entry of the day, by its number in the log, was a mistake; it stays in the log and no longer stands.")
    private Integer entry;

    @Override
    protected void work() throws IOException {
        if (entry != null) {
            refuseBeside("--take-back", "it stands for itself");
            RunDay.of(folder).takeBack(entry, now());
            answer(Receipt.noted(List.of("entry " + entry + " taken back")));
        } else if (endOfDay != null) {
            refuseBeside("--end-day", "it stands for itself");
            RunDay.of(folder).end(endOfDay, now());
            answer(Receipt.noted(List.of("the end of the day")));
        } else if (swap != null) {
            RunDay.of(folder).swapped(String.valueOf(subject), JudgingOptions.constant("--swap", swap, LogEntry.Swap.Phase.values()),
                    time(), now());
            answer(Receipt.noted(List.of("swap to " + subject + " " + swap)));
        } else if (table != null) {
            if (subject != null) {
                throw new UsageException("--table", "a notebook names its pulls itself; leave “" + subject + "” out");
            }
            refuseBeside("--table", "a notebook holds all that is noted");
            answer(Receipt.noted(NoteTable.note(folder, table, now())));
        } else if (subject == null || PullId.parse(subject).isEmpty()) {
            remarkOnly();
        } else {
            noteOne(PullId.parse(subject).orElseThrow());
        }
    }

    private void remarkOnly() throws IOException {
        if (remark == null) {
            throw new UsageException("PULL", "expected a pull such as B1-3 or A1-W2" + (subject == null ? "" : ", found “" + subject + "”")
                    + "; without one only a --remark can be noted");
        }
        refuseBeside("--remark", "without a pull only a remark can be noted");
        NotePull.remark(folder, Optional.ofNullable(subject), remark, now());
        answer(Receipt.noted(List.of(subject == null ? "the test" : subject)));
    }

    private void refuseBeside(String only, String why) {
        given().filter(option -> !option.equals("--json") && !option.equals(only)).findFirst().ifPresent(option -> {
            throw new UsageException(option, "does not go with " + only + ": " + why);
        });
    }

    private OffsetDateTime time() {
        return Optional.ofNullable(at).map(ImportVerb::time).orElseGet(this::now);
    }

    private void noteOne(PullId pull) throws IOException {
        NotePull.Note note = note(pull);
        boolean onlyRun = run && given().filter(option -> !option.equals("--json")).allMatch(Set.of("--run", "--at")::contains);
        if (run) {
            RunDay.of(folder).run(pull, time(), Optional.of(note).filter(beside -> !onlyRun && !beside.isEmpty()), now());
        } else if (note.isEmpty()) {
            throw new UsageException("note", "nothing to write down; give --run, --at, --condition, --value, --aborted, "
                    + "--gate-overridden or --remark");
        } else {
            NotePull.note(folder, List.of(note), now());
        }
        answer(Receipt.noted(List.of(pull.toString())));
    }

    private NotePull.Note note(PullId pull) {
        Map<String, String> typed = new TreeMap<>();
        for (String value : values) {
            int equals = value.indexOf('=');
            typed.put(equals < 0 ? "" : value.substring(0, equals).strip(), value.substring(equals + 1).strip());
        }
        return new NotePull.Note(pull, Optional.ofNullable(at).map(ImportVerb::time), byCondition("--condition", conditions),
                typed, Optional.ofNullable(corrected).map(word -> JudgingOptions.constant("--corrected", word, Correction.values())),
                Optional.ofNullable(aborted), byCondition("--gate-overridden", overridden), Optional.ofNullable(remark));
    }

    private static Map<Condition, String> byCondition(String option, List<String> typed) {
        Map<Condition, String> readings = new EnumMap<>(Condition.class);
        Pairs.of(option, typed).forEach((name, reading) ->
                readings.put(JudgingOptions.constant(option, name, Condition.values()), reading));
        return readings;
    }
}
