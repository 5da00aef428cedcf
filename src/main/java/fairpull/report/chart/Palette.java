package fairpull.report.chart;

import java.util.EnumMap;
import java.util.Map;

/** The colours of the roles. The one place that holds them; window, report and print derive from it. */
public final class Palette {
    /** Dark ink on warm paper. */
    public static final Palette LIGHT = new Palette("#f7f5f0", "#ffffff", "#20262b", "#626b73", "#d9d5cc", "#173b5e", "#a84e09",
            "#fbeee3", "#0c6e60", "#dff0ec", "#b4c9dd", "#ecc9a8", "#f6dcc6");
    /** Light ink on a dark ground. */
    public static final Palette DARK = new Palette("#171a1d", "#1f2327", "#e8e6e1", "#9aa3ab", "#343a40", "#a9d1f5", "#de8a3f",
            "#3a2d22", "#5cc4b2", "#1d3935", "#3c5a75", "#74512f", "#4a3726");
    /** Black on white. */
    public static final Palette PRINT = new Palette("#ffffff", "#ffffff", "#000000", "#4a4a4a", "#b8b8b8", "#0f3050", "#9a4606",
            "#f6ece3", "#0a5c50", "#e6f1ee", "#b4c9dd", "#e3c3a5", "#f3dcc8");

    private final Map<Role, String> colours = new EnumMap<>(Role.class);

    private Palette(String... inOrderOfRoles) {
        for (Role role : Role.values()) {
            colours.put(role, inOrderOfRoles[role.ordinal()]);
        }
    }

    /** {@return the colour of a role as {@code #rrggbb}} */
    public String colour(Role role) {
        return colours.get(role);
    }

    /** {@return the contrast of two roles by WCAG 2.1, from 1 to 21} */
    public double contrast(Role one, Role other) {
        return contrast(colour(one), colour(other));
    }

    /** {@return the contrast of two colours written as {@code #rrggbb}} */
    static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    /** Relative luminance as WCAG 2.1 defines it (definition “relative luminance”). */
    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** {@return style rules that give every role its colour on screen, in the dark and on paper} */
    public static String styleSheet() {
        StringBuilder rules = new StringBuilder();
        rules.append(":root{").append(LIGHT.variables()).append("}\n");
        rules.append("@media (prefers-color-scheme:dark){:root{").append(DARK.variables()).append("}}\n");
        rules.append("@media print{:root{").append(PRINT.variables()).append("}}\n");
        for (Role role : Role.values()) {
            rules.append(".f-").append(role.token()).append("{fill:var(--").append(role.token()).append(")}");
            rules.append(".s-").append(role.token()).append("{stroke:var(--").append(role.token()).append(")}\n");
        }
        return rules.toString();
    }

    /** {@return style rules that give every role its colour, without variables, for programs that draw pictures} */
    String rules() {
        StringBuilder rules = new StringBuilder();
        colours.forEach((role, colour) -> rules.append(".f-").append(role.token()).append("{fill:").append(colour).append("}.s-")
                .append(role.token()).append("{stroke:").append(colour).append('}'));
        return rules.toString();
    }

    private String variables() {
        StringBuilder variables = new StringBuilder();
        colours.forEach((role, colour) -> variables.append("--").append(role.token()).append(':').append(colour).append(';'));
        return variables.toString();
    }
}
