package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.day.Pace;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Session;
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

    private static final double SECONDS_A_MINUTE = 60;
    private static final double MINUTES_AN_HOUR = 60;

    private final SizeQuestion question;
    private final List<Integer> installOfPull = new ArrayList<>();
    private final List<Double> minutesOfPull = new ArrayList<>();
    private final List<Integer> sessionOfInstall = new ArrayList<>();
    private final List<Boolean> installIsB = new ArrayList<>();
    private final InstallDesign design;
    private final InstallDesign designOfMeans;
    private final int partColumn;
    private double minutes;

    private SequenceDesign(SizeQuestion question, List<DayClock> days) {
        this.question = question;
        for (int session = 0; session < days.size(); session++) {
            layOut(days.get(session), session);
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
        return new SequenceDesign(question, clock(question));
    }

    /** The design of days as they are, whatever the number of pulls in each install; scatter, test and drift are those of the question. */
    static SequenceDesign of(SizeQuestion question, List<DayClock> days) {
        return new SequenceDesign(question, days);
    }

    /** {@return the clock of every session of a question, installs labelled in the order in which they are run} */
    static List<DayClock> clock(SizeQuestion question) {
        SizeQuestion.Clock times = question.clock();
        Pace pace = new Pace(times.intervalMinutes() * SECONDS_A_MINUTE, times.swapMinutes() * SECONDS_A_MINUTE,
                times.setUpMinutes() * SECONDS_A_MINUTE);
        String[] orders = question.sequence().split("\\|");
        int[] numbers = new int[Part.values().length];
        List<DayClock> days = new ArrayList<>();
        for (int session = 0; session < orders.length; session++) {
            List<Install> installs = new ArrayList<>();
            for (char letter : orders[session].toCharArray()) {
                Part part = letter == 'B' ? Part.B : Part.A;
                String label = part + String.valueOf(++numbers[part.ordinal()]);
                installs.add(new Install(label, part, question.pulls(), question.warmUps(), true));
            }
            days.add(DayClock.of(new Session("day " + (session + 1), installs, times.hoursOf(session)), pace));
        }
        return days;
    }

    private void layOut(DayClock day, int session) {
        String install = "";
        for (DayEvent event : day.events()) {
            if (event.kind() != DayEvent.Kind.PULL) {
                continue;
            }
            if (!event.install().equals(install)) {
                install = event.install();
                sessionOfInstall.add(session);
                installIsB.add(install.charAt(0) == 'B');
            }
            installOfPull.add(sessionOfInstall.size() - 1);
            minutesOfPull.add(event.startS() / SECONDS_A_MINUTE);
        }
        minutes += day.minutes();
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

    /** Length of the day: set-up, warm-ups, counted pulls, swaps and breaks of every session. */
    double minutes() {
        return minutes;
    }

    /** Start of every counted pull, in hours from the mean of its session. */
    double[] centredHours() {
        int[] session = installOfPull.stream().mapToInt(sessionOfInstall::get).toArray();
        double[] clock = minutesOfPull.stream().mapToDouble(t -> t / MINUTES_AN_HOUR).toArray();
        return TimeColumns.drift(session, clock, 1).get(0);
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
