package fairpull.app.usecase;

import fairpull.domain.InputException;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Measure;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.Notebook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Takes a whole notebook: when each pull started, what was read beside it, values typed in. */
public final class NoteTable {
    private static final String TIME = "time";
    private static final String ABORTED = "aborted";
    private static final String REMARK = "remark";

    private NoteTable() {
    }

    /** Writes the notebook's lines into the log, all of them or none; returns the pulls it was about. */
    public static List<String> note(Path folder, Path table, OffsetDateTime now) throws IOException {
        List<String> measures = TestFolder.open(folder).read().plan().question().measures().stream().map(Measure::name).toList();
        List<NotePull.Note> notes = new ArrayList<>();
        for (Notebook.Line line : Notebook.read(table).lines()) {
            try {
                notes.add(note(line, measures));
            } catch (UsageException misunderstood) {
                throw new InputException(line.place(), misunderstood.getMessage(), "correct it there");
            }
        }
        NotePull.note(folder, notes, now);
        return notes.stream().map(one -> one.pull().toString()).toList();
    }

    private static NotePull.Note note(Notebook.Line line, List<String> measures) {
        Map<Condition, String> conditions = new EnumMap<>(Condition.class);
        Map<String, String> values = new TreeMap<>();
        Map<String, String> rest = new TreeMap<>(line.cells());
        for (Condition condition : Condition.values()) {
            Optional.ofNullable(rest.remove(condition.id())).ifPresent(reading -> conditions.put(condition, reading));
        }
        for (String measure : measures) {
            Optional.ofNullable(rest.remove(measure.toLowerCase(Locale.ROOT))).ifPresent(value -> values.put(measure, value));
        }
        Optional<OffsetDateTime> startedAt = Optional.ofNullable(rest.remove(TIME)).map(text -> time(text, line));
        Optional<String> aborted = Optional.ofNullable(rest.remove(ABORTED));
        Optional<String> remark = Optional.ofNullable(rest.remove(REMARK));
        rest.keySet().stream().findFirst().ifPresent(unknown -> {
            throw new InputException(line.place(), "there is no condition or measure “" + unknown + "”",
                    "columns may be pull, time, aborted, remark, a measure of the plan, or one of "
                            + String.join(", ", List.of(Condition.values()).stream().map(Condition::id).toList()));
        });
        return new NotePull.Note(Planned.parse(line.pull()), startedAt, conditions, values, Optional.empty(), aborted, Map.of(), remark);
    }

    private static OffsetDateTime time(String text, Notebook.Line line) {
        try {
            return OffsetDateTime.parse(text.replace(' ', 'T'));
        } catch (DateTimeException malformed) {
            throw new InputException(line.place(), "“" + text + "” is no time",
                    "write it with its offset, such as 2026-05-09T09:42:00+02:00");
        }
    }
}
