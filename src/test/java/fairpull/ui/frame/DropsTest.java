package fairpull.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.Test;

/** What a desktop drops is heard of file by file; what is no file is not taken. */
class DropsTest {
    private final List<Path> heard = new ArrayList<>();
    private final Drops drops = new Drops(heard::add);

    /** Files as a desktop gives them. */
    private record Files(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return files;
        }
    }

    private boolean drop(Transferable dropped) {
        return drops.importData(new TransferSupport(new JPanel(), dropped));
    }

    @Test
    void everyFileIsHeardOfInItsOrder() {
        assertThat(drop(new Files(List.of(new File("pump-test"), new File("log.csv"))))).isTrue();
        assertThat(heard).containsExactly(Path.of("pump-test"), Path.of("log.csv"));
    }

    @Test
    void wordsAndNothingAreNotTaken() {
        assertThat(drop(new StringSelection("log.csv"))).isFalse();
        assertThat(drop(new Files(List.of()))).isFalse();
        assertThat(heard).isEmpty();
    }
}
