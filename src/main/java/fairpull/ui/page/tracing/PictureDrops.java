package fairpull.ui.page.tracing;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes a picture that is dropped or pasted: a file, or the picture itself. */
final class PictureDrops extends TransferHandler {
    private final transient Consumer<Path> file;
    private final transient Consumer<Image> picture;

    PictureDrops(Consumer<Path> file, Consumer<Image> picture) {
        this.file = file;
        this.picture = picture;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor) || support.isDataFlavorSupported(DataFlavor.imageFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        return take(support.getTransferable());
    }

    /** {@return whether there was a picture in it} */
    boolean take(Transferable held) {
        try {
            if (held.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                    && held.getTransferData(DataFlavor.javaFileListFlavor) instanceof List<?> files && !files.isEmpty()
                    && files.get(0) instanceof File first) {
                file.accept(first.toPath());
                return true;
            }
            if (held.isDataFlavorSupported(DataFlavor.imageFlavor)
                    && held.getTransferData(DataFlavor.imageFlavor) instanceof Image image) {
                picture.accept(image);
                return true;
            }
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
        return false;
    }
}
