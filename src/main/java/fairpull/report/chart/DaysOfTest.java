package fairpull.report.chart;

import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The sessions of a test over the clock. A pull whose time is not known is placed between its neighbours as the plan has it;
 * where no time is known at all, the plan's times stand.
 */
public final class DaysOfTest {
    private DaysOfTest() {
    }

    /** {@return the sessions with the values of one measure} */
    public static List<Day> of(Judgement judgement, String measure) {
        Sequence sequence = judgement.plan().sequence();
        return sequence.sessions().stream().map(session -> day(judgement, session, measure)).toList();
    }

    private static Day day(Judgement judgement, Session session, String measure) {
        Sequence sequence = judgement.plan().sequence();
        Map<String, List<PullSeen>> byInstall = new LinkedHashMap<>();
        session.installs().forEach(install -> byInstall.put(install.label(), judgement.pulls().stream()
                .filter(pull -> pull.pull().install().equals(install.label())).toList()));
        List<PullSeen> pulls = byInstall.values().stream().flatMap(List::stream).toList();
        Map<PullSeen, Double> planned = planned(byInstall, sequence);
        Optional<OffsetDateTime> zero = zero(pulls);
        Map<PullSeen, Double> minutes = placed(pulls, planned, zero);
        List<Day.Block> blocks = new ArrayList<>();
        for (Install install : session.installs()) {
            List<PullSeen> own = byInstall.get(install.label());
            if (!own.isEmpty()) {
                blocks.add(block(install, own, minutes, measure, sequence.pullIntervalS() / 120));
            }
        }
        blocks.sort(Comparator.comparingDouble(Day.Block::start));
        OptionalDouble clock = zero.map(time -> OptionalDouble.of(time.getHour() * 60 + time.getMinute() + time.getSecond() / 60.0))
                .orElse(OptionalDouble.empty());
        return new Day(sequence.sessions().size() > 1 ? session.name() : "", apart(blocks), clock);
    }

    private static Map<PullSeen, Double> planned(Map<String, List<PullSeen>> byInstall, Sequence sequence) {
        Map<PullSeen, Double> planned = new LinkedHashMap<>();
        double clock = 0;
        for (List<PullSeen> pulls : byInstall.values()) {
            for (PullSeen pull : pulls) {
                planned.put(pull, clock);
                clock += sequence.pullIntervalS() / 60;
            }
            clock += sequence.swapS() / 60;
        }
        return planned;
    }

    /** The time of day of minute 0. */
    private static Optional<OffsetDateTime> zero(List<PullSeen> pulls) {
        Optional<OffsetDateTime> byMinutes = pulls.stream().filter(pull -> Double.isFinite(pull.minutes()))
                .flatMap(pull -> pull.startedAt().map(at -> at.minusSeconds(Math.round(pull.minutes() * 60))).stream()).findFirst();
        return byMinutes.or(() -> pulls.stream().flatMap(pull -> pull.startedAt().stream()).min(Comparator.naturalOrder()));
    }

    private static Map<PullSeen, Double> placed(List<PullSeen> pulls, Map<PullSeen, Double> planned, Optional<OffsetDateTime> zero) {
        TreeMap<Double, Double> known = new TreeMap<>();
        Map<PullSeen, Double> minutes = new LinkedHashMap<>();
        for (PullSeen pull : pulls) {
            OptionalDouble time = known(pull, zero);
            if (time.isPresent()) {
                minutes.put(pull, time.getAsDouble());
                known.put(planned.get(pull), time.getAsDouble());
            }
        }
        pulls.forEach(pull -> minutes.computeIfAbsent(pull, unknown -> between(known, planned.get(unknown))));
        return minutes;
    }

    private static OptionalDouble known(PullSeen pull, Optional<OffsetDateTime> zero) {
        if (Double.isFinite(pull.minutes())) {
            return OptionalDouble.of(pull.minutes());
        }
        return pull.startedAt().isPresent() && zero.isPresent()
                ? OptionalDouble.of(Duration.between(zero.get(), pull.startedAt().get()).toMillis() / 60000.0) : OptionalDouble.empty();
    }

    private static double between(TreeMap<Double, Double> known, double planned) {
        Map.Entry<Double, Double> before = known.floorEntry(planned);
        Map.Entry<Double, Double> after = known.ceilingEntry(planned);
        if (before == null && after == null) {
            return planned;
        }
        if (before == null || after == null) {
            Map.Entry<Double, Double> near = before == null ? after : before;
            return near.getValue() + planned - near.getKey();
        }
        double share = (planned - before.getKey()) / (after.getKey() - before.getKey());
        return before.getValue() + share * (after.getValue() - before.getValue());
    }

    private static Day.Block block(Install install, List<PullSeen> pulls, Map<PullSeen, Double> minutes, String measure, double margin) {
        List<Day.Mark> marks = pulls.stream().map(pull -> new Day.Mark(pull.pull(), pull.fate(), minutes.get(pull),
                value(pull, measure))).toList();
        double first = marks.stream().mapToDouble(Day.Mark::minutes).min().orElseThrow();
        double last = marks.stream().mapToDouble(Day.Mark::minutes).max().orElseThrow();
        return new Day.Block(install.label(), install.part(), first - margin, last + margin, marks);
    }

    private static OptionalDouble value(PullSeen pull, String measure) {
        Double value = pull.values().get(measure);
        return value == null || !Double.isFinite(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Blocks that would touch share the time between them. */
    private static List<Day.Block> apart(List<Day.Block> blocks) {
        List<Day.Block> apart = new ArrayList<>();
        for (int place = 0; place < blocks.size(); place++) {
            Day.Block block = blocks.get(place);
            double start = place > 0 && blocks.get(place - 1).end() > block.start()
                    ? (blocks.get(place - 1).end() + block.start()) / 2 : block.start();
            double end = place + 1 < blocks.size() && blocks.get(place + 1).start() < block.end()
                    ? (blocks.get(place + 1).start() + block.end()) / 2 : block.end();
            apart.add(new Day.Block(block.label(), block.part(), Math.min(start, end), Math.max(start, end), block.marks()));
        }
        return apart;
    }
}
