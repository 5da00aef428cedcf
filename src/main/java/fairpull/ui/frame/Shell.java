package fairpull.ui.frame;

import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The frame around a test or an audit, as its actions and the other windows see it. The tests have one without a display. */
interface Shell {
    /** Shows or hides it. */
    void setVisible(boolean visible);

    /** Brings it before all others. */
    void toFront();

    /** Ends it. */
    void dispose();

    /** {@return how large it is} */
    Dimension getSize();

    /** Asks for a folder to open; {@code key} names what for. */
    Optional<Path> chooseFolder(String key);

    /** Asks for a folder to write into, with a proposal that need not be there yet. */
    Optional<Path> chooseFolder(String key, Path proposed);

    /** Asks for a file to save, with a proposal. */
    Optional<Path> chooseFile(String key, Path proposed);

    /** Asks for a file to open, in a folder where one is known; {@code key} names what for. */
    Optional<Path> openFile(String key, Optional<Path> folder);

    /** Has a file shown by the program that the system has for it, where it has such programs at all. Not on the window's thread. */
    void view(Path file) throws IOException;
}
