package fairpull.ui;

import fairpull.Fairpull;
import java.awt.Window;
import java.util.Arrays;

/** The program as its main starts it, with somebody at the keyboard who types a title and then leaves it alone. Runs in a process of its own. */
final class EditedThenIdle {
    private EditedThenIdle() {
    }

    /** Types the title that is given. */
    public static void main(String[] arguments) {
        Fairpull.main(new String[0]);
        Waiting.until(() -> Arrays.stream(Window.getWindows()).anyMatch(Window::isFocused));
        OnScreen screen = OnScreen.there();
        screen.untilPlaced(screen.window());
        screen.type("question.title", arguments[0]);
    }
}
