package fairpull.ui.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import fairpull.report.chart.Role;
import java.awt.Color;
import java.awt.Font;
import java.util.HashMap;
import java.util.Map;
import javax.swing.UIManager;

/** Puts our colours and typeface under every component. Components ask here for a colour when they paint, so that a change shows. */
public final class Look {
    static {
        // before any font is asked for: a family that is not known yet would be taken from the system, and kept
        FlatInterFont.installLazy();
    }

    private static final String MODE = "fairpull.mode";
    private static final String SCALE = "fairpull.scale";
    private static final int BODY = 13;
    /** Above this size strong type is bold, up to it semi-bold. */
    private static final int HEAVY = 17;

    /** The sizes of type in the window. */
    public enum Type {
        SMALL(12, Font.PLAIN), BODY(13, Font.PLAIN), STRONG(13, Font.BOLD), HEAD(14, Font.BOLD), TITLE(17, Font.BOLD),
        VERDICT(22, Font.BOLD), KEY(34, Font.BOLD), STEP(58, Font.BOLD), CLOCK(96, Font.BOLD);

        private final int size;
        private final int style;

        Type(int size, int style) {
            this.size = size;
            this.style = style;
        }
    }

    private Look() {
    }

    /**
     * Installs the look for all components made from now on; those that are there take it over by {@link FlatLaf#updateUI()}.
     *
     * @param mode light or dark
     * @param scale of all type, 1 for the sizes of the design
     */
    public static void install(Mode mode, double scale) {
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.setGlobalExtraDefaults(defaults(mode));
        UIManager.put(MODE, mode);
        UIManager.put(SCALE, scale);
        // with the typefaces of the system behind it, so that fields show letters of every script that the system has
        UIManager.put("defaultFont", FontUtils.getCompositeFont(FlatInterFont.FAMILY, Font.PLAIN, (int) Math.round(BODY * scale)));
        if (mode == Mode.DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        ToolTips.install();
        PlainText.install();
    }

    private static Map<String, String> defaults(Mode mode) {
        Map<String, String> defaults = new HashMap<>();
        defaults.put("@background", colour(mode, Role.PAPER));
        defaults.put("@foreground", colour(mode, Role.INK));
        defaults.put("@disabledForeground", colour(mode, Role.SOFT));
        defaults.put("@accentColor", colour(mode, Role.A));
        defaults.put("@componentBackground", colour(mode, Role.CARD));
        defaults.put("@menuBackground", colour(mode, Role.CARD));
        defaults.put("Component.borderColor", colour(mode, Role.LINE));
        defaults.put("Component.arc", "6");
        defaults.put("Button.arc", "6");
        defaults.put("TextComponent.arc", "6");
        defaults.put("Component.focusWidth", "1");
        defaults.put("Component.innerFocusWidth", "1");
        defaults.put("Button.default.background", colour(mode, Role.INK));
        defaults.put("Button.default.foreground", colour(mode, Role.CARD));
        defaults.put("Button.default.boldText", "true");
        defaults.put("Button.background", colour(mode, Role.CARD));
        defaults.put("ScrollBar.showButtons", "false");
        defaults.put("SplitPane.background", colour(mode, Role.PAPER));
        defaults.put("ToolTip.background", colour(mode, Role.CARD));
        defaults.put("ToolTip.foreground", colour(mode, Role.INK));
        return defaults;
    }

    private static String colour(Mode mode, Role role) {
        return mode.palette().colour(role);
    }

    /** {@return whether it is light or dark now} */
    public static Mode mode() {
        return UIManager.get(MODE) instanceof Mode mode ? mode : Mode.LIGHT;
    }

    /** {@return the scale of all type} */
    public static double scale() {
        return UIManager.get(SCALE) instanceof Double scale ? scale : 1;
    }

    /** {@return the colour of a role now} */
    public static Color colour(Role role) {
        return Color.decode(mode().palette().colour(role));
    }

    /** {@return the typeface of a size} */
    public static Font font(Type type) {
        boolean bold = type.style == Font.BOLD;
        String family = bold && type.size <= HEAVY ? FlatInterFont.FAMILY_SEMIBOLD : FlatInterFont.FAMILY;
        int style = family.equals(FlatInterFont.FAMILY_SEMIBOLD) ? Font.PLAIN : type.style;
        // this way of asking loads the typeface when it is first wanted
        return FontUtils.getCompositeFont(family, style, (int) Math.round(type.size * scale()));
    }
}
