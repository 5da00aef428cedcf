package fairpull.io.settings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the system's own windows are dark, asked of the system's settings. Where it cannot be known there is no answer and no fuss. */
public final class SystemTheme {
    private static final int MOST_BYTES = 4096;
    private static final String WINDOWS_KEY = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";

    private SystemTheme() {
    }

    /** {@return whether it is dark; asks another program, so not to be called on the thread of a window} */
    public static Optional<Boolean> isDark() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return answer(List.of("reg", "query", WINDOWS_KEY, "/v", "AppsUseLightTheme")).flatMap(SystemTheme::ofRegistry);
        }
        if (system.contains("mac")) {
            // the setting is there only while the system is dark
            return Optional.of(answer(List.of("defaults", "read", "-g", "AppleInterfaceStyle")).filter(SystemTheme::saysDark).isPresent());
        }
        return answer(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")).filter(said -> !said.isBlank())
                .map(SystemTheme::saysDark);
    }

    static boolean saysDark(String said) {
        return said.toLowerCase(Locale.ROOT).contains("dark");
    }

    static Optional<Boolean> ofRegistry(String said) {
        int value = said.lastIndexOf("0x");
        return value < 0 ? Optional.empty() : Optional.of(said.substring(value + 2).strip().equals("0"));
    }

    private static Optional<String> answer(List<String> command) {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(false).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            process.getOutputStream().close();
            try (InputStream said = process.getInputStream()) {
                String text = new String(said.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
                return process.waitFor() == 0 ? Optional.of(text) : Optional.empty();
            }
        } catch (IOException notThere) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
