package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.Desktop;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** The frame around a test on a display. */
public final class TestWindow extends JFrame implements Shell {
    private final transient OpenTest test;

    TestWindow(OpenTest test) {
        this.test = test;
        Settings settings = test.windows().settings();
        setJMenuBar(TestMenu.of(test.actions(), settings));
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(test.pane(), BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize((int) settings.number("window.width", 1280), (int) settings.number("window.height", 800));
        setLocationByPlatform(true);
        test.document().listen(this::retitle);
        test.pane().addPropertyChangeListener(TestPane.BLIND, change -> retitle());
        retitle();
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                // without a focus within, keys of the window go nowhere: all fields of a sealed test refuse it
                test.pane().strip().requestFocusInWindow();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                test.actions().close();
            }
        });
    }

    /** {@return what it shows} */
    public Document document() {
        return test.document();
    }

    /** {@return all of it but the frame} */
    public TestPane pane() {
        return test.pane();
    }

    private void retitle() {
        setTitle(Titles.window(test.document(), test.pane().isBlind()));
    }

    @Override
    public Optional<Path> chooseFolder(String key, boolean saving) {
        JFileChooser chooser = new JFileChooser(test.windows().settings().recent().stream().findFirst().map(Path::getParent)
                .map(Path::toFile).orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, key, saving);
    }

    @Override
    public Optional<Path> chooseFile(String key, Path proposed) {
        JFileChooser chooser = new JFileChooser(proposed.toAbsolutePath().getParent().toFile());
        chooser.setSelectedFile(proposed.toFile());
        return chosen(chooser, key, true);
    }

    private Optional<Path> chosen(JFileChooser chooser, String key, boolean saving) {
        chooser.setDialogTitle(Words.of(key));
        int answer = saving ? chooser.showSaveDialog(this) : chooser.showOpenDialog(this);
        return answer == JFileChooser.APPROVE_OPTION ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    @Override
    public void view(Path file) throws IOException {
        if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            Desktop.getDesktop().open(file.toFile());
        }
    }
}
