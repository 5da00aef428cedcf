package fairpull.ui.form;

import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;

/** Something into which is typed, and which keeps what is not understood. It is found by its component, which carries it as a property. */
public interface Input {
    /** {@return what it asks for} */
    String name();

    /** {@return what is wrong with what is typed; empty where nothing is} */
    String wrong();

    /** {@return the component in which it is typed} */
    JComponent field();

    /** Sends on what is still being typed. */
    void flush();

    /** {@return whether what is typed is no part of the document, which is kept even while it is wrong} */
    boolean isAside();

    /** Lets it be found by its component. */
    default void found() {
        field().putClientProperty(Input.class, this);
    }

    /** Sends on what is still being typed within a component, such as before what was edited is saved or taken back. */
    static void flush(Container within) {
        in(within).forEach(Input::flush);
    }

    /** {@return the first one within a component that shows something else than the document holds, because it is not understood} */
    static Optional<Input> complaining(Container within) {
        return in(within).filter(input -> !input.wrong().isEmpty() && !input.isAside()).findFirst();
    }

    private static Stream<Input> in(Component component) {
        if (component instanceof JComponent field && field.getClientProperty(Input.class) instanceof Input input) {
            return Stream.of(input);
        }
        return component instanceof Container container ? Stream.of(container.getComponents()).flatMap(Input::in) : Stream.empty();
    }
}
