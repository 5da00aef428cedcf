package fairpull.ui.page.pulls;

import fairpull.domain.pull.PullId;
import fairpull.ui.strip.DayStripView;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The pulls that are chosen: one choice for the table, the chart and the day strip. */
final class Chosen {
    private final DayStripView strip;
    private final List<Runnable> listeners = new ArrayList<>();
    private Set<PullId> all = Set.of();
    private Set<PullId> pulls = Set.of();
    private boolean choosing;

    Chosen(DayStripView strip) {
        this.strip = strip;
        strip.onChosen(this::onStrip);
    }

    /** Hears of every other choice. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** The pulls among which can be chosen. */
    void among(Set<PullId> known) {
        all = Set.copyOf(known);
        Set<PullId> left = new HashSet<>(pulls);
        left.retainAll(all);
        pulls = Set.copyOf(left);
    }

    Set<PullId> pulls() {
        return pulls;
    }

    /** Chooses some pulls; on the strip their install is marked where they are of one. */
    void choose(Set<PullId> others) {
        if (choosing || others.equals(pulls)) {
            return;
        }
        choosing = true;
        pulls = Set.copyOf(others);
        mark();
        List.copyOf(listeners).forEach(Runnable::run);
        choosing = false;
    }

    /** One pull is marked by itself, several of one install by their install. */
    private void mark() {
        Set<String> installs = new HashSet<>();
        pulls.forEach(pull -> installs.add(pull.install()));
        if (pulls.size() == 1) {
            strip.choose(pulls.iterator().next());
        } else {
            strip.choose(installs.size() == 1 ? Optional.of(installs.iterator().next()) : Optional.empty());
        }
    }

    private void onStrip(Optional<String> install) {
        if (!choosing) {
            Set<PullId> of = new HashSet<>(all);
            of.removeIf(pull -> !strip.chosenPull().map(pull::equals).orElse(install.equals(Optional.of(pull.install()))));
            choose(of);
        }
    }
}
