package fairpull.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
    @TempDir
    private Path home;

    private String written() {
        try {
            return Files.readString(home.resolve("settings.properties"));
        } catch (IOException notYet) {
            return "";
        }
    }

    @Test
    void whatChangesIsWrittenWithoutAnyWindowBeingClosed() throws InterruptedException {
        Settings settings = Settings.in(home);
        settings.keep(Runnable::run);
        settings.units(UnitSystem.US);
        settings.opened(home.resolve("a test"));
        settings.set("theme", "DARK");
        for (int waited = 0; waited < 100 && !written().contains("theme"); waited++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
        Settings later = Settings.in(home);
        assertThat(later.units()).isEqualTo(UnitSystem.US);
        assertThat(later.find("theme")).contains("DARK");
        assertThat(later.recent()).containsExactly(home.resolve("a test").toAbsolutePath());
    }

    @Test
    void whatCannotBeReadIsPassedOver() throws IOException {
        Files.writeString(home.resolve("settings.properties"), "units=CUBITS\nrecent.0=a\\u0000b\nrecent.1=/there\nscale=large\n");
        Settings settings = Settings.in(home);
        assertThat(settings.units()).isIn((Object[]) UnitSystem.values());
        assertThat(settings.recent()).containsExactly(Path.of("/there"));
        assertThat(settings.number("scale", 1)).isEqualTo(1);
    }

    @Test
    void whoeverEndsHearsNothingMoreAndTheOthersStillDo() {
        Settings settings = Settings.in(home);
        List<String> heard = new ArrayList<>();
        Settings first = settings.ofOne();
        Settings second = settings.ofOne();
        first.listen(() -> heard.add("first"));
        second.listen(() -> heard.add("second"));
        first.set("theme", "DARK");
        assertThat(second.find("theme")).contains("DARK");
        first.end();
        settings.set("theme", "LIGHT");
        assertThat(heard).containsExactly("first", "second", "second");
    }
}
