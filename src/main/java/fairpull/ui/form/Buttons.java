package fairpull.ui.form;

import fairpull.ui.theme.Words;
import javax.swing.JButton;

/** Buttons in the two weights of the design: a primary one in solid ink, one a page, and outlined ones. */
public final class Buttons {
    private static final String SOLID = "background: $Button.default.background; foreground: $Button.default.foreground; "
            + "hoverBackground: lighten($Button.default.background, 10%); pressedBackground: lighten($Button.default.background, 20%); "
            + "focusedBackground: $Button.default.background; "
            + "borderColor: $Button.default.background; hoverBorderColor: $Button.default.background; font: semibold";

    private Buttons() {
    }

    /** {@return an outlined button named by its key; {@code key.tip} says what it does} */
    public static JButton of(String key, Runnable work) {
        JButton button = new JButton(Words.of(key));
        button.setName(key);
        button.setMnemonic(Words.mnemonic(key));
        Words.find(key + ".tip").ifPresent(tip -> button.setToolTipText(Words.tip(tip)));
        button.addActionListener(event -> work.run());
        return button;
    }

    /** {@return a button in solid ink} */
    public static JButton primary(String key, Runnable work) {
        JButton button = of(key, work);
        button.putClientProperty("FlatLaf.style", SOLID);
        return button;
    }
}
