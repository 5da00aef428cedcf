package fairpull.app.usecase.pulls;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.keeping.Planned;
import fairpull.domain.InputException;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Measure;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.Notebook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Takes a whole notebook: when each pull started, what was read beside it, values typed in. */
public final class NoteTable {
    private static final String TIME = "time";
    private static final String ABORTED = "aborted";
    private static final String REMARK = "remark";
    /** Date, clock and offset where a blank stands for the T or before the offset. */
    private static final Pattern TIME_BLANKS = Pattern.compile("^(\\S+?)(?:T|\\s+)(\\d\\S*?)\\s*(Z|[+-]\\d\\S*)?$");

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
            reading(condition, rest, line).ifPresent(reading -> conditions.put(condition, reading));
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

    private static Optional<String> reading(Condition condition, Map<String, String> rest, Notebook.Line line) {
        List<String> columns = names(condition).stream().filter(rest::containsKey).toList();
        if (columns.size() > 1) {
            throw new InputException(line.place(), "the columns " + String.join(" and ", columns) + " are both " + condition.words(),
                    "leave one of them out");
        }
        return columns.stream().findFirst().map(rest::remove);
    }

    /** The name in files, and what the program prints for it, with or without when it is read. */
    private static Set<String> names(Condition condition) {
        String words = condition.words().toLowerCase(Locale.ROOT);
        return new LinkedHashSet<>(List.of(condition.id(), condition.id().replace('-', ' '), words, words.replace(" at pull start", "")));
    }

    private static OffsetDateTime time(String text, Notebook.Line line) {
        String joined = TIME_BLANKS.matcher(text.strip()).replaceFirst("$1T$2$3");
        try {
            return OffsetDateTime.parse(joined);
        } catch (DateTimeException malformed) {
            throw new InputException(line.place(), "“" + text + "” is no time" + (isLocal(joined) ? " without its offset" : ""),
                    "write it with its offset, such as 2026-05-09T09:42:00+02:00 or 2026-05-09 09:42+02:00");
        }
    }

    private static boolean isLocal(String text) {
        try {
            LocalDateTime.parse(text);
            return true;
        } catch (DateTimeException malformed) {
            return false;
        }
    }
}
