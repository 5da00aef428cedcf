package fairpull.engine.rig;

import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigEvidence.Change;
import fairpull.domain.rig.RigEvidence.Chart;
import fairpull.domain.rig.RigEvidence.Pooled;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.rig.RigRecord.InstallMean;
import fairpull.engine.stats.ChangePoint;
import fairpull.engine.stats.ChiSquared;
import fairpull.engine.stats.IndividualsChart;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What records of one key come to together.
 *
 * <p>Pooling adds: s² = Σν·s²/Σν and ν = Σν over the records that tell a layer; a record that estimated a layer as 0 has ν = 0 and adds
 * nothing, so that the pooled figure is, if anything, too large. Its interval is s·√(ν/χ²), equal tails of 2.5 %.
 *
 * <p>The chart takes install means over the record's own level. Its order in time is that of the sessions' dates where all are written as
 * year-month-day, otherwise that of the records. The change is looked for between sessions, on the means of their installs' means,
 * because installs of one session share its day.
 */
public final class RigSummary {
    private static final int FEWEST_SESSIONS = 4;
    private static final long SEED = 20260101;

    private RigSummary() {
    }

    /** {@return the evidence for every key among some records, in the order in which keys first appear} */
    public static List<RigEvidence> all(List<RigRecord> records) {
        List<List<RigRecord>> groups = new ArrayList<>();
        for (RigRecord record : records) {
            groups.stream().filter(group -> group.get(0).key().matches(record.key())).findFirst().orElseGet(() -> {
                List<RigRecord> group = new ArrayList<>();
                groups.add(group);
                return group;
            }).add(record);
        }
        return groups.stream().map(group -> of(group.get(0).key(), group)).toList();
    }

    /** {@return the evidence for a key among some records; empty where none matches} */
    public static Optional<RigEvidence> matching(RigKey key, List<RigRecord> records) {
        List<RigRecord> found = records.stream().filter(record -> record.key().matches(key)).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(of(found.get(0).key(), found));
    }

    private static RigEvidence of(RigKey key, List<RigRecord> records) {
        List<Pooled> pooled = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            pooled(layer, records).ifPresent(pooled::add);
        }
        List<InstallMean> installs = inTime(records);
        return new RigEvidence(key, records, pooled, chart(installs), change(installs));
    }

    private static Optional<Pooled> pooled(Layer layer, List<RigRecord> records) {
        double freedom = 0;
        double squares = 0;
        int count = 0;
        int atZero = 0;
        for (RigRecord record : records) {
            for (LayerScatter scatter : record.scatter()) {
                if (scatter.tells(layer)) {
                    freedom += scatter.degreesOfFreedom();
                    squares += scatter.degreesOfFreedom() * scatter.share() * scatter.share();
                    count++;
                } else if (scatter.layers().equals(List.of(layer))) {
                    atZero++;
                }
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        double share = Math.sqrt(squares / freedom);
        double[] ends = ChiSquared.scatterFactors(Pooled.LEVEL, freedom);
        return Optional.of(new Pooled(layer, share, freedom, share * ends[0], share * ends[1], count, atZero));
    }

    /** Installs of all records in the order of their sessions' dates, or as they stand where a session is no date. */
    private static List<InstallMean> inTime(List<RigRecord> records) {
        List<InstallMean> installs = records.stream().flatMap(record -> record.installs().stream()).toList();
        if (installs.stream().allMatch(install -> date(install.session()).isPresent())) {
            return installs.stream().sorted(Comparator.comparing(install -> date(install.session()).orElseThrow())).toList();
        }
        return records.size() == 1 ? installs : records.stream().flatMap(record -> record.installs().stream()
                .map(install -> new InstallMean(record.source() + ", " + install.session(), install.install(), install.pulls(),
                        install.mean()))).toList();
    }

    private static Optional<LocalDate> date(String session) {
        try {
            return Optional.of(LocalDate.parse(session));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    private static Optional<Chart> chart(List<InstallMean> installs) {
        if (installs.size() < 2) {
            return Optional.empty();
        }
        double[] values = installs.stream().mapToDouble(InstallMean::mean).toArray();
        IndividualsChart chart = IndividualsChart.of(values);
        List<Integer> beyond = chart.beyond(values);
        List<RigEvidence.Point> points = new ArrayList<>();
        for (int k = 0; k < values.length; k++) {
            points.add(new RigEvidence.Point(installs.get(k).session(), installs.get(k).install(), values[k], beyond.contains(k)));
        }
        OptionalInt run = chart.firstRun(values);
        return Optional.of(new Chart(points, chart.centre(), chart.sigma(), chart.low(), chart.high(),
                run.isPresent() ? Optional.of(run.getAsInt()) : Optional.empty()));
    }

    /** Two levels take two numbers; fewer than four sessions leave a single degree of freedom for the scatter about them. */
    private static Optional<Change> change(List<InstallMean> installs) {
        Map<String, List<Double>> bySession = new LinkedHashMap<>();
        installs.forEach(install -> bySession.computeIfAbsent(install.session(), name -> new ArrayList<>()).add(install.mean()));
        double[] means = bySession.values().stream()
                .mapToDouble(values -> values.stream().mapToDouble(value -> value).average().orElseThrow()).toArray();
        boolean moves = means.length > 0 && Arrays.stream(means).distinct().count() > 1;
        if (means.length < FEWEST_SESSIONS || !moves) {
            return Optional.empty();
        }
        ChangePoint change = ChangePoint.of(means, SEED);
        String from = List.copyOf(bySession.keySet()).get(change.first());
        return Optional.of(new Change(from, change.pValue(), change.before(), change.after(), means.length));
    }
}
