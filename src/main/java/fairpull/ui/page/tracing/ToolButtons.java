package fairpull.ui.page.tracing;

import fairpull.ui.theme.Words;
import javax.swing.JToggleButton;

/** Buttons that take a tool in hand. */
final class ToolButtons {
    private ToolButtons() {
    }

    static JToggleButton of(String key, Tool tool, Bench bench) {
        JToggleButton button = named(key);
        button.addActionListener(event -> bench.take(tool));
        return button;
    }

    static JToggleButton named(String key) {
        JToggleButton button = new JToggleButton(Words.of(key));
        button.setName(key);
        button.setMnemonic(Words.mnemonic(key));
        Words.find(key + ".tip").ifPresent(tip -> button.setToolTipText(Words.tip(tip)));
        return button;
    }
}
