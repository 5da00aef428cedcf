package fairpull.ui.theme;

import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;

/** The words of the window, from one bundle. An ampersand stands before the letter that is its mnemonic. */
public final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("fairpull.ui.words");
    private static final int LINE = 62;

    private Words() {
    }

    /** {@return the text of a key, without the mark of its mnemonic} */
    public static String of(String key, Object... parts) {
        String text = BUNDLE.getString(key).replace("&", "");
        for (int i = 0; i < parts.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return text;
    }

    /** {@return the mnemonic of a key; 0 where it has none} */
    public static char mnemonic(String key) {
        String text = BUNDLE.getString(key);
        int mark = text.indexOf('&');
        return mark < 0 || mark + 1 >= text.length() ? 0 : Character.toUpperCase(text.charAt(mark + 1));
    }

    /** {@return the text of a key that need not be there} */
    public static Optional<String> find(String key) {
        try {
            return Optional.of(BUNDLE.getString(key));
        } catch (MissingResourceException absent) {
            return Optional.empty();
        }
    }

    /** {@return a text as a tool tip, broken into lines; whatever stands in it is shown as it is} */
    public static String tip(String text) {
        StringBuilder html = new StringBuilder("<html>");
        int line = 0;
        for (String word : LocalNumbers.shown(text).split(" ")) {
            if (line > 0 && line + word.length() > LINE) {
                html.append("<br>");
                line = 0;
            }
            html.append(line == 0 ? "" : " ").append(word.replace("&", "&amp;").replace("<", "&lt;"));
            line += word.length() + 1;
        }
        return html.append("</html>").toString();
    }
}
