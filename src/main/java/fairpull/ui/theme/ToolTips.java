package fairpull.ui.theme;

import javax.swing.ToolTipManager;

/** Tool tips teach the words of the trade, so they stay as long as reading takes. */
final class ToolTips {
    private static final int STAY_MS = 30_000;

    private ToolTips() {
    }

    static void install() {
        ToolTipManager.sharedInstance().setDismissDelay(STAY_MS);
    }
}
