package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.ui.theme.Words;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JFrame;

/** A frame on a display that asks for files and folders in dialogues of the platform. */
class ShellFrame extends JFrame implements Shell {
    private final transient Settings settings;

    ShellFrame(Settings settings) {
        this.settings = settings;
    }

    @Override
    public Optional<Path> chooseFolder(String key) {
        JFileChooser chooser = new JFileChooser(settings.recent().stream().findFirst().map(Path::getParent).map(Path::toFile).orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, key, false);
    }

    @Override
    public Optional<Path> chooseFolder(String key, Path proposed) {
        JFileChooser chooser = new JFileChooser(proposed.toAbsolutePath().getParent().toFile());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setSelectedFile(proposed.toFile());
        return chosen(chooser, key, true);
    }

    @Override
    public Optional<Path> chooseFile(String key, Path proposed) {
        JFileChooser chooser = new JFileChooser(proposed.toAbsolutePath().getParent().toFile());
        chooser.setSelectedFile(proposed.toFile());
        return chosen(chooser, key, true);
    }

    @Override
    public Optional<Path> openFile(String key, Optional<Path> folder) {
        return chosen(new JFileChooser(folder.map(Path::toFile).orElse(null)), key, false);
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
