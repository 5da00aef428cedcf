package fairpull.ui.frame;

import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** A frame that is on no display: chooses what it was told to, and remembers what was done with it. */
final class NoFrame implements Shell {
    Optional<Path> chosen = Optional.empty();
    Optional<Path> proposed = Optional.empty();
    Optional<Path> viewed = Optional.empty();
    boolean ended;
    int front;

    @Override
    public void setVisible(boolean visible) {
        // there is nothing to be seen
    }

    @Override
    public void toFront() {
        front++;
    }

    @Override
    public void dispose() {
        ended = true;
    }

    @Override
    public Dimension getSize() {
        return new Dimension(1280, 800);
    }

    @Override
    public Optional<Path> chooseFolder(String key) {
        return chosen;
    }

    @Override
    public Optional<Path> chooseFolder(String key, Path wanted) {
        proposed = Optional.of(wanted);
        return chosen;
    }

    @Override
    public Optional<Path> chooseFile(String key, Path wanted) {
        proposed = Optional.of(wanted);
        return chosen;
    }

    @Override
    public Optional<Path> openFile(String key, Optional<Path> folder) {
        return chosen;
    }

    /** As a system without a program for it does. */
    @Override
    public void view(Path file) throws IOException {
        viewed = Optional.of(file);
        throw new IOException("Failed to show URI:" + file.toUri());
    }
}
