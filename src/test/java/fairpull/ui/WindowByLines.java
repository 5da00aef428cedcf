package fairpull.ui;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The program in a process of its own, under mouse and keyboard by lines: reads what to do from standard input, one line each with tabs
 * between words, and answers each on standard output once it is done.
 */
final class WindowByLines {
    /** What an answer begins with: the program may print as well. */
    static final String DONE = "\u0001done\t";
    static final String FAILED = "\u0001failed\t";

    private static final Map<String, Integer> KEYS = Map.of("SPACE", KeyEvent.VK_SPACE, "X", KeyEvent.VK_X, "S", KeyEvent.VK_S, "G",
            KeyEvent.VK_G, "U", KeyEvent.VK_U);

    private final OnScreen screen;

    private WindowByLines(OnScreen screen) {
        this.screen = screen;
    }

    /** Opens a test: the folder of the settings, the folder of the test. */
    public static void main(String[] arguments) throws IOException {
        Path home = Path.of(arguments[0]);
        Optional<Path> test = Optional.of(Path.of(arguments[1]));
        boolean again = home.resolve("settings.properties").toFile().exists();
        WindowByLines window = new WindowByLines(again ? OnScreen.resumed(home, test) : OnScreen.started(home, test));
        BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        answer(DONE, "");
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            try {
                answer(DONE, window.act(line.split("\t")));
            } catch (AssertionError | RuntimeException fault) {
                answer(FAILED, fault.toString());
            }
        }
        System.exit(0);
    }

    private static void answer(String how, String words) {
        System.out.println(how + words.replace("\n", "\t"));
        System.out.flush();
    }

    private String act(String[] words) {
        switch (words[0]) {
            case "key" -> screen.press(0, KEYS.get(words[1]));
            case "page" -> screen.press(InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_0 + Integer.parseInt(words[1]));
            case "click" -> screen.click(words[1]);
            case "type" -> screen.type(words[1], words[2]);
            case "folder" -> screen.nameFolder(Path.of(words[1]));
            case "until" -> screen.untilSays(words[1], words[2]);
            case "gone" -> screen.untilNoLongerSays(words[1], words[2]);
            case "text" -> {
                return screen.text(words[1]);
            }
            case "all" -> {
                return screen.textWithin(words[1]);
            }
            default -> throw new IllegalArgumentException(words[0]);
        }
        return "";
    }
}
