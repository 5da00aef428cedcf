package fairpull.app.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChunksTest {
    @Test
    void resultsComeInTheOrderOfTheChunksOnAnyNumberOfThreads() {
        List<Integer> squares = IntStream.range(0, 200).map(i -> i * i).boxed().toList();
        for (int threads : new int[] {1, 2, 7}) {
            assertThat(Chunks.run(200, i -> i * i, threads, Progress.none())).isEqualTo(squares);
        }
    }

    @Test
    void everyChunkIsReportedOnce() {
        Set<Integer> reached = ConcurrentHashMap.newKeySet();
        Chunks.run(50, i -> i, 2, watching(reached, Integer.MAX_VALUE));
        assertThat(reached).containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, 50).boxed().toList());
    }

    @Test
    void stopsSoonAfterItIsCancelled() {
        Set<Integer> reached = ConcurrentHashMap.newKeySet();
        AtomicInteger begun = new AtomicInteger();
        assertThatThrownBy(() -> Chunks.run(10_000, i -> begun.incrementAndGet(), 2, watching(reached, 5)))
                .isInstanceOf(CancelledException.class).hasMessageContaining("stopped");
        assertThat(begun.get()).isLessThan(20);
    }

    @Test
    void anInterruptCancelsAndIsKept() {
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> Chunks.run(1_000_000, i -> i, 2, Progress.none())).isInstanceOf(CancelledException.class);
        assertThat(Thread.interrupted()).isTrue();
    }

    @Test
    void aFaultOfAChunkIsTheFaultOfTheWork() {
        assertThatThrownBy(() -> Chunks.run(10, i -> {
            throw new IllegalStateException("chunk " + Collections.singletonList(i));
        }, 2, Progress.none())).isInstanceOf(IllegalStateException.class).hasMessageContaining("chunk");
    }

    private static Progress watching(Set<Integer> reached, int stopAfter) {
        return new Progress() {
            @Override
            public void reached(int done, int all) {
                reached.add(done);
            }

            @Override
            public boolean isCancelled() {
                return reached.size() >= stopAfter;
            }
        };
    }
}
