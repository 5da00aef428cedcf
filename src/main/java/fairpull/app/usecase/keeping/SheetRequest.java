package fairpull.app.usecase.keeping;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.write.Paper;
import fairpull.report.write.SheetOptions;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a run sheet is asked to be, as typed.
 *
 * @param paper {@code a4} or {@code letter}
 * @param units {@code metric} or {@code us}
 * @param date a day such as {@code 2026-05-09}; empty for none
 * @param start a time of day such as {@code 9:00}; empty for none
 */
public record SheetRequest(String paper, String units, String date, String start) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

    SheetOptions options() {
        return new SheetOptions(oneOf("--paper", Paper.values(), paper), oneOf("--units", UnitSystem.values(), units),
                parsed("--date", date, LocalDate::parse, "a day such as 2026-05-09"));
    }

    /** {@return the plan with the start of every day that was typed; its own where none was} */
    Plan starting(Plan plan) {
        return parsed("--start", start, text -> LocalTime.parse(text, CLOCK), "a time of day such as 9:00")
                .map(time -> plan.with(plan.sequence().withLabelled(plan.sequence().sessions().stream()
                        .map(session -> session.with(hours(session, time))).toList())))
                .orElse(plan);
    }

    private static Hours hours(Session session, LocalTime time) {
        try {
            return session.hours().map(hours -> hours.startingAt(time)).orElseGet(() -> new Hours(time, Optional.empty(), List.of()));
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException("--start", contradiction.getMessage());
        }
    }

    private static <E extends Enum<E>> E oneOf(String option, E[] all, String typed) {
        return Arrays.stream(all).filter(one -> one.name().equalsIgnoreCase(typed)).findFirst()
                .orElseThrow(() -> new UsageException(option, "expected " + Arrays.stream(all)
                        .map(one -> one.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(" or ")) + ", found “" + typed + "”"));
    }

    private static <T> Optional<T> parsed(String option, String typed, Function<String, T> parse, String expected) {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(typed));
        } catch (DateTimeException misunderstood) {
            throw new UsageException(option, "expected " + expected + ", found “" + typed + "”");
        }
    }
}
