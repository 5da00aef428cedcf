package fairpull.report.write;

import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.PullId;
import fairpull.report.wording.GateWords;
import fairpull.report.wording.Said;
import fairpull.report.wording.SheetWords;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Lays a plan out as the sheets of its sessions. */
final class SheetPages {
    /** A longer install is continued in a further block with its own head, so that a block never has to break. */
    private static final int MOST_LINES = 18;
    /** With more columns than this there is no room for two installs side by side. */
    private static final int MOST_COLUMNS_BESIDE = 4;
    /** How high the head of an install is, in lines of pulls. */
    private static final int LINES_OF_A_HEAD = 4;
    /** Letters that go in a line beside an install. */
    private static final int LETTERS_OF_A_LINE = 64;
    /** How high a line of text is, in lines of pulls. */
    private static final double TEXT_TO_PULL = 0.65;
    private static final Set<Condition> ONCE_AN_INSTALL = EnumSet.of(Condition.TYRE_PRESSURE);
    private static final Set<Condition> ALWAYS_READ = EnumSet.of(Condition.INTAKE_AIR, Condition.COOLANT, Condition.OIL);

    private final Plan plan;
    private final SheetOptions options;
    private final GateWords words;
    private final PullId reference;
    private final Set<Condition> everyPull = EnumSet.noneOf(Condition.class);

    SheetPages(Plan plan, SheetOptions options) {
        this.plan = plan;
        this.options = options;
        this.words = new GateWords(options.units());
        this.reference = new PullId(plan.sequence().installs().findFirst().orElseThrow().label(), false, 1);
        everyPull.addAll(ALWAYS_READ);
        plan.gates().forEach(gate -> everyPull.add(gate.condition()));
        everyPull.addAll(plan.analysis().covariates());
        everyPull.removeAll(ONCE_AN_INSTALL);
    }

    PullId reference() {
        return reference;
    }

    List<SheetPage> pages() {
        List<SheetPage> pages = new ArrayList<>();
        for (Session session : plan.sequence().sessions()) {
            String date = pages.isEmpty() ? options.date().map(Object::toString).orElse("") : "";
            pages.add(page(session, date));
        }
        return pages;
    }

    private SheetPage page(Session session, String date) {
        SheetClock clock = new SheetClock(session, plan.sequence());
        List<List<SheetPage.Block>> rows = rows(session, clock);
        List<SheetPage.Block> last = rows.get(rows.size() - 1);
        int room = rows.size() > 1 && rows.get(0).size() > last.size() ? last.get(0).pulls().size() + LINES_OF_A_HEAD : 0;
        int needed = linesOfChecklist();
        boolean beside = needed > 0 && needed <= room;
        int remarkLines = Math.max(0, beside ? room - needed - 2 : room - 2);
        return new SheetPage(session.name(), date, clock.span(), gates(), rows, beside, remarkLines);
    }

    /** In lines of pulls, which are a little higher than lines of text. */
    private int linesOfChecklist() {
        int lines = plan.checklist().stream().mapToInt(item -> 1 + item.length() / LETTERS_OF_A_LINE).sum();
        return lines == 0 ? 0 : 1 + (int) Math.ceil(lines * TEXT_TO_PULL);
    }

    private List<SheetPage.GateLine> gates() {
        return plan.gates().stream().map(gate -> new SheetPage.GateLine(gate.condition().words(),
                words.limit(gate, reference.toString()), gate.limit() instanceof Gate.NearReference ? words.unit(gate.condition()) : ""))
                .toList();
    }

    private List<List<SheetPage.Block>> rows(Session session, SheetClock clock) {
        List<SheetPage.Block> blocks = new ArrayList<>();
        for (int i = 0; i < session.installs().size(); i++) {
            blocks.addAll(blocks(session, i, clock));
        }
        int beside = everyPull.size() > MOST_COLUMNS_BESIDE ? 1 : 2;
        List<List<SheetPage.Block>> rows = new ArrayList<>();
        for (int from = 0; from < blocks.size(); from += beside) {
            rows.add(blocks.subList(from, Math.min(from + beside, blocks.size())));
        }
        return rows;
    }

    private List<SheetPage.Block> blocks(Session session, int place, SheetClock clock) {
        Install install = session.installs().get(place);
        Optional<Install> previous = place == 0 ? Optional.empty() : Optional.of(session.installs().get(place - 1));
        String partWords = switch (install.part()) {
            case A -> plan.question().partA();
            case B -> plan.question().partB();
        };
        List<SheetPage.Line> all = clock.pulls(install.label()).stream().map(event -> line(event, clock)).toList();
        List<SheetPage.Block> blocks = new ArrayList<>();
        for (int from = 0; from < all.size(); from += MOST_LINES) {
            boolean first = from == 0;
            blocks.add(new SheetPage.Block(install.label(), !first, install.part().name(), partWords,
                    first ? work(previous, install, clock) : "", first ? fields() : List.of(), columns(),
                    all.subList(from, Math.min(from + MOST_LINES, all.size()))));
        }
        return blocks;
    }

    private String work(Optional<Install> previous, Install install, SheetClock clock) {
        List<DayEvent> events = clock.workBefore(install.label());
        StringBuilder work = new StringBuilder(events.isEmpty() ? "" : clock.start(events.get(0)) + " ");
        work.append(SheetWords.before(previous, install, plan.sequence()));
        events.stream().filter(event -> event.kind() == DayEvent.Kind.BREAK)
                .forEach(event -> work.append("; ").append(clock.start(event)).append(' ').append(SheetWords.pause(event)));
        return work.toString();
    }

    private SheetPage.Line line(DayEvent event, SheetClock clock) {
        if (!event.kind().isPull()) {
            return new SheetPage.Line("", false, clock.start(event), SheetWords.pause(event));
        }
        PullId pull = new PullId(event.install(), event.kind() == DayEvent.Kind.WARM_UP, event.number());
        return new SheetPage.Line(pull.toString(), pull.warmUp(), clock.start(event), pull.equals(reference) ? "reference" : "");
    }

    private List<Said> columns() {
        return everyPull.stream().map(condition -> new Said(SheetWords.brief(condition) + " " + words.unit(condition),
                limitOver(condition))).toList();
    }

    private String limitOver(Condition condition) {
        return plan.gates().stream().filter(gate -> gate.condition() == condition).map(gate -> words.brief(gate, reference.toString()))
                .findFirst().orElse("");
    }

    /** Air and tyres are read at every install, whether or not the plan holds them against a gate. */
    private List<String> fields() {
        List<String> fields = new ArrayList<>();
        if (plan.rig().kind() != Rig.Kind.ENGINE_BENCH && plan.rig().kind() != Rig.Kind.HUB) {
            fields.add("tyres, " + words.unit(Condition.TYRE_PRESSURE));
        }
        for (Condition condition : List.of(Condition.BAROMETER, Condition.HUMIDITY)) {
            if (!everyPull.contains(condition)) {
                fields.add(SheetWords.brief(condition) + ", " + words.unit(condition));
            }
        }
        return fields;
    }
}
