package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.SplittableRandom;

/** Orders typed in letters, {@code ABABA} or {@code ABA|BAB}, chosen or drawn. */
public final class Order {
    private Order() {
    }

    /** What every install holds. */
    public record Filling(int pulls, int warmUps, boolean unstrapped) {
    }

    /** The times of the day, in seconds. */
    public record Times(double pullIntervalS, double swapS, double setUpS) {
    }

    /** {@return the sequence of some letters; with a seed the letters of each session are shuffled, all orders being alike likely} */
    public static Sequence sequence(String letters, OptionalLong seed, Filling filling, Times times) {
        String[] sessions = letters.replaceAll("\\s", "").toUpperCase(Locale.ROOT).split("\\|", -1);
        SplittableRandom random = new SplittableRandom(seed.orElse(0));
        Map<Part, Integer> numbers = new EnumMap<>(Part.class);
        List<Session> days = new ArrayList<>();
        for (String session : sessions) {
            List<Part> parts = parts(session, letters);
            if (seed.isPresent()) {
                draw(parts, random);
            }
            List<Install> installs = new ArrayList<>();
            for (Part part : parts) {
                int number = numbers.merge(part, 1, Integer::sum);
                boolean swapped = installs.isEmpty() || filling.unstrapped();
                installs.add(new Install(part.name() + number, part, filling.pulls(), filling.warmUps(), swapped));
            }
            days.add(new Session("day " + (days.size() + 1), installs));
        }
        Sequence.Origin origin = seed.isPresent() ? Sequence.Origin.DRAWN : Sequence.Origin.CHOSEN;
        return new Sequence(days, origin, seed, times.pullIntervalS(), times.swapS(), times.setUpS());
    }

    private static List<Part> parts(String session, String letters) {
        if (!session.matches("[AB]{1,500}")) {
            throw new UsageException("--sequence", "expected letters A and B, sessions parted by |, such as ABABA or ABA|BAB; found “"
                    + letters + "”");
        }
        List<Part> parts = new ArrayList<>();
        session.chars().forEach(letter -> parts.add(letter == 'A' ? Part.A : Part.B));
        return parts;
    }

    /** {@return whether an order is the one that its seed draws; an order that was chosen is none} */
    public static boolean isAsDrawn(Sequence sequence) {
        if (sequence.seed().isEmpty()) {
            return false;
        }
        SplittableRandom random = new SplittableRandom(sequence.seed().getAsLong());
        for (Session session : sequence.sessions()) {
            List<Part> run = session.installs().stream().map(Install::part).toList();
            List<Part> drawn = new ArrayList<>(run);
            draw(drawn, random);
            if (!drawn.equals(run)) {
                return false;
            }
        }
        return true;
    }

    /** Fisher and Yates over the sorted parts: every order equally likely, and told by counts and seed alone. */
    private static void draw(List<Part> parts, SplittableRandom random) {
        Collections.sort(parts);
        for (int last = parts.size() - 1; last > 0; last--) {
            int other = random.nextInt(last + 1);
            Part kept = parts.get(last);
            parts.set(last, parts.get(other));
            parts.set(other, kept);
        }
    }
}
