package fairpull.ui.strip;

import fairpull.domain.pull.PullId;
import fairpull.report.chart.Marked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What is chosen on the strip: an install or one of its pulls. Whoever listens hears the install. */
final class Choice {
    private final List<Consumer<Optional<String>>> listeners = new ArrayList<>();
    private Optional<Marked> marked = Optional.empty();

    void listen(Consumer<Optional<String>> listener) {
        listeners.add(listener);
    }

    Optional<Marked> marked() {
        return marked;
    }

    Optional<String> install() {
        return marked.map(Marked::install);
    }

    Optional<PullId> pull() {
        return marked.flatMap(Marked::pull);
    }

    /** Chooses something else; {@return whether it was something else} */
    boolean mark(Optional<Marked> other) {
        if (marked.equals(other)) {
            return false;
        }
        marked = other;
        List.copyOf(listeners).forEach(listener -> listener.accept(install()));
        return true;
    }

    /** Lets go of what is no longer there. */
    void among(List<String> installs, List<PullId> pulls) {
        boolean gone = pull().filter(one -> !pulls.contains(one)).isPresent();
        mark(marked.filter(mark -> installs.contains(mark.install())).map(mark -> gone ? Marked.of(mark.install()) : mark));
    }

    /** {@return the pull or install so many places on} */
    Optional<Marked> stepped(int by, List<String> installs, List<PullId> pulls) {
        if (pull().isPresent()) {
            return beside(pulls, pull(), by).map(Marked::of);
        }
        return beside(installs, install(), by).map(Marked::of);
    }

    private static <T> Optional<T> beside(List<T> all, Optional<T> now, int by) {
        int from = now.map(all::indexOf).orElse(by > 0 ? -1 : all.size());
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(Math.max(0, Math.min(all.size() - 1, from + by))));
    }

    /** {@return the first pull of the install that is chosen, or of the day; what is chosen where it is a pull} */
    Optional<Marked> withinInstall(List<PullId> pulls) {
        return pull().isPresent() ? marked : pulls.stream()
                .filter(one -> install().map(one.install()::equals).orElse(true)).findFirst().map(Marked::of).or(() -> marked);
    }
}
