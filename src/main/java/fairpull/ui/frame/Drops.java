package fairpull.ui.frame;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Hears of files and folders that are dropped on a component, one by one. */
final class Drops extends TransferHandler {
    private final transient Consumer<Path> taking;

    Drops(Consumer<Path> taking) {
        this.taking = taking;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            files.stream().filter(File.class::isInstance).map(File.class::cast).map(File::toPath).forEach(taking);
            return !files.isEmpty();
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
    }
}
