package fairpull.app.document;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;

/** Edits of the order of installs and its clock. An order that is changed by hand is no longer one that was drawn. */
public final class SequenceEdits {
    private SequenceEdits() {
    }

    /** {@return an edit that takes over a whole sequence, such as a template, a draw or a day of the search} */
    public static Edit take(String label, Sequence sequence) {
        return Edit.step(label, plan -> plan.resequenced(sequence));
    }

    /** {@return an edit that fits an install behind another one: the other part, with as many pulls} */
    public static Edit addAfter(String label) {
        return Edit.step("add an install after " + label, plan -> reordered(plan, label, (installs, place) -> {
            Install before = installs.get(place);
            Part part = before.part() == Part.A ? Part.B : Part.A;
            installs.add(place + 1, new Install(part + "1", part, before.countedPulls(), before.warmUpPulls(), before.unstrapped()));
        }));
    }

    /** {@return an edit that leaves an install out} */
    public static Edit remove(String label) {
        return Edit.step("leave out " + label, plan -> {
            Install install = find(plan, label);
            if (plan.sequence().installs().filter(other -> other.part() == install.part()).count() == 1) {
                throw new IllegalArgumentException(label + " is the only install of part " + install.part()
                        + ": without it there is nothing to compare");
            }
            return reordered(plan, label, (installs, place) -> installs.remove(place));
        });
    }

    /** {@return an edit that moves an install within its session by so many places} */
    public static Edit move(String label, int by) {
        return Edit.step("move " + label + (by < 0 ? " earlier" : " later"), plan -> reordered(plan, label, (installs, place) -> {
            int to = Math.max(0, Math.min(installs.size() - 1, place + by));
            installs.add(to, installs.remove(place));
        }));
    }

    /** {@return an edit that moves an install to a place of a session, both counted from 0, the place among the others there} */
    public static Edit moveTo(String label, int session, int place) {
        return Edit.step("move " + label, plan -> {
            Install moved = find(plan, label);
            List<Session> sessions = new ArrayList<>();
            for (int i = 0; i < plan.sequence().sessions().size(); i++) {
                Session old = plan.sequence().sessions().get(i);
                List<Install> installs = new ArrayList<>(old.installs());
                installs.removeIf(install -> install.label().equals(label));
                if (i == session) {
                    installs.add(Math.min(place, installs.size()), moved);
                }
                if (!installs.isEmpty()) {
                    sessions.add(old.with(installs));
                }
            }
            return chosen(plan, sessions);
        });
    }

    /** {@return an edit that fits the other part in an install} */
    public static Edit otherPart(String label) {
        return Edit.step("fit the other part in " + label, plan -> reordered(plan, label, (installs, place) -> {
            Install old = installs.get(place);
            Part part = old.part() == Part.A ? Part.B : Part.A;
            installs.set(place, new Install(part + "1", part, old.countedPulls(), old.warmUpPulls(), old.unstrapped()));
        }));
    }

    /** {@return an edit of the pulls of one install} */
    public static Edit pulls(String label, int counted, int warmUps) {
        return Edit.typing("pulls of " + label, "pulls " + label, plan -> refilled(plan, install -> install.label().equals(label)
                ? new Install(label, install.part(), counted, warmUps, install.unstrapped()) : install));
    }

    /** {@return an edit of the counted pulls of all installs} */
    public static Edit countedOfAll(int counted) {
        return Edit.typing("counted pulls of all installs", "counted pulls", plan -> refilled(plan,
                install -> new Install(install.label(), install.part(), counted, install.warmUpPulls(), install.unstrapped())));
    }

    /** {@return an edit of the warm-up pulls of all installs} */
    public static Edit warmUpsOfAll(int warmUps) {
        return Edit.typing("warm-up pulls of all installs", "warm-up pulls", plan -> refilled(plan,
                install -> new Install(install.label(), install.part(), install.countedPulls(), warmUps, install.unstrapped())));
    }

    /** {@return an edit that says whether the swap into an install needs unstrapping} */
    public static Edit unstrapped(String label, boolean unstrapped) {
        return Edit.step("straps at " + label, plan -> refilled(plan, install -> install.label().equals(label)
                ? new Install(label, install.part(), install.countedPulls(), install.warmUpPulls(), unstrapped) : install));
    }

    /** {@return an edit of the times between pulls, at a swap and before the first pull} */
    public static Edit times(String field, double pullIntervalS, double swapS, double setUpS) {
        return Edit.typing("times of the day", field, plan -> {
            Sequence old = plan.sequence();
            return plan.resequenced(new Sequence(old.sessions(), old.origin(), old.seed(), pullIntervalS, swapS, setUpS));
        });
    }

    /** {@return an edit that adds a second, third … day with the order of the last one} */
    public static Edit addSession() {
        return Edit.step("add a day", plan -> {
            List<Session> sessions = new ArrayList<>(plan.sequence().sessions());
            Session last = sessions.get(sessions.size() - 1);
            sessions.add(last.named("day " + (sessions.size() + 1)));
            return chosen(plan, sessions);
        });
    }

    /** {@return an edit that leaves a day out} */
    public static Edit removeSession(int session) {
        return Edit.step("leave out a day", plan -> {
            List<Session> sessions = new ArrayList<>(plan.sequence().sessions());
            sessions.remove(session);
            return chosen(plan, sessions);
        });
    }

    private interface Reordering {
        void in(List<Install> installs, int place);
    }

    private static Plan reordered(Plan plan, String label, Reordering change) {
        List<Session> sessions = new ArrayList<>();
        for (Session session : plan.sequence().sessions()) {
            List<Install> installs = new ArrayList<>(session.installs());
            int place = session.installs().stream().map(Install::label).toList().indexOf(label);
            if (place >= 0) {
                change.in(installs, place);
            }
            if (!installs.isEmpty()) {
                sessions.add(session.with(installs));
            }
        }
        return chosen(plan, sessions);
    }

    private static Plan chosen(Plan plan, List<Session> sessions) {
        Sequence old = plan.sequence();
        Sequence byHand = new Sequence(old.sessions(), Sequence.Origin.CHOSEN, OptionalLong.empty(), old.pullIntervalS(), old.swapS(),
                old.setUpS());
        return plan.resequenced(byHand.withSessions(sessions));
    }

    private static Plan refilled(Plan plan, UnaryOperator<Install> change) {
        return plan.resequenced(plan.sequence().withLabelled(plan.sequence().sessions().stream()
                .map(session -> session.with(session.installs().stream().map(change).toList())).toList()));
    }

    private static Install find(Plan plan, String label) {
        return plan.sequence().installs().filter(install -> install.label().equals(label)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no install " + label));
    }
}
