package fairpull.ui.theme;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/**
 * The words of the window: one bundle for what stands around the pages, one a page, one for the hints, one for the help. An ampersand
 * stands before the letter that is its mnemonic.
 */
public final class Words {
    private static final List<ResourceBundle> BUNDLES = Stream.of("frame", "question", "rig", "sequence", "limits", "run", "pulls",
            "finding", "shelf", "tracing", "audit", "hints", "help").map(name -> ResourceBundle.getBundle("fairpull.ui." + name)).toList();
    private static final int LINE = 62;

    private Words() {
    }

    private static String raw(String key) {
        return BUNDLES.stream().filter(bundle -> bundle.containsKey(key)).findFirst().orElse(BUNDLES.get(0)).getString(key);
    }

    /** {@return the text of a key, without the mark of its mnemonic} */
    public static String of(String key, Object... parts) {
        String text = raw(key).replace("&", "");
        for (int i = 0; i < parts.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return text;
    }

    /** {@return a text that begins as a sentence does} */
    public static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** {@return the mnemonic of a key; 0 where it has none} */
    public static char mnemonic(String key) {
        String text = raw(key);
        int mark = text.indexOf('&');
        return mark < 0 || mark + 1 >= text.length() ? 0 : Character.toUpperCase(text.charAt(mark + 1));
    }

    /** {@return the text of a key that need not be there} */
    public static Optional<String> find(String key) {
        try {
            return Optional.of(raw(key));
        } catch (MissingResourceException absent) {
            return Optional.empty();
        }
    }

    /** {@return a text as a tool tip, broken into lines; whatever stands in it is shown as it is} */
    public static String tip(String text) {
        return "<html>" + lines(text).replace("&", "&amp;").replace("<", "&lt;").replace("\n", "<br>") + "</html>";
    }

    /** {@return a text broken into lines} */
    public static String lines(String text) {
        StringBuilder lines = new StringBuilder();
        int line = 0;
        for (String word : LocalNumbers.shown(text).split(" ")) {
            boolean full = line > 0 && line + word.length() > LINE;
            lines.append(full ? "\n" : line == 0 ? "" : " ").append(word);
            line = (full ? 0 : line) + word.length() + 1;
        }
        return lines.toString();
    }
}
