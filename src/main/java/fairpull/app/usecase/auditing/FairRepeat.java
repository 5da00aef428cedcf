package fairpull.app.usecase.auditing;

import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.Repeat.Days;
import fairpull.domain.audit.Repeat.Outcome;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.day.DayClock;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.rig.StartingGuess;
import fairpull.domain.search.Costs;
import fairpull.domain.search.FrontDay;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchSpace;
import fairpull.domain.unit.UnitSystem;
import fairpull.engine.planning.PlanSizing;
import fairpull.engine.planning.Search;
import fairpull.engine.planning.Sizing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The fair repeat of a published comparison: a plan that decides by the figure claimed about, for the smallest gain claimed, on the
 * shortest day that finds it in a counterbalanced order that ends in A as it began; where no single day does, on the fewest hours over
 * several days of one order. It is judged by its own data: the scatter that it is sized by is no record.
 *
 * <p>What the publication leaves open is chosen so that doubt has least to hold on to. A linear drift is modelled: a counterbalanced order
 * keeps a steady one out of the change, but only the model keeps it out of the scatter, for one degree of freedom; orders that cannot
 * spare it, such as A/B/A, are none that their own data judge. Power and torque are corrected, unless both figures were published as
 * measured: weather moves them within a day and from day to day.
 */
public final class FairRepeat {
    /** Of two pulls that differ nobody can say which one is out of line; judgement, no source. */
    private static final int FEWEST_PULLS = 3;
    private static final int MOST_PULLS = 8;
    private static final double MINUTES_AN_HOUR = 60;
    /** Common practice, no source. */
    private static final String WEATHER = "temperature, humidity and pressure of the inlet air noted with every pull; the pressure at the "
            + "rig, not reduced to sea level";
    private static final Costs FREE = new Costs(0, 0, 0, 0);

    private final Publication publication;
    private final Publication.Figure figure;

    private FairRepeat(Publication publication, Publication.Figure figure) {
        this.publication = publication;
        this.figure = figure;
    }

    /** {@return the fair repeat of what was audited} */
    public static Repeat of(AuditAnswer answer) {
        List<AuditAnswer.OfClaim> claims = answer.claims();
        Publication publication = answer.publication();
        Publication.Figure figure = claims.stream().map(claim -> publication.figure(claim.claim().figure()))
                .filter(claimed -> sized(publication, claimed).isPresent()).findFirst()
                .orElseGet(() -> claims.isEmpty() ? publication.figures().get(0) : publication.figure(claims.get(0).claim().figure()));
        return new FairRepeat(publication, figure).repeat(claims.stream()
                .filter(claim -> claim.claim().figure().equals(figure.name())).toList());
    }

    /** What the test is sized by. */
    private record Sized(Scatter pull, Scatter refit) {
    }

    /** Each layer as it was stated, or else by the starting guess; no record either way. */
    private static Optional<Sized> sized(Publication publication, Publication.Figure figure) {
        Optional<StartingGuess> guess = StartingGuess.of(figure.before().unit().quantity(), Rig.Kind.ROLLER_BRAKE);
        Optional<StatedScatter> stated = publication.procedure().scatter();
        Optional<Scatter> pull = stated(figure, stated.map(StatedScatter::pull))
                .or(() -> guess.map(known -> planning(figure, known.pullShare(), Scatter.Origin.STARTING_GUESS)));
        Optional<Scatter> refit = stated(figure, stated.flatMap(StatedScatter::refit))
                .or(() -> guess.map(known -> planning(figure, known.refitShare(), Scatter.Origin.STARTING_GUESS)));
        return pull.flatMap(pulls -> refit.map(refits -> new Sized(pulls, refits)));
    }

    private static Optional<Scatter> stated(Publication.Figure figure, Optional<StatedScatter.Layer> layer) {
        return layer.flatMap(known -> known.share(figure.before())).filter(share -> share > 0)
                .map(share -> planning(figure, share, Scatter.Origin.TYPED_IN));
    }

    private static Scatter planning(Publication.Figure figure, double share, Scatter.Origin origin) {
        return new Scatter(share * figure.before().si(), 0, origin);
    }

    private Repeat repeat(List<AuditAnswer.OfClaim> claims) {
        double gainSi = claims.stream().mapToDouble(claim -> claim.graded().claimed())
                .map(claimed -> claimed > 0 ? claimed : figure.gainSi()).min().orElse(figure.gainSi());
        double gain = figure.before().unit().differenceFromSi(gainSi);
        if (!(gainSi > 0)) {
            return without(gain, Outcome.NO_GAIN);
        }
        return sized(publication, figure).map(scatter -> within(plan(claims, gainSi, scatter), gain))
                .orElseGet(() -> without(gain, Outcome.NO_SCATTER));
    }

    private Repeat without(double gain, Outcome outcome) {
        return new Repeat(figure, gain, outcome, Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private Repeat within(Plan plan, double gain) {
        Sought sought = Sought.of(plan, gain);
        Plan recorded = plan.with(plan.rig().scattering(plan.rig().pullScatter(), plan.rig().refitScatter().map(
                refit -> new Scatter(refit.standardDeviationSi(), Repeat.RECORD_DEGREES_OF_FREEDOM, Scatter.Origin.RIG_RECORD))));
        Optional<Days> best = sought.found().or(sought::nearest);
        return new Repeat(figure, gain, sought.found().isPresent() ? Outcome.FOUND : Outcome.OUT_OF_REACH,
                best.map(days -> filled(plan, days)), best, sought.oneDayFinds(), Sought.of(recorded, gain).found());
    }

    /**
     * The days that were looked for.
     *
     * @param found the shortest single day that finds a gain; where none does, the shortest days of one order that do
     * @param tried all that were sized until then
     */
    private record Sought(Optional<Days> found, List<Days> tried) {
        static Sought of(Plan plan, double gain) {
            List<FrontDay> front = front(plan, gain);
            List<Days> tried = new ArrayList<>(front.stream().map(Sought::single).toList());
            Optional<Days> single = tried.stream().filter(day -> day.detectableGain() <= gain).findFirst();
            return single.isPresent() ? new Sought(single, tried) : ofSeveral(plan, front, gain, tried);
        }

        private static Sought ofSeveral(Plan plan, List<FrontDay> front, double gain, List<Days> tried) {
            List<Several> all = IntStream.rangeClosed(2, Repeat.MOST_DAYS).boxed()
                    .flatMap(days -> front.stream().map(day -> Several.of(plan, days, day)))
                    .sorted(Comparator.comparingDouble(Several::minutes)).toList();
            for (Several several : all) {
                Optional<Days> days = several.sized();
                days.ifPresent(tried::add);
                if (days.filter(known -> known.detectableGain() <= gain).isPresent()) {
                    return new Sought(days, tried);
                }
            }
            return new Sought(Optional.empty(), tried);
        }

        private static Days single(FrontDay day) {
            return new Days(day.order(), day.pulls(), day.warmUps(), day.minutes(), day.detectableGain());
        }

        Optional<Days> nearest() {
            return tried.stream().min(Comparator.comparingDouble(Days::detectableGain));
        }

        OptionalDouble oneDayFinds() {
            return tried.stream().filter(days -> days.days() == 1).mapToDouble(Days::detectableGain).min();
        }
    }

    /** A day of the front, run several times over: what it finds is sized only when that is asked. */
    private record Several(Plan plan, List<DayClock> clocks, String order, FrontDay day) {
        static Several of(Plan plan, int days, FrontDay day) {
            String order = String.join("|", Collections.nCopies(days, day.order()));
            Plan filled = plan.with(StartingPlan.refilled(plan.sequence(), order, day.pulls(), day.warmUps()));
            return new Several(filled, Sizing.clock(PlanSizing.question(filled).orElseThrow()), order, day);
        }

        double minutes() {
            return clocks.stream().mapToDouble(DayClock::minutes).sum();
        }

        Optional<Days> sized() {
            return PlanSizing.detectableGainOn(plan, clocks).stream()
                    .mapToObj(gain -> new Days(order, day.pulls(), day.warmUps(), minutes(), gain)).findFirst();
        }
    }

    /** The days of up to ten installs that no other one beats, up to the first that finds the gain. */
    private static List<FrontDay> front(Plan plan, double gain) {
        SizeQuestion asked = PlanSizing.question(plan).orElseThrow();
        SearchSpace space = new SearchSpace(SearchSpace.MOST_INSTALLS, OptionalInt.empty(), true, true, false,
                new Range(FEWEST_PULLS, MOST_PULLS), new Range(asked.warmUps(), asked.warmUps()));
        return Search.front(new SearchQuestion(asked, space, Repeat.HOURS_A_DAY * MINUTES_AN_HOUR, OptionalDouble.empty(), FREE), gain);
    }

    private static Plan filled(Plan plan, Days days) {
        return plan.with(StartingPlan.refilled(plan.sequence(), days.order(), days.pulls(), days.warmUps()));
    }

    private Plan plan(List<AuditAnswer.OfClaim> claims, double gainSi, Sized scatter) {
        double level = figure.before().si();
        Measure deciding = RepeatMeasure.of(figure, correction());
        List<Claim> held = claims.stream().map(claim -> new Claim(claim.claim().words(), deciding.name(),
                claim.graded().claimed())).toList();
        Plan start = StartingPlan.in(UnitSystem.METRIC);
        String change = publication.changed().isBlank() ? "" : ": " + publication.changed();
        Question question = start.question().between("before the change", "after the change" + change)
                .claiming(List.of()).measuredBy(deciding, List.of()).expecting(OptionalDouble.of(level))
                .worth(OptionalDouble.of(gainSi)).claiming(held);
        return start.titled("Fair repeat: " + (publication.title().isBlank() ? figure.name() : publication.title()))
                .remarked("Planned from published figures. Its scatter only sizes it; the repeat is judged by its own data."
                        + (disclosed().isPresent() ? "" : " The correction is chosen here: the figures name none that is one for both."))
                .with(question).with(new Analysis(Drift.LINEAR, List.of()))
                .withChecklist(Stream.concat(start.checklist().stream(), Stream.of(WEATHER)).toList())
                .with(start.rig().scattering(Optional.of(scatter.pull()), Optional.of(scatter.refit())));
    }

    /** That of both figures; where they differ, or one was not disclosed, the standard that an audit takes for granted. */
    private Correction correction() {
        return disclosed().orElse(Correction.SAE_J1349);
    }

    private Optional<Correction> disclosed() {
        Correcting said = publication.procedure().correcting();
        return said.mayMixStandards() ? Optional.empty() : said.corrections().after();
    }
}
