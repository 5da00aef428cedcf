package fairpull.ui.theme;

import fairpull.report.chart.Palette;

/** Light or dark. */
public enum Mode {
    LIGHT(Palette.LIGHT), DARK(Palette.DARK);

    private final Palette palette;

    Mode(Palette palette) {
        this.palette = palette;
    }

    /** {@return its colours} */
    public Palette palette() {
        return palette;
    }
}
