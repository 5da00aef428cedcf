package fairpull.app.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class JobTest {
    private static Object outcome(Function<Progress, String> work) throws InterruptedException {
        BlockingQueue<Object> heard = new ArrayBlockingQueue<>(1);
        Job.start(work, Runnable::run, share -> { }, ended -> ended.tell(heard::add, heard::add));
        return heard.poll(10, TimeUnit.SECONDS);
    }

    @Test
    void aResultAndEveryKindOfFaultAreHeard() throws InterruptedException {
        assertThat(outcome(progress -> "done")).isEqualTo("done");
        assertThat(outcome(progress -> {
            throw new IllegalStateException("broken");
        })).isInstanceOf(IllegalStateException.class);
        assertThat(outcome(progress -> {
            throw new StackOverflowError();
        })).isInstanceOf(StackOverflowError.class);
        assertThat(outcome(progress -> null)).as("work that gives nothing has failed").isInstanceOf(NullPointerException.class);
        assertThat(outcome(Job.onDisk(() -> {
            throw new IOException("disk full");
        }))).isInstanceOf(UncheckedIOException.class);
    }

    @Test
    void whatIsKeptIsTheLastOfWhatWasAskedInItsOrder() throws InterruptedException {
        List<String> kept = new CopyOnWriteArrayList<>();
        Keeper keeper = new Keeper(100, Runnable::run);
        CountDownLatch last = new CountDownLatch(1);
        keeper.ask(() -> kept.add("given way"), () -> { }, fault -> { });
        keeper.ask(() -> kept.add("last"), last::countDown, fault -> { });
        assertThat(last.await(10, TimeUnit.SECONDS)).isTrue();
        CountDownLatch failed = new CountDownLatch(1);
        keeper.ask(() -> {
            throw new IOException("disk full");
        }, () -> { }, fault -> {
            kept.add(fault.getMessage());
            failed.countDown();
        });
        assertThat(failed.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(kept).containsExactly("last", "disk full");
    }
}
