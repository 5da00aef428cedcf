package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.InstallDesign;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.TimeColumns;
import fairpull.engine.stats.VarianceComponents;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** An order of installs with its clock, as the design the judge will fit: sessions, drift, part. */
final class SequenceDesign {
    private static final Pattern ORDER = Pattern.compile("[AB]+(\\|[AB]+)*");

    private final SizeQuestion question;
    private final List<Integer> installOfPull = new ArrayList<>();
    private final List<Double> minutesOfPull = new ArrayList<>();
    private final List<Integer> sessionOfInstall = new ArrayList<>();
    private final List<Boolean> installIsB = new ArrayList<>();
    private final InstallDesign design;
    private final InstallDesign designOfMeans;
    private final int partColumn;
    private double minutes;

    private SequenceDesign(SizeQuestion question) {
        this.question = question;
        int session = 0;
        for (String order : question.sequence().split("\\|")) {
            layOut(order, session++);
        }
        int[] install = installOfPull.stream().mapToInt(i -> i).toArray();
        List<double[]> columns = columns(install);
        partColumn = columns.size() - 1;
        design = InstallDesign.of(install, columns);
        designOfMeans = InstallDesign.ofMeans(install, columns);
    }

    /**
     * The design of a question's order.
     *
     * @throws IllegalArgumentException if the order is not letters A and B, both present, sessions parted by single bars
     */
    static SequenceDesign of(SizeQuestion question) {
        String order = question.sequence();
        if (!ORDER.matcher(order).matches() || !order.contains("A") || !order.contains("B")) {
            throw new IllegalArgumentException(
                    "an order is written in letters A and B, both present, sessions parted by a bar, as in ABA|BAB; was \"" + order + "\"");
        }
        return new SequenceDesign(question);
    }

    /** The clock of a session starts at its first counted pull; warm-ups and swaps move the pulls that follow. */
    private void layOut(String order, int session) {
        double interval = question.clock().intervalMinutes();
        double clock = 0;
        for (int i = 0; i < order.length(); i++) {
            clock += i > 0 ? question.clock().swapMinutes() : 0;
            clock += question.warmUps() * interval;
            for (int pull = 0; pull < question.pulls(); pull++) {
                installOfPull.add(sessionOfInstall.size());
                minutesOfPull.add(clock);
                clock += interval;
            }
            sessionOfInstall.add(session);
            installIsB.add(order.charAt(i) == 'B');
        }
        minutes += question.clock().setUpMinutes() + clock;
    }

    private List<double[]> columns(int[] install) {
        int[] session = new int[install.length];
        double[] part = new double[install.length];
        for (int k = 0; k < install.length; k++) {
            session[k] = sessionOfInstall.get(install[k]);
            part[k] = installIsB.get(install[k]) ? 1 : 0;
        }
        double[] clock = minutesOfPull.stream().mapToDouble(t -> t).toArray();
        List<double[]> columns = new ArrayList<>(TimeColumns.sessions(session));
        columns.addAll(TimeColumns.drift(session, clock, question.drift().terms()));
        columns.add(part);
        return columns;
    }

    InstallDesign design() {
        return design;
    }

    InstallDesign designOfMeans() {
        return designOfMeans;
    }

    int partColumn() {
        return partColumn;
    }

    int installDegreesOfFreedom() {
        return designOfMeans.installs() - designOfMeans.rank();
    }

    /** Standard error of the change on install means whose standard deviation is 1. */
    double standardErrorOnMeans() {
        return ContrastFit.expected(designOfMeans, new VarianceComponents(1, 0), ScatterKnowledge.none(), partColumn).standardError();
    }

    /** Length of the day: set-up, warm-ups, counted pulls and swaps of every session. */
    double minutes() {
        return minutes;
    }

    int[] sessionOfInstall() {
        return sessionOfInstall.stream().mapToInt(s -> s).toArray();
    }

    boolean[] installIsB() {
        boolean[] isB = new boolean[installIsB.size()];
        for (int i = 0; i < isB.length; i++) {
            isB[i] = installIsB.get(i);
        }
        return isB;
    }
}
