package fairpull.app.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class MemoryTest {
    private final AtomicInteger made = new AtomicInteger();
    private final Memory<String, String> memory = new Memory<>(10, String::length);

    private String of(String key) {
        return memory.of(key, () -> {
            made.incrementAndGet();
            return key;
        });
    }

    @Test
    void whatIsRememberedIsMadeOnce() {
        assertThat(List.of(of("four"), of("four"), of("four"))).containsOnly("four");
        assertThat(made).hasValue(1);
    }

    @Test
    void whatWasNotAskedForLongestIsForgottenFirst() {
        of("four");
        of("five");
        of("four");
        of("sixx");

        of("four");
        assertThat(made).hasValue(3);
        of("five");
        assertThat(made).hasValue(4);
    }

    @Test
    void whatIsTooHeavyIsGivenAndForgotten() {
        of("four");
        assertThat(of("more than ten")).isEqualTo("more than ten");
        of("more than ten");

        assertThat(made).hasValue(3);
        of("four");
        assertThat(made).hasValue(3);
    }

    @Test
    void aFaultIsToldAndNotRemembered() {
        assertThatThrownBy(() -> memory.of("four", () -> {
            throw new IllegalStateException("gone");
        })).hasMessage("gone");
        assertThat(of("four")).isEqualTo("four");
    }

    @Test
    void twoThatAskAtOnceMakeItOnce() {
        CountDownLatch begun = new CountDownLatch(1);
        List<String> both = Chunks.run(2, place -> memory.of("four", () -> {
            made.incrementAndGet();
            begun.countDown();
            return "four";
        }), 2, Progress.none());

        assertThat(begun.getCount()).isZero();
        assertThat(both).containsExactly("four", "four");
        assertThat(made).hasValue(1);
    }
}
